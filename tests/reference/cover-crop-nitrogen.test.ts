/**
 * All published. PNW 636 (Sullivan & Andrews 2012): nothing below 1.5 % N in dry matter, about 35 lb per ton at 3.5 %, straight between;
 * its current edition: 3 to 4 % N give 25 to 40 lb per ton. 1 lb per short ton is half a kilogram per tonne.
 * Managing cover crops profitably: half of the nitrogen in the first season tilled in or on the surface in the South, a
 * quarter on the surface in the North. USDA ARS Akron: percent N = 40 over C:N.
 */
import { describe, expect, it } from "vitest";
import { carbonToNitrogenFromNitrogen } from "../../src/science/nitrogen/materials.ts";
import { availableNitrogenPerTonne, firstSeasonNitrogen } from "../../src/science/nitrogen/tie-up.ts";
import { reached } from "../unit/science/counts.ts";
import { figure } from "../unit/science/figures.ts";

const line = (percent: number) => reached(availableNitrogenPerTonne(figure("nitrogen-share", percent / 100)));

describe("the line", () => {
  it.each([
    [1, 0],
    [1.5, 0],
    [2, 8.75],
    [2.5, 17.5],
    [3.5, 35],
  ])("at %d %% N", (percent, poundsPerTon) => {
    expect(line(percent).middle).toBeCloseTo(poundsPerTon / 2, 9);
  });

  it.each([
    [3, 25],
    [4, 40],
  ])("holds the newer edition at %d %% N", (percent, poundsPerTon) => {
    expect(line(percent).low).toBeLessThanOrEqual(poundsPerTon / 2 + 1e-9);
    expect(line(percent).high).toBeGreaterThanOrEqual(poundsPerTon / 2 - 1e-9);
  });
});

describe("the first season", () => {
  it.each([
    ["tilled-in", 50],
    ["surface-warm-region", 50],
    ["surface-cold-region", 25],
  ] as const)("4000 lb/ac of 2.5 %% N hold 100 lb: %s", (end, pounds) => {
    // Pounds per acre in, pounds per acre out: a share has no unit.
    const nitrogen = firstSeasonNitrogen(
      figure("mass", 4000, "kg/har"),
      figure("nitrogen-share", 0.025),
      end,
    );
    expect(reached(nitrogen).middle).toBeCloseTo(pounds, 9);
  });

  it("disagrees with the line: 35 lb/ac for the same crop", () => {
    expect(line(2.5).middle * 4).toBeCloseTo(35, 9);
  });
});

it.each([
  [2.7, 15, 14.81],
  [2, 20, 20],
  [1.3, 30, 30.77],
  [8, 5, 5],
])("%d %% N is C:N %d as printed, %d by 40 over it", (percent, printed, exact) => {
  const ratio = reached(carbonToNitrogenFromNitrogen(percent / 100));
  expect(ratio).toBeCloseTo(exact, 2);
  // The leaflet rounds the percentage to a tenth: that is all the printed ratio can be off by.
  expect(Math.abs(40 / printed - 40 / ratio)).toBeLessThanOrEqual(0.05 + 1e-9);
});
