/**
 * Source: Gregory 1982, Transactions of the ASAE 25: 1333-1337, `C = 1 − exp(−A·M)`.
 * Mark: published (formula and the coefficients 2.3, 3.2, 5.4 and 5.2 m²/kg, read in quotations); computed here by
 * hand (covers and masses).
 */
import { expect, it } from "vitest";
import { coverFromMass, massForCover } from "../../src/science/residue/cover-mass.ts";
import { reached } from "../unit/science/counts.ts";
import { kgPerHa, perKg, share } from "../unit/science/straw/figures.ts";

it.each([
  ["maize, 2.3 m²/kg", 2.3, 8450, 85.68],
  ["maize, 3.2 m²/kg", 3.2, 8450, 93.31],
  ["winter wheat, 5.4 m²/kg", 5.4, 6720, 97.3],
  ["maize after 40 decomposition days", 2.3, 6515, 77.65],
  ["the same", 3.2, 6515, 87.57],
])("%s", (_, coefficient, mass, percent) => {
  const cover = reached(coverFromMass([{ mass: kgPerHa(mass), coefficient: perKg(coefficient) }]));
  expect(100 * cover.middle).toBeCloseTo(percent, 1);
});

it("soybean, 5.2 m²/kg: half cover takes 1333 kg/ha", () => {
  expect(reached(massForCover(share(0.5), perKg(5.2))).middle).toBeCloseTo(1333, 0);
});

it("2000 kg/ha of maize and 1000 of wheat cover 63.21 % together, by either form of the sum", () => {
  const maize = { mass: kgPerHa(2000), coefficient: perKg(2.3) };
  const wheat = { mass: kgPerHa(1000), coefficient: perKg(5.4) };
  const together = reached(coverFromMass([maize, wheat])).middle;
  expect(100 * together).toBeCloseTo(63.21, 2);
  const apart = (1 - reached(coverFromMass([maize])).middle) * (1 - reached(coverFromMass([wheat])).middle);
  expect(1 - together).toBeCloseTo(apart, 12);
});

it("holds full cover at 99.9 %: 30 034 kg/ha at 2.3 m²/kg, and no mass without end", () => {
  const full = reached(massForCover(share(1), perKg(2.3)));
  expect(full.middle).toBeCloseTo(30_034, 0);
  expect(full.cautions.map(({ code }) => code)).toContain("science/cover-capped");
});
