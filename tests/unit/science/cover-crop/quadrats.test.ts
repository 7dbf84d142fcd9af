import { describe, expect, it } from "vitest";
import { dryMass } from "../../../../src/science/cover-crop/dry-mass.ts";
import { frameCautions, frameError } from "../../../../src/science/cover-crop/frame.ts";
import { coverCropMass, plantsPerM2, type Quadrat } from "../../../../src/science/cover-crop/quadrats.ts";
import { rollingTime, weedSuppression } from "../../../../src/science/cover-crop/weeds.ts";
import { reached, reasonOf } from "../counts.ts";
import { codesOf, UNUSABLE } from "../figures.ts";

const BROADCAST = { widthM: 0.5, rowSpacingM: null };
const of = (amounts: readonly number[], areaM2 = 0.25): readonly Quadrat[] =>
  amounts.map((amount) => ({ areaM2, amount }));
const mass = (amounts: readonly number[]) => coverCropMass(of(amounts), BROADCAST);
const plants = (amounts: readonly number[]) => plantsPerM2(of(amounts), BROADCAST);

describe("mass", () => {
  it("has a range from three frames on, above nothing and about the value", () => {
    expect(reasonOf(mass([]))).toBe("science/nothing-read");
    expect(reasonOf(reached(mass([100])).range)).toBe("science/too-few-samples");
    expect(reasonOf(reached(mass([100, 140])).range)).toBe("science/too-few-samples");
    const three = reached(mass([100, 140, 90]));
    const range = reached(three.range);
    expect(range.lower).toBeGreaterThan(0);
    expect(range.lower).toBeLessThan(three.value);
    expect(range.upper).toBeGreaterThan(three.value);
    expect(codesOf(three.cautions)).toEqual(["science/few-quadrats"]);
    expect(codesOf(reached(mass([100, 140, 90, 80])).cautions)).toEqual([]);
  });

  it("has no range when all are alike or all empty, and is 0 for empty ones", () => {
    expect(reasonOf(reached(mass([90, 90, 90])).range)).toBe("science/all-alike");
    const none = reached(mass([0, 0, 0]));
    expect(none.value).toBe(0);
    expect(reasonOf(none.range)).toBe("science/all-alike");
  });

  it("adds frames of unlike size by area, not by their means", () => {
    const mixed = [
      { areaM2: 1, amount: 100 },
      { areaM2: 0.25, amount: 50 },
    ];
    expect(reached(coverCropMass(mixed, BROADCAST)).value).toBeCloseTo((150 / 1.25) * 10, 9);
  });

  it("says what cannot be", () => {
    for (const bad of [...UNUSABLE, -1]) {
      expect(reasonOf(mass([bad, 3]))).toBe("science/out-of-bounds");
      expect(reasonOf(coverCropMass(of([3], bad), BROADCAST))).toBe("science/out-of-bounds");
      expect(reasonOf(dryMass(bad, { fresh: 2, dry: 1 }))).toBe("science/out-of-bounds");
      expect(reasonOf(frameError(bad, 0.2))).toBe("science/out-of-bounds");
    }
    expect(reasonOf(coverCropMass(of([3], 0), BROADCAST))).toBe("science/out-of-bounds");
    expect(reasonOf(dryMass(3, { fresh: 0, dry: 0 }))).toBe("science/out-of-bounds");
    expect(reasonOf(dryMass(3, { fresh: 1, dry: 1.1 }))).toBe("science/dry-above-fresh");
    expect(reasonOf(coverCropMass(of([3, 4]), { widthM: 0.5, rowSpacingM: 0 }))).toBe(
      "science/out-of-bounds",
    );
  });
});

describe("frames", () => {
  it("are warned of unless they are whole rows wide or seed was broadcast", () => {
    expect(reached(frameCautions(BROADCAST))).toEqual([]);
    expect(reached(frameCautions({ widthM: 0.6, rowSpacingM: 0.15 }))).toEqual([]);
    const [caution] = reached(frameCautions({ widthM: 0.5, rowSpacingM: 0.19 }));
    expect(caution).toEqual({ code: "science/frame-not-whole-rows", facts: { least: -24, most: 14 } });
  });

  it("narrower than a row can miss everything", () => {
    expect(reached(frameError(0.25, 0.5))).toMatchObject({ fewestRows: -1, mostRows: 1 });
  });
});

describe("plants", () => {
  it("are counted with their spread", () => {
    const counted = reached(plants([3, 7, 5, 1]));
    expect(counted).toMatchObject({ value: 16, unit: "/m2", n: 4, sampledBy: "quadrats" });
    expect(reached(counted.range).lower).toBeGreaterThan(0);
  });

  it("none found: −ln 0.05 plants over all frames (Garwood 1936, from memory)", () => {
    const none = reached(plants([0, 0, 0, 0]));
    expect(none.value).toBe(0);
    expect(reached(none.range)).toMatchObject({ lower: 0, sides: "upper-only" });
    expect(reached(none.range).upper).toBeCloseTo(2.9957, 4);
    expect(codesOf(none.cautions)).toContain("science/no-plants-found");
  });

  it("all alike: plants by chance stand in", () => {
    const alike = reached(plants([4, 4, 4, 4]));
    expect(reached(alike.range).upper).toBeGreaterThan(16);
    expect(codesOf(alike.cautions)).toContain("science/quadrats-alike");
  });

  it("are few below ten in all", () => {
    expect(codesOf(reached(plants([2, 3, 1, 3])).cautions)).toEqual(["science/few-plants"]);
    expect(codesOf(reached(plants([2, 3, 1, 4])).cautions)).toEqual([]);
  });

  it("are whole", () => {
    for (const bad of [...UNUSABLE, -1, 1.5]) expect(reasonOf(plants([bad, 2]))).toBe("science/not-a-count");
    expect(reasonOf(plants([]))).toBe("science/nothing-read");
    expect(reasonOf(reached(plants([2, 3])).range)).toBe("science/too-few-samples");
  });
});

it("reads no statement and no stage from what cannot be", () => {
  for (const bad of [...UNUSABLE, -1]) {
    expect(reasonOf(weedSuppression({ lower: bad, upper: 5000 }, "grass"))).toBe("science/out-of-bounds");
    expect(reasonOf(rollingTime(bad))).toBe("science/out-of-bounds");
  }
  expect(reasonOf(weedSuppression({ lower: 6000, upper: 5000 }, "grass"))).toBe("science/out-of-bounds");
});
