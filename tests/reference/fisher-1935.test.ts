/**
 * Source: Fisher 1935, The Design of Experiments, section 21: heights of 15 pairs of plants (Darwin), differences in
 * eighths of an inch.
 * Mark: from memory (data; 863 of 32,768 sums of 314 or more, 5.26 % on both sides); computed here with R (signed
 * rank).
 */
import { expect, it } from "vitest";
import { sampleOf } from "../../src/science/statistics/sample.ts";
import { signFlip } from "../../src/science/statistics/sign-flip.ts";
import { signedRank } from "../../src/science/statistics/signed-rank.ts";
import { pairedStudent } from "../../src/science/statistics/two-means.ts";
import { reached } from "../unit/science/counts.ts";

const EIGHTHS = [49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48];

it("863 of 32,768 patterns of signs on one side: 0.0526733 on both", () => {
  const seen = reached(signFlip(EIGHTHS, 1));
  expect(seen.exact).toBe(true);
  expect((seen.chance * 32_768) / 2).toBe(863);
  expect(seen.chance).toBeCloseTo(0.0526733, 7);
});

it("the same in inches, where sums carry rounding", () => {
  const inches = EIGHTHS.map((eighths) => (eighths / 8) * 2.54);
  expect((reached(signFlip(inches, 1)).chance * 32_768) / 2).toBe(863);
});

it("sum 314, mean 20.93333, sd 37.74438, t 2.147987 on 14 with p = 0.049703", () => {
  expect(EIGHTHS.reduce((sum, value) => sum + value, 0)).toBe(314);
  expect(reached(sampleOf(EIGHTHS)).standardDeviation).toBeCloseTo(37.74438, 5);
  const test = reached(pairedStudent(EIGHTHS));
  expect(test.difference).toBeCloseTo(20.93333, 5);
  expect(test.t).toBeCloseTo(2.147987, 6);
  expect(test.degreesOfFreedom).toBe(14);
  expect(test.chance).toBeCloseTo(0.049703, 6);
});

it("signed ranks 96 and 24, exact p = 0.0412598", () => {
  const seen = reached(signedRank(EIGHTHS));
  expect([seen.positive, seen.negative]).toEqual([96, 24]);
  expect(seen.chance).toBeCloseTo(0.0412598, 7);
});
