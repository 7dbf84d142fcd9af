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
