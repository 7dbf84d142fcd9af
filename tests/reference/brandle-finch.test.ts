/**
 * Source: Brandle & Finch, How windbreaks work.
 * Mark: from memory (share of the open wind behind a belt of 40 to 60 % density).
 */
import { expect, it } from "vitest";
import { windReduction } from "../../src/science/shelter/wind-reduction.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [5, 30],
  [10, 50],
  [15, 60],
  [20, 75],
  [30, 95],
])("at %i heights %i %% of the wind is one end of the range", (heights, percent) => {
  const { low, high } = reached(windReduction(heights));
  const less = 1 - percent / 100;
  expect(Math.min(Math.abs(low - less), Math.abs(high - less))).toBeLessThan(1e-9);
});
