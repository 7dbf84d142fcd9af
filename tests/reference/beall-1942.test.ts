/**
 * Source: Beall 1942, insects on 12 plots of each of six sprays (R, datasets::InsectSprays).
 * Mark: published (counts); computed here with R and SciPy (means, variances, Welch's t, ranges of ratios).
 */
import { describe, expect, it } from "vitest";
import { compareCounts } from "../../src/science/side-by-side/counts.ts";
import { dispersionOf } from "../../src/science/statistics/negative-binomial.ts";
import { BY_CHANCE, rateRatioRange } from "../../src/science/statistics/rate-ratio.ts";
import { welch } from "../../src/science/statistics/two-means.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  ["A", [10, 7, 20, 14, 14, 12, 10, 23, 17, 20, 14, 13], 14.5, 22.27273],
  ["B", [11, 17, 21, 11, 16, 14, 17, 17, 19, 21, 7, 13], 15.3333, 18.24242],
  ["C", [0, 1, 7, 2, 3, 1, 2, 1, 3, 0, 1, 4], 2.083333, 3.901515],
  ["D", [3, 5, 12, 6, 4, 3, 5, 5, 5, 5, 2, 4], 4.916667, 6.265152],
  ["E", [3, 5, 3, 5, 3, 6, 1, 1, 3, 2, 6, 4], 3.5, 3.0],
  ["F", [11, 9, 15, 22, 15, 16, 13, 10, 26, 26, 24, 13], 16.66667, 38.60606],
] as const)("spray %s", (_, counts, mean, variance) => {
  const seen = reached(dispersionOf(counts));
  expect(seen.mean).toBeCloseTo(mean, 4);
  expect(seen.variance).toBeCloseTo(variance, 4);
  expect(seen.varianceToMean).toBeCloseTo(variance / mean, 4);
});

it("A against B: Welch t -0.45352, df 21.784, p = 0.65466 (computed independently)", () => {
  const test = reached(
    welch([10, 7, 20, 14, 14, 12, 10, 23, 17, 20, 14, 13], [11, 17, 21, 11, 16, 14, 17, 17, 19, 21, 7, 13]),
  );
  expect(test.t).toBeCloseTo(-0.45352, 5);
  expect(test.degreesOfFreedom).toBeCloseTo(21.784, 3);
  expect(test.chance).toBeCloseTo(0.65466, 5);
});

describe("sprays A and C as rates", () => {
  const A = [10, 7, 20, 14, 14, 12, 10, 23, 17, 20, 14, 13];
  const C = [0, 1, 7, 2, 3, 1, 2, 1, 3, 0, 1, 4];

  it("totals 174 and 25: 6.96, 4.5604 to 11.0517 as counts by chance", () => {
    const range = reached(
      rateRatioRange({ count: 174, effort: 12 }, { count: 25, effort: 12 }, BY_CHANCE, 0.95),
    );
    expect(range.lower).toBeCloseTo(4.5604, 4);
    expect(range.upper).toBeCloseTo(11.0517, 3);
  });

  it("in clumps, each spray with its own variance over mean, 3.715 to 14.341", () => {
    const result = reached(compareCounts({ counts: A, effortEach: 1 }, { counts: C, effortEach: 1 }, 2));
    expect(result.value).toBeCloseTo(6.96, 5);
    expect(result.unevenness.varianceToMean).toBeCloseTo(1.704389, 5);
    expect(result.unevenness.apart?.varianceToMean).toBeCloseTo(1.830431, 5);
    expect(result.unevenness.apart?.degreesOfFreedom).toBeCloseTo(13.557139, 5);
    const range = reached(result.range);
    expect(range.method).toBe("rate-ratio-scaled");
    expect(range.lower).toBeCloseTo(3.715036, 4);
    expect(range.upper).toBeCloseTo(14.340547, 4);
    // The Wald range on logs, by Welch's t, lies inside.
    expect(range.lower).toBeLessThan(3.734552);
    expect(range.upper).toBeGreaterThan(12.971195);
  });

  it("F against C, pooled where that is wider: 4.218 to 16.835", () => {
    const F = [11, 9, 15, 22, 15, 16, 13, 10, 26, 26, 24, 13];
    const result = reached(compareCounts({ counts: F, effortEach: 1 }, { counts: C, effortEach: 1 }, 2));
    expect(result.unevenness.varianceToMean).toBeCloseTo(2.094545, 5);
    expect(result.unevenness.apart?.varianceToMean).toBeCloseTo(1.92202, 5);
    expect(reached(result.range).lower).toBeCloseTo(4.218062, 4);
    expect(reached(result.range).upper).toBeCloseTo(16.834623, 4);
  });
});
