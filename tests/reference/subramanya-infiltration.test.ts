/**
 * K. Subramanya, Engineering Hydrology (third edition): the worked example of infiltration, and problems on
 * p. 98 (3.11 to 3.15). Times and depths as printed there, centimetres as millimetres (published, read in
 * copies); the rates of the worked example agree with its printed sheet. Spreads and pooled rates are exact
 * arithmetic on those readings.
 */
import { describe, expect, it } from "vitest";
import { depthAfter } from "../../src/science/infiltration/depth-after.ts";
import { levellingOf } from "../../src/science/infiltration/levelling.ts";
import { rateOf } from "../../src/science/infiltration/pieces.ts";
import { reached } from "../unit/science/counts.ts";
import { rounded, topped } from "../unit/science/infiltration/rings.ts";

type Points = readonly (readonly [number, number])[];
const points = (minutes: readonly number[], mm: readonly number[]): Points =>
  minutes.map((min, at) => [min, mm[at] ?? Number.NaN] as const);

const EXAMPLE = points(
  [5, 10, 15, 25, 45, 60, 75, 90, 110, 130],
  [17.5, 30, 39.5, 55, 72.5, 83, 93, 102, 112.8, 123.6],
);
const P3_11 = points(
  [5, 10, 15, 20, 30, 40, 60, 80, 100],
  [21.5, 37.7, 52.2, 65.8, 78.4, 89.5, 101.8, 112.6, 123.3],
);
const P3_12 = points([5, 10, 15, 20, 30, 40, 60, 120, 150], [1, 1.8, 2.5, 3.1, 4.2, 5.1, 6.6, 11, 12.9]);
const P3_15 = points([2, 10, 30, 60, 90, 120, 240, 360], [70, 200, 335, 378, 395, 410, 430, 450]);
const P3_13 = points(
  [5, 10, 15, 25, 40, 60, 75, 90, 110, 130],
  [21, 36, 47.6, 56.9, 63.8, 69.8, 74.8, 79.3, 87, 92],
);

describe("the worked example", () => {
  const soaking = topped(EXAMPLE);

  it("has the rates of the printed sheet", () => {
    expect(rounded(soaking.pieces.map(rateOf), 2)).toEqual([210, 150, 114, 93, 52.5, 42, 40, 36, 32.4, 32.4]);
  });

  it("has soaked in 83 mm after an hour, and 59.375 mm after half an hour by interpolation", () => {
    expect(reached(depthAfter(soaking, 60)).value).toBeCloseTo(83, 9);
    expect(reached(depthAfter(soaking, 30)).value).toBeCloseTo(59.375, 9);
  });

  it("has last rates of 36, 32.4, 32.4: 10.714 % apart, so not levelled off, 33.38 mm/h pooled", () => {
    const levelling = reached(levellingOf(soaking));
    expect(rounded(levelling.rates, 2)).toEqual([36, 32.4, 32.4]);
    expect(levelling.spread).toBeCloseTo(0.10714, 5);
    expect(levelling.status).toBe("still-slowing");
    expect(levelling.rate.value).toBeCloseTo(33.3818, 4);
  });
});

it.each([
  ["3.11", P3_11, [258, 194.4, 174, 163.2, 75.6, 66.6, 36.9, 32.4, 32.1]],
  ["3.12", P3_12, [12, 9.6, 8.4, 7.2, 6.6, 5.4, 4.5, 4.4, 3.8]],
  ["3.13", P3_13, [252, 180, 139.2, 55.8, 27.6, 18, 20, 18, 23.1, 15]],
  ["3.15", P3_15, [2100, 975, 405, 86, 34, 30, 10, 10]],
] as const)(
  "the rates of problem %s between its readings, mm/h (exact arithmetic)",
  (_name, readings, rates) => {
    expect(rounded(topped(readings).pieces.map(rateOf), 2)).toEqual(rates);
  },
);

describe("almost no published test of two hours has levelled off", () => {
  it.each([
    ["3.11", P3_11, 0.14201, 33.8],
    ["3.12", P3_12, 0.16535, 4.2545],
    ["3.13", P3_13, 0.43316, 18.7636],
    ["3.15", P3_15, 1.2, 12.2222],
  ] as const)("problem %s", (_name, readings, spread, pooled) => {
    const levelling = reached(levellingOf(topped(readings)));
    expect(levelling.status).toBe("still-slowing");
    expect(levelling.spread).toBeCloseTo(spread, 5);
    expect(levelling.rate.value).toBeCloseTo(pooled, 4);
  });

  it("problem 3.13 rises from 18 to 23.1 mm/h at one reading, and that is said", () => {
    expect(topped(P3_13).cautions.map(({ code }) => code)).toEqual(["science/ring-rate-rose"]);
    expect(topped(EXAMPLE).cautions).toEqual([]);
  });
});
