/**
 * Source: Iowa State University Extension, PM 1688, nutrients in stover.
 * Mark: published (4.8 lb P₂O₅ and 18 lb K₂O per ton of maize stover, 4.7 and 23 lb of soybean residue).
 */
import { expect, it } from "vitest";
import { nutrientTaken } from "../../src/science/straw/nutrients.ts";
import { reached } from "../unit/science/counts.ts";
import { kgPerHa, own } from "../unit/science/straw/figures.ts";
import { holdsPrinted, LB_PER_AC, LB_PER_TON, SHORT_TON_PER_AC } from "./straw-units.ts";

it.each([
  ["1.8 tons of maize stover, 4.8 lb P₂O₅ per ton", 1.8, 4.8, 8.64],
  ["1.8 tons of maize stover, 18 lb K₂O per ton", 1.8, 18, 32.4],
  ["2 bales of 1500 lb, 4.8 lb P₂O₅ per ton", 1.5, 4.8, 7.2],
])("%s", (_, tons, lbPerTon, lbPerAc) => {
  const content = own(lbPerTon * LB_PER_TON, "kg/t", "nutrient");
  const taken = reached(nutrientTaken(content, kgPerHa(tons * SHORT_TON_PER_AC)));
  expect(taken.middle / LB_PER_AC).toBeCloseTo(lbPerAc, 2);
});

it.each([
  ["maize", "P2O5", 2.4],
  ["maize", "K2O", 9],
  ["soybean", "P2O5", 2.35],
  ["soybean", "K2O", 11.5],
] as const)("the range of %s %s holds %d kg/t", (crop, nutrient, printed) => {
  holdsPrinted(crop, nutrient, printed);
});
