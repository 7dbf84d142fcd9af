/**
 * Source: the definition of a geometric mean and its range by Student's t on logs.
 * Mark: computed here by exact arithmetic on a constructed set (12, 20, 35, 50, 180 mm/h); from memory (t = 2.776 for
 * four degrees of freedom).
 */
import { expect, it } from "vitest";
import { meanOfRings } from "../../src/science/infiltration/replicates.ts";
import { spreadBetweenRings } from "../../src/science/infiltration/smallest-ratio.ts";
import { reached } from "../unit/science/counts.ts";

const point = (value: number) => ({
  id: String(value),
  value,
  least: 1,
  censored: false,
  burrow: false,
  crack: false,
});

it("has a geometric mean of 37.64 mm/h, 10.48 to 135.2", () => {
  const mean = reached(meanOfRings([12, 20, 35, 50, 180].map(point), "mm/h"));
  expect(mean.value).toBeCloseTo(37.64474, 5);
  const range = reached(mean.range);
  expect(range.lower).toBeCloseTo(10.4814, 3);
  expect(range.upper).toBeCloseTo(135.204, 2);
  expect(reached(spreadBetweenRings([[12, 20, 35, 50, 180]])).logSpread).toBeCloseTo(1.029741, 6);
});

it("averages rates and not times: 4, 10 and 40 min for an inch are 5.13 in/h, not 3.33", () => {
  const rates = [4, 10, 40].map((minutes) => 60 / minutes);
  expect(reached(meanOfRings(rates.map(point), "mm/h")).value).toBeCloseTo(5.1299, 4);
});
