/** NIST/SEMATECH e-Handbook 1.3.6.7.4, upper critical values of chi-square (from memory). */
import { expect, it } from "vitest";
import { chiSquareProbability } from "../../src/science/statistics/distributions.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";

it.each([
  [0.95, 1, 3.841],
  [0.95, 5, 11.07],
  [0.99, 3, 11.345],
  [0.95, 19, 30.144],
  [0.999, 10, 29.588],
])("%d with %i df at %d", (probability, degreesOfFreedom, x) => {
  expect(reached(chiSquareProbability(x, degreesOfFreedom))).toBeCloseTo(probability, 4);
});

it("runs from 0 to 1 and gives a reason for what is no number", () => {
  expect(reached(chiSquareProbability(0, 3))).toBe(0);
  expect(reached(chiSquareProbability(Number.POSITIVE_INFINITY, 3))).toBe(1);
  expect(reasonOf(chiSquareProbability(-1, 3))).toBe("science/no-number");
  expect(reasonOf(chiSquareProbability(Number.NaN, 3))).toBe("science/no-number");
  expect(reasonOf(chiSquareProbability(1, 0))).toBe("science/no-degrees-of-freedom");
  expect(reasonOf(chiSquareProbability(1, Number.POSITIVE_INFINITY))).toBe("science/no-degrees-of-freedom");
});
