/**
 * Source: the definition of time compression: what the ground takes goes by what it has taken.
 * Mark: computed here from the stated formulas over the curves of published infiltration tests (K. Subramanya) and
 * soil of one rate.
 */
import { describe, expect, it } from "vitest";
import type { ModelId } from "../../src/science/infiltration/models/fit.ts";
import { capacityOf } from "../../src/science/infiltration/models/line.ts";
import { ringFits } from "../../src/science/infiltration/models/ring-fits.ts";
import { constantRain, gaugeRain, type Rain, shapedRain } from "../../src/science/storm/rain.ts";
import { type Absorbed, absorb } from "../../src/science/storm/time-compression.ts";
import { reached } from "../unit/science/counts.ts";
import { EXAMPLE, P3_12 } from "../unit/science/infiltration/published-tests.ts";

const over = (points: typeof EXAMPLE, model: ModelId, rain: Rain): Absorbed =>
  absorb(rain, capacityOf(reached(reached(ringFits(points)).fits[model]).line), []);

describe("problem 3.12 under 8 mm/h for two hours", () => {
  const rain = reached(constantRain(16, 120));

  it.each([
    ["kostiakov", 1.86353, 0.232942, 10.7368, 5.2632],
    ["philip", 1.7038, 0.212975, 10.605, 5.395],
    ["green-ampt", 1.71056, 0.21382, 10.5742, 5.4258],
    ["horton", 2.45482, 0.306852, 10.6325, 5.3675],
  ] as const)("%s", (model, pondsMm, pondsH, soaked, ranOff) => {
    const storm = over(P3_12, model, rain);
    expect(storm.pondsAtMm).toBeCloseTo(pondsMm, 3);
    expect((storm.pondsAtMin ?? 0) / 60).toBeCloseTo(pondsH, 4);
    expect(storm.pondsAtMm).toBeCloseTo((8 * (storm.pondsAtMin ?? 0)) / 60, 9);
    expect(storm.soakedMm).toBeCloseTo(soaked, 3);
    expect(storm.ranOffMm).toBeCloseTo(ranOff, 3);
  });
});

describe("problem 3.12 under 60 mm of type II", () => {
  const rain = reached(shapedRain(60, "II"));

  it.each([
    ["kostiakov", 25.883],
    ["philip", 24.6],
    ["horton", 23.981],
    ["green-ampt", 24.355],
  ] as const)("%s", (model, ranOff) => {
    expect(over(P3_12, model, rain).ranOffMm).toBeCloseTo(ranOff, 2);
  });
});

it("the worked example under 100 mm of type II, Horton: 92.690 mm soak in, 7.310 run off", () => {
  const storm = over(EXAMPLE, "horton", reached(shapedRain(100, "II")));
  expect(storm.soakedMm).toBeCloseTo(92.69, 2);
  expect(storm.ranOffMm).toBeCloseTo(7.31, 2);
});

describe("60 mm on soil of one rate", () => {
  /** Type II by the coarse table of Chow, Maidment & Mays 1988, p. 461, as the independent figures have it. */
  const coarse = [
    [0, 0],
    [2, 0.022],
    [4, 0.048],
    [6, 0.08],
    [7, 0.098],
    [8, 0.12],
    [8.5, 0.133],
    [9, 0.147],
    [9.5, 0.163],
    [9.75, 0.172],
    [10, 0.181],
    [10.5, 0.204],
    [11, 0.235],
    [11.5, 0.283],
    [11.75, 0.357],
    [12, 0.663],
    [12.5, 0.735],
    [13, 0.772],
    [13.5, 0.799],
    [14, 0.82],
    [16, 0.88],
    [20, 0.952],
    [24, 1],
  ] as const;
  const gauge = coarse.map(([hour, share]) => ({ atMin: hour * 60, mm: share * 60 }));

  it.each([
    [5, 22.5],
    [10, 17.8],
    [20, 13.36],
    [40, 8.36],
    [80, 0],
  ])("type II, %d mm/h", (mmPerH, expected) => {
    const storm = absorb(
      reached(gaugeRain(gauge, "total")),
      capacityOf({ kind: "two-term", s: 0, a: mmPerH }),
      [],
    );
    expect(storm.ranOffMm).toBeCloseTo(expected, 2);
  });

  /**
   * The shape offered, by the table in steps of 0.1 h, with the excess of each step summed independently and
   * the figures of the coarse table beside it. The coarse table puts 30.6 % of the rain into the last quarter hour before
   * noon (73 mm/h of 60 mm), the fine one has read 39.3 % by 11.75 h, not 35.7 %, and reaches 82 mm/h for six minutes:
   * soils that take 10 to 20 mm/h differ by at most 0.15 mm, one of 40 mm/h by 1.9 mm.
   */
  it.each([
    [5, 22.546, 22.5, 0.15],
    [10, 17.938, 17.8, 0.15],
    [20, 13.37, 13.36, 0.15],
    [40, 6.518, 8.36, 1.9],
    [80, 0.224, 0, 0.25],
  ])("type II as it is offered, %d mm/h", (mmPerH, fine, published, within) => {
    const { ranOffMm } = absorb(
      reached(shapedRain(60, "II")),
      capacityOf({ kind: "two-term", s: 0, a: mmPerH }),
      [],
    );
    expect(ranOffMm).toBeCloseTo(fine, 2);
    expect(Math.abs(ranOffMm - published)).toBeLessThan(within);
  });

  it.each([
    [5, 5.22],
    [10, 0],
  ])("type IA, %d mm/h: the same rain in another shape", (mmPerH, expected) => {
    const storm = absorb(
      reached(shapedRain(60, "IA")),
      capacityOf({ kind: "two-term", s: 0, a: mmPerH }),
      [],
    );
    expect(storm.ranOffMm).toBeCloseTo(expected, 2);
  });
});
