import { describe, expect, it } from "vitest";
import { clusterRatio } from "../../../src/science/statistics/cluster-ratio.ts";
import {
  betaQuantile,
  chiSquareQuantile,
  normalQuantile,
  studentProbability,
  studentQuantile,
} from "../../../src/science/statistics/distributions.ts";
import { meanOfReadings, meanOverLines } from "../../../src/science/statistics/mean.ts";
import {
  exactInterval,
  largestShareUnseen,
  wilsonInterval,
} from "../../../src/science/statistics/proportion.ts";
import { weightedMedian } from "../../../src/science/statistics/weighted-median.ts";
import { reached, reasonOf } from "./counts.ts";

const OUTSIDE = [0, 1, -0.1, 1.1, Number.NaN];

describe("distributions outside their domain", () => {
  it.each(OUTSIDE)("refuse the probability %s", (probability) => {
    expect(reasonOf(studentQuantile(probability, 3))).toBe("science/not-a-probability");
    expect(reasonOf(normalQuantile(probability))).toBe("science/not-a-probability");
    expect(reasonOf(betaQuantile(probability, 1, 1))).toBe("science/not-a-probability");
    expect(reasonOf(chiSquareQuantile(probability, 5))).toBe("science/not-a-probability");
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuse %s degrees of freedom", (freedom) => {
    expect(reasonOf(studentQuantile(0.975, freedom))).toBe("science/no-degrees-of-freedom");
    expect(reasonOf(studentProbability(1, freedom))).toBe("science/no-degrees-of-freedom");
    expect(reasonOf(chiSquareQuantile(0.5, freedom))).toBe("science/no-degrees-of-freedom");
    expect(reasonOf(betaQuantile(0.5, freedom, 1))).toBe("science/no-number");
  });

  it("have their limits at infinity and their middle at 0", () => {
    expect(reached(studentProbability(Number.POSITIVE_INFINITY, 2))).toBe(1);
    expect(reached(studentProbability(Number.NEGATIVE_INFINITY, 2))).toBe(0);
    expect(reached(studentProbability(0, 2))).toBe(0.5);
    expect(reached(studentQuantile(0.5, 2))).toBe(0);
    expect(reasonOf(studentProbability(Number.NaN, 2))).toBe("science/no-number");
    expect(reached(studentProbability(1e8, 2))).toBeLessThanOrEqual(1);
  });
});

describe("shares of trials", () => {
  it("say why there is no range", () => {
    for (const interval of [wilsonInterval, exactInterval]) {
      expect(reasonOf(interval(0, 0, 0.95))).toBe("science/no-marks-read");
      expect(reasonOf(interval(2, 1, 0.95))).toBe("science/not-a-count");
      expect(reasonOf(interval(-1, 1, 0.95))).toBe("science/not-a-count");
      expect(reasonOf(interval(0.5, 1, 0.95))).toBe("science/not-a-count");
      expect(reasonOf(interval(Number.NaN, 1, 0.95))).toBe("science/not-a-count");
      expect(reasonOf(interval(1, 3, 1))).toBe("science/not-a-probability");
    }
    expect(reasonOf(largestShareUnseen(0, 0.95))).toBe("science/no-marks-read");
    expect(reasonOf(largestShareUnseen(Number.NaN, 0.95))).toBe("science/no-marks-read");
    expect(reasonOf(largestShareUnseen(10, 1))).toBe("science/not-a-probability");
  });

  it("touch 0 for none and 1 for all", () => {
    for (const interval of [wilsonInterval, exactInterval]) {
      expect(reached(interval(0, 7, 0.95)).lower).toBe(0);
      expect(reached(interval(7, 7, 0.95)).upper).toBe(1);
    }
  });
});

