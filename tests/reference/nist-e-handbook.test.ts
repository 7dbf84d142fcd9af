/**
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, 1.3.6.7.4 and 7.3.1.
 * Mark: from memory (tables of Student's t, the normal curve and chi-square; data of 7.3.1); computed here with R
 * (Welch's t, its range).
 *
 * The column for 0.001 of Student's t is left out: it prints 318.313 for one degree of freedom where the distribution
 * gives 318.309, and is off in the third decimal from 7 degrees of freedom on.
 */
import { describe, expect, it } from "vitest";
import {
  chiSquareProbability,
  chiSquareQuantile,
  normalQuantile,
  studentProbability,
  studentQuantile,
} from "../../src/science/statistics/distributions.ts";
import { sampleOf } from "../../src/science/statistics/sample.ts";
import { studentRange } from "../../src/science/statistics/student-range.ts";
import { welch } from "../../src/science/statistics/two-means.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";

const TAILS = [0.1, 0.05, 0.025, 0.01, 0.005];
const TABLE: readonly [number, readonly number[]][] = [
  [1, [3.078, 6.314, 12.706, 31.821, 63.657]],
  [2, [1.886, 2.92, 4.303, 6.965, 9.925]],
  [3, [1.638, 2.353, 3.182, 4.541, 5.841]],
  [4, [1.533, 2.132, 2.776, 3.747, 4.604]],
  [5, [1.476, 2.015, 2.571, 3.365, 4.032]],
  [7, [1.415, 1.895, 2.365, 2.998, 3.499]],
  [10, [1.372, 1.812, 2.228, 2.764, 3.169]],
  [30, [1.31, 1.697, 2.042, 2.457, 2.75]],
  [100, [1.29, 1.66, 1.984, 2.364, 2.626]],
];

describe.each(TABLE)("1.3.6.7.2, Student's t: %i degrees of freedom", (freedom, values) => {
  it.each(TAILS.map((tail, column) => [tail, values[column] ?? 0] as const))(
    "upper tail %d: %d",
    (tail, value) => {
      expect(reached(studentQuantile(1 - tail, freedom))).toBeCloseTo(value, 3);
      expect(reached(studentQuantile(tail, freedom))).toBeCloseTo(-value, 3);
      const back = reached(studentProbability(reached(studentQuantile(1 - tail, freedom)), freedom));
      expect(back).toBeCloseTo(1 - tail, 6);
    },
  );
});

it("has the normal distribution in its last row", () => {
  const values = [1.282, 1.645, 1.96, 2.326, 2.576];
  for (const [column, tail] of TAILS.entries())
    expect(reached(normalQuantile(1 - tail))).toBeCloseTo(values[column] ?? 0, 3);
});

it.each([
  [0.95, 1, 3.841],
  [0.975, 2, 7.378],
  [0.95, 5, 11.07],
  [0.9, 5, 9.236],
  [0.1, 5, 1.61],
  [0.05, 10, 3.94],
  [0.99, 30, 50.892],
])("1.3.6.7.4, chi-square: %d of %i degrees of freedom: %d", (probability, freedom, value) => {
  expect(reached(chiSquareQuantile(probability, freedom))).toBeCloseTo(value, 3);
});

it.each([
  [0.95, 1, 3.841],
  [0.95, 5, 11.07],
  [0.99, 3, 11.345],
  [0.95, 19, 30.144],
  [0.999, 10, 29.588],
])("1.3.6.7.4, chi-square: %d with %i df at %d", (probability, degreesOfFreedom, x) => {
  expect(reached(chiSquareProbability(x, degreesOfFreedom))).toBeCloseTo(probability, 4);
});

it("chi-square runs from 0 to 1 and gives a reason for what is no number", () => {
  expect(reached(chiSquareProbability(0, 3))).toBe(0);
  expect(reached(chiSquareProbability(Number.POSITIVE_INFINITY, 3))).toBe(1);
  expect(reasonOf(chiSquareProbability(-1, 3))).toBe("science/no-number");
  expect(reasonOf(chiSquareProbability(Number.NaN, 3))).toBe("science/no-number");
  expect(reasonOf(chiSquareProbability(1, 0))).toBe("science/no-degrees-of-freedom");
  expect(reasonOf(chiSquareProbability(1, Number.POSITIVE_INFINITY))).toBe("science/no-degrees-of-freedom");
});

describe("7.3.1, minutes by an old and a new way", () => {
  const OLD = [32, 37, 35, 28, 41, 44, 35, 31, 34, 38, 42];
  const NEW = [36, 31, 30, 31, 34, 36, 29, 32, 31];

  it("means 36.0909 and 32.2222, sd 4.9082 and 2.5386", () => {
    expect(reached(sampleOf(OLD)).mean).toBeCloseTo(36.0909, 4);
    expect(reached(sampleOf(NEW)).mean).toBeCloseTo(32.2222, 4);
    expect(reached(sampleOf(OLD)).standardDeviation).toBeCloseTo(4.9082, 4);
    expect(reached(sampleOf(NEW)).standardDeviation).toBeCloseTo(2.5386, 4);
  });

  it("Welch t 2.26937, df 15.5325, p = 0.037879, 0.24594 to 7.49143", () => {
    const test = reached(welch(OLD, NEW));
    expect(test.t).toBeCloseTo(2.26937, 5);
    expect(test.degreesOfFreedom).toBeCloseTo(15.5325, 4);
    expect(test.chance).toBeCloseTo(0.037879, 6);
    const range = reached(studentRange(test.difference, test.standardError, test.degreesOfFreedom, 0.95));
    expect(range.lower).toBeCloseTo(0.24594, 5);
    expect(range.upper).toBeCloseTo(7.49143, 5);
  });
});
