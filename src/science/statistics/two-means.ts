/** Two means against each other, and the mean of differences against none. */
import { failed, ok, type Result } from "../../record/result.ts";
import { studentBeyond } from "./distributions.ts";
import { ROUNDING, sampleOf } from "./sample.ts";

/** A difference with what is needed to make a range of it. */
export interface StudentTest {
  /** First less second, or the mean of the differences. */
  readonly difference: number;
  readonly standardError: number;
  readonly degreesOfFreedom: number;
  readonly t: number;
  /** How often chance alone gives a difference this far from none, on either side. */
  readonly chance: number;
}

const tested = (difference: number, standardError: number, degreesOfFreedom: number): Result<StudentTest> => {
  // A t beyond every number stands for a spread that is none.
  const t = difference / standardError;
  if (!Number.isFinite(t)) return failed("science/no-spread-seen");
  const chance = studentBeyond(t, degreesOfFreedom);
  return chance.ok ? ok({ difference, standardError, degreesOfFreedom, t, chance: chance.value }) : chance;
};

/**
 * Two means whose spreads may differ: `SE² = s_a²/n_a + s_b²/n_b`, with Welch's degrees of freedom.
 *
 * @param a values of one group, in any order and one unit
 * @param b values of the other
 * @returns `science/too-few-samples` for fewer than two in either, `science/no-spread-seen` when neither group
 * varies, `science/no-number` when a value is not finite
 *
 * Source: Welch 1947, Biometrika 34: 28-35; NIST/SEMATECH e-Handbook, 7.3.1.
 *
 * @example
 * welch([4, 6, 8], [1, 3, 5]).value // => { difference: 3, degreesOfFreedom: 4 }
 */
export const welch = (a: readonly number[], b: readonly number[]): Result<StudentTest> => {
  const first = sampleOf(a);
  if (!first.ok) return first;
  const second = sampleOf(b);
  if (!second.ok) return second;
  const [ofA, ofB] = [first.value.standardError ** 2, second.value.standardError ** 2];
  const freedom = (ofA + ofB) ** 2 / (ofA ** 2 / (a.length - 1) + ofB ** 2 / (b.length - 1));
  if (!(ofA + ofB > 0)) return failed("science/no-spread-seen");
  if (!Number.isFinite(freedom)) return failed("science/no-number");
  return tested(first.value.mean - second.value.mean, Math.sqrt(ofA + ofB), freedom);
};

/**
 * The mean of differences within pairs against no difference: `t = d̄/(s_d/√n)` on n−1.
 *
 * @param differences one per pair, in any order and one unit
 * @param scale the size of what was subtracted; differences whose spread is only the rounding of such numbers
 * do not vary. The differences themselves unless given
 * @returns reasons as `welch`
 *
 * Source: NIST/SEMATECH e-Handbook, 7.3.1.1.
 *
 * @example
 * pairedStudent([4, -3, 8]).value // => { difference: 3, degreesOfFreedom: 2 }
 */
export const pairedStudent = (differences: readonly number[], scale = 0): Result<StudentTest> => {
  const sample = sampleOf(differences);
  if (!sample.ok) return sample;
  const { n, mean, standardDeviation, standardError } = sample.value;
  if (standardDeviation <= ROUNDING * scale) return failed("science/no-spread-seen");
  return tested(mean, standardError, n - 1);
};
