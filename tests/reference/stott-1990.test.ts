/**
 * Source: Stott et al. 1990, Soil Science Society of America Journal 54: 92-98.
 * Mark: published (abstract).
 */
import { expect, it } from "vitest";
import { coverFromMass } from "../../src/science/residue/cover-mass.ts";
import { measuredLoss } from "../../src/science/residue/passes.ts";
import { reached } from "../unit/science/counts.ts";
import { kgPerHa, perKg } from "../unit/science/straw/figures.ts";

it("35-42 % lost in 30 weeks, 38-55 % in 35, 50-80 % in a year, 81-88 % by spring harvest", () => {
  expect(measuredLoss("no-till-wheat-30-weeks")).toMatchObject({ low: 0.35, high: 0.42 });
  expect(measuredLoss("no-till-wheat-35-weeks")).toMatchObject({ low: 0.38, high: 0.55 });
  expect(measuredLoss("fallow-wheat-52-weeks")).toMatchObject({ low: 0.5, high: 0.8 });
  expect(measuredLoss("no-till-wheat-to-spring-harvest")).toMatchObject({ low: 0.81, high: 0.88 });
});

it("6720 kg/ha of wheat straw cover 93 to 99 % at harvest", () => {
  const cover = reached(coverFromMass([{ mass: kgPerHa(6720), coefficient: perKg(5.4) }]));
  expect(cover.middle).toBeGreaterThan(0.93);
  expect(cover.middle).toBeLessThan(0.99);
});
