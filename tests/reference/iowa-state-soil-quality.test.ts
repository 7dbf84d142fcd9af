/**
 * Source: Iowa State University Extension, stover harvest and soil quality.
 * Mark: published (168 bu/ac of maize at a harvest index of 0.5 are 4.0 tons per acre).
 */
import { expect, it } from "vitest";
import { strawGrown } from "../../src/science/residue/straw-grown.ts";
import { reached } from "../unit/science/counts.ts";
import { byIndex, grainOf, LB_PER_AC, SHORT_TON_PER_AC } from "./straw-units.ts";

it("maize 168 bu/ac at a harvest index of 0.5: 4.0 tons per acre (Iowa State University, Soil quality)", () => {
  // 168 bu of 56 lb at 15.5 % moisture.
  const grown = reached(strawGrown(grainOf(168 * 56 * LB_PER_AC, 0.845), byIndex(0.5)));
  expect(grown.middle / SHORT_TON_PER_AC).toBeCloseTo(4.0, 1);
});
