/**
 * Source: University of Florida, on-farm trials handbook.
 * Mark: published (two means of two plots each, 6.15 and 4.10, squares 0.08 and 0.405, t 4.1629 on 2 df, critical
 * 2.920 at 10 % and 4.303 at 5 %).
 *
 * Plots stated by mean and variance; laid here as mean ± √(variance/2), with which Welch's t is the pooled one, since
 * both groups are as large.
 */
import { expect, it } from "vitest";
import { studentBeyond } from "../../src/science/statistics/distributions.ts";
import { welch } from "../../src/science/statistics/two-means.ts";
import { reached } from "../unit/science/counts.ts";

const plots = (mean: number, variance: number) => [
  mean - Math.sqrt(variance / 2),
  mean + Math.sqrt(variance / 2),
];

it("t 4.1629, standard error 0.4924", () => {
  const test = reached(welch(plots(6.15, 0.08), plots(4.1, 0.405)));
  expect(test.standardError).toBeCloseTo(0.492443, 6);
  expect(test.t).toBeCloseTo(4.16292, 5);
});

it("significant at 10 % and not at 5 % with 2 degrees of freedom", () => {
  expect(reached(studentBeyond(2.92, 2))).toBeCloseTo(0.1, 4);
  expect(reached(studentBeyond(4.303, 2))).toBeCloseTo(0.05, 4);
  expect(reached(studentBeyond(4.16292, 2))).toBeGreaterThan(0.05);
});
