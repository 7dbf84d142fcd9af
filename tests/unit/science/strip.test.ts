import { describe, expect, it } from "vitest";
import type { LineCounts } from "../../../src/science/ground-cover/line.ts";
import { coverOfStrip } from "../../../src/science/ground-cover/strip.ts";
import { METHODS } from "../../../src/science/methods/all.ts";
import { SOURCES } from "../../../src/science/sources.ts";
import { EMPTY, line, PLAIN, reached, reasonOf } from "./counts.ts";

const residue = (lines: readonly LineCounts[]) => reached(coverOfStrip(lines, "residue", PLAIN));
const codes = (lines: readonly LineCounts[]) => residue(lines).cautions.map(({ code }) => code);

describe("cover of a strip", () => {
  it("is hits over marks of all lines, not a mean of percentages", () => {
    // 10 of 20 and 20 of 100: 30 of 120, where the mean of 50 % and 20 % would say 35 %.
    const cover = residue([line(10, 20), line(20, 100)]);
    expect(cover).toMatchObject({ value: 0.25, unit: "1", n: 2, sampledBy: "lines" });
  });

  it("works the range out of the spread between five lines of 100", () => {
    // 44, 36, 52, 41, 47: mean 44.0, SD 6.0415, SE 2.7019 points (constructed, by hand); t = 2.776 (4 df).
    // Half width on the logit scale 2.776·0.027019/(0.44·0.56) = 0.30445; logit(0.44) = −0.24116.
    const range = reached(residue([44, 36, 52, 41, 47].map((hits) => line(hits))).range);
    expect(range).toMatchObject({ level: 0.95, sides: "both", method: "logit-t" });
    expect(range.lower).toBeCloseTo(1 / (1 + Math.exp(0.24116 + 0.30445)), 4);
    expect(range.upper).toBeCloseTo(1 / (1 + Math.exp(0.24116 - 0.30445)), 4);
    // On the plain scale 44.0 give or take 7.50 points (constructed): the logit range is as wide.
    expect((range.upper - range.lower) / 2).toBeCloseTo(0.075, 2);
  });

  it("gives no range below three lines, and says so", () => {
    for (const lines of [[line(44)], [line(44), line(50)]]) {
      const { range } = residue(lines);
      expect(range).toEqual({
        ok: false,
        problem: { code: "science/too-few-lines", facts: { needs: 3, has: lines.length } },
      });
    }
    expect(residue([line(44), line(50), line(47)]).range.ok).toBe(true);
  });

  it("leaves lines without a mark out of n, and marks not read out of both sums", () => {
    const cover = residue([line(40), line(50), { ...line(20, 50), notRead: 50 }, { ...EMPTY, notRead: 100 }]);
    expect(cover.n).toBe(3);
    expect(cover.value).toBeCloseTo(110 / 250, 12);
    expect(cover.cautions).toContainEqual({ code: "science/lines-without-marks", facts: { lines: 1 } });
    expect(cover.cautions).toContainEqual({
      code: "science/marks-not-read",
      facts: { notRead: 150, marks: 250 },
    });
  });

  it("bounds none and all from one side, by fewer marks than were read", () => {
    // 300 marks count for 300/1.25² = 192: 1 − 0.05^(1/192) = 1.548 %.
    const none = reached(residue([line(0), line(0), line(0)]).range);
    expect(none).toMatchObject({ lower: 0, sides: "upper-only", method: "one-sided-exact" });
    expect(none.upper).toBeCloseTo(1 - 0.05 ** (1 / 192), 10);
    const all = reached(residue([line(100), line(100), line(100)]).range);
    expect(all).toMatchObject({ upper: 1, sides: "lower-only" });
    expect(all.lower).toBeCloseTo(0.05 ** (1 / 192), 10);
    expect(codes([line(0), line(0), line(0)])).toEqual(["science/marks-not-independent"]);
    expect(reasonOf(residue([line(0), line(0)]).range)).toBe("science/too-few-lines");
  });

  it("never shows a range of no width when lines agree to the mark", () => {
    const lines = [line(50), line(50), line(50)];
    const range = reached(residue(lines).range);
    expect(range.method).toBe("logit-t-planned");
    // SE = 1.25·√(0.25/300) = 3.608 points, t = 4.303: 0.621 on the logit scale (constructed, by hand).
    expect(range.lower).toBeCloseTo(1 / (1 + Math.exp(0.621)), 3);
    expect(codes(lines)).toEqual(["science/lines-agree-to-the-mark"]);
  });

  it("warns of lines that agree better than chance, and of few hits or misses", () => {
    expect(codes([line(50), line(51), line(50)])).toEqual(["science/lines-agree-better-than-chance"]);
    expect(codes([line(1), line(6), line(1)])).toEqual(["science/few-hits"]);
    expect(codes([line(99), line(94), line(99)])).toEqual(["science/few-misses"]);
    expect(codes([line(40), line(52), line(44)])).toEqual([]);
  });

  it("treats the points of photos as the marks of lines", () => {
    // Four photos of 50 points each: the photo is the unit, its points are the marks.
    const photos = [line(20, 50), line(24, 50), line(29, 50), line(19, 50)];
    expect(residue(photos)).toMatchObject({ value: 92 / 200, n: 4, sampledBy: "lines" });
  });

  it("says why there is no cover", () => {
    expect(reasonOf(coverOfStrip([], "residue", PLAIN))).toBe("science/no-marks-read");
    expect(reasonOf(coverOfStrip([EMPTY], "residue", PLAIN))).toBe("science/no-marks-read");
    expect(reasonOf(coverOfStrip([line(Number.NaN)], "residue", PLAIN))).toBe("science/not-a-count");
    expect(reasonOf(coverOfStrip([line(-3)], "residue", PLAIN))).toBe("science/not-a-count");
  });

  it("names methods and sources that exist", () => {
    const { methods, sources } = residue([line(40), line(52), line(44)]);
    expect(methods).toEqual(["strip-ratio", "logit-t"]);
    expect(sources).toEqual(["lohr-1999", "missouri-g1570", "korn-graubard-1999"]);
  });
});

describe("the table of methods", () => {
  it.each(Object.entries(METHODS))(
    "%s has a formula, and every source of it is in the table",
    (_, method) => {
      expect(method.formulas.length).toBeGreaterThan(0);
      for (const id of [...method.sources, ...method.constants.map(({ source }) => source)])
        expect(SOURCES[id].citation).not.toBe("");
      for (const { value } of method.constants) expect(Number.isFinite(value)).toBe(true);
    },
  );
});
