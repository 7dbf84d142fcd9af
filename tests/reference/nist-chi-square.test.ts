/** NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4, critical values of chi-square (from memory). */
import { expect, it } from "vitest";
import { chiSquareQuantile } from "../../src/science/statistics/distributions.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [0.95, 1, 3.841],
  [0.975, 2, 7.378],
  [0.95, 5, 11.07],
  [0.9, 5, 9.236],
  [0.1, 5, 1.61],
  [0.05, 10, 3.94],
  [0.99, 30, 50.892],
])("%d of %i degrees of freedom: %d", (probability, freedom, value) => {
  expect(reached(chiSquareQuantile(probability, freedom))).toBeCloseTo(value, 3);
});
