/** Wilcoxon's signed ranks: differences by their order of size alone. */
import { failed, ok, type Result } from "../../record/result.ts";
import { normalBeyond } from "./distributions.ts";
import { medianOf } from "./quantile.ts";
import { midRanks, sumsOfAnyRanks } from "./ranks.ts";
import { largestOf, ROUNDING, sumOf } from "./sample.ts";

/** Up to so many differences the chance is counted out; beyond, the normal curve is as good. */
const MOST_EXACT = 50;

export interface SignedRank {
  /** Sum of the ranks of the positive differences. */
  readonly positive: number;
  readonly negative: number;
  /** Differences that are not zero; zeros say nothing of a side and leave. */
  readonly used: number;
  /** Middle of the means of all two (Hodges & Lehmann), zeros included. */
  readonly middle: number;
  /** On both sides. */
  readonly chance: number;
  /** The smallest chance that so many differences can give. */
  readonly smallest: number;
  readonly exact: boolean;
}

interface Signed {
  readonly ranks: readonly number[];
  readonly ties: readonly number[];
  readonly positive: number;
}

const signed = (differences: readonly number[]): Result<Signed> => {
  if (!differences.every(Number.isFinite)) return failed("science/no-number");
  const none = ROUNDING * largestOf(differences);
  const used = differences.filter((difference) => Math.abs(difference) > none);
  if (used.length === 0)
    return failed(differences.length === 0 ? "science/nothing-read" : "science/no-spread-seen");
  const { ranks, ties } = midRanks(used.map(Math.abs));
  return ok({
    ranks,
    ties,
    positive: sumOf(ranks.filter((_, at) => (used[at] ?? 0) > 0)),
  });
};

/**
 * Chance of signed ranks from the normal curve, with half a rank taken off and the variance of the ranks as
 * they are, ties and all: `z = (|W − Σr/2| − 1/2) / √(Σr²/4)`.
 *
 * @param differences as `signedRank`
 * @returns the chance on both sides; reasons as `signedRank`
 *
 * Source: Hollander & Wolfe 1973 (from memory); it is what general programs print when there are ties.
 *
 * @example
 * normalSignedRank([3, 1, 4, -2, 5, 6]).value // => ≈ 0.0935
 */
export const normalSignedRank = (differences: readonly number[]): Result<number> => {
  const found = signed(differences);
  if (!found.ok) return found;
  const { ranks, positive } = found.value;
  const off = Math.abs(positive - sumOf(ranks) / 2);
  return normalBeyond(Math.max(0, off - 0.5) / Math.sqrt(sumOf(ranks.map((rank) => rank ** 2)) / 4));
};

/**
 * Signed ranks of differences within pairs. Zeros leave, equal sizes share their middle rank, and the chance is
 * counted over all patterns of signs of the ranks in hand up to 50 differences; the printed tables for ranks
 * without ties are not used.
 *
 * @param differences one per pair, in any order and one unit
 * @returns `science/nothing-read` for none, `science/no-spread-seen` when all are zero, `science/no-number` when
 * one is not finite. Fewer than six differences can never give less than 5 %
 *
 * Source: Wilcoxon 1945, Biometrics Bull. 1: 80-83; Hodges & Lehmann 1963 (from memory).
 *
 * @example
 * signedRank([3, 1, 4, -2, 5, 6]).value // => { positive: 19, negative: 2, chance: 0.09375, exact: true }
 */
export const signedRank = (differences: readonly number[]): Result<SignedRank> => {
  const found = signed(differences);
  if (!found.ok) return found;
  const { ranks, positive } = found.value;
  const used = ranks.length;
  const all = (used * (used + 1)) / 2;
  const middle = medianOf(
    differences.flatMap((one, at) => differences.slice(at).map((other) => (one + other) / 2)),
  );
  if (!middle.ok) return middle;
  const exact = used <= MOST_EXACT;
  const chances = exact ? sumsOfAnyRanks(ranks) : null;
  const chance =
    chances === null
      ? normalSignedRank(differences)
      : ok(Math.min(1, 2 * Math.min(chances.atMost(positive), chances.atLeast(positive))));
  if (!chance.ok) return chance;
  return ok({
    positive,
    negative: all - positive,
    used,
    middle: middle.value,
    chance: chance.value,
    smallest: Math.min(1, 2 ** (1 - used)),
    exact,
  });
};
