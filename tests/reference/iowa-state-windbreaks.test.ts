/**
 * Source: Iowa State University Extension, Farmstead windbreaks: planning, Table 1.
 * Mark: published (columns scrambled in the copy, their order inferred); computed here by hand (between the columns).
 */
import { expect, it } from "vitest";
import { farmsteadReduction, windReduction } from "../../src/science/shelter/wind-reduction.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [5, 78],
  [10, 66],
  [15, 35],
  [20, 14],
  [25, 10],
  [30, 4],
  [12, 53.6],
])("at %d heights", (heights, percent) => {
  expect(reached(farmsteadReduction(heights))).toBeCloseTo(percent / 100, 9);
  const range = reached(windReduction(heights));
  expect(range.low).toBeLessThanOrEqual(percent / 100 + 1e-9);
  expect(range.high).toBeGreaterThanOrEqual(percent / 100 - 1e-9);
});

it("means 33.2 % from 5 to 30 heights (trapezoids)", () => {
  const at = [5, 10, 15, 20, 25, 30].map((heights) => reached(farmsteadReduction(heights)));
  const area = at.slice(1).reduce((sum, value, one) => sum + (5 * (value + (at[one] ?? 0))) / 2, 0);
  expect(area / 25).toBeCloseTo(0.332, 3);
});

it("two tables differ by 16 points at ten heights, and both are in the range", () => {
  const { low, high } = reached(windReduction(10));
  expect(high - low).toBeCloseTo(0.16, 9);
});
