/**
 * Chow, Maidment & Mays (1988), Applied Hydrology, examples 4.3.1, 4.4.1, 4.4.2 and 5.4.1. Book answers from
 * memory; all reproduce. Example 5.4.1: inputs published (Texas Tech course notes and sheet); the solution inside
 * each step computed independently. Soil values of silt loam from Rawls, Brakensiek & Miller 1983 (from memory).
 */
import { describe, expect, it } from "vitest";
import { capacityOf } from "../../src/science/infiltration/models/line.ts";
import { GREEN_AMPT_SOILS, greenAmptOfSoil } from "../../src/science/storm/green-ampt-soils.ts";
import { constantRain, gaugeRain } from "../../src/science/storm/rain.ts";
import { absorb } from "../../src/science/storm/time-compression.ts";
import { reached } from "../unit/science/counts.ts";

/** K 0.65 cm/h, M 5.68 cm as the book rounds it. */
const siltLoam = capacityOf({ kind: "green-ampt", k: 6.5, m: 56.8 });

it("example 4.3.1: 3.17 cm after an hour under water, and 1.81 cm/h", () => {
  expect(siltLoam.depthAt(1)).toBeCloseTo(31.669, 2);
  expect(siltLoam.depthAt(1) / 10).toBeCloseTo(3.17, 2);
  expect(siltLoam.rateAt(1)).toBeCloseTo(18.158, 1);
});

it("the soil of the example from the table: room 0.340, M 5.68 cm", () => {
  const { m, k } = reached(greenAmptOfSoil(GREEN_AMPT_SOILS["silt-loam"], 0.3)).line;
  expect(k).toBe(6.5);
  expect(m / 10).toBeCloseTo(5.68, 1);
});

describe("example 4.4.1: when water stands on the ground", () => {
  it.each([
    [10, 10.5, 10.5486, 105.486],
    [50, 0.17, 0.16975, 8.4874],
  ])("%d mm/h", (mmPerH, book, hours, mm) => {
    const storm = absorb(reached(constantRain(mmPerH * 24, 24 * 60)), siltLoam, []);
    expect((storm.pondsAtMin ?? 0) / 60).toBeCloseTo(hours, 3);
    expect((storm.pondsAtMin ?? 0) / 60).toBeCloseTo(book, 1);
    expect(storm.pondsAtMm).toBeCloseTo(mm, 2);
  });
});

it("example 4.4.2: 3.02 cm soaked in after an hour of 5 cm/h, 1.98 cm ran off", () => {
  const storm = absorb(reached(constantRain(50, 60)), siltLoam, []);
  expect(storm.soakedMm).toBeCloseTo(30.1765, 2);
  expect(storm.ranOffMm).toBeCloseTo(19.8235, 2);
});

describe("example 5.4.1: rain in ten-minute steps on sandy loam", () => {
  const cm = [
    0.18, 0.21, 0.26, 0.32, 0.37, 0.43, 0.64, 1.14, 3.18, 1.65, 0.81, 0.52, 0.42, 0.36, 0.28, 0.24, 0.19,
    0.17,
  ];
  const rain = reached(
    gaugeRain(
      cm.map((step, at) => ({ atMin: 10 * (at + 1), mm: 10 * step })),
      "since-last",
    ),
  );
  const soil = capacityOf({ kind: "green-ampt", k: 10.9, m: 110.1 * 0.247 });
  const minutes = [60, 70, 80, 90, 100, 110, 120, 130, 140, 150, 180];
  const storm = absorb(rain, soil, minutes);

  it("soaks in and runs off as worked out inside each step", () => {
    const soaked = [1.77, 2.201, 2.589, 2.949, 3.289, 3.614, 3.927, 4.23, 4.524, 4.804, 5.404];
    const ranOff = [0, 0.209, 0.961, 3.781, 5.091, 5.576, 5.783, 5.9, 5.966, 5.966, 5.966];
    for (const [at, moment] of storm.moments.entries()) {
      expect(moment.soakedMm / 10).toBeCloseTo(soaked[at] ?? 0, 3);
      expect(Math.abs(moment.ranOffMm / 10 - (ranOff[at] ?? 0))).toBeLessThan(0.0011);
    }
    expect(storm.moments).toHaveLength(minutes.length);
  });

  it("begins with the step from 60 to 70 min, and 5.96 cm run off in all as in the book", () => {
    expect(storm.pondsAtMin).toBeGreaterThanOrEqual(60);
    expect(storm.pondsAtMin).toBeLessThan(70);
    expect(Math.abs(storm.ranOffMm / 10 - 5.96)).toBeLessThan(0.01);
  });

  it("stops once 1.68 cm/h fall on soil that takes 1.745: stepping by the rate at the beginning gives 5.89", () => {
    const at140 = storm.moments.find(({ atMin }) => atMin === 140);
    expect(storm.ranOffMm).toBeCloseTo(at140?.ranOffMm ?? 0, 9);
    expect(Math.abs(storm.ranOffMm - 58.92692)).toBeGreaterThan(0.5);
  });
});
