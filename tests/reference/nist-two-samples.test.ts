/**
 * NIST/SEMATECH e-Handbook, 7.3.1 (from memory): minutes by an old and a new way. Welch t, df, p and range computed
 * independently (R).
 */
import { expect, it } from "vitest";
import { sampleOf } from "../../src/science/statistics/sample.ts";
import { studentRange } from "../../src/science/statistics/student-range.ts";
import { welch } from "../../src/science/statistics/two-means.ts";
import { reached } from "../unit/science/counts.ts";

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
