/** Mean and spread of a few numbers. */
import { failed, ok, type Result } from "../../record/result.ts";

export interface Sample {
  readonly n: number;
  readonly mean: number;
  /** With n−1; 0 when what is left is only rounding. */
  readonly variance: number;
  readonly standardDeviation: number;
  /** Of the mean. */
  readonly standardError: number;
}

/** What equal numbers differ by once they were turned from other units, as a share of the largest. */
export const ROUNDING = 1e-12;

/** The largest without its sign; 0 for none. */
export const largestOf = (values: readonly number[]): number =>
  values.reduce((largest, value) => Math.max(largest, Math.abs(value)), 0);

/** Sum in a fixed order, so that the last digit does not change with the order of the values. */
export const sumOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b).reduce((sum, value) => sum + value, 0);

/**
 * Mean and variance of numbers in any order.
 *
 * @param values finite numbers in one unit; negative ones and zeros count like others
 * @returns `science/too-few-samples` for fewer than two, `science/no-number` when one is not finite or they are
 * too large to be squared. All equal give a variance of 0
 *
 * Source: NIST/SEMATECH e-Handbook, 1.3.5.6.
 *
 * @example
 * sampleOf([5, 7, 6, 8]).value // => { n: 4, mean: 6.5 }
 */
export const sampleOf = (values: readonly number[]): Result<Sample> => {
  const n = values.length;
  if (n < 2) return failed("science/too-few-samples", { needs: 2, has: n });
  const mean = sumOf(values) / n;
  const squares = sumOf(values.map((value) => (value - mean) ** 2));
  if (!(Number.isFinite(mean) && Number.isFinite(squares))) return failed("science/no-number");
  const spread = Math.sqrt(squares / (n - 1));
  const standardDeviation = spread <= ROUNDING * largestOf(values) ? 0 : spread;
  return ok({
    n,
    mean,
    variance: standardDeviation ** 2,
    standardDeviation,
    standardError: standardDeviation / Math.sqrt(n),
  });
};

/**
 * Skewness of numbers, `g_1 = m_3 / m_2^{3/2}` with moments about the mean: 0 when they spread evenly to both sides,
 * above 0 when a few are far larger than the rest.
 *
 * @param values in any order
 * @returns 0 when they do not vary; reasons as `sampleOf`
 *
 * Source: Fisher and Pearson's coefficient, NIST/SEMATECH e-Handbook, 1.3.5.11.
 *
 * @example
 * skewnessOf([0, 0, 0, 4]).value // => ≈ 1.1547
 */
export const skewnessOf = (values: readonly number[]): Result<number> => {
  const sample = sampleOf(values);
  if (!sample.ok) return sample;
  const { n, mean, standardDeviation } = sample.value;
  if (standardDeviation === 0) return ok(0);
  // In standard deviations, so that no cube is too large to be a number.
  const cubes = sumOf(values.map((value) => ((value - mean) / standardDeviation) ** 3));
  return ok(cubes / n / ((n - 1) / n) ** 1.5);
};
