/**
 * Source: R, documentation of poisson.test: 11 per 800 and 21 per 3011.
 * Mark: published; computed here with R (digits beyond the printed ones, and 90 in 10 holes against 60 in 10).
 */
import { expect, it } from "vitest";
import { BY_CHANCE, rateRatioChance, rateRatioRange } from "../../src/science/statistics/rate-ratio.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [11, 800, 21, 3011, 1.971488, 0.858426, 4.277266, 0.112017],
  [90, 10, 60, 10, 1.5, 1.0701, 2.1156, 0.017598],
])("%d per %d against %d per %d", (x, inX, y, inY, ratio, lower, upper, chance) => {
  const [a, b] = [
    { count: x, effort: inX },
    { count: y, effort: inY },
  ];
  expect(x / inX / (y / inY)).toBeCloseTo(ratio, 5);
  const range = reached(rateRatioRange(a, b, BY_CHANCE, 0.95));
  expect(range.lower).toBeCloseTo(lower, 4);
  expect(range.upper).toBeCloseTo(upper, 4);
  expect(reached(rateRatioChance(a, b, BY_CHANCE))).toBeCloseTo(chance, 5);
});
