/**
 * Source: NRCS permeability classes for saturated soil, adapted from USEPA 1981, Process Design Manual for Land
 * Treatment.
 * Mark: published (breaks at 0.06, 0.2, 0.6, 2, 6 and 20 in/h, one class below 0.06); computed here (rates, 1 in/h =
 * 25.4 mm/h).
 *
 * A value on a break belongs to the faster class (own rule: the table does not say).
 */
import { describe, expect, it } from "vitest";
import { permeabilityClass } from "../../src/science/infiltration/kfs/permeability-class.ts";
import { reached } from "../unit/science/counts.ts";

const ofInches = (rate: number): string => reached(permeabilityClass(rate * 25.4)).name;

describe("breaks in inches an hour", () => {
  it.each([
    [0.06, "very-slow", "slow"],
    [0.2, "slow", "moderately-slow"],
    [0.6, "moderately-slow", "moderate"],
    [2, "moderate", "moderately-rapid"],
    [6, "moderately-rapid", "rapid"],
    [20, "rapid", "very-rapid"],
  ])("%d in/h", (rate, below, above) => {
    expect(ofInches(rate)).toBe(above);
    expect(ofInches(rate * 0.999)).toBe(below);
    expect(ofInches(rate * 1.001)).toBe(above);
    // A break that is come to by way of minutes per inch.
    expect(reached(permeabilityClass(25.4 / (60 / rate / 60))).name).toBe(above);
  });
});

it.each([
  [12, 127, "moderately-rapid"],
  [25, 60.96, "moderately-rapid"],
  [42, 36.2857, "moderate"],
  [120, 12.7, "moderately-slow"],
])("an inch in %d min is %d mm/h: %s", (minutes, mmPerH, name) => {
  expect((60 * 25.4) / minutes).toBeCloseTo(mmPerH, 3);
  expect(reached(permeabilityClass((60 * 25.4) / minutes)).name).toBe(name);
});

it("has one class below 0.06 in/h, down to nothing", () => {
  expect(ofInches(0.0001)).toBe("very-slow");
  expect(ofInches(0)).toBe("very-slow");
});

it("gives the ends in mm/h: moderate is 15.24 to 50.8", () => {
  const { fromMmPerH, belowMmPerH } = reached(permeabilityClass(36));
  expect(fromMmPerH).toBeCloseTo(15.24, 9);
  expect(belowMmPerH).toBeCloseTo(50.8, 9);
});
