/**
 * Source: Efron & Tibshirani 1993, An Introduction to the Bootstrap.
 * Mark: from memory (tables 2.1 and 14.1); computed here (complete sets of all samples).
 *
 * Table 2.1: days that mice lived, treated 86.86 ± 25.24 and not 56.22 ± 14.14, difference 30.63 ± 28.93. Table 14.1:
 * spatial test A of 26 children, variance (with n) 171.5, acceleration 0.061, bias 0.146 and 90 % ranges 100.8 to
 * 233.9 (percentile) and 115.8 to 259.6 (BCa), from 2000 draws, so only near.
 */
import { describe, expect, it } from "vitest";
import { bcaConstants, bcaRange, percentileRange, resample } from "../../src/science/statistics/bootstrap.ts";
import { atRank } from "../../src/science/statistics/quantile.ts";
import { sampleOf } from "../../src/science/statistics/sample.ts";
import { reached } from "../unit/science/counts.ts";

const meanOf = (values: Float64Array | undefined): number =>
  (values ?? new Float64Array(1)).reduce((sum, value) => sum + value, 0) / (values?.length ?? 1);
const mean = ([only]: readonly Float64Array[]): number => meanOf(only);
const variance = ([only]: readonly Float64Array[]): number => {
  const middle = meanOf(only);
  return meanOf(only?.map((value) => (value - middle) ** 2));
};

describe("spatial test A", () => {
  const A = [
    48, 36, 20, 29, 42, 42, 20, 42, 22, 41, 45, 14, 6, 0, 33, 28, 34, 4, 32, 24, 47, 41, 24, 26, 30, 41,
  ];
  const drawn = reached(resample([A], variance, { draws: 20_000, seed: 14 }));

  it("variance 171.5, acceleration 0.061, bias near 0.146", () => {
    expect(drawn.value).toBeCloseTo(171.5, 1);
    const { acceleration, bias } = reached(bcaConstants(drawn));
    expect(acceleration).toBeCloseTo(0.061, 3);
    expect(Math.abs(bias - 0.146)).toBeLessThan(0.06);
  });

  it("percentiles near 100.8 and 233.9, BCa near 115.8 and 259.6", () => {
    const percentile = reached(percentileRange(drawn, 0.9));
    expect(Math.abs(percentile.lower - 100.8)).toBeLessThan(4);
    expect(Math.abs(percentile.upper - 233.9)).toBeLessThan(4);
    const bca = reached(bcaRange(drawn, 0.9));
    expect(Math.abs(bca.lower - 115.8)).toBeLessThan(6);
    expect(Math.abs(bca.upper - 259.6)).toBeLessThan(6);
  });
});

describe("mice", () => {
  const TREATED = [94, 197, 16, 38, 99, 141, 23];
  const CONTROL = [52, 104, 146, 10, 51, 30, 40, 27, 46];

  it("means with their standard errors", () => {
    expect(reached(sampleOf(TREATED)).mean).toBeCloseTo(86.86, 2);
    expect(reached(sampleOf(TREATED)).standardError).toBeCloseTo(25.24, 2);
    expect(reached(sampleOf(CONTROL)).mean).toBeCloseTo(56.22, 2);
    expect(reached(sampleOf(CONTROL)).standardError).toBeCloseTo(14.14, 1);
  });

  it("the difference 30.63, whose spread over draws is the plug-in one of both (26.8)", () => {
    const drawn = reached(
      resample([TREATED, CONTROL], ([a, b]) => meanOf(a) - meanOf(b), { draws: 20_000, seed: 2 }),
    );
    expect(drawn.value).toBeCloseTo(30.63, 1);
    const plugIn = Math.sqrt(
      variance([Float64Array.from(TREATED)]) / 7 + variance([Float64Array.from(CONTROL)]) / 9,
    );
    expect(drawn.standardError / plugIn).toBeCloseTo(1, 1);
  });
});

describe("all samples of a few", () => {
  it("four holes 5, 7, 6, 8: 256 samples, standard error 0.559017, 5.5 to 7.5", () => {
    const drawn = reached(resample([[5, 7, 6, 8]], mean, { draws: 1000, seed: 1 }));
    expect(drawn.complete).toBe(true);
    expect(drawn.values).toHaveLength(256);
    expect(drawn.standardError).toBeCloseTo(0.559017, 6);
    expect(reached(percentileRange(drawn, 0.95))).toMatchObject({ lower: 5.5, upper: 7.5 });
  });

  it("five holes 3, 9, 12, 6, 10: 3125 samples, standard error 1.414214, 5.0, 5.6, 10.2, 10.6", () => {
    const drawn = reached(resample([[3, 9, 12, 6, 10]], mean, { draws: 10_000, seed: 1 }));
    expect(drawn.values).toHaveLength(3125);
    // 1.414214.
    expect(drawn.standardError).toBeCloseTo(Math.SQRT2, 6);
    const at = (share: number): number => atRank(drawn.values, 1 + 3124 * share);
    for (const [share, value] of [
      [0.025, 5],
      [0.05, 5.6],
      [0.95, 10.2],
      [0.975, 10.6],
    ] as const)
      expect(at(share)).toBeCloseTo(value, 9);
  });
});
