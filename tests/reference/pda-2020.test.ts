/**
 * Source: Potash Development Association 2020, Nutrients in crop material.
 * Mark: published (kg per tonne of fresh straw); from memory (rape seed 14 and 11 kg/t); computed here by hand (sums
 * with grain).
 */
import { expect, it } from "vitest";
import { nutrientPerTonne, nutrientTaken } from "../../src/science/straw/nutrients.ts";
import { reached } from "../unit/science/counts.ts";
import { kgPerHa, own } from "../unit/science/straw/figures.ts";
import { holdsPrinted } from "./straw-units.ts";

it.each([
  // Per tonne of grain with half a tonne of straw: grain 6.5 and 5.5, straw 1.0 and 10.0 kg/t.
  ["P2O5", 6.5, 1, 7],
  ["K2O", 5.5, 10, 10.5],
] as const)("winter wheat, grain and straw, %s: %f + 0.5·%f = %f", (nutrient, grain, straw, both) => {
  const taken = reached(nutrientTaken(own(straw, "kg/t", "nutrient"), kgPerHa(500)));
  expect(grain + taken.middle).toBeCloseTo(both, 9);
  const range = reached(nutrientPerTonne("winter-wheat", nutrient));
  expect(range.low).toBeLessThanOrEqual(straw);
  expect(range.high).toBeGreaterThanOrEqual(straw);
});

it.each([
  // Seed 14 and 11 kg/t (from memory), straw 2.0 and 13.0 kg/t, half a tonne of it.
  ["P2O5", 14, 2, 15],
  ["K2O", 11, 13, 17.5],
] as const)("oilseed rape, seed and straw, %s: %f + 0.5·%f = %f", (nutrient, seed, straw, both) => {
  expect(reached(nutrientPerTonne("oilseed-rape", nutrient)).middle).toBe(straw);
  const taken = reached(nutrientTaken(reached(nutrientPerTonne("oilseed-rape", nutrient)), kgPerHa(500)));
  expect(seed + taken.middle).toBeCloseTo(both, 9);
});

it.each([
  ["winter-wheat", "P2O5", 1],
  ["winter-wheat", "K2O", 10],
  ["spring-wheat", "K2O", 13],
  ["barley", "P2O5", 1],
  ["barley", "K2O", 10],
  ["barley", "K2O", 13],
  ["oilseed-rape", "P2O5", 2],
  ["oilseed-rape", "K2O", 13],
  ["pea", "P2O5", 4],
  ["pea", "K2O", 16],
  ["field-bean", "P2O5", 2.5],
  ["field-bean", "K2O", 16],
] as const)("the range of %s %s holds %d kg/t", (crop, nutrient, printed) => {
  holdsPrinted(crop, nutrient, printed);
});
