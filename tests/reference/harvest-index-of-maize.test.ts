/**
 * Source: a trade journal's page on harvest index, https://www.farms.com/news/harvest-index-a-predictor-of-corn-
 * stover-yield-59114.aspx.
 * Mark: published (9800 lb/ac of grain with 9000 lb of stover are 0.52).
 */
import { expect, it } from "vitest";
import { strawGrown } from "../../src/science/residue/straw-grown.ts";
import { reached } from "../unit/science/counts.ts";
import { byIndex, grainOf, LB_PER_AC } from "./straw-units.ts";

it("maize 9800 lb/ac with 9000 lb of stover: harvest index 0.52 (farms.com, harvest index)", () => {
  const grown = reached(strawGrown(grainOf(9800 * LB_PER_AC, 1), byIndex(9800 / 18_800)));
  expect(grown.middle / LB_PER_AC).toBeCloseTo(9000, 6);
  const printed = reached(strawGrown(grainOf(9800 * LB_PER_AC, 1), byIndex(0.52)));
  expect(printed.middle / LB_PER_AC / 9000).toBeCloseTo(1, 1);
});
