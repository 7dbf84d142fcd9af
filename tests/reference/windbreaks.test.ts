/**
 * Wind behind trees: Iowa State University Extension, Farmstead windbreaks: planning, Table 1. Gains: Kort (1988),
 * Agriculture, Ecosystems & Environment 22/23: 165-190, spring wheat 8, maize 12, winter wheat 23 % as read; the other
 * crops from memory. Land taken: UNL Extension (2000), 160 acres protected by rows on about 6 acres. Net effects by hand.
 */
import { describe, expect, it } from "vitest";
import { type Belt, beltNet, gainOf } from "../../src/science/shelter/net.ts";
import { farmsteadReduction, windReduction } from "../../src/science/shelter/wind-reduction.ts";
import { reached } from "../unit/science/counts.ts";
import { figure } from "../unit/science/figures.ts";

describe("wind", () => {
  it.each([
    [5, 78],
    [10, 66],
    [15, 35],
    [20, 14],
    [25, 10],
    [30, 4],
    [12, 53.6],
  ])("at %d heights", (heights, percent) => {
    expect(reached(farmsteadReduction(heights))).toBeCloseTo(percent / 100, 9);
    const range = reached(windReduction(heights));
    expect(range.low).toBeLessThanOrEqual(percent / 100 + 1e-9);
    expect(range.high).toBeGreaterThanOrEqual(percent / 100 - 1e-9);
  });

  it("means 33.2 % from 5 to 30 heights (trapezoids)", () => {
    const at = [5, 10, 15, 20, 25, 30].map((heights) => reached(farmsteadReduction(heights)));
    const area = at.slice(1).reduce((sum, value, one) => sum + (5 * (value + (at[one] ?? 0))) / 2, 0);
    expect(area / 25).toBeCloseTo(0.332, 3);
  });

  it("two tables differ by 16 points at ten heights, and both are in the range", () => {
    const { low, high } = reached(windReduction(10));
    expect(high - low).toBeCloseTo(0.16, 9);
  });
});

describe("gains", () => {
  it.each([
    ["spring-wheat", 8, "published"],
    ["maize", 12, "published"],
    ["winter-wheat", 23, "published"],
    ["barley", 25, "from memory"],
    ["oats", 6, "from memory"],
    ["rye", 19, "from memory"],
    ["millet", 44, "from memory"],
    ["hay", 20, "from memory"],
  ] as const)("%s up to %d %% (%s), from the 2 %% lost that yield monitors saw", (crop, percent, mark) => {
    const gain = gainOf(crop);
    expect(gain).toMatchObject({ low: -0.02, high: percent / 100 });
    expect(gain.sources).toEqual([mark === "published" ? "kort-1988" : "kort-1988-from-memory"]);
  });
});

const belt = (width: number, field: number, gain: number): Belt => ({
  height: figure("tree-height", 12, "m"),
  width: figure("belt-width", width, "m"),
  field: figure("field-width", field, "m"),
  competition: figure("competition-zone", 1),
  shelter: figure("shelter-zone", 12),
  loss: figure("shelter-loss", 0.5),
  gain: figure("shelter-gain", gain),
});

describe("the whole field", () => {
  it.each([
    ["wide, spring wheat", 400, 0.08, -1.36],
    ["narrow, maize", 200, 0.12, -0.08],
    ["wide, winter wheat", 400, 0.23, 3.59],
  ])("%s", (_, field, gain, percent) => {
    expect(100 * reached(beltNet(belt(10, field, gain))).net.middle).toBeCloseTo(percent, 2);
  });

  it("breaks even at 16/132, which 8 % of spring wheat does not reach", () => {
    const { breakEven } = reached(beltNet(belt(10, 400, 0.08)));
    expect(reached(breakEven).middle).toBeCloseTo(16 / 132, 9);
    expect(reached(breakEven).middle).toBeCloseTo(0.121, 3);
  });

  it("6 of 160 acres taken: the rest must yield 3.90 % more", () => {
    const taken = reached(
      beltNet({
        ...belt(6, 160, 0),
        height: figure("tree-height", 20, "m"),
        competition: figure("competition-zone", 0),
      }),
    );
    expect(reached(taken.breakEven).middle).toBeCloseTo(0.039, 4);
    expect(taken.net.middle).toBeCloseTo(-0.0375, 9);
  });
});
