/**
 * How often ranges of comparisons and of changes hold the truth with data as fields give them, which no formula here
 * presumes: cover from lines in strips that differ, rings over burrows, treatments that vary unlike, years that are
 * like the year before. Fixed seeds; the figures stand in the docstrings of `comparePairs`, `compareGroups`,
 * `compareCounts`, `compareBlocks` and `trendOfSpot`.
 */
import { describe, expect, it } from "vitest";
import type { Result } from "../../../src/record/result.ts";
import type { Bounds } from "../../../src/science/estimate.ts";
import { trendOfSpot } from "../../../src/science/over-years/trend.ts";
import { compareBlocks } from "../../../src/science/side-by-side/blocks.ts";
import { compareCounts } from "../../../src/science/side-by-side/counts.ts";
import { studentRange } from "../../../src/science/statistics/student-range.ts";
import { pairedStudent, type StudentTest, welch } from "../../../src/science/statistics/two-means.ts";
import { reached } from "../../unit/science/counts.ts";
import { chanceCount, clumpedCount, gamma, hitsOnALine, normal, seeded } from "./seeded.ts";

type Random = () => number;
const many = <T>(n: number, one: (at: number) => T): readonly T[] =>
  Array.from({ length: n }, (_, at) => one(at));
const holds = (range: Result<Bounds>, truth: number): boolean =>
  range.ok && range.value.lower <= truth && truth <= range.value.upper;
const shareOf = (tries: number, one: () => boolean): number =>
  many(tries, one).filter(Boolean).length / tries;
const seen = (values: readonly number[]) => values.map((value) => ({ value, least: null }));
const TRIES = 800;

/** The range alone, as both comparisons make it: what else stands beside it would take a hundred times as long. */
const testHolds = (test: Result<StudentTest>, truth: number): boolean => {
  // All differ by the same: no range is given, and nothing is claimed.
  if (!test.ok) return true;
  const { difference, standardError, degreesOfFreedom } = test.value;
  return holds(studentRange(difference, standardError, degreesOfFreedom, 0.95), truth);
};

describe.each([
  [0.05, 0.05],
  [0.4, 0.1],
  [0.9, 0.95],
])(
  "cover about %d and %d, five lines a strip, blocks and strips that differ on the logit scale",
  (of, against) => {
    const shifted = (share: number, by: number): number =>
      1 / (1 + Math.exp(-Math.log(share / (1 - share)) - by));
    const two = (random: Random, read: (cover: number) => number): readonly [number, number] => {
      const block = 0.5 * normal(random);
      const side = (share: number): number => read(shifted(share, block + 0.3 * normal(random)));
      return [side(of), side(against)];
    };
    const counted =
      (random: Random) =>
      (cover: number): number =>
        many(5, () => hitsOnALine(cover, 100, 3, random)).reduce((sum, hits) => sum + hits, 0) / 500;
    const settle = seeded(5);
    const truth =
      many(40_000, () => two(settle, (cover) => cover)).reduce((sum, [a, b]) => sum + a - b, 0) / 40_000;

    it.each([3, 5, 10])("%i pairs, or strips of each: 92 to 98.5 times of 100", (n) => {
      const random = seeded(n);
      const drawn = () => two(random, counted(random));
      const pairs = shareOf(TRIES, () =>
        testHolds(pairedStudent(many(n, drawn).map(([a, b]) => a - b)), truth),
      );
      const groups = shareOf(TRIES, () =>
        testHolds(
          welch(
            many(n, () => drawn()[0]),
            many(n, () => drawn()[1]),
          ),
          truth,
        ),
      );
      for (const share of [pairs, groups]) {
        expect(share).toBeGreaterThan(0.92);
        expect(share).toBeLessThan(0.985);
      }
    });
  },
);

describe.each([0.1, 0.2])(
  "ratios of rings, a share of %d over burrows that take ten times as much",
  (burrows) => {
    const logOfRing = (share: number, random: Random): number =>
      0.6 * normal(random) + (random() < share ? Math.log(10) : 0);

    it.each([3, 5, 10])("%i rings a side, burrows on one side only: 92 to 97 times of 100", (n) => {
      const random = seeded(100 * n + 10 * burrows);
      const share = shareOf(TRIES, () => {
        const [a, b] = [many(n, () => logOfRing(burrows, random)), many(n, () => logOfRing(0, random))];
        return testHolds(welch(a, b), burrows * Math.log(10));
      });
      expect(share).toBeGreaterThan(0.92);
      expect(share).toBeLessThan(0.975);
    });
  },
);

