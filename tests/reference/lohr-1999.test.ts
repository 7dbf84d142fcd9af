/**
 * Source: Lohr 1999, Sampling: Design and Analysis, example 5.2 (p. 137): grade points of five suites of four
 * students.
 * Mark: published (totals 12.16, 11.36, 8.96, 12.96, 11.08, mean 2.826, standard error of the total of 100 suites
 * 67.1667 without finite-population correction, 0.167917 for the mean); computed here (mean squares, correlation,
 * design effect).
 */
import { expect, it } from "vitest";
import { clusterRatio } from "../../src/science/statistics/cluster-ratio.ts";
import { intraclass } from "../../src/science/statistics/intraclass.ts";
import { reached } from "../unit/science/counts.ts";

const SUITES = [
  [3.08, 2.6, 3.44, 3.04],
  [2.36, 3.04, 3.28, 2.68],
  [2.0, 2.56, 2.52, 1.88],
  [3.0, 2.88, 3.44, 3.64],
  [2.68, 1.92, 3.28, 3.2],
];

it("gives the mean and its standard error with the suite as the unit", () => {
  const totals = SUITES.map((suite) => ({
    total: suite.reduce((sum, grade) => sum + grade, 0),
    size: suite.length,
  }));
  expect(totals.map(({ total }) => Number(total.toFixed(2)))).toEqual([12.16, 11.36, 8.96, 12.96, 11.08]);
  const { ratio, standardError, size, clusters } = reached(clusterRatio(totals));
  expect(ratio).toBeCloseTo(2.826, 10);
  expect(standardError).toBeCloseTo(0.167917, 6);
  expect(400 * (standardError ?? 0)).toBeCloseTo(67.16666, 3);
  expect([size, clusters]).toEqual([20, 5]);
});

it("mean squares 0.56392 and 0.18504, correlation 0.338576, design effect 2.015728 (recomputed)", () => {
  const seen = reached(intraclass(SUITES));
  expect(seen.between).toBeCloseTo(0.56392, 5);
  expect(seen.within).toBeCloseTo(0.18504, 5);
  expect(seen.correlation).toBeCloseTo(0.338576, 6);
  expect(seen.designEffect).toBeCloseTo(2.015728, 6);
});
