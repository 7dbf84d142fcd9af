/**
 * Source: the definition of the score range (Wilson, J. Am. Stat. Assoc. 22: 209-212).
 * Mark: computed here by hand (ten trials, 100 and 500 marks, 3 to 4 digits).
 */
import { expect, it } from "vitest";
import { wilsonInterval } from "../../src/science/statistics/proportion.ts";
import { reached } from "../unit/science/counts.ts";

const check = (hits: number, trials: number, lower: number, upper: number, digits: number) => {
  const bounds = reached(wilsonInterval(hits, trials, 0.95));
  expect(bounds.lower).toBeCloseTo(lower, digits);
  expect(bounds.upper).toBeCloseTo(upper, digits);
};

it.each([
  [0, 10, 0, 0.2775],
  [1, 10, 0.0179, 0.4042],
  [3, 10, 0.1078, 0.6032],
  [5, 10, 0.2366, 0.7634],
  [7, 10, 0.3968, 0.8922],
  [10, 10, 0.7225, 1],
  [5, 5, 0.5655, 1],
])("%i of %i", (hits, trials, lower, upper) => {
  check(hits, trials, lower, upper, 4);
});

it("30 of 100 and 150 of 500", () => {
  check(30, 100, 0.219, 0.396, 3);
  check(150, 500, 0.261, 0.342, 3);
});
