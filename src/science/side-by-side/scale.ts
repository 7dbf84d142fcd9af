/** Differences for cover, ratios for worms and soaking in: how two values are set against each other. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Bounds } from "../estimate.ts";
import { sumOf } from "../statistics/sample.ts";

/** First less second, or first over second. */
export type Scale = "difference" | "ratio";

/** What no difference is. */
export const noneOn = (scale: Scale): number => (scale === "ratio" ? 1 : 0);

/** One value; a ratio has no place for nothing at all, so the least that could have been seen may stand in. */
export interface Seen {
  readonly value: number;
  /** In the same unit: for example one worm in all holes of the strip, or one step of the ruler. */
  readonly least: number | null;
}

/**
 * The value as it is worked with: itself, or its natural logarithm where ratios are compared. Nothing at all
 * becomes the least that could have been seen.
 *
 * @returns `science/no-ratio-of-nothing` for a ratio with 0 and no least above 0, or with a negative value;
 * `science/no-number` when the value is not finite
 *
 * @example
 * workedWith({ value: 0, least: 2 }, "ratio").value // => { number: 0.6931471805599453, raised: true }
 */
export const workedWith = (
  { value, least }: Seen,
  scale: Scale,
): Result<{ readonly number: number; readonly raised: boolean }> => {
  if (!Number.isFinite(value)) return failed("science/no-number");
  if (scale === "difference") return ok({ number: value, raised: false });
  if (value > 0) return ok({ number: Math.log(value), raised: false });
  return value === 0 && least !== null && least > 0 && Number.isFinite(least)
    ? ok({ number: Math.log(least), raised: true })
    : failed("science/no-ratio-of-nothing");
};

/** Back from what is worked with. */
export const shownOn = (scale: Scale, number: number): number =>
  scale === "ratio" ? Math.exp(number) : number;

/** Both ends back; a reason when one is too large to be a number. */
export const boundsOn = (scale: Scale, range: Result<Bounds>): Result<Bounds> => {
  if (!range.ok) return range;
  const bounds = { lower: shownOn(scale, range.value.lower), upper: shownOn(scale, range.value.upper) };
  return Number.isFinite(bounds.lower) && Number.isFinite(bounds.upper)
    ? ok(bounds)
    : failed("science/no-number");
};

/**
 * Several values as one: their mean, of logarithms where ratios are compared. Such a mean stands for no sample that
 * could have been nothing, so no least comes with it.
 *
 * @param values in any order
 * @returns `science/nothing-read` for none, reasons as `workedWith`; one value comes back as it is
 *
 * @example
 * meanOnScale([{ value: 2, least: 1 }, { value: 8, least: 1 }], "ratio").value // => { value: 4 }
 */
export const meanOnScale = (values: readonly Seen[], scale: Scale): Result<Seen> => {
  const [only] = values;
  if (only === undefined) return failed("science/nothing-read");
  if (values.length === 1) return ok(only);
  const numbers: number[] = [];
  for (const one of values) {
    const worked = workedWith(one, scale);
    if (!worked.ok) return worked;
    numbers.push(worked.value.number);
  }
  const value = shownOn(scale, sumOf(numbers) / numbers.length);
  return Number.isFinite(value) ? ok({ value, least: null }) : failed("science/no-number");
};

/**
 * The least mean that so many samples could have shown: one step, or one worm, in all of them together.
 *
 * @param spots of one strip, all seen by the same steps
 * @returns null where nothing is known of a least
 *
 * @example
 * leastOfMean([{ value: 0, least: 1 }, { value: 3, least: 1 }]) // => 0.5
 */
export const leastOfMean = (spots: readonly Seen[]): number | null => {
  const least = spots.map((spot) => spot.least).find((one) => one !== null) ?? null;
  return least === null || !Number.isFinite(least) ? null : least / spots.length;
};
