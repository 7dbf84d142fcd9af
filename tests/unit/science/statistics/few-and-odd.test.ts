/** What the small statistics return for nothing, one value, all equal, zero, not finite and far too large. */
import { describe, expect, it } from "vitest";
import { blockedTable } from "../../../../src/science/statistics/blocks.ts";
import { bcaRange, percentileRange, resample } from "../../../../src/science/statistics/bootstrap.ts";
import {
  betaProbability,
  fBeyond,
  noncentralStudentProbability,
  normalBeyond,
  normalProbability,
  studentBeyond,
} from "../../../../src/science/statistics/distributions.ts";
import { intraclass } from "../../../../src/science/statistics/intraclass.ts";
import { kendallNormal, kendallSum, mannKendall } from "../../../../src/science/statistics/kendall.ts";
import { chanceByWholeYears, kendallOfGroups } from "../../../../src/science/statistics/kendall-groups.ts";
import { permutationOfTwo, waysToChoose } from "../../../../src/science/statistics/permutation.ts";
import { powerOf, samplesNeeded, smallestVisible } from "../../../../src/science/statistics/power.ts";
import { medianOf, quantileOf } from "../../../../src/science/statistics/quantile.ts";
import { normalRankSum, rankSum } from "../../../../src/science/statistics/rank-sum.ts";
import {
  BY_CHANCE,
  rateRatioChance,
  rateRatioRange,
  unevennessOf,
} from "../../../../src/science/statistics/rate-ratio.ts";
import { sampleOf } from "../../../../src/science/statistics/sample.ts";
import { seeded } from "../../../../src/science/statistics/seeded.ts";
import { signFlip } from "../../../../src/science/statistics/sign-flip.ts";
import { normalSignedRank, signedRank } from "../../../../src/science/statistics/signed-rank.ts";
import { gilbertRange, theilSen } from "../../../../src/science/statistics/theil-sen.ts";
import { pairedStudent, welch } from "../../../../src/science/statistics/two-means.ts";
import { reached, reasonOf } from "../counts.ts";

const NAN = Number.NaN;
const ENDLESS = Number.POSITIVE_INFINITY;
const WANTED = { design: "pairs", level: 0.95, power: 0.8 } as const;
const timed = (values: readonly number[]) => values.map((value, time) => ({ time, value }));
const meanOf = ([only]: readonly Float64Array[]): number =>
  (only ?? new Float64Array(1)).reduce((sum, value) => sum + value, 0) / (only?.length ?? 1);
const DRAWN = { draws: 500, seed: 1 };

