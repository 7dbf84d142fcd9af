/**
 * Source: Ohio State University Extension, nutrient value of wheat straw.
 * Mark: published (11, 3 and 20 lb of N, P₂O₅ and K₂O per ton).
 */
import { it } from "vitest";
import { holdsPrinted } from "./straw-units.ts";

it.each([
  ["winter-wheat", "N", 5.5],
  ["winter-wheat", "P2O5", 1.5],
  ["winter-wheat", "K2O", 10],
] as const)("the range of %s %s holds %d kg/t", (crop, nutrient, printed) => {
  holdsPrinted(crop, nutrient, printed);
});
