/** Wilcoxon's rank sum, also known by Mann and Whitney: two groups by the order of their values alone. */
import { failed, ok, type Result } from "../../record/result.ts";
import { normalBeyond } from "./distributions.ts";
import { smallestPermutationChance } from "./permutation.ts";
import { midRanks, type Ranked, sumsOfChosenRanks } from "./ranks.ts";
import { sumOf } from "./sample.ts";

/** Up to so many values in both groups the chance is counted out. */
const MOST_EXACT = 50;

export interface RankSum {
  /** How many of all pairs across the groups the first group wins, draws counting half (U). */
  readonly wins: number;
  /** The same as a share: 0.5 is even. */
  readonly winShare: number;
  /** On both sides. */
  readonly chance: number;
  readonly smallest: number;
  readonly exact: boolean;
}

const ranked = (a: readonly number[], b: readonly number[]): Result<Ranked & { readonly wins: number }> => {
  if (a.length === 0 || b.length === 0) return failed("science/nothing-read");
  const values = [...a, ...b];
  if (!values.every(Number.isFinite)) return failed("science/no-number");
  const { ranks, ties } = midRanks(values);
  return ok({ ranks, ties, wins: sumOf(ranks.slice(0, a.length)) - (a.length * (a.length + 1)) / 2 });
};

/**
 * Chance of a rank sum from the normal curve, with half a rank taken off and the variance for ties:
 * `z = (|U − ab/2| − 1/2) / √(ab/12·((N+1) − Σ(t³−t)/(N(N−1))))`.
 *
 * @returns the chance on both sides; 1 when all values are equal; reasons as `rankSum`
 *
 * Source: Hollander & Wolfe 1973 (from memory); it is what general programs print when there are ties.
 *
 * @example
 * normalRankSum([1, 2, 2, 3], [3, 4, 5, 5]).value // => ≈ 0.0396
 */
export const normalRankSum = (a: readonly number[], b: readonly number[]): Result<number> => {
  const found = ranked(a, b);
  if (!found.ok) return found;
  const all = a.length + b.length;
  const tied = found.value.ties.reduce((sum, ties) => sum + ties ** 3 - ties, 0);
  const variance = ((a.length * b.length) / 12) * (all + 1 - tied / (all * (all - 1)));
  // One group of equal values has no order that chance could change.
  if (!(variance > 1e-9)) return ok(1);
  const off = Math.abs(found.value.wins - (a.length * b.length) / 2);
  return normalBeyond(Math.max(0, off - 0.5) / Math.sqrt(variance));
};

/**
 * Rank sum of two groups. Equal values share their middle rank; the chance is counted over all ways of dealing
 * out the ranks in hand up to 50 values.
 *
 * @param a values of one group, in any order and one unit
 * @param b values of the other
 * @returns `science/nothing-read` when a group is empty, `science/no-number` when a value is not finite. All
 * equal give 1; 3 against 3 can never give less than 10 %
 *
 * Source: Wilcoxon 1945, Biometrics Bull. 1: 80-83; Mann & Whitney 1947 (from memory).
 *
 * @example
 * rankSum([4, 5, 6], [1, 2, 3]).value // => { wins: 9, winShare: 1, chance: 0.1, smallest: 0.1, exact: true }
 */
export const rankSum = (a: readonly number[], b: readonly number[]): Result<RankSum> => {
  const found = ranked(a, b);
  if (!found.ok) return found;
  const { ranks, wins } = found.value;
  const exact = ranks.length <= MOST_EXACT;
  const sum = wins + (a.length * (a.length + 1)) / 2;
  const chances = exact ? sumsOfChosenRanks(ranks, a.length) : null;
  const chance =
    chances === null
      ? normalRankSum(a, b)
      : ok(Math.min(1, 2 * Math.min(chances.atMost(sum), chances.atLeast(sum))));
  if (!chance.ok) return chance;
  return ok({
    wins,
    winShare: wins / (a.length * b.length),
    chance: chance.value,
    smallest: smallestPermutationChance(a.length, b.length),
    exact,
  });
};
