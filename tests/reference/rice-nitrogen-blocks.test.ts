/**
 * Source: a handbook of field trials: rice with five rates of nitrogen in four blocks, t/ha.
 * Mark: published (plots, LSD 0.621 at 5 % and 0.871 at 1 %; the third total is misprinted there as 19.3); computed
 * here with R (sums of squares).
 */
import { expect, it } from "vitest";
import { blockedTable } from "../../src/science/statistics/blocks.ts";
import { studentQuantile } from "../../src/science/statistics/distributions.ts";
import { reached } from "../unit/science/counts.ts";

const RICE = [
  [2.1, 2.8, 2.7, 2.9],
  [3.2, 3.4, 4.1, 4.2],
  [4.9, 4.6, 4.6, 5.0],
  [5.3, 5.2, 5.1, 6.1],
  [3.4, 4.6, 4.6, 3.8],
];

it("the table of variance", () => {
  const seen = reached(blockedTable(RICE));
  expect(seen.means.map((mean) => Number((4 * mean).toFixed(6)))).toEqual([10.5, 14.9, 19.1, 21.7, 16.4]);
  expect(seen.totalSquares).toBeCloseTo(21.062, 6);
  expect(seen.blocks.squares).toBeCloseTo(1.018, 6);
  expect(seen.treatments.squares).toBeCloseTo(18.092, 6);
  expect(seen.rest.squares).toBeCloseTo(1.952, 6);
  expect(seen.rest.degreesOfFreedom).toBe(12);
  expect(seen.rest.meanSquare).toBeCloseTo(0.162667, 6);
  expect(seen.f).toBeCloseTo(27.8053, 4);
  expect(100 * (seen.coefficientOfVariation ?? 0)).toBeCloseTo(9.77, 2);
});

it("least significant differences 0.621 and 0.871", () => {
  const seen = reached(blockedTable(RICE));
  expect(seen.leastSignificant).toBeCloseTo(0.621, 3);
  expect(reached(studentQuantile(0.995, 12)) * seen.standardError).toBeCloseTo(0.871, 3);
});
