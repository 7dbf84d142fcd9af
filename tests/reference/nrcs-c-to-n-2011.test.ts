/**
 * Source: USDA NRCS 2011, Carbon to nitrogen ratios in cropping systems, Table 1.
 * Mark: published; computed here by hand (mixtures and tie-up, from ΣC/ΣN and the 24:1 of the same leaflet).
 *
 * Rye and vetch: 2100/37 + 1050/11 − 3150/24 = 20.96.
 */
import { describe, expect, it } from "vitest";
import { carbonToNitrogenOf } from "../../src/science/nitrogen/materials.ts";
import { type MixedPart, mixtureCarbonToNitrogen } from "../../src/science/nitrogen/mixture.ts";
import { tieUpOrRelease } from "../../src/science/nitrogen/tie-up.ts";
import { reached } from "../unit/science/counts.ts";
import { figure } from "../unit/science/figures.ts";

const part = (kgPerHa: number, ratio: number): MixedPart => ({
  mass: figure("mass", kgPerHa, "kg/har"),
  carbon: figure("carbon-share", 0.42),
  ratio: figure("carbon-to-nitrogen", ratio),
});

it.each([
  ["rye-straw", 82],
  ["wheat-straw", 80],
  ["oat-straw", 70],
  ["maize-stover", 57],
  ["rye-anthesis", 37],
  ["pea-straw", 29],
  ["rye-vegetative", 26],
  ["alfalfa-hay-mature", 25],
  ["rotted-manure", 20],
  ["legume-hay", 17],
  ["beef-manure", 17],
  ["alfalfa-hay-young", 13],
  ["hairy-vetch", 11],
] as const)("Table 1: %s", (material, ratio) => {
  expect(carbonToNitrogenOf(material).middle).toBe(ratio);
});

describe("mixtures are all carbon over all nitrogen", () => {
  it("rye at anthesis with vetch: 3150 kg C over 152.2 kg N, below 24", () => {
    const ratio = reached(mixtureCarbonToNitrogen([part(5000, 37), part(2500, 11)])).middle;
    // The trap: the mean of the ratios by mass, 28.3, lands on the other side of 24 and would tie nitrogen up.
    expect(ratio).toBeCloseTo(20.7, 1);
    expect(reached(tieUpOrRelease([part(5000, 37), part(2500, 11)])).byDiet.middle).toBeGreaterThan(0);
    expect(reached(tieUpOrRelease([part(7500, 28.3)])).byDiet.middle).toBeLessThan(0);
  });

  it("rye before flowering with vetch: 17.9, not 21.0", () => {
    expect(reached(mixtureCarbonToNitrogen([part(3000, 26), part(1500, 11)])).middle).toBeCloseTo(17.9, 1);
  });
});

it.each([
  ["wheat straw", [part(4000, 80)], -49],
  ["stover", [part(6000, 57)], -60.8],
  ["vetch", [part(3000, 11)], 62],
  ["rye and vetch", [part(5000, 37), part(2500, 11)], 20.96],
] as const)("nitrogen by 24:1 if all rotted: %s", (_, parts, kg) => {
  expect(reached(tieUpOrRelease(parts)).byDiet.middle).toBeCloseTo(kg, 1);
});
