/**
 * Source: IAPWS 2008, viscosity of liquid water at 0.1 MPa.
 * Mark: from memory (the correlation, 1001.6 µPa·s at 20 °C as it should be; the power law that laboratory standards
 * print); computed here (ratios to 20 °C).
 *
 * The power law is the trap: 6 % high at 5 °C and 30 % at 1 °C.
 */
import { describe, expect, it } from "vitest";
import { conductivityAt20, waterViscosity } from "../../src/science/infiltration/kfs/viscosity.ts";
import { reached } from "../unit/science/counts.ts";

describe("ratio to 20 °C", () => {
  it.each([
    [1, 1.7283],
    [5, 1.5158],
    [8, 1.3826],
    [10, 1.3039],
    [12, 1.2321],
    [15, 1.1358],
    [18, 1.051],
    [20, 1],
    [22, 0.9529],
    [25, 0.8886],
    [28, 0.8311],
    [30, 0.796],
    [35, 0.718],
    [40, 0.6517],
  ])("%d °C", (celsius, ratio) => {
    expect(reached(conductivityAt20(1, celsius))).toBeCloseTo(ratio, 4);
  });
});

it("30 mm/h at 8 °C is 41.48 mm/h at 20 °C", () => {
  expect(reached(conductivityAt20(30, 8))).toBeCloseTo(41.48, 2);
});

it("is not the power law: that is 30 % too high at 1 °C and 6 % at 5 °C", () => {
  const power = (celsius: number): number => (2.2902 * 0.9842 ** celsius) / celsius ** 0.1702;
  expect(power(1)).toBeCloseTo(2.254, 3);
  expect(power(1) / reached(conductivityAt20(1, 1))).toBeGreaterThan(1.29);
  expect(power(5) / reached(conductivityAt20(1, 5))).toBeGreaterThan(1.05);
  expect(power(20) / reached(conductivityAt20(1, 20))).toBeCloseTo(1, 3);
});

it("is 1001.6 µPa·s at 20 °C", () => {
  expect(Math.abs(reached(waterViscosity(20)) - 1001.6)).toBeLessThan(0.1);
});
