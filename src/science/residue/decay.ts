/** Residue rotting away with warmth and wetness (first-order decay over decomposition days). */
import { failed, ok, type Result } from "../../record/result.ts";
import {
  HALF_MONTH_DAYS,
  MOST_MASS_KG_PER_HA,
  ROT_BEST_C,
  ROT_SHIFT_C,
  SINGLE_FIGURE_SPREAD,
  WET_HALF_MONTH_MM,
} from "../constants/straw.ts";
import type { Caution } from "../estimate.ts";
import type { ResidueCrop } from "./crops.ts";
import { assumed, type Ranged, ranged, type Span, usable } from "./ranged.ts";

/** Where the temperature curve has its nought and its best. */
export interface RotCurve {
  readonly shiftC: number;
  readonly bestC: number;
}

const STROO: RotCurve = { shiftC: ROT_SHIFT_C, bestC: ROT_BEST_C };

/**
 * How fast residue rots at a temperature, against the best one:
 * `F = (2(T + A)²·(T_0 + A)² − (T + A)⁴)/(T_0 + A)⁴`.
 *
 * Temperatures are in °C: the handbook of RUSLE prints its figures in °F (official errata), and with those the curve
 * says four times too much at 4.5 °C and twice too much at 10 °C.
 *
 * @param meanC mean air temperature of a day or half-month
 * @returns 0 to 1; 0 at −6.1 °C and below and at 49 °C and above. `science/no-number` when one is not finite or
 * the best is not above the nought
 *
 * Source: Stroo et al. 1989; errata to Agriculture Handbook 703 (2001).
 *
 * @example
 * rotByTemperature(10).value // => ≈ 0.3104
 */
export const rotByTemperature = (meanC: number, { shiftC, bestC }: RotCurve = STROO): Result<number> => {
  const whole = bestC + shiftC;
  if (!(Number.isFinite(meanC) && Number.isFinite(whole) && whole > 0)) return failed("science/no-number");
  const above = meanC + shiftC;
  // The curve is even about −A: without this, deep frost would rot straw as heat does.
  if (above <= 0) return ok(0);
  const part = (above / whole) ** 2;
  // Beyond √2 of the best the curve is below nothing, and its squares soon beyond all numbers.
  return ok(part >= 2 ? 0 : Math.min(1, Math.max(0, 2 * part - part ** 2)));
};

/**
 * How fast residue rots by the rain of half a month: `W = R/R_0`, at most 1.
 *
 * @param rainMm of half a month, 0 or more
 * @returns `science/no-number` for rain that is negative or not finite
 *
 * Source: RUSLE; R_0 = 66 mm from memory.
 *
 * @example
 * rotByRain(33).value // => 0.5
 */
export const rotByRain = (rainMm: number): Result<number> =>
  rainMm >= 0 && Number.isFinite(rainMm)
    ? ok(Math.min(1, rainMm / WET_HALF_MONTH_MM))
    : failed("science/no-number");

/** Rain in mm, day by day; null, or nothing there, for a day that nobody measured. */
export interface DailyRain {
  /** On the days before the first, the last of them the day before it. */
  readonly beforeMm: readonly (number | null)[];
  readonly eachMm: readonly (number | null)[];
}

/** How wet residue is each day, by the half month of rain that ends with it. */
const wetnessBy = ({ beforeMm, eachMm }: DailyRain, days: number): Result<readonly Span[]> => {
  const all = [
    ...new Array<null>(HALF_MONTH_DAYS).fill(null),
    ...beforeMm,
    ...Array.from({ length: days }, (_, at) => eachMm[at] ?? null),
  ];
  const each: Span[] = [];
  for (let at = all.length - days; at < all.length; at++) {
    const lately = all.slice(at + 1 - HALF_MONTH_DAYS, at + 1);
    const known = lately.filter((mm) => mm !== null);
    if (!known.every((mm) => mm >= 0)) return failed("science/no-number");
    const least = rotByRain(known.reduce((sum, mm) => sum + mm, 0));
    if (!least.ok) return least;
    const most = known.length === lately.length ? least.value : 1;
    each.push({ low: least.value, middle: (least.value + most) / 2, high: most });
  }
  return ok(each);
};

/**
 * Decomposition days: each day counts as what it lacks most, warmth or wetness.
 *
 * With a record of rain a day is as wet as the half month that ends with it (`rotByRain` of 15 days). Days that nobody
 * measured count as dry at the low end and as wet enough at the high one, so that a gap makes the answer wide and
 * never wrong.
 *
 * @param meanC mean air temperature per day: in any order with one wetness for all, in the order of days with rain
 * @param wetness 0 dry to 1 wet, held for all days: without a record of rain a wide range, which the person
 * can change; or the rain of each day
 * @returns days at full speed; none for no days. `science/no-number` for a temperature or rain that is not finite, or
 * rain below 0, `science/not-a-range` for a wetness outside 0 to 1
 *
 * Source: Stroo et al. 1989 (the smaller of two factors, 0 to 1); wetness by rain as `rotByRain`.
 *
 * @example
 * import { assumed } from "./ranged.ts";
 * const wetness = assumed("wetness", { low: 0.3, middle: 0.6, high: 1 }, "1", "yours");
 * decompositionDays([33, 33, 33, 33], wetness).value // => { low: 1.2, middle: 2.4, high: 4 }
 */
