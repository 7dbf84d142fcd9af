/**
 * Source: University of Nebraska-Lincoln, stover removal: yield and nutrients of stover.
 * Mark: published (a ton per 40 bushels, 34 lb of K₂O per ton).
 */
import { expect, it } from "vitest";
import { strawGrown } from "../../src/science/residue/straw-grown.ts";
import { nutrientTaken } from "../../src/science/straw/nutrients.ts";
import { reached } from "../unit/science/counts.ts";
import { kgPerHa, own } from "../unit/science/straw/figures.ts";
import { byRatio, grainOf, holdsPrinted, LB_PER_AC, LB_PER_TON, SHORT_TON_PER_AC } from "./straw-units.ts";

it.each([
  [240, 6],
  [120, 3],
])("maize %i bu/ac: %f tons per acre, 1 ton per 40 bu (University of Nebraska-Lincoln)", (bushels, tons) => {
  // 50 lb of stover, as it lies with 10 % moisture, per bushel of 56 lb.
  const grown = reached(strawGrown(grainOf(bushels * 56 * LB_PER_AC, 0.845), byRatio(50 / 56)));
  expect(grown.middle / SHORT_TON_PER_AC).toBeCloseTo(tons, 3);
});

it("1.8 tons of maize stover at 34 lb of K₂O per ton hold 61.2 lb", () => {
  const content = own(34 * LB_PER_TON, "kg/t", "nutrient");
  const taken = reached(nutrientTaken(content, kgPerHa(1.8 * SHORT_TON_PER_AC)));
  expect(taken.middle / LB_PER_AC).toBeCloseTo(61.2, 2);
});

it.each([
  ["maize", "N", 8.5],
  ["maize", "P2O5", 2],
  ["maize", "K2O", 17],
  ["maize", "K2O", 25],
] as const)("the range of %s %s holds %d kg/t", (crop, nutrient, printed) => {
  holdsPrinted(crop, nutrient, printed);
});
