/** Nutrients in straw and stover (published); the citation stands beside each value. */
import { expect, it } from "vitest";
import { afterRain, asElement, nutrientPerTonne, nutrientTaken } from "../../src/science/straw/nutrients.ts";
import { reached } from "../unit/science/counts.ts";
import { kgPerHa, own } from "../unit/science/straw/figures.ts";

const KG_PER_T_PER_LB_PER_TON = 0.5;
const KG_PER_HA_PER_LB_PER_AC = 1.120851;
const KG_PER_HA_PER_TON_PER_AC = 2241.702;

it.each([
  ["1.8 tons of maize stover, 4.8 lb P₂O₅ per ton (Iowa State PM 1688)", 1.8, 4.8, 8.64],
  ["1.8 tons of maize stover, 18 lb K₂O per ton (Iowa State PM 1688)", 1.8, 18, 32.4],
  ["2 bales of 1500 lb, 4.8 lb P₂O₅ per ton (Iowa State PM 1688)", 1.5, 4.8, 7.2],
  ["1.8 tons of maize stover, 34 lb K₂O per ton (University of Nebraska-Lincoln)", 1.8, 34, 61.2],
])("%s", (_, tons, lbPerTon, lbPerAc) => {
  const content = own(lbPerTon * KG_PER_T_PER_LB_PER_TON, "kg/t", "nutrient");
  const taken = reached(nutrientTaken(content, kgPerHa(tons * KG_PER_HA_PER_TON_PER_AC)));
  expect(taken.middle / KG_PER_HA_PER_LB_PER_AC).toBeCloseTo(lbPerAc, 2);
});

it.each([
  // Per tonne of grain with half a tonne of straw: grain 6.5 and 5.5, straw 1.0 and 10.0 kg/t.
  ["P2O5", 6.5, 1, 7],
  ["K2O", 5.5, 10, 10.5],
] as const)(
  "winter wheat, grain and straw, %s: %f + 0.5·%f = %f (PDA 2020)",
  (nutrient, grain, straw, both) => {
    const taken = reached(nutrientTaken(own(straw, "kg/t", "nutrient"), kgPerHa(500)));
    expect(grain + taken.middle).toBeCloseTo(both, 9);
    const range = reached(nutrientPerTonne("winter-wheat", nutrient));
    expect(range.low).toBeLessThanOrEqual(straw);
    expect(range.high).toBeGreaterThanOrEqual(straw);
  },
);

it.each([
  // Seed 14 and 11 kg/t (from memory), straw 2.0 and 13.0 kg/t, half a tonne of it.
  ["P2O5", 14, 2, 15],
  ["K2O", 11, 13, 17.5],
] as const)(
  "oilseed rape, seed and straw, %s: %f + 0.5·%f = %f (PDA 2020)",
  (nutrient, seed, straw, both) => {
    expect(reached(nutrientPerTonne("oilseed-rape", nutrient)).middle).toBe(straw);
    const taken = reached(nutrientTaken(reached(nutrientPerTonne("oilseed-rape", nutrient)), kgPerHa(500)));
    expect(seed + taken.middle).toBeCloseTo(both, 9);
  },
);

it.each([
  ["winter-wheat", "N", [4.5, 5.5, 6]],
  ["winter-wheat", "P2O5", [1, 1.5, 2]],
  ["winter-wheat", "K2O", [10, 12.5, 22.5]],
  ["spring-wheat", "K2O", [13]],
  ["barley", "P2O5", [1]],
  ["barley", "K2O", [10, 13]],
  ["oilseed-rape", "P2O5", [2]],
  ["oilseed-rape", "K2O", [13]],
  ["pea", "P2O5", [4]],
  ["pea", "K2O", [16]],
  ["field-bean", "P2O5", [2.5]],
  ["field-bean", "K2O", [16]],
  ["maize", "N", [8.5, 6]],
  ["maize", "P2O5", [2, 2.4]],
  ["maize", "K2O", [9, 17, 25]],
  ["soybean", "P2O5", [2.35]],
  ["soybean", "K2O", [11.5]],
] as const)(
  "the range of %s %s holds what PDA, Ohio, Illinois, Iowa, Nebraska and IPCC print: %j kg/t",
  (crop, nutrient, printed) => {
    const range = reached(nutrientPerTonne(crop, nutrient));
    for (const value of printed) {
      expect(value).toBeGreaterThanOrEqual(range.low);
      expect(value).toBeLessThanOrEqual(range.high);
    }
  },
);

it("Illinois: potash can fall by 80 % after rain on the swath", () => {
  const rain = own([0, 0.4, 0.8], "1", "washed-out");
  expect(reached(afterRain(own(25, "kg/t", "nutrient"), rain)).low).toBeCloseTo(5, 9);
});

it("P is 0.436 of P₂O₅ and K 0.830 of K₂O (standard atomic weights; printed on every bag)", () => {
  expect(reached(asElement("P2O5", 1))).toBeCloseTo(0.436, 3);
  expect(reached(asElement("K2O", 1))).toBeCloseTo(0.83, 3);
  expect(reached(asElement("N", 1))).toBe(1);
});
