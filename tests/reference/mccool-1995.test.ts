/**
 * Source: McCool et al. 1995, cover and mass kept by tillage (USDA-ARS).
 * Mark: published (they are not the same share); computed here by hand from Gregory's curve at 2.3 m²/kg (how far
 * apart).
 */
import { expect, it } from "vitest";
import { massForCover } from "../../src/science/residue/cover-mass.ts";
import { coverAfterPasses, lossByPasses } from "../../src/science/residue/passes.ts";
import { reached } from "../unit/science/counts.ts";
import { kgPerHa, own, perKg, share } from "../unit/science/straw/figures.ts";

const left = (...shares: readonly number[]) => shares.map((one) => own(one, "1", "cover-kept-by-pass"));

it.each([
  [0.95, 0.365],
  [0.2, 0.676],
])("a pass that leaves 70 percent of a cover of %f leaves %f of the mass", (before, massShare) => {
  const after = reached(coverAfterPasses(share(before), left(0.7)));
  const mass = reached(massForCover(share(after.middle), perKg(2.3))).middle;
  const had = reached(massForCover(share(before), perKg(2.3))).middle;
  expect(mass / had).toBeCloseTo(massShare, 3);
  const loss = reached(lossByPasses({ mass: kgPerHa(had), coefficient: perKg(2.3) }, left(0.7)));
  expect(1 - loss.middle).toBeCloseTo(massShare, 3);
});

it("95 % cover at 2.3 m²/kg is 13 025 kg/ha, and 66.5 % is 4755", () => {
  expect(reached(massForCover(share(0.95), perKg(2.3))).middle).toBeCloseTo(13_025, 0);
  expect(reached(massForCover(share(0.665), perKg(2.3))).middle).toBeCloseTo(4755, 0);
});
