import { describe, expect, it } from "vitest";
import { linesNeeded } from "../../../src/science/ground-cover/lines-needed.ts";
import { EMPTY, line, PLAIN, reached, reasonOf } from "./counts.ts";

const wanted = { giveOrTake: 0.05, marksPerLine: 100 };
const needed = (lines: readonly (readonly [number, number])[], want = wanted) =>
  reached(
    linesNeeded(
      lines.map(([hits, marks]) => line(hits, marks)),
      "residue",
      PLAIN,
      want,
    ),
  );

describe("how many more lines", () => {
  it("plans with half cover before the first line", () => {
    const plan = needed([]);
    // SD = 1.25·√(0.25/100) = 6.25 points. t table: 8 lines 2.365·6.25/√8 = 5.23, 9 lines 2.306·6.25/3 = 4.80.
    expect(plan.spread).toBeCloseTo(0.0625, 12);
    expect(plan.more.middle).toBe(9);
    expect(plan.planned).toBe(1);
    expect(plan.cautions).toEqual([{ code: "science/no-line-yet", facts: {} }]);
    // χ² (5 df) 6.626 and 2.675 at 75 and 25 %: SD 5.43 and 8.54 points; t tables give 8 and 14 lines.
    expect(plan.more.low).toBe(8);
    expect(plan.more.high).toBe(14);
  });

  it("plans with the share seen after one line", () => {
    // p = 0.9: SD = 1.25·0.3/10 = 3.75 points. 4 lines 3.182·3.75/2 = 5.97, 5 lines 2.776·3.75/√5 = 4.66: four more.
    expect(needed([[90, 100]]).more.middle).toBe(4);
  });

  it("moves from planning to the spread seen, in full at six lines", () => {
    const lines: [number, number][] = [
      [30, 100],
      [40, 100],
      [50, 100],
      [40, 100],
      [35, 100],
      [45, 100],
    ];
    expect(needed(lines.slice(0, 2)).planned).toBeCloseTo(0.8, 12);
    expect(needed(lines.slice(0, 5)).planned).toBeCloseTo(0.2, 12);
    const all = needed(lines);
    expect(all.planned).toBe(0);
    // Shares 30, 40, 50, 40, 35, 45: mean 40, Σ(x−40)² = 250, variance 50, SD 7.071 points (by hand).
    expect(all.spread).toBeCloseTo(Math.sqrt(0.005), 12);
    // 10 lines 2.262·7.071/√10 = 5.06, 11 lines 2.228·7.071/√11 = 4.75: five more.
    expect(all.more.middle).toBe(5);
  });

  it("never asks for fewer than make three lines, even with none or all hit", () => {
    for (const hits of [0, 100]) {
      expect(needed([[hits, 100]]).more).toEqual({ low: 2, middle: 2, high: 2 });
      expect(
        needed([
          [hits, 100],
          [hits, 100],
          [hits, 100],
        ]).more.high,
      ).toBe(0);
    }
  });

  it("asks for more lines of a shorter rope, and fewer for a wider answer", () => {
    expect(needed([], { ...wanted, marksPerLine: 50 }).more.middle).toBeGreaterThan(needed([]).more.middle);
    expect(needed([], { ...wanted, giveOrTake: 0.1 }).more.middle).toBeLessThan(needed([]).more.middle);
  });

  it("says when no number of lines will do, and why it cannot say", () => {
    const ask = (giveOrTake: number, marksPerLine: number) =>
      reasonOf(linesNeeded([], "residue", PLAIN, { giveOrTake, marksPerLine }));
    expect(ask(0.001, 100)).toBe("science/too-many-lines");
    for (const giveOrTake of [0, -0.05, 0.5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(ask(giveOrTake, 100)).toBe("science/not-a-half-width");
    for (const marks of [0, -1, 1.5, Number.NaN]) expect(ask(0.05, marks)).toBe("science/no-marks-read");
    expect(reasonOf(linesNeeded([line(-1)], "residue", PLAIN, wanted))).toBe("science/not-a-count");
    expect(reached(linesNeeded([EMPTY], "residue", PLAIN, wanted)).n).toBe(0);
  });
});
