/** The middle of weighted numbers. */
import { failed, ok, type Result } from "../../record/result.ts";

/** A number and how much it counts. */
export interface Weighted {
  readonly value: number;
  readonly weight: number;
}

/**
 * The value below and above which lies half of the weight; between two values when the weight falls evenly.
 *
 * @param items in any order; weights above 0
 * @returns `science/nothing-read` for none, `science/no-number` when a value is not finite or a weight is
 * not above 0
 *
 * @example
 * weightedMedian([{ value: 1, weight: 1 }, { value: 5, weight: 1 }, { value: 9, weight: 4 }]); // 9
 */
export const weightedMedian = (items: readonly Weighted[]): Result<number> => {
  for (const { value, weight } of items)
    if (!(Number.isFinite(value) && weight > 0 && Number.isFinite(weight)))
      return failed("science/no-number");
  const sorted = [...items].sort((a, b) => a.value - b.value || a.weight - b.weight);
  const half = sorted.reduce((sum, item) => sum + item.weight, 0) / 2;
  if (!Number.isFinite(half)) return failed("science/no-number");
  let below = 0;
  for (const [index, { value, weight }] of sorted.entries()) {
    below += weight;
    // Sums of weights carry rounding: a hair short of half is half.
    if (Math.abs(below - half) <= half * 1e-12)
      return ok(value / 2 + (sorted[index + 1]?.value ?? value) / 2);
    if (below > half) return ok(value);
  }
  return failed("science/nothing-read");
};
