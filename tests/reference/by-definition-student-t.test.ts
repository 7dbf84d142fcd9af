/**
 * Source: the closed forms of Student's t: tan(π(p − ½)) with one degree of freedom, (2p−1)/√(2p(1−p)) with two.
 * Mark: computed here.
 */
import { expect, it } from "vitest";
import {
  normalQuantile,
  studentProbability,
  studentQuantile,
} from "../../src/science/statistics/distributions.ts";
import { reached } from "../unit/science/counts.ts";

it.each([0.001, 0.025, 0.2, 0.6, 0.975, 0.9995])("one and two degrees of freedom at %d", (p) => {
  // One degree is the Cauchy distribution: tan(π(p − ½)); two: (2p−1)/√(2p(1−p)).
  const one = Math.tan(Math.PI * (p - 0.5));
  const two = (2 * p - 1) / Math.sqrt(2 * p * (1 - p));
  expect(reached(studentQuantile(p, 1)) / one).toBeCloseTo(1, 6);
  expect(reached(studentQuantile(p, 2)) / two).toBeCloseTo(1, 6);
  expect(reached(studentProbability(two, 2))).toBeCloseTo(p, 7);
});

it("gives 323 marks for give or take 5 points at 30 % cover, 1.96²·0.21/0.05²", () => {
  expect(Math.ceil((reached(normalQuantile(0.975)) ** 2 * 0.3 * 0.7) / 0.05 ** 2)).toBe(323);
});
