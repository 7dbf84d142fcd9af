/**
 * Source: an encyclopaedia's page on the t test: two sets of six screw weights.
 * Mark: from memory (Welch as printed); computed here with R (58 of 924 ways of dealing out).
 */
import { expect, it } from "vitest";
import { permutationOfTwo } from "../../src/science/statistics/permutation.ts";
import { welch } from "../../src/science/statistics/two-means.ts";
import { reached } from "../unit/science/counts.ts";

const FIRST = [30.02, 29.99, 30.11, 29.97, 30.01, 29.99];
const SECOND = [29.89, 29.93, 29.72, 29.98, 30.02, 29.98];

it("difference 0.095, Welch t 1.959006, df 7.03056, p = 0.0907733", () => {
  const test = reached(welch(FIRST, SECOND));
  expect(test.difference).toBeCloseTo(0.095, 10);
  expect(test.t).toBeCloseTo(1.959006, 6);
  expect(test.degreesOfFreedom).toBeCloseTo(7.03056, 5);
  expect(test.chance).toBeCloseTo(0.0907733, 6);
});

it("58 of 924 ways, although sums that are equal differ by rounding", () => {
  const seen = reached(permutationOfTwo(FIRST, SECOND, 1));
  expect(seen.exact).toBe(true);
  expect(Math.round(seen.chance * 924)).toBe(58);
  expect(seen.chance).toBeCloseTo(0.062771, 6);
});
