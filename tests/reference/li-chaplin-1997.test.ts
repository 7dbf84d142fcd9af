/**
 * Source: Li & Chaplin 1997, University of Minnesota.
 * Mark: published (abstract: five lines of 50 ft with 100 dots each at a true maize cover of 30 % err by ±12 % of the
 * value); computed here (independent marks would err by 13.4 %: 500 points, 95 %).
 */
import { expect, it } from "vitest";
import { wilsonInterval } from "../../src/science/statistics/proportion.ts";
import { reached } from "../unit/science/counts.ts";

it("agrees with the range of 500 points to two points in a hundred of the value", () => {
  const { lower, upper } = reached(wilsonInterval(150, 500, 0.95));
  const ofValue = (100 * (upper - lower)) / 2 / 0.3;
  expect(ofValue).toBeCloseTo(13.4, 0);
  expect(Math.abs(ofValue - 12)).toBeLessThan(2);
});
