/**
 * Source: the definition of mass over area, with the pound, the foot and the acre as they are defined.
 * Mark: computed here (1 g/m² is 10 kg/ha or 8.9218 lb/ac, 1 g/ft² is 96.03 lb/ac; a trade article prints 98).
 */
import { expect, it } from "vitest";
import { coverCropMass } from "../../src/science/cover-crop/quadrats.ts";
import { reached } from "../unit/science/counts.ts";

const BROADCAST = { widthM: 0.5, rowSpacingM: null };
const POUND_G = 453.59237;
const FOOT_M = 0.3048;
const LB_PER_AC_OF_KG_PER_HA = (1 / POUND_G) * 1000 * 0.40468564224;

it("three frames of half a square metre", () => {
  const quadrats = [212, 187, 241].map((amount) => ({ areaM2: 0.5, amount }));
  const mass = reached(coverCropMass(quadrats, BROADCAST));
  expect(mass.value).toBeCloseTo(4266.67, 2);
  expect(mass).toMatchObject({ n: 3, unit: "kg/har", sampledBy: "quadrats" });
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
