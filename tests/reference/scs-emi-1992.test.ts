/**
 * Source: Soil Conservation Service & Equipment Manufacturers Institute 1992, cover left by machines.
 * Mark: from memory (shares of the cover that passes leave); computed here by hand (products of them).
 */
import { expect, it } from "vitest";
import { coverAfterPasses, leftByPass } from "../../src/science/residue/passes.ts";
import { reached } from "../unit/science/counts.ts";
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
