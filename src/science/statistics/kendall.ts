/** Kendall's S: do later values lie higher? Only the order counts, not the size of the steps. */
import { failed, ok, type Result } from "../../record/result.ts";
import { normalBeyond } from "./distributions.ts";
import { midRanks } from "./ranks.ts";

/** One value at one time; time in any unit. */
export interface Timed {
  readonly time: number;
  readonly value: number;
}

export interface KendallSum {
  readonly n: number;
  /** Pairs that rise less pairs that fall; pairs of one time or one value count for neither. */
  readonly s: number;
  readonly variance: number;
  /** `S/(n(n−1)/2)`, also where values are equal (tau a). */
  readonly tau: number;
  /** Sizes of groups of equal values, and of equal times. */
  readonly tiedValues: readonly number[];
  readonly tiedTimes: readonly number[];
}

const sumOver = (ties: readonly number[], term: (t: number) => number): number =>
  ties.reduce((sum, t) => sum + term(t), 0);

const varianceOf = (n: number, values: readonly number[], times: readonly number[]): number => {
  const ends = (t: number): number => t * (t - 1) * (2 * t + 5);
  const threes = (t: number): number => t * (t - 1) * (t - 2);
  const twos = (t: number): number => t * (t - 1);
  const plain = (ends(n) - sumOver(values, ends) - sumOver(times, ends)) / 18;
  if (times.length === 0 || n < 3) return Math.max(0, plain);
  return Math.max(
    0,
    plain +
      (sumOver(values, threes) * sumOver(times, threes)) / (9 * threes(n)) +
      (sumOver(values, twos) * sumOver(times, twos)) / (2 * twos(n)),
  );
};

/**
 * S and its variance when there is no trend, with ties among values and among times.
 *
 * @param points in any order; values that differ by the rounding of a unit alone are equal
 * @returns `science/too-few-samples` for fewer than two, `science/no-number` when one is not finite. All values
 * equal, or all times, give an S and a variance of 0
 *
 * Source: Mann 1945, Kendall 1975 and Gilbert 1987, chapter 16 (from memory).
 *
 * @example
 * kendallSum([10, 15, 14, 20].map((value, time) => ({ time, value }))).value // => { s: 4, n: 4 }
 */
export const kendallSum = (points: readonly Timed[]): Result<KendallSum> => {
  const n = points.length;
  if (n < 2) return failed("science/too-few-samples", { needs: 2, has: n });
  if (!points.every(({ time, value }) => Number.isFinite(time) && Number.isFinite(value)))
    return failed("science/no-number");
  const values = midRanks(points.map(({ value }) => value));
  const times = midRanks(points.map(({ time }) => time));
  let s = 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < i; j++)
      s +=
        Math.sign((times.ranks[i] ?? 0) - (times.ranks[j] ?? 0)) *
        Math.sign((values.ranks[i] ?? 0) - (values.ranks[j] ?? 0));
  return ok({
    n,
    s,
    variance: varianceOf(n, values.ties, times.ties),
    tau: s / ((n * (n - 1)) / 2),
    tiedValues: values.ties,
    tiedTimes: times.ties,
  });
};

/** `(S ∓ 1)/√Var`, 0 when S is; half a step is taken off towards none. */
export const kendallZ = (s: number, variance: number): number =>
  s === 0 || !(variance > 0) ? 0 : (s - Math.sign(s)) / Math.sqrt(variance);

/**
 * Chance of an S this far from 0, by the normal curve.
 *
 * @returns 1 when S is 0 or nothing can vary
 *
 * @example
 * kendallNormal(54, 332.6667).value // => ≈ 0.003663
 */
export const kendallNormal = (s: number, variance: number): Result<number> =>
  normalBeyond(kendallZ(s, variance));

/** Up to so many points the chance is counted over all orders. */
const MOST_EXACT = 10;

/**
 * How many orders of the values give each number of falls, as shares: every value goes into a row of those
 * before it, which makes 0 to n−1 falls alike; equal values among themselves make none.
 */