describe("reasons instead of numbers that are none", () => {
  it.each([
    ["nothing has no sample", sampleOf([]), "science/too-few-samples"],
    ["one value has no spread", sampleOf([3]), "science/too-few-samples"],
    ["not a number", sampleOf([1, NAN]), "science/no-number"],
    ["too large to be squared", sampleOf([1e300, -1e300]), "science/no-number"],
    ["no median of nothing", medianOf([]), "science/nothing-read"],
    ["no median of the endless", medianOf([1, ENDLESS]), "science/no-number"],
    ["no share", quantileOf([1], 1.2), "science/not-a-probability"],
    ["Welch with one", welch([1], [1, 2]), "science/too-few-samples"],
    ["Welch with equal values", welch([2, 2, 2], [5, 5]), "science/no-spread-seen"],
    ["pairs that all differ by the same", pairedStudent([2, 2, 2]), "science/no-spread-seen"],
    [
      "pairs whose spread is rounding",
      pairedStudent([0.3 - 0.1, 0.5 - 0.3, 0.2], 0.5),
      "science/no-spread-seen",
    ],
    ["no signs", signFlip([], 1), "science/nothing-read"],
    ["endless difference", signFlip([1, ENDLESS], 1), "science/no-number"],
    ["an empty group", permutationOfTwo([], [1], 1), "science/nothing-read"],
    ["a group that is no number", permutationOfTwo([NAN], [1], 1), "science/no-number"],
    ["no ranks", signedRank([]), "science/nothing-read"],
    ["only zeros", signedRank([0, 0]), "science/no-spread-seen"],
    ["only zeros on the curve", normalSignedRank([0, 0]), "science/no-spread-seen"],
    ["no rank of nothing", rankSum([], [1]), "science/nothing-read"],
    ["no rank of no number", rankSum([NAN], [1]), "science/no-number"],
    ["one group of spots", intraclass([[1, 2, 3]]), "science/too-few-samples"],
    ["one spot each", intraclass([[1], [2]]), "science/too-few-samples"],
    [
      "equal spots",
      intraclass([
        [4, 4],
        [4, 4],
      ]),
      "science/no-spread-seen",
    ],
    ["one treatment", blockedTable([[1, 2]]), "science/too-few-treatments"],
    ["one block", blockedTable([[1], [2]]), "science/too-few-blocks"],
    ["a block missed", blockedTable([[1, 2], [2]]), "science/blocks-not-complete"],
    [
      "nothing left over",
      blockedTable([
        [1, 2],
        [2, 3],
      ]),
      "science/no-spread-seen",
    ],
    [
      "half a worm",
      rateRatioRange({ count: 0.5, effort: 1 }, { count: 1, effort: 1 }, BY_CHANCE, 0.95),
      "science/not-a-count",
    ],
    [
      "no holes",
      rateRatioChance({ count: 1, effort: 0 }, { count: 1, effort: 1 }, BY_CHANCE),
      "science/no-number",
    ],
    [
      "nothing anywhere",
      rateRatioChance({ count: 0, effort: 1 }, { count: 0, effort: 1 }, BY_CHANCE),
      "science/nothing-in-either",
    ],
    ["a negative count", unevennessOf([[-1, 2]]), "science/not-a-count"],
    ["two samples have no power", powerOf(1, 1, 2, WANTED), "science/too-few-samples"],
    ["no spread, no power", powerOf(1, 0, 5, WANTED), "science/no-spread-seen"],
    ["no number, no power", powerOf(NAN, 1, 5, WANTED), "science/no-number"],
    ["no difference to look for", samplesNeeded(0, 1, WANTED), "science/no-worthwhile-difference"],
    ["a difference too small", samplesNeeded(0.01, 1, WANTED), "science/too-many-samples"],
    ["half a sample", smallestVisible(1, 2.5, WANTED), "science/too-few-samples"],
    ["one year", mannKendall(timed([1])), "science/too-few-samples"],
    [
      "a year that is none",
      kendallSum([
        { time: NAN, value: 1 },
        { time: 2, value: 1 },
      ]),
      "science/no-number",
    ],
    [
      "one time only",
      theilSen([
        { time: 1, value: 1 },
        { time: 1, value: 2 },
      ]),
      "science/one-time-only",
    ],
    [
      "four years at 95 %",
      gilbertRange(Float64Array.from([1, 1, 1, 1, 1, 1]), 26 / 3, 0.95),
      "science/too-few-times-for-a-range",
    ],
    ["no variance", gilbertRange(Float64Array.from([1]), 0, 0.95), "science/no-number"],
    ["no series", kendallOfGroups([]), "science/too-few-samples"],
    ["series of one", kendallOfGroups([timed([1])]), "science/too-few-samples"],
    [
      "a year twice",
      chanceByWholeYears(
        [
          [
            { time: 1, value: 1 },
            { time: 1, value: 2 },
          ],
        ],
        1,
      ),
      "science/time-repeated",
    ],
    ["years of one", chanceByWholeYears([timed([1])], 1), "science/one-time-only"],
    ["no groups to draw from", resample([], meanOf, DRAWN), "science/too-few-samples"],
    ["one value to draw from", resample([[1]], meanOf, DRAWN), "science/too-few-samples"],
    ["too few draws", resample([[1, 2]], meanOf, { draws: 5, seed: 1 }), "science/not-a-count"],
    ["a statistic that is none", resample([[1, 2]], () => NAN, DRAWN), "science/no-number"],
    [
      "equal values have no BCa",
      bcaRange(reached(resample([[2, 2, 2]], meanOf, DRAWN)), 0.95),
      "science/no-spread-seen",
    ],
    [
      "a level that is none",
      percentileRange(reached(resample([[1, 2]], meanOf, DRAWN)), 1),
      "science/not-a-probability",
    ],
    ["t of no number", studentBeyond(NAN, 3), "science/no-number"],
    ["t without freedom", studentBeyond(1, 0), "science/no-degrees-of-freedom"],
    ["F below 0", fBeyond(-1, 2, 2), "science/no-number"],
    ["F without freedom", fBeyond(1, 0, 2), "science/no-degrees-of-freedom"],
    ["z of no number", normalBeyond(NAN), "science/no-number"],
    ["normal of no number", normalProbability(NAN), "science/no-number"],
    ["beta of no shape", betaProbability(0.5, 0, 1), "science/no-number"],
    ["noncentral t of no number", noncentralStudentProbability(1, 3, ENDLESS), "science/no-number"],
  ] as const)("%s", (_, result, reason) => {
    expect(reasonOf(result)).toBe(reason);
  });
});

