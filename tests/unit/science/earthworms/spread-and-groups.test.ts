import { describe, expect, it } from "vitest";
import { shareOfHolesWith } from "../../../../src/science/earthworms/groups.ts";
import { shareOfHoles, spreadOfHoles } from "../../../../src/science/earthworms/spread.ts";
import { dispersionOf, negativeBinomialK } from "../../../../src/science/statistics/negative-binomial.ts";
import { reached, reasonOf } from "../counts.ts";
import { codes, hole, holes, placed } from "./holes.ts";

describe("spread of counts", () => {
  it("gives variance to mean with its test", () => {
    // 2, 9, 0, 5: mean 4, Σ(x−4)² = 4+25+16+1 = 46 (by hand).
    const seen = reached(dispersionOf([2, 9, 0, 5]));
    expect(seen.varianceToMean).toBeCloseTo(46 / 3 / 4, 12);
    expect(seen).toMatchObject({ chiSquare: 11.5, degreesOfFreedom: 3 });
    // χ² table, 3 df: 11.345 at 1 %.
    expect(seen.chance).toBeLessThan(0.01);
  });

  it("gives the k at which both sides of its equation are the same", () => {
    // 2, 9, 0, 5: three holes with 1 or more and with 2 or more, two with 3 to 5, one with 6 to 9; mean 4.
    // k = 1.226: 3/1.226 + 3/2.226 + 2/3.226 + 2/4.226 + 2/5.226 + 1/6.226 + … + 1/9.226 = 5.80 = 4·ln(1 + 4/1.226).
    expect(reached(negativeBinomialK([2, 9, 0, 5]))).toBeCloseTo(1.226, 3);
  });

  it("never gives a number for k where no over-dispersion is seen", () => {
    for (const even of [
      [4, 4, 4],
      [3, 4, 5],
      [0, 1, 0, 1],
    ])
      expect(reasonOf(negativeBinomialK(even))).toBe("science/no-over-dispersion-seen");
    expect(reasonOf(negativeBinomialK([0, 0, 0]))).toBe("science/all-empty");
    expect(reasonOf(negativeBinomialK([3, 9]))).toBe("science/too-few-holes");
    expect(reasonOf(negativeBinomialK([]))).toBe("science/too-few-holes");
    expect(reached(dispersionOf([4, 4, 4]))).toMatchObject({ varianceToMean: 0, chance: 1 });
    for (const bad of [-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(reasonOf(negativeBinomialK([1, 9, bad]))).toBe("science/not-a-count");
      expect(reasonOf(dispersionOf([1, 9, bad]))).toBe("science/not-a-count");
    }
  });

  it("stays a number in the most clumped counts", () => {
    const k = reached(negativeBinomialK([0, 0, 0, 0, 10_000]));
    expect(k).toBeGreaterThan(0);
    expect(Number.isFinite(k)).toBe(true);
    expect(reasonOf(negativeBinomialK([0, 1, 9e15]))).toBe("science/no-number");
  });

  it("tells of holes of one size only", () => {
    const spread = reached(spreadOfHoles(holes(2, 9, 0, 5)));
    expect(reached(spread.dispersion).chiSquare).toBe(11.5);
    expect(spread.occupied).toMatchObject({ value: 0.75, n: 4 });
    expect(reasonOf(reached(spreadOfHoles(holes(0, 0, 0))).k)).toBe("science/all-empty");
    expect(reasonOf(spreadOfHoles([hole(2), hole(3, { sidesM: [1, 1] })]))).toBe("science/hole-sizes-differ");
    expect(reasonOf(spreadOfHoles([]))).toBe("science/nothing-read");
  });

  it("gives shares from three holes on with a range", () => {
    expect(reasonOf(reached(shareOfHoles(1, 2)).range)).toBe("science/too-few-holes");
    expect(reasonOf(shareOfHoles(0, 0))).toBe("science/nothing-read");
    expect(reasonOf(shareOfHoles(3, 2))).toBe("science/not-a-count");
    expect(reasonOf(shareOfHoles(-1, 2))).toBe("science/not-a-count");
  });
});

describe("holes with a group", () => {
  it("gives the share of holes with its exact range", () => {
    const ten = [
      ...Array.from({ length: 3 }, () => placed(2, 0, 1, 1)),
      ...Array.from({ length: 7 }, () => placed(0, 0, 2, 0)),
    ];
    const deep = reached(shareOfHolesWith("deep", ten));
    expect(deep).toMatchObject({ seenIn: 3, holes: 10, notDetermined: 0 });
    const share = reached(deep.share);
    expect(share.value).toBeCloseTo(0.3, 12);
    // Clopper-Pearson 3 of 10 (constructed): 0.0667 to 0.6525.
    expect(reached(share.range).lower).toBeCloseTo(0.0667, 4);
    expect(reached(share.range).upper).toBeCloseTo(0.6525, 4);
  });

  it("says not determined, never absent, where only young worms were found or a total alone", () => {
    const young = [placed(5, 0, 0, 0), placed(2, 0, 0, 0), hole(9)];
    const deep = reached(shareOfHolesWith("deep", young));
    expect(deep).toMatchObject({ seenIn: 0, notDetermined: 3 });
    expect(reasonOf(deep.share)).toBe("science/not-determined");
  });

  it("counts an empty hole as one without the group, and leaves pots with worms in them out", () => {
    const partly = hole(9, { placed: { young: 0, surface: 0, topsoil: 3, deep: 2 }, left: 4 });
    const some = [placed(0, 0, 0, 0), placed(0, 1, 0, 0), partly, placed(4, 0, 0, 0)];
    const deep = reached(shareOfHolesWith("deep", some));
    expect(deep).toMatchObject({ seenIn: 1, holes: 4, notDetermined: 2 });
    const share = reached(deep.share);
    expect(share).toMatchObject({ value: 0, n: 2 });
    expect(codes(share.cautions)).toEqual(["science/holes-not-determined"]);
    expect(reached(reached(shareOfHolesWith("surface", some)).share).value).toBe(0.5);
    expect(reasonOf(shareOfHolesWith("deep", []))).toBe("science/nothing-read");
  });
});
