/** Runoff by handbook curve numbers: a cross-check beside the rings, not in their place. */
import { failed, ok, type Result } from "../../record/result.ts";
import {
  DEEPEST_RAIN_MM,
  DRY_CURVE_BEND,
  DRY_CURVE_SCALE,
  INITIAL_SHARE,
  RETENTION_SCALE_MM,
  RETENTION_SHIFT_MM,
  WET_CURVE_BEND,
  WET_CURVE_SCALE,
} from "../constants/storms.ts";
import type { Caution, Estimate } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";

const NOT_A_POINT: Caution = { code: "science/curve-number-not-a-point", facts: {} };

/** An answer by the handbook: it rests on its tables and on no sample of this field, so there is no range. */
const byHandbook = (
  value: number,
  unit: Estimate["unit"],
  numbers: number,
  method: MethodId,
  cautions: readonly Caution[],
): Estimate => ({
  value,
  unit,
  n: numbers,
  sampledBy: "assumptions",
  range: failed("science/rests-on-a-table"),
  cautions,
  methods: [method],
  sources: sourcesOf([method]),
});

const isCurveNumber = (value: number): boolean => value > 0 && value <= 100;

/**
 * Runoff of a storm: `Q = (P − 0.2·S)²/(P + 0.8·S)` once the rain is more than 0.2·S, with
 * `S = 25400/CN − 254` mm. Made for small catchments and design storms; the handbook itself says that it is no
 * model of infiltration at a point. It knows no slope, intensity or duration, and must not be fitted to rings.
 *
 * @param rainMm 0 or more
 * @param curveNumber above 0, up to 100
 * @returns mm, without a range; `science/not-a-rain`, `science/not-a-curve-number`
 *
 * Source: National Engineering Handbook 630, chapter 10 (2004); TR-55 (1986), equations 2-1 to 2-4.
 *
 * @example
 * curveNumberRunoff(6 * 25.4, 70).value.value / 25.4 // => ≈ 2.81
 */
export const curveNumberRunoff = (rainMm: number, curveNumber: number): Result<Estimate> => {
  if (!(rainMm >= 0 && rainMm <= DEEPEST_RAIN_MM)) return failed("science/not-a-rain");
  if (!isCurveNumber(curveNumber)) return failed("science/not-a-curve-number");
  const retention = RETENTION_SCALE_MM / curveNumber - RETENTION_SHIFT_MM;
  const over = rainMm - INITIAL_SHARE * retention;
  const mm = over > 0 ? (over * over) / (rainMm + (1 - INITIAL_SHARE) * retention) : 0;
  return ok(
    byHandbook(mm, "mm", 1, "curve-number", [NOT_A_POINT, { code: "science/not-for-design", facts: {} }]),
  );
};

/**
 * The curve number of ground of several kinds: their mean by area, in whole numbers as the handbook rounds it
 * before anything else.
 *
 * @param parts areas in any one unit, each above 0
 * @returns without a range, `n` being the number of parts; `science/nothing-read` for none, `science/not-an-area`, `science/not-a-curve-number`
 *
 * @example
 * compositeCurveNumber([{ area: 75, curveNumber: 61 }, { area: 175, curveNumber: 74 }]).value.value // => 70
 */
export const compositeCurveNumber = (
  parts: readonly { readonly area: number; readonly curveNumber: number }[],
): Result<Estimate> => {
  if (parts.length === 0) return failed("science/nothing-read");
  if (!parts.every(({ area }) => area > 0 && Number.isFinite(area))) return failed("science/not-an-area");
  if (!parts.every(({ curveNumber }) => isCurveNumber(curveNumber)))
    return failed("science/not-a-curve-number");
  const whole = parts.reduce((sum, { area }) => sum + area, 0);
  const mean = parts.reduce((sum, { area, curveNumber }) => sum + (area / whole) * curveNumber, 0);
  return isCurveNumber(mean)
    ? ok(byHandbook(Math.round(mean), "1", parts.length, "curve-number-of-ground", [NOT_A_POINT]))
    : failed("science/not-an-area");
};

/** How wet the ground was before the storm, as the handbook has it. */
export type WetBefore = "dry" | "average" | "wet";

/**
 * A curve number for ground that was drier or wetter than average before the storm.
 *
 * @returns without a range; `science/not-a-curve-number`
 *
 * Source: Chow, Maidment & Mays 1988, equations 5.5.4 and 5.5.5 (from memory).
 *
 * @example
 * curveNumberWhen(75, "dry").value.value // => ≈ 55.8
 */
export const curveNumberWhen = (curveNumber: number, wetBefore: WetBefore): Result<Estimate> => {
  if (!isCurveNumber(curveNumber)) return failed("science/not-a-curve-number");
  const turned = {
    dry: (DRY_CURVE_SCALE * curveNumber) / (10 - DRY_CURVE_BEND * curveNumber),
    average: curveNumber,
    wet: (WET_CURVE_SCALE * curveNumber) / (10 + WET_CURVE_BEND * curveNumber),
  };
  return ok(byHandbook(turned[wetBefore], "1", 1, "curve-number-of-ground", [NOT_A_POINT]));
};
