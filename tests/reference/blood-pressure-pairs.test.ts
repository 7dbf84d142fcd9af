/**
 * Source: a textbook example: blood pressure of twelve people before and after.
 * Mark: from memory (data, and t as printed there); computed here with R (the rest).
 */
import { expect, it } from "vitest";
import { sampleOf } from "../../src/science/statistics/sample.ts";
import { studentRange } from "../../src/science/statistics/student-range.ts";
import { pairedStudent } from "../../src/science/statistics/two-means.ts";
import { reached } from "../unit/science/counts.ts";

const BEFORE = [120, 124, 130, 118, 140, 128, 140, 135, 126, 130, 126, 127];
const AFTER = [128, 131, 131, 127, 132, 125, 141, 137, 118, 132, 129, 135];

it("mean -1.8333, sd 5.8284, t -1.08965 on 11, p = 0.29916, -5.53649 to 1.86983", () => {
  const differences = BEFORE.map((before, at) => before - (AFTER[at] ?? 0));
  expect(reached(sampleOf(differences)).standardDeviation).toBeCloseTo(5.8284, 4);
  const test = reached(pairedStudent(differences));
  expect(test.difference).toBeCloseTo(-1.8333, 4);
  expect(test.t).toBeCloseTo(-1.08965, 5);
  expect(test.chance).toBeCloseTo(0.29916, 5);
  const range = reached(studentRange(test.difference, test.standardError, 11, 0.95));
  expect(range.lower).toBeCloseTo(-5.53649, 5);
  expect(range.upper).toBeCloseTo(1.86983, 5);
});
