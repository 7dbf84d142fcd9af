/**
 * The only file that imports the distribution library. Against published tables, 50-digit
 * arithmetic, SciPy and the mathematical library of R it is right to 1 part in 10⁶ for the arguments that are let
 * through here (tests/reference: nist-e-handbook, nmath, scipy).
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
 * Beyond so many degrees of freedom the sum behind chi-square takes seconds, and the law of Wilson and Hilferty (1931:
 * the cube root is nearly normal) is right to 1 part in 10⁷ (tests/reference).
 */
const MANY_DEGREES = 100_000;

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
  if (degreesOfFreedom > MANY_DEGREES) {
    const z = normalQuantile(probability);
    if (!z.ok) return z;
    const ninth = 2 / (9 * degreesOfFreedom);
    return number(degreesOfFreedom * (1 - ninth + z.value * Math.sqrt(ninth)) ** 3);
  }
  return number(jStat.chisquare.inv(probability, degreesOfFreedom));
};

/**
 * The probability that a chi-square number stays below `x`.
 *
 * @param x 0 or more; 0 gives 0, without end gives 1
 * @param degreesOfFreedom 1 or more
 * @returns `science/no-number` when `x` is below 0 or not a number, else as `studentQuantile`
 *
 * Source: NIST/SEMATECH e-Handbook, 1.3.6.7.4.
 *
 * @example
 * const below = chiSquareProbability(11.07, 5);
 * below.ok && below.value // => ≈ 0.95
 */
export const chiSquareProbability = (x: number, degreesOfFreedom: number): Result<number> => {
  if (!(x >= 0)) return failed("science/no-number");
  if (!(degreesOfFreedom >= 1 && Number.isFinite(degreesOfFreedom))) return badFreedom(degreesOfFreedom);
  if (!Number.isFinite(x)) return ok(1);
  if (degreesOfFreedom > MANY_DEGREES) {
    const ninth = 2 / (9 * degreesOfFreedom);
    return normalProbability((Math.cbrt(x / degreesOfFreedom) - 1 + ninth) / Math.sqrt(ninth));
  }
  return number(Math.min(1, Math.max(0, jStat.chisquare.cdf(x, degreesOfFreedom))));
};

/**
 * The probability that a beta-distributed share stays below `x`; tails of binomial counts are such shares.
 *
 * @param x a share; below 0 gives 0, above 1 gives 1
 * @param alpha above 0
 * @param beta above 0
 * @returns reasons as `betaQuantile`
 *
 * @example
 * betaProbability(0.5, 1, 10).value // => ≈ 0.999023
 */
export const betaProbability = (x: number, alpha: number, beta: number): Result<number> => {
  if (Number.isNaN(x) || !(alpha > 0 && beta > 0 && Number.isFinite(alpha + beta)))
    return failed("science/no-number");
  return number(Math.min(1, Math.max(0, jStat.beta.cdf(Math.min(1, Math.max(0, x)), alpha, beta))));
};

/**
 * How often chance alone takes Student's t as far from 0 as `t`, on either side. By the beta function, so that
 * small chances keep their digits.
 *
 * @param degreesOfFreedom 1 or more
 * @returns `science/no-number` when `t` is not finite, `science/no-degrees-of-freedom`
 *
 * @example
 * studentBeyond(2.776, 4).value // => ≈ 0.05
 */
export const studentBeyond = (t: number, degreesOfFreedom: number): Result<number> => {
  if (!Number.isFinite(t)) return failed("science/no-number");
  if (!(degreesOfFreedom >= 1 && Number.isFinite(degreesOfFreedom))) return badFreedom(degreesOfFreedom);
  return betaProbability(degreesOfFreedom / (degreesOfFreedom + t * t), degreesOfFreedom / 2, 0.5);
};

/**
 * How often chance alone takes a standard normal number as far from 0 as `z`, on either side.
 *
 * @returns `science/no-number` when `z` is not a number
 *
 * @example
 * normalBeyond(1.959964).value // => ≈ 0.05
 */
export const normalBeyond = (z: number): Result<number> =>
  Number.isNaN(z)
    ? failed("science/no-number")
    : number(Math.min(1, Math.max(0, 2 * jStat.normal.cdf(-Math.abs(z), 0, 1))));

/**
 * The probability that a standard normal number stays below `z`.
 *
 * @returns `science/no-number` when `z` is not a number
 *
 * @example
 * normalProbability(1.644854).value // => ≈ 0.95
 */
export const normalProbability = (z: number): Result<number> =>
  Number.isNaN(z) ? failed("science/no-number") : number(Math.min(1, Math.max(0, jStat.normal.cdf(z, 0, 1))));

/**
 * How often chance alone gives a ratio of mean squares of `f` or more.
 *
 * @param f 0 or more
 * @param above degrees of freedom above the line, 1 or more
 * @param below degrees of freedom below the line, 1 or more
 * @returns `science/no-number` for a ratio that is negative or not finite, `science/no-degrees-of-freedom`
 *
 * Source: NIST/SEMATECH e-Handbook, 1.3.6.7.3.
 *
 * @example
 * fBeyond(3.259, 4, 12).value // => ≈ 0.05
 */
export const fBeyond = (f: number, above: number, below: number): Result<number> => {
  if (!(f >= 0 && Number.isFinite(f))) return failed("science/no-number");
  for (const freedom of [above, below])
    if (!(freedom >= 1 && Number.isFinite(freedom))) return badFreedom(freedom);
  // The mirrored beta function keeps the digits of small chances.
  return betaProbability(below / (below + above * f), below / 2, above / 2);
};

/**
 * The probability that a noncentral t, which is what t becomes when there is a difference, stays below `x`.
 *
 * @param noncentrality the difference over its standard error; any finite number
 * @returns reasons as `studentProbability`
 *
 * @example
 * noncentralStudentProbability(2.228, 10, 3).value // => ≈ 0.2286
 */
export const noncentralStudentProbability = (
  x: number,
  degreesOfFreedom: number,
  noncentrality: number,
): Result<number> => {
  if (!(Number.isFinite(x) && Number.isFinite(noncentrality))) return failed("science/no-number");
  if (!(degreesOfFreedom >= 1 && Number.isFinite(degreesOfFreedom))) return badFreedom(degreesOfFreedom);
  return number(Math.min(1, Math.max(0, jStat.noncentralt.cdf(x, degreesOfFreedom, noncentrality))));
};
