/** How unevenly counts lie: against counts that fall by chance, and as a negative binomial. */
import { failed, ok, type Result } from "../../record/result.ts";
import { SAMPLES_FOR_A_RANGE } from "../constants.ts";
import { chiSquareProbability } from "./distributions.ts";

/** Counts against those of things that lie by chance, where the variance equals the mean. */
export interface Dispersion {
  readonly mean: number;
  /** Sample variance, with n−1. */
  readonly variance: number;
  /** About 1 by chance, more in clumps. */
  readonly varianceToMean: number;
  readonly chiSquare: number;
  readonly degreesOfFreedom: number;
  /** How often chance alone would give counts this uneven or more. */
  readonly chance: number;
}

const checked = (counts: readonly number[]): Result<number> => {
  const bad = counts.find((count) => !(Number.isSafeInteger(count) && count >= 0));
  if (bad !== undefined) return failed("science/not-a-count", { count: String(bad) });
  const n = counts.length;
  if (n < SAMPLES_FOR_A_RANGE) return failed("science/too-few-holes", { needs: SAMPLES_FOR_A_RANGE, has: n });
  const sum = counts.reduce((total, count) => total + count, 0);
  return sum > 0 ? ok(sum / n) : failed("science/all-empty");
};

const squaresAbout = (counts: readonly number[], mean: number): number =>
  counts.reduce((sum, count) => sum + (count - mean) ** 2, 0);

/**
 * Variance over mean, and the test `X² = (n−1)·s²/m` on n−1 degrees of freedom.
 *
 * @param counts whole numbers, 0 or more, from equal samples, in any order
 * @returns `science/too-few-holes` for fewer than three, `science/all-empty` when all are 0,
 * `science/not-a-count` for a negative, broken or not finite one. All alike give 0 and a chance of 1.
 *
 * Source: Krebs, Ecological Methodology (from memory).
 *
 * @example
 * dispersionOf([2, 9, 0, 5]) // => { value: { mean: 4, chiSquare: 11.5, degreesOfFreedom: 3 } }
 */
export const dispersionOf = (counts: readonly number[]): Result<Dispersion> => {
  const mean = checked(counts);
  if (!mean.ok) return mean;
  const squares = squaresAbout(counts, mean.value);
  const degreesOfFreedom = counts.length - 1;
  const chiSquare = squares / mean.value;
  const below = chiSquareProbability(chiSquare, degreesOfFreedom);
  if (!below.ok) return below;
  const variance = squares / degreesOfFreedom;
  return ok({
    mean: mean.value,
    variance,
    varianceToMean: variance / mean.value,
    chiSquare,
    degreesOfFreedom,
    chance: 1 - below.value,
  });
};

/** No sample holds more; adding up one by one what a broken file claims would hang. */
const MOST_IN_A_SAMPLE = 1e6;

/** Beyond this k the counts cannot be told from counts that fall by chance. */
const LARGEST_K = 1e6;

/**
 * The exponent k of a negative binomial by maximum likelihood, `Var = m + m²/k`: the root of
 * `Σ_j N_j/(k+j−1) = n·ln(1 + m/k)`, N_j being the samples with j or more. A root exists exactly when the
 * variance with n is larger than the mean; it is found by halving on the scale of logs, to 1 part in 10¹².
 *
 * @param counts as `dispersionOf`
 * @returns `science/no-over-dispersion-seen` when the counts lie as evenly as by chance or more so, where k
 * would be without end and no number; `science/no-number` for a count above a million; else reasons as
 * `dispersionOf`
 *
 * Source: Bliss & Fisher 1953, Biometrics 9: 176-200 (from memory); the condition for a root, Levin & Reeds
 * 1977 (from memory).
 *
 * @example
 * const k = negativeBinomialK([2, 9, 0, 5]);
 * k.ok && k.value // => ≈ 1.226
 */
export const negativeBinomialK = (counts: readonly number[]): Result<number> => {
  const checkedMean = checked(counts);
  if (!checkedMean.ok) return checkedMean;
  const mean = checkedMean.value;
  const n = counts.length;
  if (counts.some((count) => count > MOST_IN_A_SAMPLE)) return failed("science/no-number");
  if (squaresAbout(counts, mean) / n <= mean) return failed("science/no-over-dispersion-seen");
  const atLeast: number[] = [];
  for (const count of counts) for (let j = 0; j < count; j++) atLeast[j] = (atLeast[j] ?? 0) + 1;
  // Above 0 below the root, below 0 above it.
  const slope = (k: number): number =>
    atLeast.reduce((sum, samples, j) => sum + samples / (k + j), 0) - n * Math.log1p(mean / k);
  if (slope(LARGEST_K) > 0) return failed("science/no-over-dispersion-seen");
  let low = Math.log(1e-6);
  let high = Math.log(LARGEST_K);
  while (high - low > 1e-12) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (slope(Math.exp(middle)) > 0) low = middle;
    else high = middle;
  }
  return ok(Math.exp((low + high) / 2));
};

/**
 * Share of samples with nothing in them: `(1 + m/k)^(−k)` where things lie in clumps, `exp(−m)` where by chance.
 *
 * @param mean per sample, above 0
 * @param k exponent of the negative binomial, above 0; null for things that lie by chance
 * @returns `science/no-number` unless the mean is above 0 and finite and k, where given, too
 *
 * Source: Krebs, Ecological Methodology (from memory).
 *
 * @example
 * emptyShare(9, 2).value // => ≈ 0.03306
 */
export const emptyShare = (mean: number, k: number | null): Result<number> => {
  const good = [mean, k ?? 1].every((value) => value > 0 && Number.isFinite(value));
  if (!good) return failed("science/no-number");
  // A mean beyond all numbers over k leaves nothing empty.
  return ok(Math.exp(k === null ? -mean : -k * Math.min(Math.log1p(mean / k), Number.MAX_VALUE)));
};
