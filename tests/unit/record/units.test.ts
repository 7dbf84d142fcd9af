import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  filledHabits,
  fromShown,
  HABITS,
  inUnit,
  type Quantity,
  toShown,
  toSi,
  UNITS,
  UNITS_OF,
} from "../../../src/record/units.ts";

// NIST Special Publication 811 (2008), appendix B.8, factors printed in bold are exact (from memory):
// inch 2.54 E-02 m, foot 3.048 E-01 m, hectare 1.0 E+04 m2, gallon (US) 3.785 412 E-03 m3, fluid ounce (US)
// 2.957 353 E-05 m3; the gallon is 231 cubic inches, which is 3.785 411 784 E-03 m3 by exact arithmetic.
// NIST, "U.S. Survey Foot: Revised Unit Conversion Factors",
// https://www.nist.gov/pml/us-surveyfoot/revised-unit-conversion-factors (read):
// foot 0.3048 m; acre 4046.856 422 4 m2; furlong of 660 ft 201.168 m; mile of 5280 ft 1609.344 m;
// square mile of 640 ac 2 589 988.110 336 m2; survey acre 4046.872 609 874 m2.
describe("published factors, to the last bit", () => {
  it.each([
    [1, "in", 0.0254],
    [1, "ft", 0.3048],
    [1, "ha", 10_000],
    [1, "ac", 4046.8564224],
    [660, "ft", 201.168],
    [5280, "ft", 1609.344],
    [640, "ac", 2_589_988.110336],
    [12, "in", 0.3048],
    [1, "mm", 0.001],
    [1, "cm", 0.01],
    [1, "m", 1],
    [75, "%", 0.75],
    [444, "mL", 0.000444],
    [12, "L", 0.012],
    [1, "gal", 0.003785411784],
    [128, "fl-oz", 0.003785411784],
  ] as const)("%d %s is %d", (value, unit, si) => {
    expect(toSi(value, unit)).toBe(si);
    expect(inUnit(si, unit)).toBe(value);
  });

  it("takes the US gallon of 231 cubic inches and its 128th part, as printed to seven figures", () => {
    expect(toSi(1, "gal")).toBeCloseTo(231 * 0.0254 ** 3, 15);
    expect(toSi(1, "fl-oz") * 1e5).toBeCloseTo(2.957353, 6);
  });

  it("takes the international acre, not the survey acre, which is 4 parts in a million larger", () => {
    const surveyAcreM2 = 4046.872609874;
    expect(inUnit(surveyAcreM2, "ac") - 1).toBeCloseTo(4.0e-6, 8);
  });

  it("agrees with 1 ha = 2.471 054 ac, the factor as commonly printed for the international acre", () => {
    // 10 000 / 4046.856 422 4, by hand to seven figures
    expect(inUnit(toSi(1, "ha"), "ac")).toBeCloseTo(2.471054, 6);
  });
});

describe("habits", () => {
  it("show each quantity in the person's own unit", () => {
    expect(toShown("spacing", 0.3048, HABITS.us)).toEqual({ value: 12, unit: "in" });
    expect(toShown("spacing", 0.25, HABITS.metric)).toEqual({ value: 25, unit: "cm" });
    expect(toShown("ropeLength", 15.24, HABITS.us)).toEqual({ value: 50, unit: "ft" });
    expect(toShown("area", 4046.8564224, HABITS["uk-mixed"])).toEqual({ value: 1, unit: "ac" });
    expect(toShown("depthSoaked", 0.0254, HABITS["uk-mixed"])).toEqual({ value: 25.4, unit: "mm" });
    expect(toShown("share", 0.3, HABITS.us)).toEqual({ value: 30, unit: "%" });
  });

  it("kept before every quantity was known are filled up from the preset that they go by", () => {
    const { volume: _volume, level: _level, ...before } = HABITS.us;
    expect(filledHabits(before)).toEqual(HABITS.us);
    expect(filledHabits({ depthSoaked: "mm", area: "ac" })).toEqual({ ...HABITS.metric, area: "ac" });
    expect(filledHabits({})).toEqual(HABITS.metric);
  });

  it("can be changed one quantity at a time", () => {
    const mixed = { ...HABITS.metric, mulchThickness: "in" } as const;
    expect(fromShown("mulchThickness", 2, mixed)).toBe(0.0508);
    expect(fromShown("depthSoaked", 2, mixed)).toBe(0.002);
  });

  it("name for every quantity a unit that it may be read in", () => {
    for (const habits of Object.values(HABITS)) {
      for (const quantity of Object.keys(UNITS_OF) as Quantity[]) {
        expect(UNITS_OF[quantity]).toContain(habits[quantity]);
      }
    }
  });
});

it("there and back loses nothing that twelve figures can show", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 1e9, noNaN: true }),
      fc.constantFrom(1, -1),
      fc.constantFrom(...UNITS),
      (size, sign, unit) => {
        const back = inUnit(toSi(sign * size, unit), unit);
        return Math.abs(back - sign * size) <= size * 1e-15;
      },
    ),
    { numRuns: 2000 },
  );
});

it("whole inches, feet, acres and percents come back whole when shown with fifteen figures", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -100_000, max: 100_000 }),
      fc.constantFrom(...UNITS),
      (value, unit) => Number(inUnit(toSi(value, unit), unit).toPrecision(15)) === value,
    ),
    { numRuns: 5000 },
  );
});
