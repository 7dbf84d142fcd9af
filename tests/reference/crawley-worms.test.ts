/**
 * Source: Crawley 2007, The R Book: "worms", worm density in 20 fields, values in file order.
 * Mark: published (counts); from memory (the summary of the book); computed here with R (variance, test, k, ranges,
 * Welch's t).
 *
 * Another fit of the same data (MASS::fitdistr) gives k = 6.8301.
 */
import { describe, expect, it } from "vitest";
import { wormsPerHole } from "../../src/science/earthworms/field.ts";
import { compareCounts } from "../../src/science/side-by-side/counts.ts";
import { studentQuantile } from "../../src/science/statistics/distributions.ts";
import { dispersionOf, negativeBinomialK } from "../../src/science/statistics/negative-binomial.ts";
import { quantileOf } from "../../src/science/statistics/quantile.ts";
import { welch } from "../../src/science/statistics/two-means.ts";
import { reached } from "../unit/science/counts.ts";
import { holes } from "../unit/science/earthworms/holes.ts";

const WORMS = [4, 7, 2, 5, 6, 2, 3, 4, 9, 7, 8, 1, 2, 0, 6, 8, 4, 5, 1, 3];
const BY_VEGETATION = [
  ["grassland", [4, 2, 2, 3, 7, 1, 2, 0, 1], 2.4444],
  ["arable", [7, 4, 5], 5.3333],
  ["meadow", [5, 6, 8], 6.3333],
  ["scrub", [6, 8, 4, 3], 5.25],
  ["orchard", [9], 9],
] as const;

it("mean 4.35, variance 6.871053, variance to mean 1.579552, test 30.01149 on 19 df with p = 0.05165", () => {
  const seen = reached(dispersionOf(WORMS));
  expect(seen.mean).toBeCloseTo(4.35, 12);
  expect(seen.variance).toBeCloseTo(6.871053, 6);
  expect(seen.varianceToMean).toBeCloseTo(1.579552, 6);
  expect(seen.chiSquare).toBeCloseTo(30.01149, 5);
  expect(seen.degreesOfFreedom).toBe(19);
  expect(seen.chance).toBeCloseTo(0.05165, 5);
});

it("k by maximum likelihood 6.8302", () => {
  expect(reached(negativeBinomialK(WORMS))).toBeCloseTo(6.8302, 3);
});

it("the range on the log scale, from the plain t range 3.1232 to 5.5768 (recomputed)", () => {
  const mean = reached(wormsPerHole(holes(...WORMS)));
  expect(mean.value).toBeCloseTo(4.35, 12);
  const range = reached(mean.range);
  // The half width of the plain range over the mean is the half width on the log scale.
  const half = (5.5768 - 3.1232) / 2 / 4.35;
  expect(range.lower).toBeCloseTo(4.35 * Math.exp(-half), 3);
  expect(range.upper).toBeCloseTo(4.35 * Math.exp(half), 3);
  // Standard error 0.586134 (recomputed).
  const t = reached(studentQuantile(0.975, 19));
  expect((Math.log(range.upper / 4.35) / t) * 4.35).toBeCloseTo(0.586134, 5);
});

it.each(BY_VEGETATION)("mean of the %s fields", (_, counts, mean) => {
  expect(reached(wormsPerHole(holes(...counts))).value).toBeCloseTo(mean, 4);
});

it("quartiles 2.00 and 6.25, median 4 (the book's summary, from memory)", () => {
  expect([0.25, 0.5, 0.75].map((share) => reached(quantileOf(WORMS, share)))).toEqual([2, 4, 6.25]);
});

it("damp fields against others: Welch t 1.5372, df 14.168, p = 0.14627 (computed independently)", () => {
  const test = reached(welch([5, 7, 6, 8, 4, 3], [4, 7, 2, 6, 2, 3, 4, 9, 8, 1, 2, 0, 5, 1]));
  expect(test.t).toBeCloseTo(1.5372, 4);
  expect(test.degreesOfFreedom).toBeCloseTo(14.168, 3);
  expect(test.chance).toBeCloseTo(0.14627, 5);
});

describe("damp fields against others as rates", () => {
  const damp = { counts: [5, 7, 6, 8, 4, 3], effortEach: 1 };
  const others = { counts: [4, 7, 2, 6, 2, 3, 4, 9, 8, 1, 2, 0, 5, 1], effortEach: 1 };

  it("1.425926 times as many, 0.73941 to 2.67472 in clumps", () => {
    const result = reached(compareCounts(damp, others, 2));
    expect(result.value).toBeCloseTo(1.425926, 5);
    expect(result.unevenness.varianceToMean).toBeCloseTo(1.641788, 5);
    const range = reached(result.range);
    expect(range.method).toBe("rate-ratio-scaled");
    expect(range.lower).toBeCloseTo(0.73941, 4);
    expect(range.upper).toBeCloseTo(2.67472, 4);
    // The Wald range by t·√φ lies inside.
    expect(range.lower).toBeLessThan(0.786641);
    expect(range.upper).toBeGreaterThan(2.584743);
  });

  it("the chance is where the range touches 1: 0.28636", () => {
    expect(reached(reached(compareCounts(damp, others, 2)).chance)).toBeCloseTo(0.286357, 5);
  });
});
