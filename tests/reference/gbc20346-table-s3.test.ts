/**
 * Source: Global Biogeochemical Cycles, GBC20346, supplement, Table S3: harvest index per crop.
 * Mark: published.
 */
import { expect, it } from "vitest";
import { strawGrown } from "../../src/science/residue/straw-grown.ts";
import { strawWaysOf } from "../../src/science/residue/straw-ways.ts";
import { reached } from "../unit/science/counts.ts";
import { byIndex, grainOf } from "./straw-units.ts";

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
