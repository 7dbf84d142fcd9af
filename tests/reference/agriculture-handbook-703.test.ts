/**
 * Source: Renard et al. 1997, Agriculture Handbook 703 (RUSLE), chapter 5, with its official errata.
 * Mark: from memory (coefficients in acres per pound); common practice, no source ("950 lb of maize" for 30 %);
 * published (degrees Celsius, in the errata; form of the surface cover); computed here by hand from the stated
 * formulas (masses, factors and ratios).
 */
import { describe, expect, it } from "vitest";
import { coverCoefficientOf, coverFromMass, massForCover } from "../../src/science/residue/cover-mass.ts";
import { rotByTemperature } from "../../src/science/residue/decay.ts";
import { lossByRain } from "../../src/science/residue/erosion.ts";
import { reached } from "../unit/science/counts.ts";
import { kgPerHa, own, perKg, share } from "../unit/science/straw/figures.ts";

const KG_PER_HA_PER_LB_PER_AC = 1.120851;
const M2_PER_KG_PER_AC_PER_LB = 8921.79;

describe("cover and mass (coefficients from memory)", () => {
  it.each([
    ["maize", 0.00038, [939, 2411, 6059]],
    ["soybean and wheat", 0.0006, [594, 1527, 3838]],
    ["sorghum", 0.00034, [1049, 2695, 6772]],
    ["cotton", 0.00022, [1621, 4165, 10_466]],
  ] as const)("%s: pounds per acre for 30, 60 and 90 percent", (_, alpha, pounds) => {
    for (const [at, cover] of [0.3, 0.6, 0.9].entries()) {
      const mass = reached(massForCover(share(cover), perKg(alpha * M2_PER_KG_PER_AC_PER_LB)));
      expect(mass.middle / KG_PER_HA_PER_LB_PER_AC).toBeCloseTo(pounds[at] ?? Number.NaN, 0);
    }
  });

  it("950 lb of maize per acre cover 30.3 %", () => {
    const mass = kgPerHa(950 * KG_PER_HA_PER_LB_PER_AC);
    const cover = reached(coverFromMass([{ mass, coefficient: perKg(0.00038 * M2_PER_KG_PER_AC_PER_LB) }]));
    expect(100 * cover.middle).toBeCloseTo(30.3, 1);
  });

  it("lie within the ranges offered", () => {
    for (const [crop, value] of [
      ["maize", 3.39],
      ["soybean", 5.35],
      ["winter-wheat", 5.35],
      ["sorghum", 3.03],
      ["sunflower", 1.96],
      ["cotton", 1.96],
    ] as const) {
      const range = reached(coverCoefficientOf(crop));
      expect(value).toBeGreaterThanOrEqual(range.low);
      expect(value).toBeLessThanOrEqual(range.high);
    }
  });
});

describe("temperature of rotting", () => {
  it.each([
    [4.5, 7.76, 37, 0.144],
    [10, 7.8, 32.2, 0.357],
  ])(
    "at %f °C, shift %f, best %f: %f in degrees Celsius, as the errata say",
    (meanC, shiftC, bestC, factor) => {
      expect(reached(rotByTemperature(meanC, { shiftC, bestC }))).toBeCloseTo(factor, 3);
    },
  );

  it.each([
    [4.5, 7.76, 37, 40.1, 45.968, 98.6, 0.583],
    [10, 7.8, 32.2, 50, 46.04, 89.96, 0.748],
  ])(
    "%f °C, shift %f, best %f: the same in degrees Fahrenheit would say more than twice as much",
    (meanC, shiftC, bestC, meanF, shiftF, bestF, wrong) => {
      const inF = reached(rotByTemperature(meanF, { shiftC: shiftF, bestC: bestF }));
      expect(inF).toBeCloseTo(wrong, 2);
      expect(inF).toBeGreaterThan(2 * reached(rotByTemperature(meanC, { shiftC, bestC })));
    },
  );
});

describe("surface cover", () => {
  const b = (value: number) => own(value, "1", "erosion-exponent");
  const INCH_MM = 25.4;

  it.each([
    [20, 0.24, 0.4966],
    [30, 0.24, 0.3499],
    [30, 1, 0.3919],
    [30, 2, 0.4122],
    [70, 0.24, 0.0863],
    [70, 1, 0.1124],
  ])("%f percent at a roughness of %f in: %f", (percent, inches, ratio) => {
    const loss = reached(lossByRain(share(percent / 100), b(0.035), inches * INCH_MM));
    expect(loss.middle).toBeCloseTo(ratio, 3);
  });

  const rows = [
    [0.025, [22.1, 39.3, 52.8, 63.2, 71.3, 77.7, 82.6, 86.5]],
    [0.035, [29.5, 50.3, 65.0, 75.3, 82.6, 87.8, 91.4, 93.9]],
    [0.05, [39.3, 63.2, 77.7, 86.5, 91.8, 95.0, 97.0, 98.2]],
  ] as const;
  it.each(rows)("reduction in percent at 10 to 80 percent cover, exponent %f", (exponent, reductions) => {
    for (const [at, reduction] of reductions.entries()) {
      const loss = reached(lossByRain(share((at + 1) / 10), b(exponent), 6.096));
      expect(100 * (1 - loss.middle)).toBeCloseTo(reduction, 1);
    }
  });
});