const fallsOf = ({ n, tiedValues }: KendallSum): readonly number[] => {
  const times = (counts: readonly number[], width: number): number[] =>
    Array.from({ length: counts.length + width - 1 }, (_, sum) => {
      let count = 0;
      for (let at = Math.max(0, sum - width + 1); at <= Math.min(sum, counts.length - 1); at++)
        count += counts[at] ?? 0;
      return count;
    });
  const divided = (counts: readonly number[], width: number): number[] => {
    const quotient: number[] = [];
    for (let sum = 0; sum <= counts.length - width; sum++) {
      let count = counts[sum] ?? 0;
      for (let at = 1; at < width && at <= sum; at++) count -= quotient[sum - at] ?? 0;
      quotient.push(count);
    }
    return quotient;
  };
  let counts: number[] = [1];
  for (let width = 2; width <= n; width++) counts = times(counts, width);
  for (const tied of tiedValues) for (let width = 2; width <= tied; width++) counts = divided(counts, width);
  return counts;
};

/** Chances of every S, from the lowest up in steps of 2. */
export interface SumShares {
  readonly lowest: number;
  readonly shares: readonly number[];
}

/** Chances of every S over all orders; null when times repeat or there are more than ten points. */
export const exactKendall = (sum: KendallSum): SumShares | null => {
  if (sum.n > MOST_EXACT || sum.tiedTimes.length > 0) return null;
  const counts = fallsOf(sum);
  const all = counts.reduce((total, count) => total + count, 0);
  return { lowest: 1 - counts.length, shares: counts.map((count) => count / all) };
};

/** Share of all S that lie at `least` or more, and at −`least` or less. */
const beyond = ({ lowest, shares }: SumShares, least: number): number =>
  shares.reduce((sum, share, at) => (Math.abs(lowest + 2 * at) >= least ? sum + share : sum), 0);

export interface KendallTest extends KendallSum {
  readonly z: number;
  /** On both sides. */
  readonly chance: number;
  /** Counted over all orders; else by the normal curve. */
  readonly exact: boolean;
  /** The smallest chance that so many times can give. */
  readonly smallest: number;
}

/**
 * The smallest two-sided chance with n times: `2/n!`. Four years stay above 5 %, five reach it.
 *
 * @param times whole, 0 or more
 *
 * @example
 * smallestTrendChance(4) // => 0.08333333333333333
 */
export const smallestTrendChance = (times: number): number => {
  let orders = 1;
  for (let k = 2; k <= times && orders < 1e300; k++) orders *= k;
  return Math.min(1, 2 / orders);
};

/**
 * The least number of times whose order can give a chance this small: `2/n! ≤ α`.
 *
 * @param chance above 0, below 1
 * @returns whole, 2 or more; null for a chance that no hundred times reach, or that is none
 *
 * @example
 * fewestTimes(0.05) // => 5
 */
export const fewestTimes = (chance: number): number | null => {
  if (!(chance > 0 && chance < 1)) return null;
  for (let times = 2; times <= 100; times++) if (smallestTrendChance(times) <= chance) return times;
  return null;
};

/**
 * Mann and Kendall's test for a trend: counted over all orders up to ten points with ties among values counted
 * as they are, by the normal curve beyond that or when a time has several values.
 *
 * @param points in any order
 * @returns chance 1 when all values are equal; reasons as `kendallSum`. Fewer than five times can never give less
 * than 5 %
 *
 * Source: Mann 1945; Gilbert 1987, Statistical Methods for Environmental Pollution Monitoring, table A18 (from
 * memory); orders of tied values, MacMahon's count of inversions (from memory).
 *
 * @example
 * mannKendall([10, 15, 14, 20].map((value, time) => ({ time, value }))).value.chance // => ≈ 0.333
 */
export const mannKendall = (points: readonly Timed[]): Result<KendallTest> => {
  const sum = kendallSum(points);
  if (!sum.ok) return sum;
  const { n, s, variance, tiedTimes } = sum.value;
  const counted = exactKendall(sum.value);
  const chance =
    counted === null ? kendallNormal(s, variance) : ok(Math.min(1, beyond(counted, Math.abs(s))));
  if (!chance.ok) return chance;
  const times = n - tiedTimes.reduce((more, tied) => more + tied - 1, 0);
  return ok({
    ...sum.value,
    z: kendallZ(s, variance),
    chance: chance.value,
    exact: counted !== null,
    smallest: smallestTrendChance(times),
  });
};
