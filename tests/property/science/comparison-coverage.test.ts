/**
 * How often ranges hold the truth and how often words are wrong, by simulation with fixed seeds. The figures stand in
 * the docstrings of `rateRatioRange`, `compareGroups`, `comparePairs` and `trendOfField`.
 */
import { describe, expect, it } from "vitest";
import { trendOfField, trendOfSpot } from "../../../src/science/over-years/trend.ts";
import { rateRatioRange, unevennessOf } from "../../../src/science/statistics/rate-ratio.ts";
import { studentRange } from "../../../src/science/statistics/student-range.ts";
import { pairedStudent, type StudentTest, welch } from "../../../src/science/statistics/two-means.ts";
import { reached } from "../../unit/science/counts.ts";
import { chanceCount, clumpedCount, normal, seeded } from "./seeded.ts";

const TRIES = 1500;
const sumOf = (counts: readonly number[]): number => counts.reduce((sum, count) => sum + count, 0);

describe.each([
  ["by chance", Number.POSITIVE_INFINITY, 0.965],
  ["in clumps, k = 4", 4, 0.95],
  ["in strong clumps, k = 2", 2, 0.95],
  ["in very strong clumps, k = 0.7", 0.7, 0.95],
])("a ratio of 2 of worms that lie %s", (_, k, least) => {
  it.each([1, 5, 9].flatMap((mean) => [3, 5, 10].map((n) => [mean, n] as const)))(
    "mean %i, %i holes",
    (mean, n) => {
      const random = seeded(1000 * n + mean);
      const draw = (of: number) =>
        Array.from({ length: n }, () =>
          Number.isFinite(k) ? clumpedCount(of, k, random) : chanceCount(of, random),
        );
      let [inside, likely, used] = [0, 0, 0];
      for (let at = 0; at < TRIES; at++) {
        const [a, b] = [draw(2 * mean), draw(mean)];
        if (sumOf(a) + sumOf(b) === 0) continue;
        used++;
        const [x, y] = [a, b].map((counts) => ({ count: sumOf(counts), effort: n }));
        const unevenness = reached(unevennessOf([a, b]));
        const holdsTwo = (level: number): boolean => {
          if (x === undefined || y === undefined) return false;
          const { lower, upper } = reached(rateRatioRange(x, y, unevenness, level));
          return lower <= 2 && (upper === null || upper >= 2);
        };
        if (holdsTwo(0.95)) inside++;
        if (holdsTwo(0.8)) likely++;
      }
      expect(inside / used).toBeGreaterThan(least);
      expect(inside / used).toBeLessThan(0.995);
      // Few worms come in whole ones: the exact range holds more than it promises.
      if (mean === 1) expect(inside / used).toBeGreaterThan(0.965);
      expect(likely / used).toBeGreaterThan(0.84);
      // Three holes with a worm each know nothing of how unevenly they lie.
      expect(likely / used).toBeLessThan(mean === 1 && n === 3 ? 0.96 : 0.94);
    },
  );
});

const holds = ({ difference, standardError, degreesOfFreedom }: StudentTest, level: number): boolean => {
  const { lower, upper } = reached(studentRange(difference, standardError, degreesOfFreedom, level));
  return lower <= 0 && upper >= 0;
};

type Draw = (random: () => number) => number;
const skewed: Draw = (random) => Math.exp(0.8 * normal(random)) - Math.exp(0.32);

describe.each([3, 4, 6, 10])("%i pairs, or strips of each", (n) => {
  const share = (draw: (random: () => number) => StudentTest, level: number): number => {
    const random = seeded(n);
    let inside = 0;
    for (let at = 0; at < TRIES; at++) if (holds(draw(random), level)) inside++;
    return inside / TRIES;
  };
  const values = (random: () => number, one: (random: () => number) => number) =>
    Array.from({ length: n }, () => one(random));

  it("hold none 95 and 80 times of 100 with even spread", () => {
    const pairs = (random: () => number) => reached(pairedStudent(values(random, normal)));
    expect(Math.abs(share(pairs, 0.95) - 0.95)).toBeLessThan(0.02);
    expect(Math.abs(share(pairs, 0.8) - 0.8)).toBeLessThan(0.035);
  });

  it("hold it as often with spreads of 1 and 3 by Welch", () => {
    const groups = (random: () => number) =>
      reached(
        welch(
          values(random, normal),
          values(random, (more) => 3 * normal(more)),
        ),
      );
    expect(share(groups, 0.95)).toBeGreaterThan(0.925);
    expect(share(groups, 0.95)).toBeLessThan(0.975);
  });

  it("hold it 85 to 92 times only where differences are strongly skewed, as the docstring says", () => {
    const pairs = (random: () => number) => reached(pairedStudent(values(random, skewed)));
    expect(share(pairs, 0.95)).toBeGreaterThan(0.85);
    expect(share(pairs, 0.95)).toBeLessThan(0.92);
  });
});

