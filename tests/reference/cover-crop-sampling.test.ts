/**
 * All published, read as abstracts or copies. Frames against rows: Brennan (2023), Agronomy Journal 115: 2275-2285
 * (45.72 cm over rows of 15.24 cm are three rows; errors of up to −49 and +27 % were seen); 50 cm over 19 cm by hand.
 * Oregon State University sampling instructions (Andrews et al.): fresh mass of a known area, a part dried, all mass over all area. Units: 1 g/m² = 10 kg/ha =
 * 8.9218 lb/ac, and 1 g/ft² = 96.03 lb/ac by definition; a trade article prints 98.
 */
import { describe, expect, it } from "vitest";
import { dryMass } from "../../src/science/cover-crop/dry-mass.ts";
import { frameError } from "../../src/science/cover-crop/frame.ts";
import { coverCropMass } from "../../src/science/cover-crop/quadrats.ts";
import { reached } from "../unit/science/counts.ts";

const BROADCAST = { widthM: 0.5, rowSpacingM: null };
const POUND_G = 453.59237;
const FOOT_M = 0.3048;
const LB_PER_AC_OF_KG_PER_HA = (1 / POUND_G) * 1000 * 0.40468564224;

describe("frames", () => {
  it("50 cm over 19 cm: two rows are 24 % too little, three 14 % too much", () => {
    const { fewestRows, mostRows } = reached(frameError(0.5, 0.19));
    expect(fewestRows).toBeCloseTo(-0.24, 9);
    expect(mostRows).toBeCloseTo(0.14, 9);
  });

  it("45.72 cm over 15.24 cm is three rows, without error", () => {
    expect(reached(frameError(0.4572, 0.1524))).toMatchObject({ fewestRows: 0, mostRows: 0 });
  });
});

describe("mass", () => {
  it("three frames of half a square metre", () => {
    const quadrats = [212, 187, 241].map((amount) => ({ areaM2: 0.5, amount }));
    const mass = reached(coverCropMass(quadrats, BROADCAST));
    expect(mass.value).toBeCloseTo(4266.67, 2);
    expect(mass).toMatchObject({ n: 3, unit: "kg/har", sampledBy: "quadrats" });
  });

  it("9.6 lb fresh from 16 square feet, 0.16 dry: 4,182 lb/ac, 4,687 kg/ha", () => {
    const amount = reached(dryMass(9.6 * POUND_G, { fresh: POUND_G, dry: 0.16 * POUND_G }));
    const { value } = reached(coverCropMass([{ areaM2: 16 * FOOT_M ** 2, amount }], BROADCAST));
    expect(value).toBeCloseTo(4687, 0);
    expect(Math.abs(value * LB_PER_AC_OF_KG_PER_HA - 4182)).toBeLessThan(0.6);
  });

  it.each([
    ["1 g on a square metre", 1, 1, 8.9218],
    ["1 g on a square foot", 1, FOOT_M ** 2, 96.03],
    ["20.8 g on a square foot", 20.8, FOOT_M ** 2, 1997],
  ])("%s in lb/ac", (_, amount, areaM2, pounds) => {
    const { value } = reached(coverCropMass([{ areaM2, amount }], BROADCAST));
    expect((value * LB_PER_AC_OF_KG_PER_HA) / pounds).toBeCloseTo(1, 3);
  });

  it.each([
    [0.25, 40],
    [0.5, 20],
  ])("a gram on %d m² is %d kg/ha", (areaM2, kg) => {
    expect(reached(coverCropMass([{ areaM2, amount: 1 }], BROADCAST)).value).toBeCloseTo(kg, 9);
  });
});
