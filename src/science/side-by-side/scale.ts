/** Differences for cover, ratios for worms and soaking in: how two values are set against each other. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Bounds } from "../estimate.ts";

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
