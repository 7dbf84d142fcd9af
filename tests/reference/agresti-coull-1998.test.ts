/**
 * Source: Agresti & Coull 1998, The American Statistician 52: 119-126, table of mean coverage over all shares.
 * Mark: from memory (95 % ranges by the score and the exact one for 5 to 100 trials).
 *
 * The mean over all shares is worked out, not simulated: the chance of x hits taken over the shares that its range holds
 * is a difference of two beta probabilities over n + 1.
 */
import { expect, it } from "vitest";
import type { Result } from "../../src/record/result.ts";
import type { Bounds } from "../../src/science/estimate.ts";
import { betaProbability } from "../../src/science/statistics/distributions.ts";
import { exactInterval, wilsonInterval } from "../../src/science/statistics/proportion.ts";
import { reached } from "../unit/science/counts.ts";

const meanCoverage = (trials: number, range: (hits: number) => Result<Bounds>): number => {
  let sum = 0;
  for (let hits = 0; hits <= trials; hits++) {
    const { lower, upper } = reached(range(hits));
    const below = (share: number): number => reached(betaProbability(share, hits + 1, trials - hits + 1));
    sum += below(upper) - below(lower);
  }
  return sum / (trials + 1);
};

it.each([
  [5, 0.955, 0.99],
  [15, 0.953, 0.98],
  [30, 0.952, 0.973],
  [50, 0.952, 0.969],
  [100, 0.951, 0.965],
])("%i trials: score %d, exact %d", (trials, score, exact) => {
  expect(Math.abs(meanCoverage(trials, (hits) => wilsonInterval(hits, trials, 0.95)) - score)).toBeLessThan(
    0.0025,
  );
  expect(Math.abs(meanCoverage(trials, (hits) => exactInterval(hits, trials, 0.95)) - exact)).toBeLessThan(
    0.0025,
  );
});

it("below 15 holes the exact range holds 98 times of 100 and more, as is said of a share of holes", () => {
  for (const holes of [3, 5, 8, 10, 14])
    expect(meanCoverage(holes, (hits) => exactInterval(hits, holes, 0.95))).toBeGreaterThan(0.979);
});
