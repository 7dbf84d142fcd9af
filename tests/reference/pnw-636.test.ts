/**
 * Source: Sullivan & Andrews, Pacific Northwest Extension PNW 636, nitrogen from cover crops.
 * Mark: published (edition of 2012: nothing below 1.5 % N in dry matter, about 35 lb per ton at 3.5 %, straight
 * between; current edition: 3 to 4 % N give 25 to 40 lb per ton); computed here (1 lb per short ton is half a kilogram
 * per tonne).
 */
import { describe, expect, it } from "vitest";
import { availableNitrogenPerTonne } from "../../src/science/nitrogen/tie-up.ts";
import { reached } from "../unit/science/counts.ts";
import { figure } from "../unit/science/figures.ts";

const line = (percent: number) => reached(availableNitrogenPerTonne(figure("nitrogen-share", percent / 100)));

describe("the line", () => {
  it.each([
    [1, 0],
    [1.5, 0],
    [2, 8.75],
    [2.5, 17.5],
    [3.5, 35],
  ])("at %d %% N", (percent, poundsPerTon) => {
    expect(line(percent).middle).toBeCloseTo(poundsPerTon / 2, 9);
  });

  it.each([
    [3, 25],
    [4, 40],
  ])("holds the newer edition at %d %% N", (percent, poundsPerTon) => {
    expect(line(percent).low).toBeLessThanOrEqual(poundsPerTon / 2 + 1e-9);
    expect(line(percent).high).toBeGreaterThanOrEqual(poundsPerTon / 2 - 1e-9);
  });
});

it("is 35 lb/ac for 4000 lb/ac of 2.5 % N, where shares of all nitrogen say 25 to 50", () => {
  expect(line(2.5).middle * 4).toBeCloseTo(35, 9);
});
