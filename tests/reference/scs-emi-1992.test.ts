/**
 * Source: Soil Conservation Service & Equipment Manufacturers Institute 1992, cover left by machines.
 * Mark: from memory (shares of the cover that passes leave); computed here by hand (products of them).
 */
import { expect, it } from "vitest";
import { coverAfterHarvest, coverAfterPasses, leftByPass } from "../../src/science/residue/passes.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";
import { own, share } from "../unit/science/straw/figures.ts";

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

it.each([
  ["maize", 90, 95],
  ["winter-wheat", 85, 90],
  ["barley", 85, 90],
  ["sorghum", 80, 90],
  ["soybean", 70, 80],
] as const)("%s: %i to %i %%", (crop, low, high) => {
  const cover = reached(coverAfterHarvest(crop));
  expect([cover.low, cover.middle, cover.high].map((share) => Math.round(1000 * share) / 10)).toEqual([
    low,
    (low + high) / 2,
    high,
  ]);
  expect(cover).toMatchObject({ unit: "1", methods: ["passes"] });
});

it("cover right after harvest starts a row of passes, and has no figure for other crops", () => {
  const after = reached(
    coverAfterPasses(reached(coverAfterHarvest("maize")), [leftByPass("mouldboard-plough", "non-fragile")]),
  );
  // Often under 10 %, as after any mouldboard plough (University of Minnesota, WW-08315).
  expect(after.high).toBeLessThan(0.1);
  expect(reasonOf(coverAfterHarvest("potato"))).toBe("science/no-figure-for-crop");
});
