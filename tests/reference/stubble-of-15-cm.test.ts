/**
 * Source: "Vertical distribution of dry mass in cereals straw and its loss during harvesting".
 * Mark: published (abstract: a stubble of 15 cm holds 22 % of the straw of winter wheat, 24 % of spring wheat, 31 % of
 * spring barley).
 *
 * Lengths of straw are assumed here: 0.80, 0.80 and 0.65 m.
 */
import { expect, it } from "vitest";
import { shareBelow, stemShape } from "../../src/science/residue/cutting-height.ts";
import { reached } from "../unit/science/counts.ts";
import { metres } from "../unit/science/straw/figures.ts";

it.each([
  ["winter wheat", 0.15, 0.8, 0.22],
  ["spring wheat", 0.15, 0.8, 0.24],
  ["spring barley", 0.15, 0.65, 0.31],
])("%s, cut at %f m: the range holds %f", (_, cut, length, measured) => {
  const below = reached(shareBelow(metres(cut), { length: metres(length), shape: stemShape() }));
  expect(measured).toBeGreaterThanOrEqual(below.low - 0.005);
  expect(measured).toBeLessThanOrEqual(below.high + 0.005);
});
