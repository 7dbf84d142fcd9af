/**
 * Source: University of Nebraska-Lincoln, G1846, harvesting crop residues.
 * Mark: published (a ton of soybean residue for 30 bushels, a ton of wheat straw for 20, read second-hand).
 */
import { it } from "vitest";
import { holdsStrawPerBushel } from "./straw-units.ts";

it.each([
  ["soybean", 2000, 30 * 60],
  ["winter-wheat", 2000, 20 * 60],
] as const)("%s: %d lb of straw for %d lb of grain", (crop, straw, grain) => {
  holdsStrawPerBushel(crop, straw, grain);
});
