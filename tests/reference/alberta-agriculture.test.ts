/**
 * Source: Alberta Agriculture 2001, Agri-news: residue of wheat.
 * Mark: published (25 bushels per acre leave 2000 to 2500 lb, read second-hand).
 */
import { it } from "vitest";
import { holdsStrawPerBushel } from "./straw-units.ts";

it.each([
  ["winter-wheat", 2000, 25 * 60],
  ["winter-wheat", 2500, 25 * 60],
] as const)("%s: %d lb of straw for %d lb of grain", (crop, straw, grain) => {
  holdsStrawPerBushel(crop, straw, grain);
});
