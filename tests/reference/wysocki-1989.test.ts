/**
 * Source: Wysocki 1989, Pacific Northwest conservation tillage handbook, chapter 3.
 * Mark: published (wheat straw to grain of 1.16 to 2.00); computed here by hand (69.6 lb per bushel).
 */
import { expect, it } from "vitest";
import { strawGrown } from "../../src/science/residue/straw-grown.ts";
import { reached } from "../unit/science/counts.ts";
import { byRatio, grainOf, LB } from "./straw-units.ts";

it("wheat straw to grain of 1.16: 69.6 lb per bushel (Wysocki 1989)", () => {
  const grown = reached(strawGrown(grainOf(60 * LB, 0.865), byRatio(1.16)));
  expect(grown.middle / LB).toBeCloseTo(69.6, 1);
});

it("at 2.00 it is 120 lb per bushel by arithmetic, where 100 is printed", () => {
  const grown = reached(strawGrown(grainOf(60 * LB, 0.865), byRatio(2)));
  expect(grown.middle / LB).toBeCloseTo(120, 9);
});
