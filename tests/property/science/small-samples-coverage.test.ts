/**
 * How often ranges of few samples hold the truth, by simulation with fixed seeds. The figures stand in the docstrings of
 * `resample`, `gilbertRange`, `countedRange`, `meanOfRings`, `meanOfReadings`, `meanOverLines` and `shareOfHoles`; where a range does not reach its level, its result says
 * so.
 */
import { describe, expect, it } from "vitest";
import type { Result } from "../../../src/record/result.ts";
import { shareOfHoles } from "../../../src/science/earthworms/spread.ts";
import type { Bounds } from "../../../src/science/estimate.ts";
import { meanOfRings } from "../../../src/science/infiltration/replicates.ts";
import { bcaRange, percentileRange, resample } from "../../../src/science/statistics/bootstrap.ts";
import { exactKendall, kendallSum } from "../../../src/science/statistics/kendall.ts";
import { meanOfReadings, meanOverLines } from "../../../src/science/statistics/mean.ts";
import { countedRange, gilbertRange, slopesOf } from "../../../src/science/statistics/theil-sen.ts";
import { reached } from "../../unit/science/counts.ts";
import { gamma, normal, seeded } from "./seeded.ts";

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
    [10, 0.9, 0.86],
    [20, 0.93, 0.88],
    [30, 0.92, 0.9],
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

  it("fifty values: 94 with even ones and 91 with skewed ones, and nothing is said", () => {
    const random = seeded(50);
    for (const [one, truth, expected] of [
      [() => normal(random), 0, 0.94],
      [() => Math.exp(0.8 * normal(random)), Math.exp(0.32), 0.91],
    ] as const) {
      let seed = 0;
      const share = held(500, truth, () => {
        const drawn = reached(resample([many(50, one)], mean, { draws: 400, seed: seed++ }));
        const range = reached(percentileRange(drawn, 0.95));
        expect(range.cautions).toEqual([]);
        return { ok: true, value: range };
      });
      expect(Math.abs(share - expected)).toBeLessThan(0.035);
    }
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

describe("rings whose logarithms no formula here presumes", () => {
  const rings = (n: number, one: () => number) =>
    reached(
      meanOfRings(
        many(n, (at) => ({
          id: `${at}`,
          value: one(),
          least: 0.1,
          censored: false,
          burrow: false,
          crack: false,
        })),
        "mm/h",
      ),
    );

  it.each([3, 4, 6])("%i rings with gamma rates: 92 to 96 times of 100", (n) => {
    const random = seeded(n);
    // The mean logarithm of a gamma of shape 2 is 1 less Euler's constant.
    const share = held(
      2000,
      30 * Math.exp(1 - 0.577_215_664_9),
      () => rings(n, () => 30 * gamma(2, random)).range,
    );
    expect(share).toBeGreaterThan(0.92);
    expect(share).toBeLessThan(0.96);
  });

  it.each([
    [3, 0.1, 0.938],
    [6, 0.1, 0.92],
    [3, 0.2, 0.919],
    [4, 0.2, 0.901],
    [6, 0.2, 0.88],
  ])(
    "%i rings, a share of %d over burrows that take ten times as much: held %d of the time",
    (n, burrows, expected) => {
      const random = seeded(1000 * n + 100 * burrows);
      const truth = 30 * Math.exp(burrows * Math.log(10));
      const one = () => 30 * Math.exp(0.5 * normal(random)) * (random() < burrows ? 10 : 1);
      expect(Math.abs(held(2000, truth, () => rings(n, one).range) - expected)).toBeLessThan(0.025);
    },
  );

  it("says below ten rings that burrows may have been missed, unless one was met", () => {
    const random = seeded(9);
    const codes = (n: number) => rings(n, () => 10 + 5 * random()).cautions.map(({ code }) => code);
    expect(codes(9)).toEqual(["science/few-rings-may-miss-burrows"]);
    expect(codes(10)).toEqual([]);
  });
});

describe("depths of mulch", () => {
  it.each([
    [3, 2, 0.928],
    [5, 2, 0.905],
    [10, 2, 0.925],
    [3, 4, 0.935],
    [5, 4, 0.935],
    [10, 4, 0.94],
  ])("%i readings, gamma of shape %d: held %d of the time", (n, shape, expected) => {
    const random = seeded(10 * n + shape);
    const one = () => (40 * gamma(shape, random)) / shape;
    expect(
      Math.abs(held(3000, 40, () => reached(meanOfReadings(many(n, one), "mm")).range) - expected),
    ).toBeLessThan(0.02);
  });

  it.each([
    [3, 0.85],
    [5, 0.79],
    [10, 0.75],
  ])("%i readings, each half like the one before: held %d of the time, which is said", (n, expected) => {
    const random = seeded(n);
    const share = held(3000, 40, () => {
      let far = normal(random);
      const mean = reached(
        meanOfReadings(
          many(n, () => {
            far = 0.5 * far + Math.sqrt(0.75) * normal(random);
            return Math.max(0, 40 + 10 * far);
          }),
          "mm",
        ),
      );
      expect(mean.cautions.map(({ code }) => code)).toEqual([
        "science/range-if-lopsided",
        "science/readings-lie-close",
      ]);
      return mean.range;
    });
    expect(Math.abs(share - expected)).toBeLessThan(0.025);
  });

  it.each([3, 5, 10])("%i lines with skewed depths, 3 to 10 readings each: 90 to 94 times of 100", (n) => {
    const random = seeded(7 * n);
    const share = held(2000, 40, () => {
      const lines = many(n, () => {
        const centre = 10 * gamma(4, random);
        return many(3 + Math.floor(8 * random()), () => (centre * gamma(4, random)) / 4);
      });
      return reached(meanOverLines(lines, "mm")).range;
    });
    expect(share).toBeGreaterThan(0.895);
    expect(share).toBeLessThan(0.94);
  });
});
