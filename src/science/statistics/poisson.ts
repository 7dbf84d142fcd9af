/** Counts of things that fall by chance. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Bounds } from "../estimate.ts";
import { chiSquareQuantile } from "./distributions.ts";

/**
 * The exact two-sided range for the mean behind one count: half of chi-square, `χ²_{2x; α/2}/2` to
 * `χ²_{2x+2; 1−α/2}/2`.
 *
 * @param count whole number, 0 or more
 * @param level above 0 and below 1
 * @returns both ends in the unit of the count; the lower one is 0 for a count of 0. `science/not-a-count`,
 * `science/not-a-probability`
 *
 * Source: Garwood 1936, Biometrika 28: 437-442.
 *
 * @example
 * countRange(10, 0.95).value.upper // => ≈ 18.3904
 */
export const countRange = (count: number, level: number): Result<Bounds> => {
  if (!(Number.isSafeInteger(count) && count >= 0))
    return failed("science/not-a-count", { count: String(count) });
  if (!(level > 0 && level < 1)) return failed("science/not-a-probability", { probability: String(level) });
  const tail = (1 - level) / 2;
  const lower = count === 0 ? ok(0) : chiSquareQuantile(tail, 2 * count);
  if (!lower.ok) return lower;
  const upper = chiSquareQuantile(1 - tail, 2 * count + 2);
  return upper.ok ? ok({ lower: lower.value / 2, upper: upper.value / 2 }) : upper;
};
