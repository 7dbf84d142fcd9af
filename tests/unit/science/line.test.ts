import { describe, expect, it } from "vitest";
import { type CoverKind, hitsOf, marksByKind } from "../../../src/science/ground-cover/line.ts";
import { coverOfLine } from "../../../src/science/ground-cover/strip.ts";
import { EMPTY, line, PLAIN, reached, reasonOf } from "./counts.ts";

const mixed = { residueFlat: 31, residueStanding: 12, green: 7, bare: 40, stone: 6, own: 4, notRead: 9 };

describe("hits of one line", () => {
  const cases: readonly [CoverKind, number][] = [
    ["residue", 43],
    ["residue-flat", 31],
    ["residue-standing", 12],
    ["ground-cover", 50],
    ["green", 7],
    ["bare", 40],
    ["stone", 6],
    ["own", 4],
  ];
  it.each(cases)("counts %s as %i of the marks read", (kind, hits) => {
    expect(reached(hitsOf(mixed, kind, PLAIN))).toEqual({ hits, marks: 100, notRead: 9 });
  });

  it("adds stone to ground cover only when the person says so, and never to residue", () => {
    expect(reached(hitsOf(mixed, "ground-cover", { stoneCounts: true })).hits).toBe(56);
    expect(reached(hitsOf(mixed, "residue", { stoneCounts: true })).hits).toBe(43);
  });

  it("gives 0 of 0 for a line without a mark", () => {
    expect(reached(hitsOf(EMPTY, "bare", PLAIN))).toEqual({ hits: 0, marks: 0, notRead: 0 });
  });

  it.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])("refuses the count %s", (count) => {
    expect(reasonOf(hitsOf({ ...mixed, green: count }, "green", PLAIN))).toBe("science/not-a-count");
  });
});

describe("all kinds of some lines", () => {
  it("puts every mark read into exactly one kind", () => {
    const kinds = reached(marksByKind([mixed, mixed]));
    expect(kinds).toEqual({
      "residue-flat": 62,
      "residue-standing": 24,
      green: 14,
      bare: 80,
      stone: 12,
      own: 8,
    });
  });

  it("says that no mark was read", () => {
    expect(reasonOf(marksByKind([]))).toBe("science/no-marks-read");
    expect(reasonOf(marksByKind([{ ...EMPTY, notRead: 100 }]))).toBe("science/no-marks-read");
  });

  it("refuses what is no count", () => {
    expect(reasonOf(marksByKind([line(-1)]))).toBe("science/not-a-count");
  });
});

describe("cover of one line", () => {
  it("names its method, counts marks, and says that it speaks of this line alone", () => {
    const cover = reached(coverOfLine(mixed, "residue", PLAIN));
    expect(cover).toMatchObject({ value: 0.43, unit: "1", n: 100, sampledBy: "marks" });
    expect(reached(cover.range).method).toBe("wilson-one-line");
    expect(cover.cautions.map(({ code }) => code)).toEqual([
      "science/one-line-only",
      "science/marks-not-read",
    ]);
    expect(cover.sources).toContain("wilson-1927");
  });

  it("has a range for none and for all", () => {
    expect(reached(reached(coverOfLine(line(0), "residue", PLAIN)).range).lower).toBe(0);
    expect(reached(reached(coverOfLine(line(100), "residue", PLAIN)).range).upper).toBe(1);
    expect(reached(reached(coverOfLine(line(1, 1), "residue", PLAIN)).range).upper).toBe(1);
  });

  it("says why a line without a mark has no cover", () => {
    expect(reasonOf(coverOfLine(EMPTY, "residue", PLAIN))).toBe("science/no-marks-read");
    expect(reasonOf(coverOfLine(line(-1), "residue", PLAIN))).toBe("science/not-a-count");
  });
});
