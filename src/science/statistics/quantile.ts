/** Quantiles of numbers in hand. */
import { failed, ok, type Result } from "../../record/result.ts";

/** Between neighbours by their ranks; `sorted` ascending and not empty, `rank` from 1, held to both ends. */
export const atRank = (sorted: ArrayLike<number>, rank: number): number => {
  const held = Math.min(sorted.length, Math.max(1, rank));
  const below = Math.floor(held);
  const low = sorted[below - 1] ?? Number.NaN;
  const high = sorted[Math.min(sorted.length, below + 1) - 1] ?? Number.NaN;
  return low + (held - below) * (high - low);
};

/**
 * The value that a share of all values lies below, straight between neighbours: rank `1 + (n−1)·share`.
 *
 * @param values finite numbers in any order
 * @param share from 0 to 1
 * @returns `science/nothing-read` for none, `science/no-number` when one is not finite,
 * `science/not-a-probability` for the share. One value is its own quantile
 *
 * Source: Hyndman & Fan 1996, Am. Stat. 50: 361-365, definition 7.
 *
 * @example
 * quantileOf([1, 2, 4, 8], 0.5).value // => 3
 */
export const quantileOf = (values: readonly number[], share: number): Result<number> => {
  if (values.length === 0) return failed("science/nothing-read");
  if (!values.every(Number.isFinite)) return failed("science/no-number");
  if (!(share >= 0 && share <= 1)) return failed("science/not-a-probability", { probability: String(share) });
  const sorted = Float64Array.from(values).sort();
  return ok(atRank(sorted, 1 + (sorted.length - 1) * share));
};

/**
 * The middle value.
 *
 * @returns reasons as `quantileOf`
 *
 * @example
 * medianOf([3, 9, 5]).value // => 5
 */
export const medianOf = (values: readonly number[]): Result<number> => quantileOf(values, 0.5);
