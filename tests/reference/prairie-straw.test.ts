/**
 * Source: prairie figures of the dark brown soil zone, https://docslib.org/doc/8439556/.
 * Mark: published (65 lb of straw and 20 to 25 of chaff for a bushel of spring wheat, 50 and 15 to 20 for one of canola).
 */
import { it } from "vitest";
import { holdsStrawPerBushel } from "./straw-units.ts";

it.each([
  ["spring-wheat", 65 + 20, 60],
  ["spring-wheat", 65 + 25, 60],
  ["oilseed-rape", 50 + 15, 50],
  ["oilseed-rape", 50 + 20, 50],
] as const)("%s: %d lb of straw for %d lb of grain", (crop, straw, grain) => {
  holdsStrawPerBushel(crop, straw, grain);
});
