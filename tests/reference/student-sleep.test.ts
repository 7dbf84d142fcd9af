/**
 * Source: Student 1908, hours of sleep gained by ten people with two drugs (R, datasets::sleep).
 * Mark: published (values as R prints them); computed here (the exact signed rank with the one zero dropped, 2/2⁹).
 */
import { expect, it } from "vitest";
import { normalSignedRank, signedRank } from "../../src/science/statistics/signed-rank.ts";
import { studentRange } from "../../src/science/statistics/student-range.ts";
import { pairedStudent, welch } from "../../src/science/statistics/two-means.ts";
import { reached } from "../unit/science/counts.ts";

const FIRST = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0];
const SECOND = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];
const GAINED = SECOND.map((second, at) => second - (FIRST[at] ?? 0));

it("Welch t -1.860813, df 17.77647, p = 0.0793941, -3.365483 to 0.205483", () => {
  const test = reached(welch(FIRST, SECOND));
  expect(test.t).toBeCloseTo(-1.860813, 6);
  expect(test.degreesOfFreedom).toBeCloseTo(17.77647, 5);
  expect(test.chance).toBeCloseTo(0.0793941, 6);
  const range = reached(studentRange(test.difference, test.standardError, test.degreesOfFreedom, 0.95));
  expect(range.lower).toBeCloseTo(-3.365483, 5);
  expect(range.upper).toBeCloseTo(0.205483, 5);
});

it("paired t 4.062128, df 9, p = 0.0028329, mean 1.58, 0.700114 to 2.459886", () => {
  const test = reached(pairedStudent(GAINED));
  expect(test.t).toBeCloseTo(4.062128, 6);
  expect(test.chance).toBeCloseTo(0.0028329, 6);
  const range = reached(studentRange(test.difference, test.standardError, 9, 0.95));
  expect(test.difference).toBeCloseTo(1.58, 10);
  expect(range.lower).toBeCloseTo(0.700114, 6);
  expect(range.upper).toBeCloseTo(2.459886, 6);
});

it("signed rank exact 0.00390625, normal curve with continuity 0.0090907", () => {
  expect(reached(signedRank(GAINED))).toMatchObject({ used: 9, chance: 0.00390625 });
  expect(reached(normalSignedRank(GAINED))).toBeCloseTo(0.0090907, 6);
});
