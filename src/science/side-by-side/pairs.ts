/** Pairs of strips laid side by side, and one pair on each of several farms. */
import { failed, ok, type Result } from "../../record/result.ts";
import { SELDOM } from "../constants/comparison.ts";
import { SAMPLES_FOR_A_RANGE } from "../constants.ts";
import type { Caution } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import { largestOf, sampleOf, sumOf } from "../statistics/sample.ts";
import { type Rearranged, signFlip, smallestSignFlipChance } from "../statistics/sign-flip.ts";
import { type SignedRank, signedRank } from "../statistics/signed-rank.ts";
import { lopsidedCautions } from "../statistics/student-range.ts";
import { pairedStudent } from "../statistics/two-means.ts";
import { type Asked, type PlannedComparison, shownValue, studentParts } from "./comparison.ts";
import { planFor } from "./plan.ts";
import { type Seen, shownOn, workedWith } from "./scale.ts";

/**
 * What a pair is: two strips of one block, two strips of one farm, or two spots on both sides of one visible
 * edge. Spots along an edge are samples of one pair of strips, and speak of these two places only.
 */
export type PairedBy = "blocks" | "farms" | "edge-spots";

/** One pair, each side as one number: the mean of its lines, holes or rings. */
export interface Pair {
  /** The block, the farm or the place along the edge. */
  readonly label: string;
  readonly a: Seen;
  readonly b: Seen;
}

export interface PairsComparison extends PlannedComparison {
  /** Every pair as a point, on the scale shown. */
  readonly each: readonly { readonly label: string; readonly value: number }[];
  readonly signFlip: Result<Rearranged>;
  readonly signedRank: Result<SignedRank>;
}

/** Differences as they are worked with; pairs of one label as their mean, so that the label is the unit. */
const differencesOf = (
  pairs: readonly Pair[],
  scale: Asked["scale"],
): Result<{
  readonly each: ReadonlyMap<string, readonly number[]>;
  readonly raised: number;
  readonly size: number;
}> => {
  const each = new Map<string, number[]>();
  let raised = 0;
  const numbers: number[] = [];
  for (const { label, a, b } of pairs) {
    const first = workedWith(a, scale);
    if (!first.ok) return first;
    const second = workedWith(b, scale);
    if (!second.ok) return second;
    raised += Number(first.value.raised) + Number(second.value.raised);
    numbers.push(first.value.number, second.value.number);
    const difference = first.value.number - second.value.number;
    each.set(label, [...(each.get(label) ?? []), difference]);
  }
  return ok({ each, raised, size: largestOf(numbers) });
};

const cautionsOf = (pairs: number, averaged: number, raised: number, by: PairedBy): readonly Caution[] => {
  const cautions: Caution[] = [];
  if (by === "edge-spots") cautions.push({ code: "science/ground-and-treatment", facts: {} });
  const smallest = smallestSignFlipChance(pairs);
  if (smallest > SELDOM)
    cautions.push({
      code: "science/too-few-pairs-for-five-percent",
      facts: { pairs, percent: Number((100 * smallest).toPrecision(2)) },
    });
  if (averaged > 0)
    cautions.push({ code: "science/pairs-of-one-place-averaged", facts: { places: averaged } });
  if (raised > 0) cautions.push({ code: "science/least-stands-in", facts: { values: raised } });
  return cautions;
};

/**
 * Pairs set against each other: differences for cover, ratios on logs for worms and soaking in. The range comes
 * from Student's t over the pairs; flipping signs, which assumes no shape, stands beside it with the smallest
 * chance that so many pairs can give. Several pairs of one label count as one, their mean: a farm with three
 * pairs is still one farm.
 *
 * Simulated with differences that spread evenly around none, the 95 % range leaves none out 5 times of 100 with
 * 3 to 10 pairs; with cover of 5 to 95 % from five lines a strip and blocks that differ, it holds the true difference
 * 93 to 96 times, and with ratios of rings of which one in ten or five meets a burrow 94 to 97 times. Where the
 * differences are strongly skewed on the scale used (lognormal, spread of logs 0.8) it misses 10 to 14 times, and no
 * number of pairs below 30 mends that: hence the logs for worms and soaking in, and a caution with differences
 * (`science/range-if-lopsided`), from 30 pairs on where their skewness shows it.
 *
 * @param pairs in any order; first less second, or first over second
 * @returns no range with fewer than three pairs (`science/too-few-to-compare`) or when all differ by the same
 * (`science/no-spread-seen`), and then the word is *cannot tell yet*. `science/nothing-read` for no pair,
 * `science/no-ratio-of-nothing`, `science/no-number`
 *
 * Source: NIST/SEMATECH e-Handbook, 7.3.1.1; Fisher 1935, section 21; one pair per farm, Hildebrand 1984, Agron.
 * J. 76: 271-274.
 *
 * @example
 * const sides = [[12, 8], [9, 12], [15, 7]].map(([a, b], at) => ({
 *   label: `block ${at}`, a: { value: a, least: null }, b: { value: b, least: null } }));
 * const asked = { scale: "difference", unit: "/{hole}", worthwhile: 3, seed: 1 };
 * comparePairs(sides, "blocks", asked).value // => { value: 3, n: 3, word: "cannot-tell-yet" }
 */
export const comparePairs = (
  pairs: readonly Pair[],
  by: PairedBy,
  { scale, unit, worthwhile, seed }: Asked,
): Result<PairsComparison> => {
  const worked = differencesOf(pairs, scale);
  if (!worked.ok) return worked;
  const { each: byLabel, raised, size } = worked.value;
  const points = [...byLabel].map(([label, some]) => ({ label, number: sumOf(some) / some.length }));
  const n = points.length;
  if (n === 0) return failed("science/nothing-read");
  const differences = points.map(({ number }) => number);
  const value = shownValue(scale, sumOf(differences) / n);
  if (!value.ok) return value;
  const each = points.map(({ label, number }) => ({ label, value: shownOn(scale, number) }));
  if (!each.every((point) => Number.isFinite(point.value))) return failed("science/no-number");
  const test = pairedStudent(differences, size);
  const method: MethodId = scale === "ratio" ? "paired-ratios-t" : "paired-t";
  const methods: MethodId[] = [method, "sign-flip", "signed-rank", "words-of-difference"];
  const spread = sampleOf(differences);
  return ok({
    scale,
    value: value.value,
    unit: scale === "ratio" ? "1" : unit,
    ...studentParts(test, n, scale, method),
    n,
    sampledBy: by === "edge-spots" ? "spots" : by === "farms" ? "farms" : "pairs",
    cautions: [
      ...cautionsOf(n, [...byLabel.values()].filter((some) => some.length > 1).length, raised, by),
      ...(scale === "difference" && test.ok && n >= SAMPLES_FOR_A_RANGE
        ? lopsidedCautions([differences])
        : []),
    ],
    methods,
    sources: sourcesOf(methods),
    plan: planFor(
      { spread: test.ok && spread.ok ? spread.value.standardDeviation : 0, degreesOfFreedom: n - 1, n },
      worthwhile,
      "pairs",
      scale,
    ),
    each,
    signFlip: signFlip(differences, seed),
    signedRank: signedRank(differences),
  });
};
