/**
 * Source: University of Illinois, value of straw and stover.
 * Mark: published.
 */
import { expect, it } from "vitest";
import { strawGrown } from "../../src/science/residue/straw-grown.ts";
import { afterRain } from "../../src/science/straw/nutrients.ts";
import { reached } from "../unit/science/counts.ts";
import { own } from "../unit/science/straw/figures.ts";
import { byIndex, grainOf, holdsPrinted, LB } from "./straw-units.ts";

it.each([
  ["maize, 56 lb at 15.5 %", 56, 0.845, 47.3],
  ["wheat, 60 lb at 13.5 %", 60, 0.865, 51.9],
])("%s: %f lb dry per bushel at 1:1 (University of Illinois)", (_, lb, dry, residue) => {
  const grown = reached(strawGrown(grainOf(lb * LB, dry), byIndex(0.5)));
  expect(grown.middle / LB).toBeCloseTo(residue, 1);
});

it("potash can fall by 80 % after rain on the swath", () => {
  const rain = own([0, 0.4, 0.8], "1", "washed-out");
  expect(reached(afterRain(own(25, "kg/t", "nutrient"), rain)).low).toBeCloseTo(5, 9);
});

it.each([
  ["N", 4.5],
  ["N", 6],
  ["P2O5", 1.5],
  ["P2O5", 2],
  ["K2O", 12.5],
  ["K2O", 22.5],
] as const)(
  "the range of %s in wheat straw holds %d kg/t (9-12, 3-4 and 25-45 lb per ton)",
  (nutrient, printed) => {
    holdsPrinted("winter-wheat", nutrient, printed);
  },
);
