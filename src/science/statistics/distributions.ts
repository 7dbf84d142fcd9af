/**
 * The only file that imports the distribution library. Against published tables and against 50-digit
 * arithmetic it is right to 1 part in 10⁶ for the arguments that are let through here (tests/reference).
 */
import jStat from "jstat";
import { failed, ok, type Result } from "../../record/result.ts";

const isProbability = (value: number): boolean => value > 0 && value < 1;

const number = (value: number): Result<number> =>
  Number.isFinite(value) ? ok(value) : failed("science/no-number");

const badProbability = (probability: number): Result<number> =>
  failed("science/not-a-probability", { probability: String(probability) });

const badFreedom = (degreesOfFreedom: number): Result<number> =>
  failed("science/no-degrees-of-freedom", { degreesOfFreedom: String(degreesOfFreedom) });

/**
 * The value that Student's t stays below with a given probability.
 *
 * @param probability above 0 and below 1
 * @param degreesOfFreedom 1 or more
 * @returns `science/not-a-probability` or `science/no-degrees-of-freedom` outside of that
 *
 * Source: NIST/SEMATECH e-Handbook, 1.3.6.7.2.
 *
 * @example
 * studentQuantile(0.975, 2); // 4.303
 */
export const studentQuantile = (probability: number, degreesOfFreedom: number): Result<number> => {
  if (!isProbability(probability)) return badProbability(probability);
  if (!(degreesOfFreedom >= 1 && Number.isFinite(degreesOfFreedom))) return badFreedom(degreesOfFreedom);
  if (probability === 0.5) return ok(0);
  return number(jStat.studentt.inv(probability, degreesOfFreedom));
};

/**
 * The probability that Student's t stays below `x`.
 *
 * @param x any number; minus and plus infinity give 0 and 1
 * @param degreesOfFreedom 1 or more
 * @returns `science/no-number` when `x` is not a number
 *
 * @example
 * studentProbability(4.303, 2); // 0.975
 */
export const studentProbability = (x: number, degreesOfFreedom: number): Result<number> => {
  if (Number.isNaN(x)) return failed("science/no-number");
  if (!(degreesOfFreedom >= 1 && Number.isFinite(degreesOfFreedom))) return badFreedom(degreesOfFreedom);
  if (!Number.isFinite(x)) return ok(x > 0 ? 1 : 0);
  if (x === 0) return ok(0.5);
  // The library loses half its digits close to 0 and 1; the bounds keep a probability a probability.
  return number(Math.min(1, Math.max(0, jStat.studentt.cdf(x, degreesOfFreedom))));
};

/**
 * The value that a standard normal number stays below with a given probability.
 *
 * @returns `science/not-a-probability` unless the probability lies above 0 and below 1
 *
 * @example
 * normalQuantile(0.975); // 1.95996
 */
export const normalQuantile = (probability: number): Result<number> =>
  isProbability(probability) ? number(jStat.normal.inv(probability, 0, 1)) : badProbability(probability);

/**
 * The value that a beta-distributed share stays below with a given probability.
 *
 * @param alpha above 0
 * @param beta above 0
 * @returns `science/no-number` unless both shapes are above 0 and finite
 *
 * @example
 * betaQuantile(0.95, 1, 10); // 0.2589, the exact bound for none of ten
 */
export const betaQuantile = (probability: number, alpha: number, beta: number): Result<number> => {
  if (!isProbability(probability)) return badProbability(probability);
  if (!(alpha > 0 && beta > 0 && Number.isFinite(alpha + beta))) return failed("science/no-number");
  return number(jStat.beta.inv(probability, alpha, beta));
};

/**
 * The value that a chi-square number stays below with a given probability: how far a spread seen may lie
 * from the true one.
 *
 * @param degreesOfFreedom 1 or more
 * @returns as `studentQuantile`
 *
 * @example
 * chiSquareQuantile(0.95, 5); // 11.070
 */
export const chiSquareQuantile = (probability: number, degreesOfFreedom: number): Result<number> => {
  if (!isProbability(probability)) return badProbability(probability);
  if (!(degreesOfFreedom >= 1 && Number.isFinite(degreesOfFreedom))) return badFreedom(degreesOfFreedom);
  return number(jStat.chisquare.inv(probability, degreesOfFreedom));
};
