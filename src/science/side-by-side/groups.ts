/** Two groups that are not paired: several strips of each, or the spots of one strip of each. */
import { ok, type Result } from "../../record/result.ts";
import { ENOUGH_HOLES } from "../constants/cautions.ts";
import { SELDOM } from "../constants/comparison.ts";
import { SAMPLES_FOR_A_RANGE } from "../constants.ts";
import type { Caution } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import { permutationOfTwo, smallestPermutationChance } from "../statistics/permutation.ts";
import { type RankSum, rankSum } from "../statistics/rank-sum.ts";
import { type Sample, sampleOf, sumOf } from "../statistics/sample.ts";
import type { Rearranged } from "../statistics/sign-flip.ts";
import { lopsidedCautions } from "../statistics/student-range.ts";
import { welch } from "../statistics/two-means.ts";
import { type Asked, type PlannedComparison, shownValue, studentParts } from "./comparison.ts";
import { planFor } from "./plan.ts";
import { type Seen, shownOn, workedWith } from "./scale.ts";

/** What one value stands for: a whole strip, or one spot (line, ring) or hole of the only strip of its kind. */
export type GroupedBy = "strips" | "spots" | "holes";

export interface GroupsComparison extends PlannedComparison {
  /** Mean of each group, geometric where ratios are compared. */
  readonly means: { readonly a: number; readonly b: number };
  readonly permutation: Result<Rearranged>;
  readonly rankSum: Result<RankSum>;
}

const numbersOf = (
  values: readonly Seen[],
  scale: Asked["scale"],
): Result<{ readonly numbers: readonly number[]; readonly raised: number }> => {
  const numbers: number[] = [];
  let raised = 0;
  for (const value of values) {
    const worked = workedWith(value, scale);
    if (!worked.ok) return worked;
    numbers.push(worked.value.number);
    raised += Number(worked.value.raised);
  }
  return ok({ numbers, raised });
};

const cautionsOf = (a: number, b: number, raised: number, by: GroupedBy): readonly Caution[] => {
  const cautions: Caution[] = [];
  if (by !== "strips") cautions.push({ code: "science/ground-and-treatment", facts: {} });
  const smallest = smallestPermutationChance(a, b);
  if (by === "strips" && smallest > SELDOM)
    cautions.push({
      code: "science/too-few-strips-for-five-percent",
      facts: { strips: a + b, percent: Number((100 * smallest).toPrecision(2)) },
    });
  if (raised > 0) cautions.push({ code: "science/least-stands-in", facts: { values: raised } });
  const holes = Math.min(a, b);
  if (by === "holes" && holes >= SAMPLES_FOR_A_RANGE && holes < ENOUGH_HOLES)
    cautions.push({ code: "science/few-holes-may-miss-patches", facts: { holes } });
  return cautions;
};

/** Spread within groups; of a single value none is known. */
const pooled = (a: Result<Sample>, b: Result<Sample>): number =>
  a.ok && b.ok ? Math.sqrt((a.value.variance + b.value.variance) / 2) : 0;

/**
 * Two groups by Welch's t, differences for cover, ratios on logs for worms and soaking in.
 *
 * With *strips*, one value per strip, it is a trial without blocks. With *spots* or *holes* it describes two places: the
 * range says how well their means are known, and `science/ground-and-treatment` always stands beside it, because
 * with one strip of each nothing can tell what the ground did from what was done to it. Spots of several strips
 * must not be put together here: `meansOfStrips` makes one value of each strip first.
 *
 * How often a range leaves no difference in where there is none, by simulation of 1500 pairs of groups of 3 to 10
 * (tests/property): the 95 % range 93 to 96 times of 100 and the 80 % range 79 to 83 times with even spreads of 1 and 1
 * or 1 and 3; 93 to 98 times where both are skewed alike, but only 85 to 91 where one is strongly skewed and varies
 * three times as much, unless it has the more values (`science/range-if-lopsided`, with fewer than 30 or where their
 * skewness shows it). Cover of 5 to 95 % from five lines a
 * strip is held 94 to 98 times, and ratios of rings of which one in ten or five meets a burrow on one side only 93 to 96
 * times: rings and worms are compared on logs, which takes most of the skew away.
 *
 * Where nothing was found at some places, the least stands in and the ratio is one of typical places, not of the means
 * (`science/least-stands-in`). With holes of which three in ten on one side lie on patches without worms, a range that
 * has such a hole in it holds the typical ratio 94 to 100 times of 100 from 3 holes a side to 20, but with 9 and 20 worms
 * a hole the ratio of the means 96 to 100 times with 3 to 5, 85 to 92 with 10 and 59 to 77 with 20. Three to five holes
 * that met no such patch do not know of it: over all 65 to 83 times, which is said of fewer than thirty holes
 * (`science/few-holes-may-miss-patches`). `compareCounts`, for holes of one size, holds the ratio of the means.
 *
 * @param a values of one group in any order; first less second, or first over second
 * @param b values of the other
 * @returns no range with fewer than three values in a group (`science/too-few-to-compare`) or when neither varies
 * (`science/no-spread-seen`). `science/nothing-read` when a group is empty, `science/no-ratio-of-nothing`,
 * `science/no-number`
 *
 * Source: Welch 1947, Biometrika 34: 28-35; NIST/SEMATECH e-Handbook, 7.3.1.
 *
 * @example
 * const seen = (values) => values.map((value) => ({ value, least: null }));
 * const asked = { scale: "difference", unit: "1", worthwhile: 0.1, seed: 1 };
 * compareGroups(seen([0.8, 0.7, 0.9]), seen([0.3, 0.4, 0.2]), "spots", asked).value.word // => "clearly-different"
 */
export const compareGroups = (
  a: readonly Seen[],
  b: readonly Seen[],
  by: GroupedBy,
  { scale, unit, worthwhile, seed }: Asked,
): Result<GroupsComparison> => {
  const first = numbersOf(a, scale);
  if (!first.ok) return first;
  const second = numbersOf(b, scale);
  if (!second.ok) return second;
  const [x, y] = [first.value.numbers, second.value.numbers];
  const permutation = permutationOfTwo(x, y, seed);
  if (!permutation.ok) return permutation;
  const [meanX, meanY] = [sumOf(x) / x.length, sumOf(y) / y.length];
  const value = shownValue(scale, meanX - meanY);
  if (!value.ok) return value;
  const test = welch(x, y);
  const smaller = Math.min(x.length, y.length);
  const method: MethodId = scale === "ratio" ? "welch-ratio-t" : "welch-t";
  const methods: MethodId[] = [method, "two-group-permutation", "rank-sum", "words-of-difference"];
  return ok({
    scale,
    value: value.value,
    unit: scale === "ratio" ? "1" : unit,
    ...studentParts(test, smaller, scale, method),
    n: x.length + y.length,
    sampledBy: by,
    cautions: [
      ...cautionsOf(x.length, y.length, first.value.raised + second.value.raised, by),
      ...(scale === "difference" && test.ok && smaller >= SAMPLES_FOR_A_RANGE
        ? lopsidedCautions([x, y])
        : []),
    ],
    methods,
    sources: sourcesOf(methods),
    plan: planFor(
      {
        spread: pooled(sampleOf(x), sampleOf(y)),
        degreesOfFreedom: x.length + y.length - 2,
        // As many on each side as tell as much as what there is.
        n: Math.floor(2 / (1 / x.length + 1 / y.length) + 1e-9),
      },
      worthwhile,
      "two-groups",
      scale,
    ),
    means: { a: shownOn(scale, meanX), b: shownOn(scale, meanY) },
    permutation,
    rankSum: rankSum(x, y),
  });
};