describe("ratio over clusters", () => {
  it("equals the mean and its standard error for clusters of one size", () => {
    const ratio = reached(clusterRatio([44, 36, 52, 41, 47].map((total) => ({ total, size: 100 }))));
    expect(ratio.ratio).toBeCloseTo(0.44, 12);
    // SD 6.0415, over √5: 2.7019 points (constructed, by hand: Σd² = 146, /4 = 36.5, /5 = 7.3, √ = 2.70185).
    expect(ratio.standardError).toBeCloseTo(0.0270185, 7);
  });

  it("has no standard error for one cluster and 0 for clusters alike", () => {
    expect(reached(clusterRatio([{ total: 3, size: 10 }])).standardError).toBeNull();
    expect(reached(clusterRatio([1, 1, 1].map(() => ({ total: 25.4, size: 1 })))).standardError).toBe(0);
    expect(
      reached(
        clusterRatio([
          { total: 0, size: 5 },
          { total: 0, size: 9 },
        ]),
      ).standardError,
    ).toBe(0);
  });

  it("says why it has no answer", () => {
    expect(reasonOf(clusterRatio([]))).toBe("science/nothing-read");
    expect(reasonOf(clusterRatio([{ total: 0, size: 0 }]))).toBe("science/nothing-read");
    expect(reasonOf(clusterRatio([{ total: Number.NaN, size: 1 }]))).toBe("science/no-number");
    expect(reasonOf(clusterRatio([{ total: 1, size: -1 }]))).toBe("science/no-number");
  });
});

describe("thickness of mulch and height of stubble", () => {
  it("gives the t range of readings", () => {
    // 30, 42, 36: mean 36, SD 6, SE 3.4641, t = 4.303 (2 df): give or take 14.906 (by hand).
    const mean = reached(meanOfReadings([30, 42, 36], "mm"));
    expect(mean).toMatchObject({ value: 36, unit: "mm", n: 3, sampledBy: "readings" });
    expect(reached(mean.range).lower).toBeCloseTo(36 - 14.906, 2);
    expect(reached(mean.range).upper).toBeCloseTo(36 + 14.906, 2);
  });

  it("takes the line as the unit when several lines were read", () => {
    // Line totals 70, 20, 60 over 2, 1, 2 readings: 150/5 = 30. Residuals 10, −10, 0: SE² = 3/2·200/25 = 12.
    const mean = reached(meanOverLines([[30, 40], [20], [], [25, 35]], "mm"));
    expect(mean).toMatchObject({ value: 30, n: 3, sampledBy: "lines", methods: ["line-mean-t"] });
    expect(reached(mean.range).upper).toBeCloseTo(30 + 4.3027 * Math.sqrt(12), 2);
  });

  it("never reaches below nothing", () => {
    expect(reached(reached(meanOfReadings([0, 0, 30], "mm")).range).lower).toBe(0);
  });

  it("says why there is no range or no mean", () => {
    expect(reached(meanOfReadings([30, 42], "mm")).range).toEqual({
      ok: false,
      problem: { code: "science/too-few-samples", facts: { needs: 3, has: 2 } },
    });
    expect(reasonOf(reached(meanOfReadings([25.4, 25.4, 25.4], "mm")).range)).toBe("science/all-alike");
    expect(reasonOf(reached(meanOfReadings([0, 0, 0], "mm")).range)).toBe("science/all-alike");
    expect(reasonOf(meanOfReadings([], "mm"))).toBe("science/nothing-read");
    expect(reasonOf(meanOverLines([[], []], "mm"))).toBe("science/nothing-read");
    for (const bad of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(reasonOf(meanOfReadings([30, bad], "mm"))).toBe("science/not-a-length");
      expect(reasonOf(meanOverLines([[30], [bad]], "mm"))).toBe("science/not-a-length");
    }
  });
});

describe("weighted median", () => {
  const even = (...values: number[]) => values.map((value) => ({ value, weight: 1 }));
  it("is the middle, or halfway between two", () => {
    expect(reached(weightedMedian(even(9, 1, 5)))).toBe(5);
    expect(reached(weightedMedian(even(1, 2, 4, 9)))).toBe(3);
    expect(reached(weightedMedian(even(7)))).toBe(7);
    expect(reached(weightedMedian([...even(1, 5), { value: 9, weight: 4 }]))).toBe(9);
  });

  it("says why it has none", () => {
    expect(reasonOf(weightedMedian([]))).toBe("science/nothing-read");
    expect(reasonOf(weightedMedian([{ value: Number.NaN, weight: 1 }]))).toBe("science/no-number");
    expect(reasonOf(weightedMedian([{ value: 1, weight: 0 }]))).toBe("science/no-number");
  });
});
