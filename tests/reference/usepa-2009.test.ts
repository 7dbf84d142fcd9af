/**
 * Source: USEPA 2009, Statistical Analysis of Groundwater Monitoring Data, Unified Guidance.
 * Mark: published (example 16-1, p. 16-6: means, sd; examples 17-6, p. 17-33, and 14-10, p. 14-38, all); computed here
 * with R (Welch).
 */
import { describe, expect, it } from "vitest";
import { kendallNormal, kendallSum, kendallZ, mannKendall } from "../../src/science/statistics/kendall.ts";
import { kendallOfGroups } from "../../src/science/statistics/kendall-groups.ts";
import { permutationOfTwo } from "../../src/science/statistics/permutation.ts";
import { medianOf } from "../../src/science/statistics/quantile.ts";
import { sampleOf } from "../../src/science/statistics/sample.ts";
import { studentRange } from "../../src/science/statistics/student-range.ts";
import { gilbertRange, slopesOf, theilSen } from "../../src/science/statistics/theil-sen.ts";
import { welch } from "../../src/science/statistics/two-means.ts";
import { reached } from "../unit/science/counts.ts";

describe("example 16-1", () => {
  const background = [560, 530, 570, 490, 510, 550, 550, 530];
  const downgradient = [600, 590, 590, 630, 610, 630];

  it("means 536.25 and 608.333, sd 26.6927 and 18.3485", () => {
    expect(reached(sampleOf(background)).mean).toBe(536.25);
    expect(reached(sampleOf(downgradient)).mean).toBeCloseTo(608.333, 3);
    expect(reached(sampleOf(background)).standardDeviation).toBeCloseTo(26.6927, 4);
    expect(reached(sampleOf(downgradient)).standardDeviation).toBeCloseTo(18.3485, 4);
  });

  it("Welch t 5.98261, df 11.9553, 45.8204 to 98.3463", () => {
    const test = reached(welch(downgradient, background));
    expect(test.t).toBeCloseTo(5.98261, 5);
    expect(test.degreesOfFreedom).toBeCloseTo(11.9553, 4);
    const range = reached(studentRange(test.difference, test.standardError, test.degreesOfFreedom, 0.95));
    expect(range.lower).toBeCloseTo(45.8204, 4);
    expect(range.upper).toBeCloseTo(98.3463, 4);
  });

  it("dealt out anew: 1 of 3003", () => {
    expect(reached(permutationOfTwo(downgradient, background, 1)).chance).toBeCloseTo(1 / 3003, 12);
  });
});

describe("example 17-6", () => {
  const times = [
    89.6, 89.8, 90.1, 90.3, 90.6, 90.8, 91.1, 91.3, 91.6, 91.8, 92.1, 92.6, 93.1, 93.6, 94.1, 94.6, 95.1,
    95.6, 95.8, 96.1, 96.3, 96.6, 96.8,
  ];
  const sulfate = [
    480, 450, 490, 520, 485, 510, 510, 530, 510, 560, 560, 540, 590, 550, 600, 700, 570, 610, 650, 620, 830,
    720, 590,
  ];
  const points = times.map((time, at) => ({ time, value: sulfate[at] ?? 0 }));

  it("S 194, variance 1428, Z 5.107322, p = 3.26757e-7, tau 0.766798", () => {
    const test = reached(mannKendall(points));
    expect(test.s).toBe(194);
    expect(test.variance).toBeCloseTo(1428, 9);
    expect(test.z).toBeCloseTo(5.107322, 6);
    expect(test.chance / 3.26757e-7).toBeCloseTo(1, 5);
    expect(test.exact).toBe(false);
    // S over all pairs, although there are ties: not tau b.
    expect(test.tau).toBeCloseTo(0.766798, 6);
  });

  it("slope 26.66667, intercept -1909.3333, 20.00000 to 35.71182 from 253 slopes", () => {
    const line = reached(theilSen(points));
    expect(line.slopes).toHaveLength(253);
    expect(line.slope).toBeCloseTo(26.66667, 5);
    expect(line.intercept).toBeCloseTo(-1909.3333, 3);
    const range = reached(gilbertRange(line.slopes, 1428, 0.95));
    expect(range.lower).toBeCloseTo(20, 5);
    expect(range.upper).toBeCloseTo(35.71182, 4);
  });
});

describe("example 14-10", () => {
  const years = [
    [1.99, 2.1, 2.12, 2.12, 2.11, 2.15, 2.19, 2.18, 2.16, 2.08, 2.05, 2.08],
    [2.01, 2.1, 2.17, 2.13, 2.13, 2.18, 2.25, 2.24, 2.22, 2.13, 2.08, 2.16],
    [2.15, 2.17, 2.27, 2.23, 2.24, 2.26, 2.31, 2.32, 2.28, 2.22, 2.19, 2.22],
  ];
  const months = Array.from({ length: 12 }, (_, month) =>
    years.map((year, at) => ({ time: 1983 + at, value: year[month] ?? 0 })),
  );

  it("S 3 in every month but February with 2", () => {
    expect(months.map((month) => reached(kendallSum(month)).s)).toEqual([3, 2, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3]);
  });

  it("S 35, variance 43, Z 5.184951, p = 2.1607e-7", () => {
    const seen = reached(kendallOfGroups(months));
    expect(seen).toMatchObject({ groups: 12, s: 35 });
    expect(seen.variance).toBeCloseTo(43, 9);
    expect(seen.z).toBeCloseTo(5.184951, 6);
    expect(seen.chance / 2.1607e-7).toBeCloseTo(1, 4);
  });

  it("middle of the slopes within the months 0.06 a year", () => {
    expect(reached(medianOf(months.flatMap((month) => [...slopesOf(month)])))).toBeCloseTo(0.06, 9);
  });
});

it.each([
  [12, 30, 212.6667, 1.9886],
  [15, 49, 408.3333, 2.37538],
  [20, -80, 950, -2.5631],
])("Z for %d times and S %d without ties (recomputed by the printed formula)", (n, s, variance, z) => {
  const straight = Array.from({ length: n }, (_, time) => ({ time, value: time }));
  expect(reached(kendallSum(straight)).variance).toBeCloseTo(variance, 4);
  expect(kendallZ(s, variance)).toBeCloseTo(z, 5);
  expect(reached(kendallNormal(s, variance))).toBeLessThan(0.05);
});
