/**
 * How often ranges of few samples hold the truth, by simulation with fixed seeds. The figures stand in the docstrings of
 * `resample`, `gilbertRange`, `countedRange`, `meanOfRings`, `meanOverLines` and `shareOfHoles`; where a range does not reach its level, its result says
 * so.
 */
import { describe, expect, it } from "vitest";
import type { Result } from "../../../src/record/result.ts";
import { shareOfHoles } from "../../../src/science/earthworms/spread.ts";
import type { Bounds } from "../../../src/science/estimate.ts";
import { meanOfRings } from "../../../src/science/infiltration/replicates.ts";
import { bcaRange, percentileRange, resample } from "../../../src/science/statistics/bootstrap.ts";
import { exactKendall, kendallSum } from "../../../src/science/statistics/kendall.ts";
import { meanOverLines } from "../../../src/science/statistics/mean.ts";
import { countedRange, gilbertRange, slopesOf } from "../../../src/science/statistics/theil-sen.ts";
import { reached } from "../../unit/science/counts.ts";
import { normal, seeded } from "./seeded.ts";

const many = <T>(n: number, one: (at: number) => T): readonly T[] =>
  Array.from({ length: n }, (_, at) => one(at));

/** Share of tries in which the range holds the truth; a try without a range is none. */
const held = (tries: number, truth: number, draw: () => Result<Bounds>): number => {
  const ranges = many(tries, draw).flatMap((range) => (range.ok ? [range.value] : []));
  return (
    ranges.filter(({ lower, upper }) => lower <= truth + 1e-12 && upper >= truth - 1e-12).length /
    ranges.length
  );
};

describe("samples drawn anew", () => {
  const mean = ([only]: readonly Float64Array[]): number =>
    (only ?? new Float64Array()).reduce((sum, value) => sum + value, 0) / (only?.length ?? 1);

  it.each([
    [4, 0.81, 0.74],
    [8, 0.88, 0.82],
    [20, 0.92, 0.87],
  ])("%d values: held %d of the time, skewed %d, which is said", (n, even, skewed) => {
    const random = seeded(n);
    let seed = 0;
    const drawn = (one: () => number) =>
      reached(resample([many(n, one)], mean, { draws: 500, seed: seed++ }));
    const lognormal = (): number => Math.exp(0.8 * normal(random));
    for (const range of [percentileRange, bcaRange]) {
      const ofEven = held(600, 0, () =>
        range(
          drawn(() => normal(random)),
          0.95,
        ),
      );
      expect(Math.abs(ofEven - even)).toBeLessThan(0.045);
      const ofSkewed = held(600, Math.exp(0.32), () => range(drawn(lognormal), 0.95));
      expect(Math.abs(ofSkewed - skewed)).toBeLessThan(0.045);
    }
    const { cautions } = reached(
      percentileRange(
        drawn(() => normal(random)),
        0.95,
      ),
    );
    expect(cautions).toEqual([{ code: "science/resampled-range-too-narrow", facts: { values: n } }]);
  });

  it("thirty values say nothing", () => {
    const random = seeded(30);
    const drawn = reached(resample([many(30, () => normal(random))], mean, { draws: 500, seed: 1 }));
    expect(reached(percentileRange(drawn, 0.95)).cautions).toEqual([]);
  });
});

describe.each([5, 6, 8, 10, 12, 20])("a slope over %d times", (n) => {
  const random = seeded(n);
  const series = () => many(n, (time) => ({ time, value: 0.3 * time + normal(random) }));

  it("is held 95 to 99 times of 100", () => {
    const gilbert = held(1500, 0.3, () => {
      const points = series();
      return gilbertRange(slopesOf(points), reached(kendallSum(points)).variance, 0.95);
    });
    if (n > 5) expect(gilbert).toBeGreaterThan(0.94);
    const counted = held(1500, 0.3, () => {
      const points = series();
      const sums = exactKendall(reached(kendallSum(points)));
      return sums === null
        ? { ok: false, problem: { code: "science/no-number", facts: {} } }
        : countedRange(slopesOf(points), sums, 0.95);
    });
    if (n <= 10) {
      expect(counted).toBeGreaterThan(0.94);
      expect(counted).toBeLessThan(1);
    } else expect(counted).toBeNaN();
  });
});

describe.each([3, 4, 6, 10])("%d rings, lines or holes", (n) => {
  const random = seeded(100 + n);

  it("the geometric mean of lognormal rings is held 92 to 98 times of 100", () => {
    const share = held(2000, 30, () => {
      const points = many(n, (at) => ({
        id: String(at),
        value: 30 * Math.exp(0.8 * normal(random)),
        least: 0.1,
        censored: false,
        burrow: false,
        crack: false,
      }));
      return reached(meanOfRings(points, "mm/h")).range;
    });
    expect(share).toBeGreaterThan(0.92);
    expect(share).toBeLessThan(0.98);
  });

  it("the mean thickness over lines whose readings lie close together is, too", () => {
    const share = held(2000, 60, () => {
      const lines = many(n, () => {
        const centre = 60 + 6 * normal(random);
        return many(10, () => Math.max(0, centre + 8 * normal(random)));
      });
      return reached(meanOverLines(lines, "mm")).range;
    });
    expect(share).toBeGreaterThan(0.935);
    expect(share).toBeLessThan(0.965);
  });

  it("the exact range of a share of holes is never too narrow, and with three holes holds nearly always", () => {
    for (const truth of [0.1, 0.3, 0.5, 0.7]) {
      const share = held(
        1000,
        truth,
        () => reached(shareOfHoles(many(n, () => random()).filter((one) => one < truth).length, n)).range,
      );
      expect(share).toBeGreaterThan(0.965);
      if (n === 3) expect(share).toBeGreaterThan(0.99);
    }
  });
});
