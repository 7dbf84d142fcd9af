/**
 * Source: Ohio State University Extension, on-farm research: replicates.
 * Mark: published (five to six have "a reasonable chance" of a true difference of 10 % at a coefficient of variation
 * of 5 %); computed here with R (power: unpaired, and blocked with n−1 degrees of freedom).
 */
import { expect, it } from "vitest";
import { powerOf } from "../../src/science/statistics/power.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [4, 0.657],
  [5, 0.791],
  [6, 0.876],
])("%d replicates unpaired: power %d", (n, power) => {
  expect(reached(powerOf(2, 1, n, { design: "two-groups", level: 0.95, power: 0.8 }))).toBeCloseTo(power, 3);
});

it.each([
  [4, 0.49],
  [5, 0.663],
  [6, 0.789],
])("%d blocks: power %d", (n, power) => {
  // Two plots of spread 1 in a block differ with a spread of √2.
  expect(reached(powerOf(2, Math.SQRT2, n, { design: "pairs", level: 0.95, power: 0.8 }))).toBeCloseTo(
    power,
    3,
  );
});
