/** The range that Student's t gives around an estimate. */
import { ok, type Result } from "../../record/result.ts";
import { ENOUGH_IF_LOPSIDED, LOPSIDED } from "../constants/cautions.ts";
import type { Bounds, Caution } from "../estimate.ts";
import { studentQuantile } from "./distributions.ts";
import { skewnessOf } from "./sample.ts";

/**
 * What a range by Student's t does not reach when its values are lopsided: 3 to 20 strongly skewed ones (lognormal,
 * spread of logs 0.8) hold the mean 86 to 89 times of 100 instead of 95, and nothing in so few values shows it. From 30
 * on it shows: 30, 60 and 100 hold it 92, 93 and 94 times with that spread, 86, 87 and 90 times with one of 1.2, and
 * where they hold it less than 92 times the skewness of 80 of 100 samples that miss and more is above 0.8. The skewness of
 * even ones is so in 5 of 100 samples of 30 and 1 of 60 (tests/property).
 *
 * @param groups the values behind the range, of each group by itself
 * @returns `science/range-if-lopsided` when the smallest group has fewer than 30, or the skewness of one is above 0.8 to
 * either side, else none
 *
 * @example
 * lopsidedCautions([[3, 5, 4, 8, 2, 6]]) // => [{ code: "science/range-if-lopsided", facts: { values: 6 } }]
 */
export const lopsidedCautions = (groups: readonly (readonly number[])[]): readonly Caution[] => {
  const values = Math.min(...groups.map((group) => group.length));
  if (!Number.isFinite(values)) return [];
  const lopsided = groups.some((group) => {
    const skewness = skewnessOf(group);
    return skewness.ok && Math.abs(skewness.value) > LOPSIDED;
  });
  return values < ENOUGH_IF_LOPSIDED || lopsided
    ? [{ code: "science/range-if-lopsided", facts: { values } }]
    : [];
};

/**
 * `centre ± t_{ν}·SE`.
 *
 * @param centre and `standardError` in one unit; the error is 0 or more
 * @param level above 0 and below 1
 * @returns reasons as `studentQuantile`
 *
 * Source: NIST/SEMATECH e-Handbook, 1.3.5.2.
 *
 * @example
 * studentRange(3, 1, 2, 0.95).value.upper // => ≈ 7.3027
 */
export const studentRange = (
  centre: number,
  standardError: number,
  degreesOfFreedom: number,
  level: number,
): Result<Bounds> => {
  const t = studentQuantile((1 + level) / 2, degreesOfFreedom);
  if (!t.ok) return t;
  const half = t.value * standardError;
  return ok({ lower: centre - half, upper: centre + half });
};