describe("holes as a ratio where one stands in for none", () => {
  type Lie = (mean: number, random: Random) => number;
  const patches: Lie = (mean, random) => (random() < 0.3 ? 0 : chanceCount(mean / 0.7, random));
  const asLogs = (counts: readonly number[]) => counts.map((count) => Math.log(Math.max(1, count)));
  const typicalOf = (a: Lie, b: Lie, mean: number): number => {
    const random = seeded(1);
    const draws = many(40_000, () => asLogs([a(2 * mean, random), b(mean, random)]));
    return draws.reduce((sum, [first = 0, second = 0]) => sum + first - second, 0) / draws.length;
  };
  /** Shares of ranges that hold the typical ratio and that of the means: with a hole without worms, and of all. */
  const heldIn = (a: Lie, b: Lie, mean: number, n: number) => {
    const typical = typicalOf(a, b, mean);
    const random = seeded(100 * n + mean);
    const tries = many(2000, () => [many(n, () => a(2 * mean, random)), many(n, () => b(mean, random))])
      // With nothing on one side there is no ratio.
      .filter((sides) => sides.every((side) => side.some((count) => count > 0)))
      .map(([first = [], second = []]) => {
        const test = welch(asLogs(first), asLogs(second));
        const none = [...first, ...second].includes(0);
        return { none, typical: testHolds(test, typical), means: testHolds(test, Math.log(2)) };
      });
    const withNone = tries.filter(({ none }) => none);
    const share = (some: typeof tries, of: "typical" | "means") =>
      some.filter((one) => one[of]).length / some.length;
    return {
      typical: share(withNone, "typical"),
      means: share(withNone, "means"),
      all: Math.min(share(tries, "typical"), share(tries, "means")),
    };
  };

  it.each([
    [3, [0.95, 1.001], [0.63, 0.79]],
    [4, [0.95, 1.001], [0.74, 0.81]],
    [5, [0.94, 0.98], [0.79, 0.86]],
    [10, [0.84, 0.93], [0.83, 0.93]],
    [20, [0.58, 0.78], [0.58, 0.78]],
  ] as const)("%i holes a side, three in ten of one side without worms", (n, means, all) => {
    for (const mean of [9, 20])
      for (const [a, b] of [
        [patches, chanceCount],
        [chanceCount, patches],
      ] as const) {
        const seenHeld = heldIn(a, b, mean, n);
        expect(seenHeld.typical).toBeGreaterThan(0.92);
        expect(seenHeld.means).toBeGreaterThan(means[0]);
        expect(seenHeld.means).toBeLessThan(means[1]);
        expect(seenHeld.all).toBeGreaterThan(all[0]);
        expect(seenHeld.all).toBeLessThan(all[1]);
      }
  });

  it.each([
    ["by chance, three a hole", chanceCount, 3],
    ["in clumps of k = 2, three a hole", (of: number, random: Random) => clumpedCount(of, 2, random), 3],
    ["in clumps of k = 2, nine a hole", (of: number, random: Random) => clumpedCount(of, 2, random), 9],
  ] as const)("is held 92 to 98 times of 100 where worms lie alike on both sides, %s", (_, lie, mean) => {
    for (const n of [3, 5, 10, 20]) {
      const { typical, means } = heldIn(lie, lie, mean, n);
      for (const share of [typical, means]) {
        expect(share).toBeGreaterThan(0.92);
        expect(share).toBeLessThan(0.985);
      }
    }
  });
});

describe("few worms", () => {
  it.each([
    [0.5, 10, Number.POSITIVE_INFINITY],
    [1, 5, 2],
    [2, 3, 2],
    [2, 5, Number.POSITIVE_INFINITY],
  ])(
    "mean %d in %i holes, k %d: held 97 to 99.5 times of 100, which is said below ten worms",
    (mean, n, k) => {
      const random = seeded(10 * n + mean);
      const draw = (of: number) =>
        many(n, () => (Number.isFinite(k) ? clumpedCount(of, k, random) : chanceCount(of, random)));
      const share = shareOf(TRIES, () => {
        const [a, b] = [draw(2 * mean), draw(mean)];
        // No ratio is called worth while: what it would take to see one is not asked here, and takes its time.
        const result = compareCounts({ counts: a, effortEach: 1 }, { counts: b, effortEach: 1 }, 1);
        // Nothing on either side, or no upper end: nothing is claimed.
        if (!(result.ok && result.value.range.ok)) return true;
        const worms = Math.min(...[a, b].map((counts) => counts.reduce((sum, count) => sum + count, 0)));
        const said = result.value.cautions.some(({ code }) => code === "science/few-worms-wide-range");
        expect(said).toBe(worms < 10);
        return holds(result.value.range, result.value.turned ? 0.5 : 2);
      });
      expect(share).toBeGreaterThan(0.965);
      expect(share).toBeLessThanOrEqual(0.995);
    },
  );
});

