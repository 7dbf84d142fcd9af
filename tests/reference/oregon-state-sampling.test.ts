/**
 * Source: Andrews et al., Oregon State University, cover crop sampling instructions.
 * Mark: published (four square feet a frame, a pound of the fresh mass dried, all mass over all area); computed here
 * by hand (the sample).
 */
import { expect, it } from "vitest";
import { dryMass } from "../../src/science/cover-crop/dry-mass.ts";
import { coverCropMass } from "../../src/science/cover-crop/quadrats.ts";
import { reached } from "../unit/science/counts.ts";

const BROADCAST = { widthM: 0.5, rowSpacingM: null };
const POUND_G = 453.59237;
const FOOT_M = 0.3048;
const LB_PER_AC_OF_KG_PER_HA = (1 / POUND_G) * 1000 * 0.40468564224;

it("9.6 lb fresh from 16 square feet, 0.16 dry: 4,182 lb/ac, 4,687 kg/ha", () => {
  const amount = reached(dryMass(9.6 * POUND_G, { fresh: POUND_G, dry: 0.16 * POUND_G }));
  const { value } = reached(coverCropMass([{ areaM2: 16 * FOOT_M ** 2, amount }], BROADCAST));
  expect(value).toBeCloseTo(4687, 0);
  expect(Math.abs(value * LB_PER_AC_OF_KG_PER_HA - 4182)).toBeLessThan(0.6);
});

it("a pound dry from one frame of four square feet is 10,890 lb/ac", () => {
  const { value } = reached(coverCropMass([{ areaM2: 4 * FOOT_M ** 2, amount: POUND_G }], BROADCAST));
  expect(value * LB_PER_AC_OF_KG_PER_HA).toBeCloseTo(10_890, 6);
});
