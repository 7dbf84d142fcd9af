/**
 * Source: College of the Holy Cross, "Mann-Kendall by hand".
 * Mark: published (14 values, 72 rises, 18 falls, 1 tie, S 54, variance 332.6667, Z 2.9058); computed here with R (p,
 * slope and range).
 */
import { expect, it } from "vitest";
import { mannKendall } from "../../src/science/statistics/kendall.ts";
import { gilbertRange, theilSen } from "../../src/science/statistics/theil-sen.ts";
import { reached } from "../unit/science/counts.ts";

const POINTS = [12.9, 14.8, 13.2, 15.7, 13.8, 15.6, 12.9, 11.0, 17.3, 15.9, 19.0, 18.3, 20.1, 21.7].map(
  (value, time) => ({ time, value }),
);

it("S 54, variance 332.6667, Z 2.9058, two-sided 0.003663", () => {
  const test = reached(mannKendall(POINTS));
  expect(test).toMatchObject({ s: 54, tiedValues: [2], exact: false });
  expect(test.variance).toBeCloseTo(332.6667, 4);
  expect(test.z).toBeCloseTo(2.9058, 4);
  expect(test.chance).toBeCloseTo(0.003663, 6);
});

it("slope 0.566667 a step, 0.32313 to 0.86978", () => {
  const line = reached(theilSen(POINTS));
  expect(line.slope).toBeCloseTo(0.566667, 6);
  const range = reached(gilbertRange(line.slopes, 998 / 3, 0.95));
  expect(range.lower).toBeCloseTo(0.32313, 4);
  expect(range.upper).toBeCloseTo(0.86978, 4);
});
