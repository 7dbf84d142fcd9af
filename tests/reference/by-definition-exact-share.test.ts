/**
 * Source: the definition of the exact range by sums of the binomial (Clopper & Pearson, Biometrika 26: 404-413).
 * Mark: computed here by hand.
 */
import { describe, expect, it } from "vitest";
import { betaQuantile } from "../../src/science/statistics/distributions.ts";
import { exactInterval, largestShareUnseen } from "../../src/science/statistics/proportion.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [0, 10, 0, 0.3085],
  [1, 10, 0.0025, 0.445],
  [3, 10, 0.0667, 0.6525],
  [5, 10, 0.1871, 0.8129],
  [7, 10, 0.3475, 0.9333],
  [10, 10, 0.6915, 1],
  [5, 5, 0.4782, 1],
])("%i of %i", (hits, trials, lower, upper) => {
  const bounds = reached(exactInterval(hits, trials, 0.95));
  expect(bounds.lower).toBeCloseTo(lower, 4);
  expect(bounds.upper).toBeCloseTo(upper, 4);
});

describe("none seen", () => {
  it.each([
    [5, 0.451],
    [10, 0.259],
    [15, 0.181],
    [20, 0.139],
  ])("%i trials leave up to %d", (trials, upper) => {
    const bound = reached(largestShareUnseen(trials, 0.95));
    expect(bound).toBeCloseTo(upper, 3);
    // The same bound by its definition: none in all trials has a chance of 5 %.
    expect((1 - bound) ** trials).toBeCloseTo(0.05, 12);
    expect(reached(betaQuantile(0.95, 1, trials))).toBeCloseTo(bound, 7);
  });

  it("stays under the rule of three, which is its limit", () => {
    expect(reached(largestShareUnseen(1000, 0.95))).toBeLessThan(3 / 1000);
    expect(reached(largestShareUnseen(1000, 0.95))).toBeGreaterThan(2.98 / 1000);
  });
});
