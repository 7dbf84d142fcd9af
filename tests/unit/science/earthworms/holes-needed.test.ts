import { describe, expect, it } from "vitest";
import { holesInAll, holesNeeded, variationOf } from "../../../../src/science/earthworms/holes-needed.ts";
import { reached, reasonOf } from "../counts.ts";
import { codes, hole, holes } from "./holes.ts";

const wanted = { giveOrTake: 0.25, sidesM: [0.2, 0.2] as [number, number] };
const needed = (counts: readonly number[], want = wanted) => reached(holesNeeded(holes(...counts), want));

describe("how many more holes", () => {
  it("plans before the first hole with the survey's mean in holes of the size given", () => {
    const plan = needed([]);
    // 225 per m² in 0.04 m² is 9 per hole; v = √(1/9 + 1/2) = 0.7817.
    expect(plan.variation).toBeCloseTo(0.7817, 4);
    // t tables: 40 holes 2.0227·0.7817/√40 = 0.25001, a hair too much; 41 holes 2.0211·0.7817/√41 = 0.247.
    expect(plan.more.middle).toBe(41);
    expect(plan.more.low).toBeLessThan(plan.more.middle);
    expect(plan.more.high).toBeGreaterThan(plan.more.middle);
    expect(codes(plan.cautions)).toEqual(["science/no-hole-yet"]);
    expect(needed([], { ...wanted, sidesM: [0.5, 0.5] }).more.middle).toBeLessThan(plan.more.middle);
  });

  it("moves from planning to the spread seen, in full at six holes", () => {
    expect(needed([9]).planned).toBe(1);
    expect(needed([9, 4]).planned).toBeCloseTo(0.8, 12);
    const six = needed([4, 6, 8, 10, 12, 14]);
    expect(six.planned).toBe(0);
    // Mean 9, Σ(x−9)² = 25+9+1+1+9+25 = 70, s² = 14, v = √14/9 (by hand).
    expect(six.variation).toBeCloseTo(Math.sqrt(14) / 9, 12);
    // 13 holes: t (12 df) 2.179·0.4157/√13 = 0.251; 14 holes: 2.160·0.4157/√14 = 0.240: eight more.
    expect(six.more.middle).toBe(8);
  });

  it("does not take holes that are all alike, or all empty, for knowledge", () => {
    const alike = needed([9, 9, 9, 9, 9, 9]);
    expect(alike.planned).toBe(1);
    expect(alike.more.middle).toBeGreaterThan(20);
    // Half a worm in six holes: v = √(12 + 1/2); even the low end is beyond 300.
    expect(reasonOf(holesNeeded(holes(0, 0, 0, 0, 0, 0), wanted))).toBe("science/too-many-holes");
    expect(needed([0, 0, 0, 0, 0, 0], { ...wanted, giveOrTake: 1 }).more.high).toBeGreaterThan(20);
  });

  it("says why it cannot say", () => {
    for (const giveOrTake of [0, -0.1, 1.5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(reasonOf(holesNeeded([], { ...wanted, giveOrTake }))).toBe("science/not-a-share-of-mean");
    expect(reasonOf(holesNeeded([], { ...wanted, sidesM: [0, 1] }))).toBe("science/no-hole-size");
    expect(reasonOf(holesNeeded([hole(-1)], wanted))).toBe("science/not-a-count");
    expect(reached(holesNeeded([hole(3, { sidesM: null })], wanted)).n).toBe(0);
    expect(reasonOf(variationOf(0, 2))).toBe("science/no-number");
    expect(reasonOf(variationOf(Number.NaN, 2))).toBe("science/no-number");
    expect(reached(variationOf(4, Number.POSITIVE_INFINITY))).toBe(0.5);
    expect(reasonOf(holesInAll(Number.NaN, 0.25))).toBe("science/no-number");
    expect(reached(holesInAll(0, 0.25))).toBe(3);
    expect(reached(holesInAll(9, 0.25))).toBeNull();
  });
});
