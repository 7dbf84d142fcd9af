/**
 * Source: Greb 1966, Soil Science Society of America Proceedings 30, wheat straw on wet soil.
 * Mark: published (abstract: 1,120 kg/ha, 30 % cover, cut the loss of 20 days by 16 %, 60 % cover by 33 %, 3,360
 * kg/ha, 90 % cover, by 49 %); common practice, no source (1,120 kg/ha for 30 %, the low end for wheat); computed here
 * by hand (the coefficient, and the covers by others).
 *
 * His covers grow straight with the mass, without overlap: only the first is held against the curve by mass.
 */
import { expect, it } from "vitest";
import { coverCoefficientOf, coverFromMass } from "../../src/science/residue/cover-mass.ts";
import { reached } from "../unit/science/counts.ts";
import { kgPerHa, perKg } from "../unit/science/straw/figures.ts";
import { cut } from "./mulch-cover.ts";

it.each([
  [0.3, 0.16],
  [0.6, 0.33],
  [0.9, 0.49],
])("holds what Greb saw at %d cover, within 4 points at the high end", (cover, seen) => {
  expect(Math.abs(cut(cover).high - seen)).toBeLessThan(0.04 + 1e-9);
  expect(cut(cover).low).toBeLessThan(seen);
});

it("1120 kg/ha and 30 % are one thing at 3.18 m²/kg (Greb 1966; rule of thumb), the low end for wheat", () => {
  const cover = reached(coverFromMass([{ mass: kgPerHa(1120), coefficient: perKg(3.18) }]));
  expect(cover.middle).toBeCloseTo(0.3, 2);
  expect(reached(coverCoefficientOf("winter-wheat")).low).toBeCloseTo(3.18, 1);
});

it.each([
  [5.4, 45.4],
  [6.4, 51.2],
])("1121 kg/ha at %f m²/kg cover %f percent, not 30", (coefficient, percent) => {
  const cover = reached(coverFromMass([{ mass: kgPerHa(1121), coefficient: perKg(coefficient) }]));
  expect(100 * cover.middle).toBeCloseTo(percent, 1);
});