export const decompositionDays = (meanC: readonly number[], wetness: Ranged | DailyRain): Result<Ranged> => {
  const byRain = "eachMm" in wetness;
  const good = byRain ? ok(true) : usable([[wetness, { unit: "1", least: 0, most: 1 }]]);
  if (!good.ok) return good;
  const wet = byRain ? wetnessBy(wetness, meanC.length) : ok(meanC.map(() => wetness));
  if (!wet.ok) return wet;
  // With one wetness the order of days says nothing, and must not change the last digit.
  const days = byRain ? meanC : [...meanC].sort((a, b) => a - b);
  const sum = { low: 0, middle: 0, high: 0 };
  for (const [at, then] of wet.value.entries()) {
    const warmth = rotByTemperature(days[at] ?? Number.NaN);
    if (!warmth.ok) return warmth;
    for (const end of ["low", "middle", "high"] as const) sum[end] += Math.min(warmth.value, then[end]);
  }
  const from = byRain ? [] : [wetness];
  return ok(ranged([sum.low, sum.middle, sum.high], "d", { from, method: "residue-decay" }));
};

const span = (low: number, middle: number, high: number): Span => ({ low, middle, high });
const single = (value: number): Span =>
  span(value * (1 - SINGLE_FIGURE_SPREAD), value, value * (1 + SINGLE_FIGURE_SPREAD));

/** Per decomposition day. */
const RATES: Readonly<Partial<Record<ResidueCrop, Span>>> = {
  maize: span(0.0065, 0.008, 0.01),
  "winter-wheat": single(0.0085),
  "spring-wheat": single(0.0085),
  barley: single(0.0085),
  oats: single(0.009),
  millet: single(0.009),
  rye: single(0.009),
  sorghum: single(0.0074),
  sunflower: single(0.0074),
  soybean: single(0.013),
  "oilseed-rape": single(0.013),
  "dry-bean": single(0.013),
  cotton: single(0.01),
  pea: single(0.01),
  potato: single(0.015),
};

/**
 * How fast a crop's residue rots at best warmth and wetness, per decomposition day.
 *
 * @returns `science/no-figure-for-crop` where none is known
 *
 * Source: models of residue decay, not yet checked; the ends are a quarter to either side (own rule) but for maize.
 *
 * @example
 * decayRateOf("winter-wheat").value.middle // => 0.0085
 */
export const decayRateOf = (crop: ResidueCrop): Result<Ranged> => {
  const known = RATES[crop];
  return known === undefined
    ? failed("science/no-figure-for-crop", { crop })
    : ok(assumed("decay-rate", known, "/d", "decay-rates"));
};

const HEAVY_ROTS_SLOWER: Caution = { code: "science/heavy-load-rots-slower", facts: {} };

/**
 * Share of the mass that has gone: `1 − exp(−k·D)`. Thick straw loses a smaller share than this says, since
 * what lies on top keeps dry (Stott et al. 1990); a caution says so.
 *
 * @param rate per day, as the field's own lines gave it, or per decomposition day
 * @param days days for the first, decomposition days for the second
 * @returns a share; `science/not-a-range` for a rate outside 0 to 1 or days outside 0 to 100 000
 *
 * @example
 * import { assumed, exactly } from "./ranged.ts";
 * const rate = assumed("decay-rate", exactly(0.0065), "/d", "yours");
 * lossAfter(rate, assumed("decay-rate", exactly(40), "d", "yours")).value.middle // => ≈ 0.2289
 */
export const lossAfter = (rate: Ranged, days: Ranged): Result<Ranged> => {
  const good = usable([
    [rate, { unit: "/d", least: 0, most: 1 }],
    [days, { unit: "d", least: 0, most: 100_000 }],
  ]);
  if (!good.ok) return good;
  const gone = (end: keyof Span): number => -Math.expm1(-rate[end] * days[end]);
  return ok(
    ranged([gone("low"), gone("middle"), gone("high")], "1", {
      from: [rate, days],
      method: "residue-decay",
      cautions: [HEAVY_ROTS_SLOWER],
    }),
  );
};

/**
 * Mass left after a share has gone: `M·(1 − f)`, the low end with the high loss.
 *
 * @returns dry kg/ha; `science/not-a-range` for a mass below 0 or above 200 t/ha or a loss outside 0 to 1
 *
 * @example
 * import { assumed, exactly } from "./ranged.ts";
 * const loss = assumed("loss", exactly(0.74), "1", "yours");
 * massLeft(assumed("mass", exactly(9000), "kg/har", "yours"), loss).value.middle // => ≈ 2340
 */
export const massLeft = (mass: Ranged, loss: Ranged): Result<Ranged> => {
  const good = usable([
    [mass, { unit: "kg/har", least: 0, most: MOST_MASS_KG_PER_HA }],
    [loss, { unit: "1", least: 0, most: 1 }],
  ]);
  if (!good.ok) return good;
  return ok(
    ranged(
      [mass.low * (1 - loss.high), mass.middle * (1 - loss.middle), mass.high * (1 - loss.low)],
      "kg/har",
      { from: [mass, loss], method: "mass-left" },
    ),
  );
};
