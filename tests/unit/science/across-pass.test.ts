import { describe, expect, it } from "vitest";
import { coverAcrossPass, type OrderedLine } from "../../../src/science/ground-cover/across-pass.ts";
import { reached, reasonOf } from "./counts.ts";

const straight: OrderedLine = {
  marks: [],
  markSpacingMm: 1000,
  angleToRowsDeg: 90,
  firstMarkFromMiddleMm: -4000,
};

describe("cover across the pass", () => {
  it("folds both sides and all passes onto the distance from the middle", () => {
    // Marks every metre from −4 m across a pass of 8 m: at 4 3 2 1 0 1 2 3 m from the middle, then 4 3 2 1 again.
    const marks = [false, false, true, true, true, true, true, false, false, false, true, true];
    const { classes } = reached(coverAcrossPass([{ ...straight, marks }], 8000));
    expect(classes.map(({ fromMm, toMm }) => [fromMm, toMm])).toEqual([
      [0, 1000],
      [1000, 2000],
      [2000, 3000],
      [3000, 4000],
    ]);
    expect(classes.map(({ hits, marks: read }) => [hits, read])).toEqual([
      [1, 1],
      [3, 3],
      [3, 3],
      [0, 5],
    ]);
    expect(classes[3]?.share).toBe(0);
  });

  it("takes the angle into account and leaves marks out that were not read", () => {
    const slanted = { ...straight, angleToRowsDeg: 30, firstMarkFromMiddleMm: 0, marks: [true, null, false] };
    const { classes } = reached(coverAcrossPass([slanted], 8000));
    // Half a metre across per mark: marks at 0 and 1 m.
    expect(classes.map(({ marks }) => marks)).toEqual([1, 1, 0, 0]);
    expect(classes[2]?.share).toBeNull();
  });

  it("says why there is nothing to show", () => {
    expect(reasonOf(coverAcrossPass([], 8000))).toBe("science/no-marks-read");
    expect(reasonOf(coverAcrossPass([{ ...straight, marks: [null] }], 8000))).toBe("science/no-marks-read");
    for (const width of [0, -8, Number.NaN, Number.POSITIVE_INFINITY])
      expect(reasonOf(coverAcrossPass([{ ...straight, marks: [true] }], width))).toBe("science/not-a-length");
    for (const change of [{ markSpacingMm: 0 }, { firstMarkFromMiddleMm: Number.NaN }])
      expect(reasonOf(coverAcrossPass([{ ...straight, ...change, marks: [true] }], 8000))).toBe(
        "science/not-a-length",
      );
    expect(reasonOf(coverAcrossPass([{ ...straight, angleToRowsDeg: 100, marks: [true] }], 8000))).toBe(
      "science/not-an-angle",
    );
  });
});
