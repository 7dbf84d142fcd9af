/**
 * Cover after passes. The shares are those of Soil Conservation Service & Equipment Manufacturers Institute 1992, from
 * memory; the products are computed by hand. University of Minnesota (WW-08315): mouldboard and one or two secondary
 * passes often leave under 10 %. McCool et al. 1995: cover kept and mass kept are not the same share.
 */
import { expect, it } from "vitest";
import { massForCover } from "../../src/science/residue/cover-mass.ts";
import { coverAfterPasses, leftByPass, lossByPasses } from "../../src/science/residue/passes.ts";
import { reached } from "../unit/science/counts.ts";
import { kgPerHa, own, perKg, share } from "../unit/science/straw/figures.ts";

const left = (...shares: readonly number[]) => shares.map((one) => own(one, "1", "cover-kept-by-pass"));

it.each([
  ["maize: chisel, tandem disc, planter, just short of 30 %", 0.95, [0.7, 0.5, 0.9], 29.9],
  ["maize: winter, chisel, field cultivator, planter", 0.95, [0.9, 0.7, 0.85, 0.9], 45.8],
  ["soybean: chisel, tandem disc, planter", 0.7, [0.5, 0.3, 0.8], 8.4],
  ["maize: mouldboard, tandem disc, planter", 0.95, [0.05, 0.5, 0.9], 2.1],
])("%s", (_, before, shares, percent) => {
  expect(100 * reached(coverAfterPasses(share(before), left(...shares))).middle).toBeCloseTo(percent, 1);
});

it("takes the middles of the ranges: chisel, tandem disc and planter are 0.70, 0.55 and 0.90", () => {
  const passes = (["chisel-straight-points", "tandem-disc-finishing", "planter-double-disc"] as const).map(
    (pass) => leftByPass(pass, "non-fragile"),
  );
  expect(passes.map(({ middle }) => Number(middle.toFixed(3)))).toEqual([0.7, 0.55, 0.9]);
  const after = reached(coverAfterPasses(share(0.95), passes));
  expect(after.low).toBeCloseTo(0.95 * 0.6 * 0.4 * 0.85, 12);
  expect(after.high).toBeCloseTo(0.95 * 0.8 * 0.7 * 0.95, 12);
});

it("mouldboard and two passes stay under 10 % even at the high end (Minnesota)", () => {
  const passes = (["mouldboard-plough", "tandem-disc-finishing", "planter-double-disc"] as const).map(
    (pass) => leftByPass(pass, "non-fragile"),
  );
  expect(reached(coverAfterPasses(share(0.95), passes)).high).toBeLessThan(0.1);
});

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
