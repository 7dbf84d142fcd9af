/**
 * Source: a European trade page, https://naujienos.pricer.lt/.
 * Mark: published (rape seed to straw 1 to 2, wheat 1 to 1.1).
 */
import { it } from "vitest";
import { holdsStrawPerBushel } from "./straw-units.ts";

it.each([
  ["oilseed-rape", 2, 1],
  ["winter-wheat", 1.1, 1],
] as const)("%s: %d lb of straw for %d lb of grain", (crop, straw, grain) => {
  holdsStrawPerBushel(crop, straw, grain);
});
