/** Straw and stover from the yield of grain, as extension services print it (published); the citation stands beside each value. */
import { expect, it } from "vitest";
import { strawGrown } from "../../src/science/residue/straw-grown.ts";
import { strawWaysOf } from "../../src/science/residue/straw-ways.ts";
import { reached } from "../unit/science/counts.ts";
import { own } from "../unit/science/straw/figures.ts";

const LB = 0.453_592_37;
const SHORT_TON_PER_AC = 2241.702;
const LB_PER_AC = 1.120851;
const grainOf = (kgPerHa: number, dry: number) => ({
  yield: own(kgPerHa, "kg/har", "grain-yield"),
  dryShare: own(dry, "1", "dry-matter"),
});
const byIndex = (index: number) =>
  ({ way: "harvest-index", harvestIndex: own(index, "1", "harvest-index") }) as const;
const byRatio = (ratio: number) =>
  ({ way: "straw-per-grain", ratio: own(ratio, "1", "straw-per-grain") }) as const;

it("maize 168 bu/ac at a harvest index of 0.5: 4.0 tons per acre (Iowa State University, Soil quality)", () => {
  // 168 bu of 56 lb at 15.5 % moisture.
  const grown = reached(strawGrown(grainOf(168 * 56 * LB_PER_AC, 0.845), byIndex(0.5)));
  expect(grown.middle / SHORT_TON_PER_AC).toBeCloseTo(4.0, 1);
});

it("maize 9800 lb/ac with 9000 lb of stover: harvest index 0.52 (farms.com, harvest index)", () => {
  const grown = reached(strawGrown(grainOf(9800 * LB_PER_AC, 1), byIndex(9800 / 18_800)));
  expect(grown.middle / LB_PER_AC).toBeCloseTo(9000, 6);
  const printed = reached(strawGrown(grainOf(9800 * LB_PER_AC, 1), byIndex(0.52)));
  expect(printed.middle / LB_PER_AC / 9000).toBeCloseTo(1, 1);
});

it.each([
  [240, 6],
  [120, 3],
])("maize %i bu/ac: %f tons per acre, 1 ton per 40 bu (University of Nebraska-Lincoln)", (bushels, tons) => {
  // 50 lb of stover, as it lies with 10 % moisture, per bushel of 56 lb.
  const grown = reached(strawGrown(grainOf(bushels * 56 * LB_PER_AC, 0.845), byRatio(50 / 56)));
  expect(grown.middle / SHORT_TON_PER_AC).toBeCloseTo(tons, 3);
});

it.each([
  ["maize, 56 lb at 15.5 %", 56, 0.845, 47.3],
  ["wheat, 60 lb at 13.5 %", 60, 0.865, 51.9],
])("%s: %f lb dry per bushel at 1:1 (University of Illinois)", (_, lb, dry, residue) => {
  const grown = reached(strawGrown(grainOf(lb * LB, dry), byIndex(0.5)));
  expect(grown.middle / LB).toBeCloseTo(residue, 1);
});

it("wheat straw to grain of 1.16: 69.6 lb per bushel (Wysocki 1989)", () => {
  const grown = reached(strawGrown(grainOf(60 * LB, 0.865), byRatio(1.16)));
  expect(grown.middle / LB).toBeCloseTo(69.6, 1);
});

it.each([
  ["rice", 0.17, 0.42, 0.56],
  ["winter-wheat", 0.31, 0.39, 0.53],
  ["maize", 0.25, 0.53, 0.58],
  ["soybean", 0.4, 0.42, 0.65],
  ["barley", 0.32, 0.46, 0.63],
  ["oilseed-rape", 0.18, 0.3, 0.32],
] as const)("harvest index of %s: %f, %f, %f (GBC20346, Table S3)", (crop, low, middle, high) => {
  const [index] = strawWaysOf(crop).flatMap((way) => (way.way === "harvest-index" ? [way.harvestIndex] : []));
  expect(index).toMatchObject({ low, middle, high });
  // 0.30 is 2.33 of residue per grain, both dry.
  if (crop === "oilseed-rape") {
    const grown = reached(strawGrown(grainOf(1000, 1), byIndex(0.3)));
    expect(grown.middle).toBeCloseTo(2333, 0);
  }
});