describe("all equal, zero and one", () => {
  it("stay chances of 1", () => {
    expect(reached(signFlip([0, 0, 0], 1)).chance).toBe(1);
    expect(reached(permutationOfTwo([3, 3], [3, 3], 1)).chance).toBe(1);
    expect(reached(rankSum([3, 3], [3, 3])).chance).toBe(1);
    expect(reached(normalRankSum([3, 3], [3, 3]))).toBe(1);
    expect(reached(mannKendall(timed([4, 4, 4])))).toMatchObject({ s: 0, variance: 0, z: 0, chance: 1 });
    expect(reached(kendallNormal(0, 0))).toBe(1);
  });

  it("keep an equal line flat", () => {
    expect(reached(theilSen(timed([4, 4, 4]))).slope).toBe(0);
  });

  it("say which end of a ratio is none", () => {
    const [some, none] = [
      { count: 6, effort: 3 },
      { count: 0, effort: 3 },
    ];
    expect(reached(rateRatioRange(some, none, BY_CHANCE, 0.95)).upper).toBeNull();
    expect(reached(rateRatioRange(none, some, BY_CHANCE, 0.95)).lower).toBe(0);
    // Six against none by chance: twice 1/2⁶.
    expect(reached(rateRatioChance(some, none, BY_CHANCE))).toBeCloseTo(2 / 64, 9);
  });

  it("take each of two groups by itself, worked out by hand", () => {
    // 0 and 4: variance 8, mean 2, so 4; over its 4 worms 1. 3 and 3: as by chance, 1; over its 6 worms 1/6.
    const { apart } = reached(
      unevennessOf([
        [0, 4],
        [3, 3],
      ]),
    );
    expect(apart?.varianceToMean).toBeCloseTo((1 + 1 / 6) / (1 / 4 + 1 / 6), 12);
    expect(apart?.degreesOfFreedom).toBeCloseTo((7 / 6) ** 2 / (1 + 1 / 36), 12);
    const nothing = [
      [
        [0, 0],
        [3, 3],
      ],
      [[2], [3, 3]],
      [
        [1, 2],
        [3, 3],
        [4, 4],
      ],
    ];
    for (const groups of nothing) expect(reached(unevennessOf(groups)).apart).toBeUndefined();
  });
});

