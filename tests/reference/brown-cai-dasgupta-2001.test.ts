/**
 * Source: Brown, Cai & DasGupta 2001, Statistical Science 16: 101-133.
 * Mark: from memory (the 95 % score range holds a share of 0.1765/n only 83.8 times of 100 as n grows); published
 * (abstract: the score range for few trials; the exact one is never below its level, by its definition).
 */
import { expect, it } from "vitest";
import type { Result } from "../../src/record/result.ts";
import type { Bounds } from "../../src/science/estimate.ts";
import { exactInterval, wilsonInterval } from "../../src/science/statistics/proportion.ts";
import { reached } from "../unit/science/counts.ts";

const coverage = (trials: number, share: number, range: (hits: number) => Result<Bounds>): number => {
  let [chance, sum] = [(1 - share) ** trials, 0];
  for (let hits = 0; hits <= trials; hits++) {
    const { lower, upper } = reached(range(hits));
    if (lower <= share && share <= upper) sum += chance;
    chance *= ((trials - hits) * share) / ((hits + 1) * (1 - share));
  }
  return sum;
};
const SHARES = Array.from({ length: 199 }, (_, at) => (at + 1) / 200);

it("just below 0.1765/n the score range holds 83.8 times of 100", () => {
  expect(coverage(1000, 0.1764 / 1000, (hits) => wilsonInterval(hits, 1000, 0.95))).toBeCloseTo(0.838, 3);
});

it.each([10, 40, 100])(
  "%i trials: away from the ends the score range stays about 95, the exact one at it or above",
  (trials) => {
    for (const share of SHARES) {
      expect(coverage(trials, share, (hits) => exactInterval(hits, trials, 0.95))).toBeGreaterThanOrEqual(
        0.95 - 1e-9,
      );
      if (share * trials >= 2 && (1 - share) * trials >= 2)
        expect(coverage(trials, share, (hits) => wilsonInterval(hits, trials, 0.95))).toBeGreaterThan(0.9);
    }
  },
);
