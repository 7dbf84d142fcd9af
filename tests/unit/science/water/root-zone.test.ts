import { describe, expect, it } from "vitest";
import { nothingPerMm, waterThatCounts, worthOfWater } from "../../../../src/science/water/extra-water.ts";
import {
  depletionFraction,
  plantAvailableWater,
  ROOTED_CROPS,
  rootsOf,
  totalAvailableWater,
  waterStress,
} from "../../../../src/science/water/root-zone.ts";
import { SOIL_TEXTURES, soilWaterOf } from "../../../../src/science/water/soils.ts";
import { reached, reasonOf } from "../counts.ts";
import { codesOf, figure, numbersIn, UNUSABLE } from "../figures.ts";

const mm = (value: number | readonly [number, number, number]) => figure("extra-water", value, "mm");
const deficit = (value: number | readonly [number, number, number]) => figure("deficit", value, "mm");

describe("root zone", () => {
  it("holds a rising range for every soil and crop", () => {
    for (const texture of SOIL_TEXTURES)
      for (const crop of ROOTED_CROPS) {
        const water = reached(plantAvailableWater(soilWaterOf(texture).available, rootsOf(crop).depth));
        expect(water.low).toBeGreaterThan(0);
        expect(water.low).toBeLessThan(water.high);
        expect(numbersIn(water).every(Number.isFinite)).toBe(true);
      }
  });

  it("says what cannot be", () => {
    for (const bad of UNUSABLE) {
      expect(reasonOf(totalAvailableWater(0.3, 0.1, bad))).toBe("science/out-of-bounds");
      expect(reasonOf(depletionFraction(bad, 5))).toBe("science/out-of-bounds");
      expect(reasonOf(waterStress(bad, 100, 0.5))).toBe("science/out-of-bounds");
    }
    expect(reasonOf(waterStress(0, 0, 0.5))).toBe("science/out-of-bounds");
    expect(reasonOf(waterStress(120, 100, 0.5))).toBe("science/out-of-bounds");
    expect(reasonOf(waterStress(50, 100, 1))).toBe("science/out-of-bounds");
    expect(reasonOf(totalAvailableWater(0.1, 0.3, 1))).toBe("science/out-of-bounds");
    expect(reasonOf(plantAvailableWater(figure("available-water", -0.1), rootsOf("maize").depth))).toBe(
      "science/not-a-range",
    );
  });

  it("holds the depletion fraction between 0.1 and 0.8, and stress between 1 and 0", () => {
    expect(reached(depletionFraction(0.3, 20))).toBe(0.1);
    expect(reached(depletionFraction(0.75, 0))).toBe(0.8);
    expect(reached(waterStress(100, 100, 0.5))).toBe(0);
    expect(reached(waterStress(0, 100, 0.5))).toBe(1);
  });
});

describe("extra water", () => {
  it("counts up to the deficit only, whichever way the ends lie", () => {
    expect(reached(waterThatCounts(mm(22), deficit(10)))).toMatchObject({ low: 10, high: 10 });
    expect(reached(waterThatCounts(mm(4), deficit(10)))).toMatchObject({ low: 4, high: 4 });
    expect(reached(waterThatCounts(mm(22), deficit(0)))).toMatchObject({ low: 0, high: 0 });
    expect(reached(waterThatCounts(mm([5, 15, 40]), deficit([2, 20, 30])))).toMatchObject({
      low: 2,
      middle: 15,
      high: 30,
    });
    expect(codesOf(reached(waterThatCounts(mm(5), deficit(5))).cautions)).toContain("science/rest-drains");
    for (const bad of [...UNUSABLE, -1])
      expect(reasonOf(waterThatCounts(mm(bad), deficit(5)))).toBe("science/not-a-range");
  });

  it("is worth nothing until the person says what a millimetre is worth", () => {
    expect(reached(worthOfWater(mm(10), nothingPerMm("{money}/har/mm")))).toMatchObject({
      low: 0,
      high: 0,
      unit: "{money}/har",
    });
    const grain = figure("worth-per-mm", [10, 15, 20], "kg/har/mm");
    const worth = reached(worthOfWater(mm(10), grain));
    expect(worth).toMatchObject({ low: 100, middle: 150, high: 200, unit: "kg/har" });
    expect(codesOf(worth.cautions)).toEqual(["science/only-if-water-lacks"]);
    expect(reasonOf(worthOfWater(mm(10), figure("worth-per-mm", 1, "mm")))).toBe("science/no-worth-per-mm");
    expect(reasonOf(worthOfWater(mm(10), figure("worth-per-mm", -1, "kg/har/mm")))).toBe(
      "science/not-a-range",
    );
  });
});
