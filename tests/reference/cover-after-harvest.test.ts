/** Soil Conservation Service & Equipment Manufacturers Institute 1992: cover right after harvest (from memory). */
import { expect, it } from "vitest";
import { coverAfterHarvest, coverAfterPasses, leftByPass } from "../../src/science/residue/passes.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";

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

it("starts a row of passes, and has no figure for other crops", () => {
  const after = reached(
    coverAfterPasses(reached(coverAfterHarvest("maize")), [leftByPass("mouldboard-plough", "non-fragile")]),
  );
  // Often under 10 %, as after any mouldboard plough (University of Minnesota, WW-08315).
  expect(after.high).toBeLessThan(0.1);
  expect(reasonOf(coverAfterHarvest("potato"))).toBe("science/no-figure-for-crop");
});
