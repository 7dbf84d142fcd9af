/**
 * Source: Texas Tech University, CE 3354 Engineering Hydrology, exercises.
 * Mark: published (inputs; 5.47 in of the 24-hour exercise); computed here (the other answers: the printed ones are
 * pictures).
 */
import { describe, expect, it } from "vitest";
import { capacityOf } from "../../src/science/infiltration/models/line.ts";
import { curveNumberRunoff } from "../../src/science/storm/curve-number.ts";
import { constantRain, gaugeRain } from "../../src/science/storm/rain.ts";
import { absorb } from "../../src/science/storm/time-compression.ts";
import { reached } from "../unit/science/counts.ts";

describe("exercises of 3 h under 15 mm/h", () => {
  const rain = reached(constantRain(45, 180));

  it("Horton f0 5, fc 1 mm/h, k 2: ponds at once, 4.99504 mm soak in, 40.005 run off", () => {
    const storm = absorb(rain, capacityOf({ kind: "horton", f0: 5, fc: 1, k: 2 }), []);
    expect(storm.pondsAtMin).toBe(0);
    expect(storm.soakedMm).toBeCloseTo(4.99504, 4);
    expect(storm.ranOffMm).toBeCloseTo(40.005, 3);
  });

  it("Green and Ampt K 3, M 27.5: the potential 28.612 mm, but 27.35 mm after ponding at 0.45833 h", () => {
    const soil = capacityOf({ kind: "green-ampt", k: 3, m: 27.5 });
    const storm = absorb(rain, soil, []);
    expect(soil.depthAt(3)).toBeCloseTo(28.612, 3);
    expect(soil.rateAt(3)).toBeCloseTo(5.8834, 3);
    expect((storm.pondsAtMin ?? 0) / 60).toBeCloseTo(0.45833, 5);
    expect(storm.pondsAtMm).toBeCloseTo(6.875, 6);
    expect(storm.soakedMm).toBeCloseTo(27.35, 3);
    expect(storm.ranOffMm).toBeCloseTo(17.65, 3);
  });
});

it("24 hours on soil that takes 0.5 in/h without suction: 5.47 of 12.82 in run off", () => {
  const inches = [
    0.16, 0.17, 0.19, 0.2, 0.21, 0.24, 0.27, 0.31, 0.37, 0.46, 0.66, 1.29, 4.63, 0.85, 0.54, 0.41, 0.33, 0.29,
    0.26, 0.23, 0.21, 0.19, 0.18, 0.17,
  ];
  const rain = reached(
    gaugeRain(
      inches.map((step, at) => ({ atMin: 60 * (at + 1), mm: 25.4 * step })),
      "since-last",
    ),
  );
  const storm = absorb(rain, capacityOf({ kind: "two-term", s: 0, a: 12.7 }), []);
  expect(storm.rainMm / 25.4).toBeCloseTo(12.82, 6);
  expect(storm.ranOffMm / 25.4).toBeCloseTo(5.47, 6);
});

it("exercise 3-6: 45 mm on 75, 6.9876 mm run off", () => {
  expect(reached(curveNumberRunoff(45, 75)).value).toBeCloseTo(6.9876, 4);
});
