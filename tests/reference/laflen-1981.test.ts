/**
 * Laflen, Amemiya & Hintz 1981, Journal of Soil and Water Conservation 36: 341-343 (from memory): three lines
 * of 100 marks know the cover to ±32 %, five to ±15 % of its value. With Student's t both follow from one
 * coefficient of variation between lines near 12.5 %, and so does the rest of the row (worked out from it).
 */
import { describe, expect, it } from "vitest";
import { PLANNING_SPREAD } from "../../src/science/constants.ts";
import { studentQuantile } from "../../src/science/statistics/distributions.ts";
import { reached } from "../unit/science/counts.ts";

/** Spread of a line at half cover and 100 marks, over the cover: what the planning spread says. */
const variation = (PLANNING_SPREAD * Math.sqrt((0.5 * 0.5) / 100)) / 0.5;
const percentError = (lines: number) =>
  (100 * reached(studentQuantile(0.975, lines - 1)) * variation) / Math.sqrt(lines);

it("plans with a coefficient of variation of 12.5 %", () => {
  expect(variation).toBeCloseTo(0.125, 12);
});

describe("relative error of a strip", () => {
  it.each([
    [3, 31.1],
    [4, 19.9],
    [5, 15.5],
    [6, 13.1],
    [8, 10.5],
    [10, 8.9],
  ])("%i lines: %d %%", (lines, error) => {
    expect(percentError(lines)).toBeCloseTo(error, 0);
    expect(Math.abs(percentError(lines) - error)).toBeLessThan(0.06);
  });

  it("lies within a point of the two remembered figures", () => {
    expect(Math.abs(percentError(3) - 32)).toBeLessThan(1);
    expect(Math.abs(percentError(5) - 15)).toBeLessThan(1);
  });
});
