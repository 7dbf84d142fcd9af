/**
 * Source: the definition of an area, with the foot of 0.3048 m and the acre of 4046.8564224 m².
 * Mark: computed here.
 */
import { expect, it } from "vitest";
import { inUnit } from "../../src/record/units.ts";
import { wormsPerM2OfHole } from "../../src/science/earthworms/hole.ts";
import { reached } from "../unit/science/counts.ts";
import { hole } from "../unit/science/earthworms/holes.ts";

const perM2 = (worms: number, sideM: number): number =>
  reached(wormsPerM2OfHole(hole(worms, { sidesM: [sideM, sideM] }))).value;
const FOOT_M = 0.3048;

it.each([
  ["10 × 10 cm", 0.1, 100],
  ["15 × 15 cm", 0.15, 44.444],
  ["20 × 20 cm", 0.2, 25],
  ["25 × 25 cm", 0.25, 16],
  ["30 × 30 cm", 0.3, 11.111],
  ["1 ft²", FOOT_M, 10.76391],
  ["50 × 50 cm", 0.5, 4],
  ["1 m²", 1, 1],
])("one worm in %s", (_, sideM, factor) => {
  expect(perM2(1, sideM)).toBeCloseTo(factor, 3);
});

it.each([
  [9, 0.2, 225],
  [16, 0.2, 400],
  [8, 0.2, 200],
  [4, 0.2, 100],
  [7, 0.3, 77.78],
  [10, FOOT_M, 107.64],
  [20, FOOT_M, 215.28],
  [50, FOOT_M, 538.2],
])("%i worms in a hole of %d m: %d per m²", (worms, sideM, expected) => {
  expect(perM2(worms, sideM)).toBeCloseTo(expected, 2);
});

it("10 per square foot are 1 076 391 per hectare and 435 600 per acre", () => {
  expect(perM2(10, FOOT_M) / inUnit(1, "ha")).toBeCloseTo(1_076_391, 0);
  expect(perM2(10, FOOT_M) / inUnit(1, "ac")).toBeCloseTo(435_600, 0);
});

it("takes arithmetic, not a printed equivalence: 2 to 3 worms in 10 × 10 cm are 200 to 300 per m²", () => {
  // The Central European guide prints 100 to 200 for it.
  expect(perM2(2, 0.1)).toBeCloseTo(200, 9);
  expect(perM2(3, 0.1)).toBeCloseTo(300, 9);
});