describe("more than can be counted out", () => {
  const many = Array.from({ length: 30 }, (_, at) => Math.sin(at) + 0.3);

  it("is drawn with a seed, and comes out the same", () => {
    const drawn = reached(signFlip(many, 7));
    expect(drawn.exact).toBe(false);
    expect(reached(signFlip(many, 7))).toEqual(drawn);
    const halves = [many.slice(0, 15), many.slice(15)] as const;
    const dealt = reached(permutationOfTwo(...halves, 7));
    expect(dealt.exact).toBe(false);
    expect(reached(permutationOfTwo(...halves, 7))).toEqual(dealt);
  });

  it("is close to what t says where the values spread evenly", () => {
    expect(reached(signFlip(many, 7)).chance).toBeCloseTo(reached(pairedStudent(many)).chance, 2);
    const years = [timed(many.slice(0, 12))];
    const byYears = reached(chanceByWholeYears(years, 3));
    expect(byYears.exact).toBe(false);
    expect(byYears.chance).toBeCloseTo(reached(mannKendall(timed(many.slice(0, 12)))).chance, 1);
    expect(byYears.variance / reached(kendallOfGroups(years)).variance).toBeCloseTo(1, 1);
  });

  it("counts ranks out to fifty and takes the curve beyond", () => {
    const long = Array.from({ length: 60 }, (_, at) => Math.sin(3 * at) + 0.2);
    expect(reached(signedRank(long)).exact).toBe(false);
    expect(reached(signedRank(long.slice(0, 50))).exact).toBe(true);
    expect(reached(signedRank(long.slice(0, 50))).chance).toBeCloseTo(
      reached(normalSignedRank(long.slice(0, 50))),
      2,
    );
  });

  it("knows how many ways there are", () => {
    expect([waysToChoose(6, 3), waysToChoose(12, 6), waysToChoose(3, 4), waysToChoose(5, 0)]).toEqual([
      20, 924, 0, 1,
    ]);
  });
});

it("counts a tie as a tie when units were turned", () => {
  const mm = [2.54, 5.08, 7.62].map((inch) => inch * 10);
  const inches = mm.map((value) => (value / 25.4) * 0.1 + 0.2);
  expect(reached(rankSum(inches, [inches[1] ?? 0, 9, 9])).wins).toBe(1.5);
});

it("agrees with all orders counted out for tied values (seven values, all 5040 orders)", () => {
  const values = [1, 2, 2, 3, 3, 3, 9];
  const s = reached(kendallSum(timed(values))).s;
  const orders = (rest: readonly number[]): readonly (readonly number[])[] =>
    rest.length === 0
      ? [[]]
      : rest.flatMap((value, at) =>
          orders(rest.filter((_, other) => other !== at)).map((more) => [value, ...more]),
        );
  const sums = orders(values).map((order) => {
    let sum = 0;
    for (let later = 0; later < order.length; later++)
      for (let earlier = 0; earlier < later; earlier++)
        sum += Math.sign((order[later] ?? 0) - (order[earlier] ?? 0));
    return sum;
  });
  const chance = sums.filter((sum) => Math.abs(sum) >= s).length / sums.length;
  expect(reached(mannKendall(timed(values))).chance).toBeCloseTo(chance, 12);
});

it("a seed gives the same numbers from 0 to 1, evenly spread, and another seed others", () => {
  const [one, again, other] = [seeded(5), seeded(5), seeded(6)];
  const numbers = Array.from({ length: 20_000 }, () => one());
  expect(numbers.slice(0, 10)).toEqual(Array.from({ length: 10 }, () => again()));
  expect(numbers.slice(0, 10)).not.toEqual(Array.from({ length: 10 }, () => other()));
  expect(numbers.every((number) => number >= 0 && number < 1)).toBe(true);
  const tenths = Array.from(
    { length: 10 },
    (_, tenth) => numbers.filter((number) => Math.floor(10 * number) === tenth).length,
  );
  // Chi-square with 9 degrees of freedom stays below 27.9 in 999 of 1000 tries.
  expect(tenths.reduce((sum, count) => sum + (count - 2000) ** 2 / 2000, 0)).toBeLessThan(27.9);
});
