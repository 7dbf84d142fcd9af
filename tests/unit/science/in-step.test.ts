import { describe, expect, it } from "vitest";
import { checkLayout, type LineLayout } from "../../../src/science/ground-cover/in-step.ts";
import { reached, reasonOf } from "./counts.ts";

const FOOT = 304.8;
const base: LineLayout = {
  markSpacingMm: FOOT,
  marks: 100,
  angleToRowsDeg: 45,
  rowSpacingMm: 762,
  passWidthMm: null,
};
const codes = (change: Partial<LineLayout>) =>
  reached(checkLayout({ ...base, ...change })).cautions.map(({ code }) => code);

describe("marks in step with the rows", () => {
  it("lets 1 ft marks at 45° to 30 in rows pass", () => {
    expect(codes({})).toEqual([]);
  });

  it("warns when each mark falls on the same place between the rows", () => {
    // 762 mm marks straight across 762 mm rows, and every second row.
    expect(codes({ markSpacingMm: 762, angleToRowsDeg: 90 })).toEqual(["science/in-step-with-rows"]);
    expect(codes({ markSpacingMm: 1524, angleToRowsDeg: 90 })).toEqual(["science/in-step-with-rows"]);
    // 762 mm at 30° moves half a row a mark.
    expect(codes({ markSpacingMm: 762, angleToRowsDeg: 30 })).toEqual(["science/in-step-with-rows"]);
  });

  it.each([2, 3, 4])("warns when %i marks make one row", (marks) => {
    expect(codes({ markSpacingMm: 762 / marks, angleToRowsDeg: 90 })).toEqual(["science/in-step-with-rows"]);
  });

  it.each([5, 6, 7])("lets %i marks a row pass, they see it evenly", (marks) => {
    expect(codes({ markSpacingMm: 762 / marks, angleToRowsDeg: 90 })).toEqual([]);
  });

  it("warns of a near miss on a short line that does not drift across the gap", () => {
    // One part in 1000 a mark: 100 marks drift over a tenth of the row and leave nine tenths unseen.
    expect(codes({ markSpacingMm: 762 * 1.001, angleToRowsDeg: 90 })).toEqual(["science/in-step-with-rows"]);
    // One part in 100: 100 marks drift over the whole of it.
    expect(codes({ markSpacingMm: 762 * 1.01, angleToRowsDeg: 90 })).toEqual([]);
  });

  it("warns of a line along the rows", () => {
    expect(codes({ angleToRowsDeg: 0 })).toEqual(["science/in-step-with-rows"]);
  });

  it("does not blame the rows for a rope with few marks", () => {
    expect(codes({ marks: 6, markSpacingMm: 762 * 0.381_966, angleToRowsDeg: 90 })).toEqual([]);
  });
});

describe("crossing a machine pass", () => {
  it("measures how far the line reaches across the rows", () => {
    // 100 ft at 45° spans 70.71 ft, 28.28 rows of 30 in (own arithmetic); 101 marks stand 100 ft apart at the ends.
    const { acrossMm } = reached(checkLayout({ ...base, marks: 101 }));
    expect(acrossMm / FOOT).toBeCloseTo(70.71, 2);
    expect(acrossMm / 762).toBeCloseTo(28.28, 2);
  });

  it("warns when the line stays inside one pass", () => {
    expect(codes({ passWidthMm: 24_000 })).toEqual(["science/less-than-one-pass"]);
    expect(codes({ passWidthMm: 9_000 })).toEqual([]);
    expect(codes({ rowSpacingMm: null, passWidthMm: 40_000 })).toEqual(["science/less-than-one-pass"]);
  });
});

describe("what cannot be checked", () => {
  it("leaves out what nobody said", () => {
    const check = reached(checkLayout({ ...base, rowSpacingMm: null }));
    expect(check).toMatchObject({ widestGapShare: null, cautions: [] });
  });

  it("refuses lengths, angles and marks that cannot be", () => {
    for (const length of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(reasonOf(checkLayout({ ...base, markSpacingMm: length }))).toBe("science/not-a-length");
      expect(reasonOf(checkLayout({ ...base, rowSpacingMm: length }))).toBe("science/not-a-length");
      expect(reasonOf(checkLayout({ ...base, passWidthMm: length }))).toBe("science/not-a-length");
    }
    for (const angle of [-1, 91, Number.NaN])
      expect(reasonOf(checkLayout({ ...base, angleToRowsDeg: angle }))).toBe("science/not-an-angle");
    for (const marks of [0, -5, 2.5, Number.NaN])
      expect(reasonOf(checkLayout({ ...base, marks }))).toBe("science/no-marks-read");
  });

  it("handles a single mark", () => {
    expect(reached(checkLayout({ ...base, marks: 1 })).acrossMm).toBe(0);
  });
});
