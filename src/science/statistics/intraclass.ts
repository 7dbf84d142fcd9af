/** How alike samples of one place are, and for how many independent ones they count. */
import { failed, ok, type Result } from "../../record/result.ts";
import { largestOf, ROUNDING, sumOf } from "./sample.ts";

export interface Intraclass {
  /** Mean squares between and within groups. */
  readonly between: number;
  readonly within: number;
  /** Samples of one group, on the average that the formulas want. */
  readonly perGroup: number;
  /** Correlation of two samples of one group; below 0 when groups differ less than chance would have it. */
  readonly correlation: number;
  /** How many times the variance of the mean is that of independent samples. */
  readonly designEffect: number;
  /** Independent samples that all of these are worth; never more than there are. */
  readonly worth: number;
}

/**
 * `ICC = (MSB − MSW)/(MSB + (m−1)·MSW)`, `deff = 1 + (m−1)·ICC`, `n_eff = n/deff`. With groups of unlike size
 * `m = (N − Σm_i²/N)/(g−1)`.
 *
 * @param groups samples per group, in one unit; empty groups leave
 * @returns `science/too-few-samples` unless two groups hold three samples together, one of them at least two;
 * `science/no-spread-seen` when all samples are equal; `science/no-number` when one is not finite
 *
 * Source: Lohr 1999, Sampling: Design and Analysis, chapter 5.
 *
 * @example
 * intraclass([[12, 13, 11], [9, 8, 10], [15, 14, 16]]).value.correlation // => ≈ 0.896552
 */
export const intraclass = (groups: readonly (readonly number[])[]): Result<Intraclass> => {
  const filled = groups.filter((group) => group.length > 0);
  const values = filled.flat();
  const n = values.length;
  if (filled.length < 2 || n <= filled.length) return failed("science/too-few-samples", { needs: 3, has: n });
  if (!values.every(Number.isFinite)) return failed("science/no-number");
  const mean = sumOf(values) / n;
  const means = filled.map((group) => sumOf(group) / group.length);
  const between =
    sumOf(filled.map((group, at) => group.length * ((means[at] ?? mean) - mean) ** 2)) / (filled.length - 1);
  const within =
    sumOf(filled.flatMap((group, at) => group.map((value) => (value - (means[at] ?? mean)) ** 2))) /
    (n - filled.length);
  if (!Number.isFinite(between + within)) return failed("science/no-number");
  const perGroup = (n - sumOf(filled.map((group) => group.length ** 2)) / n) / (filled.length - 1);
  const spread = between + (perGroup - 1) * within;
  if (!(spread > (10 * ROUNDING * largestOf(values)) ** 2)) return failed("science/no-spread-seen");
  const correlation = (between - within) / spread;
  const designEffect = 1 + (perGroup - 1) * correlation;
  return ok({
    between,
    within,
    perGroup,
    correlation,
    designEffect,
    worth: designEffect > 1 ? n / designEffect : n,
  });
};
