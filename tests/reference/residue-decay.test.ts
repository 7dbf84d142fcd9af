/** Loss of residue: Stroo et al. 1989, Steiner et al. 1994, Stott et al. 1990, Veseth 1985; the citation beside each. */
import { describe, expect, it } from "vitest";
import { decompositionDays, lossAfter, massLeft, rotByTemperature } from "../../src/science/residue/decay.ts";
import { measuredLoss } from "../../src/science/residue/passes.ts";
import { stemsStanding } from "../../src/science/residue/stems.ts";
import { reached } from "../unit/science/counts.ts";
import { kgPerHa, own } from "../unit/science/straw/figures.ts";

describe("Stroo et al. 1989, the form read in quotations; computed by hand", () => {
  it.each([
    [-7, 0],
    [0, 0.0481],
    [10, 0.3104],
    [20, 0.6926],
    [33, 1],
    [40, 0.8478],
    [50, 0],
    [-30, 0],
  ])("%f °C: %f", (meanC, factor) => {
    expect(reached(rotByTemperature(meanC))).toBeCloseTo(factor, 4);
  });
});

describe("half-lives at best warmth and wetness, ln 2 / k, by hand", () => {
  it.each([
    ["maize", 0.0065, 107],
    ["wheat", 0.0085, 82],
    ["sorghum", 0.0074, 94],
    ["soybean", 0.013, 53],
  ])("%s", (_, rate, days) => {
    const loss = reached(lossAfter(own(rate, "/d", "decay-rate"), own(days, "d", "decay-rate")));
    expect(loss.middle).toBeCloseTo(0.5, 2);
  });

  it("8450 kg/ha of maize, 40 decomposition days at 0.0065: 6515 kg/ha", () => {
    const days = reached(decompositionDays(new Array<number>(40).fill(33), own(1, "1", "wetness")));
    const loss = reached(lossAfter(own(0.0065, "/d", "decay-rate"), days));
    expect(reached(massLeft(kgPerHa(8450), loss)).middle).toBeCloseTo(6515, 0);
  });
});

describe("Steiner et al. 1994, Agronomy Journal 86: 76-81: standing stems", () => {
  it.each([
    ["winter-wheat", 15, 1],
    ["winter-wheat", 20, 0.6554],
    ["oats", 20, 0.4916],
    // Half of the stems are down, by hand from the printed rates.
    ["oats", 19.94, 0.5],
    ["barley", 21.44, 0.5],
    ["winter-wheat", 21.6, 0.5],
    ["spring-wheat", 23.48, 0.5],
  ] as const)("%s after %f decomposition days: %f", (crop, days, standing) => {
    expect(reached(stemsStanding(crop, own(days, "d", "decay-rate"))).middle).toBeCloseTo(standing, 3);
  });
});

it("Veseth 1985: of 8100 lb/ac of wheat straw 74 % were gone, 2106 lb/ac or 2361 kg/ha left", () => {
  const left = reached(massLeft(kgPerHa(8100 * 1.120851), own(0.74, "1", "loss")));
  expect(left.middle / 1.120851).toBeCloseTo(2106, 6);
  expect(left.middle).toBeCloseTo(2361, -1);
  // The calendar rate of 335 days is 0.00402 per day.
  const loss = reached(lossAfter(own(0.00402, "/d", "decay-rate"), own(335, "d", "decay-rate")));
  expect(loss.middle).toBeCloseTo(0.74, 2);
});

it("Stott et al. 1990: 35-42 % lost in 30 weeks, 38-55 % in 35, 50-80 % in a year, 81-88 % by spring harvest", () => {
  expect(measuredLoss("no-till-wheat-30-weeks")).toMatchObject({ low: 0.35, high: 0.42 });
  expect(measuredLoss("no-till-wheat-35-weeks")).toMatchObject({ low: 0.38, high: 0.55 });
  expect(measuredLoss("fallow-wheat-52-weeks")).toMatchObject({ low: 0.5, high: 0.8 });
  expect(measuredLoss("no-till-wheat-to-spring-harvest")).toMatchObject({ low: 0.81, high: 0.88 });
});