describe.each([3, 4, 5])("%i treatments in blocks", (treatments) => {
  const errors: Readonly<Record<string, (of: number, random: Random) => number>> = {
    even: (_, random) => normal(random),
    skewed: (_, random) => gamma(4, random) / 2 - 2,
    unlike: (of, random) => (1 + of) * normal(random),
    "one strongly skewed": (of, random) =>
      of === 0 ? 3 * (Math.exp(0.8 * normal(random)) - Math.exp(0.32)) : normal(random),
  };

  it.each([
    ["even", 3, 0.935, 0.985],
    ["even", 6, 0.935, 0.985],
    ["skewed", 3, 0.94, 0.99],
    ["skewed", 6, 0.94, 0.99],
    ["unlike", 3, 0.925, 0.975],
    ["unlike", 6, 0.9, 0.97],
    ["one strongly skewed", 3, 0.86, 0.94],
    ["one strongly skewed", 6, 0.83, 0.92],
  ] as const)(
    "%s errors, %i blocks: all ranges together hold %d to %d of the time",
    (kind, blocks, least, most) => {
      const random = seeded(100 * treatments + 10 * blocks + kind.length);
      const means = many(treatments, (of) => of);
      let [each, looks] = [0, 0];
      const together = shareOf(600, () => {
        const ofBlocks = many(blocks, () => 2 * normal(random));
        const table = means.map((mean) => ({
          label: `${mean}`,
          blocks: seen(ofBlocks.map((block) => 50 + mean + block + (errors[kind]?.(mean, random) ?? 0))),
        }));
        const result = reached(compareBlocks(table, { scale: "difference", unit: "1", worthwhile: 0 }));
        expect(result.cautions.map(({ code }) => code)).toEqual([
          "science/ranges-for-all-pairs",
          "science/range-if-lopsided",
        ]);
        const inside = result.twos.filter(({ first, second, range }) =>
          holds(range, Number(first) - Number(second)),
        );
        each += inside.length;
        looks += result.twos.length;
        return inside.length === result.twos.length;
      });
      expect(together).toBeGreaterThan(least);
      expect(together).toBeLessThan(most);
      expect(each / looks).toBeGreaterThan(kind === "one strongly skewed" ? 0.92 : 0.965);
    },
  );
});

describe.each([5, 6, 8, 10, 12])("the change of one spot over %i years", (years) => {
  const held = (random: Random, scatter: () => (random: Random) => number, missing: number): number =>
    shareOf(TRIES, () => {
      const one = scatter();
      const all = many(years + missing, (at) => ({
        spot: "1",
        season: "s",
        harvestYear: 2000 + at,
        value: 0.3 * at + one(random),
        fromPaper: false,
      }));
      const left = new Set<number>();
      while (left.size < missing) left.add(1 + Math.floor(random() * (years + missing - 2)));
      const result = reached(
        trendOfSpot(
          all.filter((_, at) => !left.has(at)),
          { unit: "1" },
        ),
      );
      const codes = result.cautions.map(({ code }) => code);
      expect(codes).toEqual([years <= 6 ? "science/few-years-wide-range" : "science/years-may-run-together"]);
      return holds(result.range, 0.3);
    });
  const like = (correlation: number) => (): ((random: Random) => number) => {
    let year = Number.NaN;
    return (random) => {
      year = Number.isNaN(year)
        ? normal(random)
        : correlation * year + Math.sqrt(1 - correlation ** 2) * normal(random);
      return year;
    };
  };

  it("long tails, skewed scatter and years left out: 94 to 99 times of 100", () => {
    const random = seeded(years);
    const tails = () => (next: Random) =>
      normal(next) / Math.sqrt((normal(next) ** 2 + normal(next) ** 2 + normal(next) ** 2) / 3);
    const skewed = () => (next: Random) => Math.exp(0.8 * normal(next));
    for (const share of [held(random, tails, 0), held(random, skewed, 0), held(random, like(0), 3)]) {
      expect(share).toBeGreaterThan(0.93);
      expect(share).toBeLessThan(0.993);
    }
  });

  it("years like the one before", () => {
    const random = seeded(years + 50);
    const [some, half] = [held(random, like(0.3), 0), held(random, like(0.5), 0)];
    if (years < 8) {
      expect(some).toBeGreaterThan(0.94);
      expect(half).toBeGreaterThan(0.915);
    } else {
      expect(Math.abs(some - 0.91)).toBeLessThan(0.035);
      expect(Math.abs(half - 0.85)).toBeLessThan(0.055);
    }
  });
});
