import { describe, expect, it } from "vitest";
import { squareSideM } from "../../../../src/science/earthworms/hole-count.ts";
import { outOfRoundShare, roundDiameterM } from "../../../../src/science/infiltration/ring-set.ts";
import { equalCounts, samplesEachSide } from "../../../../src/science/side-by-side/counts.ts";
import { leastOfMean, meanOnScale } from "../../../../src/science/side-by-side/scale.ts";
import { reached, reasonOf } from "../counts.ts";

const seen = (...values: readonly number[]) => values.map((value) => ({ value, least: 1 }));

describe("several values as one", () => {
  it("are their mean, or of ratios the geometric one: √(2·8) = 4", () => {
    expect(reached(meanOnScale(seen(2, 8), "difference"))).toEqual({ value: 5, least: null });
    expect(reached(meanOnScale(seen(2, 8), "ratio")).value).toBeCloseTo(4, 12);
  });

  it("one comes back as it is, none is a reason, and nothing becomes the least that could be seen", () => {
    expect(reached(meanOnScale(seen(0), "ratio"))).toEqual({ value: 0, least: 1 });
    expect(reasonOf(meanOnScale([], "ratio"))).toBe("science/nothing-read");
    // √(1·9): the nought stands in as 1.
    expect(reached(meanOnScale(seen(0, 9), "ratio")).value).toBeCloseTo(3, 12);
    expect(reasonOf(meanOnScale([{ value: 0, least: null }, ...seen(3)], "ratio"))).toBe(
      "science/no-ratio-of-nothing",
    );
  });

  it("the least of a mean is one worm in all holes together", () => {
    expect(leastOfMean(seen(0, 0, 3, 1))).toBe(0.25);
    expect(leastOfMean([])).toBeNull();
    expect(leastOfMean([{ value: 3, least: null }])).toBeNull();
  });
});

describe("holes as equal counts", () => {
  const holes = (sides: readonly (readonly [number, number] | null)[]) =>
    sides.map((sidesM, at) => ({ worms: at + 1, sidesM }));

  it("by the hole of any size, by the square metre of one size alone", () => {
    const unlike = holes([[0.2, 0.2], null]);
    expect(reached(equalCounts(unlike, "hole"))).toEqual({ counts: [1, 2], effortEach: 1 });
    expect(reasonOf(equalCounts(unlike, "m2"))).toBe("science/unlike-sizes");
    // The same area, the other way round.
    expect(
      reached(
        equalCounts(
          holes([
            [0.2, 0.3],
            [0.3, 0.2],
          ]),
          "m2",
        ),
      ).effortEach,
    ).toBeCloseTo(0.06, 12);
    expect(reasonOf(equalCounts(holes([null]), "m2"))).toBe("science/no-hole-size");
    expect(reasonOf(equalCounts([], "hole"))).toBe("science/nothing-read");
    expect(reasonOf(equalCounts([{ worms: 0.5, sidesM: null }], "hole"))).toBe("science/not-a-count");
  });

  it("unlike numbers tell as much as their harmonic mean: 2/(1/3 + 1/6) = 4", () => {
    expect([
      samplesEachSide(3, 6),
      samplesEachSide(5, 5),
      samplesEachSide(1, 9),
      samplesEachSide(0, 4),
    ]).toEqual([4, 5, 1, 0]);
  });
});

describe("one number for a size", () => {
  it("the square and the circle that are as large", () => {
    expect(reached(squareSideM([0.25, 0.16]))).toBeCloseTo(0.2, 12);
    expect(reasonOf(squareSideM(null))).toBe("science/no-hole-size");
    expect(reached(roundDiameterM([0.25, 0.16]))).toBeCloseTo(0.2, 12);
    expect(reached(roundDiameterM([0.15, null]))).toBeCloseTo(0.15, 12);
    expect(reasonOf(roundDiameterM([0, null]))).toBe("science/not-a-ring");
  });

  it("two per cent off is round, more is not, in inches too", () => {
    expect(outOfRoundShare([0.3, 0.306])).toBeNull();
    expect(outOfRoundShare([12 * 0.0254, 12.24 * 0.0254])).toBeNull();
    expect(outOfRoundShare([0.31, 0.3])).toBeCloseTo(1 / 30, 12);
    expect(outOfRoundShare([0.3, null])).toBeNull();
    expect(outOfRoundShare([0.3, Number.NaN])).toBeNull();
  });
});