describe.each([
  [3, 3],
  [4, 4],
  [6, 6],
  [10, 10],
  [3, 10],
  [10, 3],
])("groups of %i and %i by Welch", (n, m) => {
  const share = (one: Draw, other: Draw, level: number): number => {
    const random = seeded(100 * n + m);
    let inside = 0;
    for (let at = 0; at < TRIES; at++) {
      const [a, b] = [
        Array.from({ length: n }, () => one(random)),
        Array.from({ length: m }, () => other(random)),
      ];
      if (holds(reached(welch(a, b)), level)) inside++;
    }
    return inside / TRIES;
  };
  const three =
    (one: Draw): Draw =>
    (random) =>
      3 * one(random);

  it("hold none 92 to 97 and 77 to 84 times of 100 with even spreads of 1 and 1, or 1 and 3", () => {
    for (const other of [normal, three(normal)]) {
      expect(Math.abs(share(normal, other, 0.95) - 0.945)).toBeLessThan(0.025);
      expect(Math.abs(share(normal, other, 0.8) - 0.805)).toBeLessThan(0.035);
    }
  });

  it("hold none 92 to 98 times where both are skewed alike, 83 to 95 where one is skewed and varies more", () => {
    expect(Math.abs(share(skewed, skewed, 0.95) - 0.95)).toBeLessThan(0.035);
    expect(Math.abs(share(skewed, three(skewed), 0.95) - 0.89)).toBeLessThan(0.065);
  });
});

describe.each([4, 5, 6, 8, 12])("%i years without a trend", (years) => {
  it("are called clearly changing at most 5 times, and not to be told at least 80 times of 100", () => {
    const random = seeded(years);
    const words = Array.from({ length: TRIES }, () => {
      const values = Array.from({ length: years }, (_, at) => ({
        spot: "1",
        season: "s",
        harvestYear: 2000 + at,
        value: normal(random),
        fromPaper: false,
      }));
      return reached(trendOfSpot(values, { unit: "1" })).word;
    });
    const share = (word: string): number => words.filter((one) => one === word).length / TRIES;
    expect(share("clearly-different")).toBeLessThan(0.062);
    expect(share("cannot-tell-yet")).toBeGreaterThan(0.78);
    if (years === 4) expect(share("clearly-different")).toBe(0);
  });
});

describe.each([0, 0.5, 0.9])("eight spots that share %d of their variance by the year", (shared) => {
  it.each([4, 5, 6])("in %i years without a trend", (years) => {
    const tries = 400;
    const random = seeded(100 * years + 10 * shared);
    let [clear, independent, inside, ranges] = [0, 0, 0, 0];
    for (let at = 0; at < tries; at++) {
      const weather = Array.from({ length: years }, () => normal(random));
      const values = Array.from({ length: 8 }, (_, spot) =>
        weather.map((year, when) => ({
          spot: `${spot}`,
          season: "s",
          harvestYear: 2000 + when,
          value: Math.sqrt(shared) * year + Math.sqrt(1 - shared) * normal(random),
          fromPaper: false,
        })),
      ).flat();
      const trend = reached(trendOfField(values, { unit: "1", seed: 1 }));
      if (trend.word === "clearly-different") clear++;
      if (trend.together.chance < 0.05) independent++;
      if (!trend.range.ok) continue;
      ranges++;
      if (trend.range.value.lower <= 0 && trend.range.value.upper >= 0) inside++;
    }
    expect(clear / tries).toBeLessThan(0.08);
    // Taken as independent, spots would cry wolf in a third to a half of all fields.
    if (shared >= 0.5) expect(independent / tries).toBeGreaterThan(0.2);
    // The range of the slope, with the variance of S over whole years.
    if (ranges > 0) expect(inside / ranges).toBeGreaterThan(0.93);
  });
});
