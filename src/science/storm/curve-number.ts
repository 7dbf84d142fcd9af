/** Runoff by handbook curve numbers: a cross-check beside the rings, not in their place. */
import { failed, ok, type Result } from "../../record/result.ts";
import {
  DEEPEST_RAIN_MM,
  INITIAL_SHARE,
  RETENTION_SCALE_MM,
  RETENTION_SHIFT_MM,
} from "../constants/storms.ts";
import type { Caution } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import type { SourceId } from "../sources.ts";

/** Runoff by the handbook. It rests on no sample of this field, so it has no n and no range. */
export interface CurveNumberRunoff {
  readonly mm: number;
  readonly cautions: readonly Caution[];
  readonly methods: readonly MethodId[];
  readonly sources: readonly SourceId[];
}

const isCurveNumber = (value: number): boolean => value > 0 && value <= 100;

/**
 * Runoff of a storm: `Q = (P − 0.2·S)²/(P + 0.8·S)` once the rain is more than 0.2·S, with
 * `S = 25400/CN − 254` mm. Made for small catchments and design storms; the handbook itself says that it is no
 * model of infiltration at a point. It knows no slope, intensity or duration, and must not be fitted to rings.
 *
 * @param rainMm 0 or more
 * @param curveNumber above 0, up to 100
 * @returns `science/not-a-rain`, `science/not-a-curve-number`
 *
 * Source: National Engineering Handbook 630, chapter 10 (2004); TR-55 (1986), equations 2-1 to 2-4.
 *
 * @example
 * curveNumberRunoff(6 * 25.4, 70).value.mm / 25.4 // => ≈ 2.81
 */
export const curveNumberRunoff = (rainMm: number, curveNumber: number): Result<CurveNumberRunoff> => {
  if (!(rainMm >= 0 && rainMm <= DEEPEST_RAIN_MM)) return failed("science/not-a-rain");
  if (!isCurveNumber(curveNumber)) return failed("science/not-a-curve-number");
  const retention = RETENTION_SCALE_MM / curveNumber - RETENTION_SHIFT_MM;
  const over = rainMm - INITIAL_SHARE * retention;
  const methods: MethodId[] = ["curve-number"];
  return ok({
    mm: over > 0 ? (over * over) / (rainMm + (1 - INITIAL_SHARE) * retention) : 0,
    cautions: [
      { code: "science/curve-number-not-a-point", facts: {} },
      { code: "science/not-for-design", facts: {} },
    ],
    methods,
    sources: sourcesOf(methods),
  });
};

/**
 * The curve number of ground of several kinds: their mean by area, in whole numbers as the handbook rounds it
 * before anything else.
 *
 * @param parts areas in any one unit, each above 0
 * @returns `science/nothing-read` for none, `science/not-an-area`, `science/not-a-curve-number`
 *
 * @example
 * compositeCurveNumber([{ area: 75, curveNumber: 61 }, { area: 175, curveNumber: 74 }]).value // => 70
 */
export const compositeCurveNumber = (
  parts: readonly { readonly area: number; readonly curveNumber: number }[],
): Result<number> => {
  if (parts.length === 0) return failed("science/nothing-read");
  if (!parts.every(({ area }) => area > 0 && Number.isFinite(area))) return failed("science/not-an-area");
  if (!parts.every(({ curveNumber }) => isCurveNumber(curveNumber)))
    return failed("science/not-a-curve-number");
  const whole = parts.reduce((sum, { area }) => sum + area, 0);
  const mean = parts.reduce((sum, { area, curveNumber }) => sum + (area / whole) * curveNumber, 0);
  return isCurveNumber(mean) ? ok(Math.round(mean)) : failed("science/not-an-area");
};

/** How wet the ground was before the storm, as the handbook has it. */
export type WetBefore = "dry" | "average" | "wet";

/**
 * A curve number for ground that was drier or wetter than average before the storm.
 *
 * @returns `science/not-a-curve-number`
 *
 * Source: Chow, Maidment & Mays 1988, equations 5.5.4 and 5.5.5 (from memory).
 *
 * @example
 * curveNumberWhen(75, "dry").value // => ≈ 55.8
 */
export const curveNumberWhen = (curveNumber: number, wetBefore: WetBefore): Result<number> => {
  if (!isCurveNumber(curveNumber)) return failed("science/not-a-curve-number");
  if (wetBefore === "dry") return ok((4.2 * curveNumber) / (10 - 0.058 * curveNumber));
  if (wetBefore === "wet") return ok((23 * curveNumber) / (10 + 0.13 * curveNumber));
  return ok(curveNumber);
};
