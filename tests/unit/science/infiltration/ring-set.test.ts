import { describe, expect, it, test } from "vitest";
import type { Ring } from "../../../../src/record/kinds/kit.ts";
import {
  insideAreaM2,
  rimToSoilMm,
  ringArea,
  ringSetOf,
  standingOf,
} from "../../../../src/science/infiltration/ring-set.ts";
import { reached, reasonOf } from "../counts.ts";
import { RULER } from "./rings.ts";

const RING: Ring = {
  type: "ring",
  name: "A",
  insideM: [0.15, 0.152],
  heightsM: [0.15],
  outsideM: 0.156,
};

describe("area", () => {
  it("is that of an ellipse from two diameters at right angles, and of a circle from one", () => {
    expect(reached(insideAreaM2([0.2, 0.1]))).toBeCloseTo((Math.PI * 0.02) / 4, 12);
    expect(reached(insideAreaM2([0.2, null]))).toBeCloseTo(Math.PI * 0.01, 12);
  });

  it.each([0, -0.1, Number.NaN, Number.POSITIVE_INFINITY])("of a diameter of %d is none", (bad) => {
    expect(reasonOf(insideAreaM2([bad, null]))).toBe("science/not-a-ring");
    expect(reasonOf(insideAreaM2([0.1, bad]))).toBe("science/not-a-ring");
  });

  it("between two rings leaves out the wall of the inner one", () => {
    const set = { insideM: [0.3, null], outerInsideM: [0.6, null], innerOutsideM: 0.304 } as const;
    const between = reached(ringArea(set, "outer"));
    expect(between.areaM2).toBeCloseTo((Math.PI * (0.6 ** 2 - 0.304 ** 2)) / 4, 12);
    expect(between.cautions).toEqual([]);
    const unmeasured = reached(ringArea({ ...set, innerOutsideM: null }, "outer"));
    expect(unmeasured.areaM2).toBeCloseTo((Math.PI * (0.6 ** 2 - 0.3 ** 2)) / 4, 12);
    expect(unmeasured.cautions.map(({ code }) => code)).toEqual(["science/ring-wall-not-measured"]);
  });

  it("says when a ring is bent, when there is no outer one, and when the two do not fit", () => {
    const bent = { ...RULER, insideM: [0.15, 0.16] } as const;
    expect(reached(ringArea(bent, "inner")).cautions.map(({ code }) => code)).toEqual([
      "science/ring-out-of-round",
    ]);
    expect(reasonOf(ringArea(RULER, "outer"))).toBe("science/no-outer-ring");
    const small = { ...RULER, outerInsideM: [0.1, null] } as const;
    expect(reasonOf(ringArea(small, "outer"))).toBe("science/not-a-ring");
  });
});

describe("how a ring stands", () => {
  test("how deep, and how level", () => {
    const standing = standingOf({ rimToSoilM: [0.07, 0.08, 0.075, 0.075], heightsM: [0.15, 0.15] });
    expect(reached(standing.insertionMm)).toBeCloseTo(75, 9);
    expect(reached(standing.outOfLevelMm)).toBeCloseTo(10, 9);
  });

  test("what was not measured is not made up", () => {
    const nothing = standingOf({ rimToSoilM: [], heightsM: [] });
    expect(reasonOf(nothing.insertionMm)).toBe("science/not-measured");
    expect(reasonOf(nothing.outOfLevelMm)).toBe("science/not-measured");
    expect(reasonOf(standingOf({ rimToSoilM: [0.07], heightsM: [0.15] }).outOfLevelMm)).toBe(
      "science/not-measured",
    );
    expect(reasonOf(standingOf({ rimToSoilM: [Number.NaN, 0.1], heightsM: [0.15] }).insertionMm)).toBe(
      "science/not-measured",
    );
    expect(rimToSoilMm({ rimToSoilM: [] })).toBeNull();
  });

  test("a rim higher over the ground than the ring is high", () => {
    const standing = standingOf({ rimToSoilM: [0.2], heightsM: [0.15] });
    expect(reasonOf(standing.insertionMm)).toBe("science/ring-not-in-the-ground");
  });
});

test("a corrected kit corrects the test, and a ruler that nobody named reads millimetres", () => {
  const header = { way: "ruler" as const, rulerReads: "water-depth" as const, rimToSoilM: [0.07] };
  const ruler = { type: "ruler" as const, name: "steel", stepM: 0.0005 };
  expect(ringSetOf(header, { ring: RING, outer: null, ruler })).toMatchObject({
    insideM: [0.15, 0.152],
    innerOutsideM: 0.156,
    outerInsideM: null,
    stepMm: 0.5,
  });
  expect(ringSetOf(header, { ring: RING, outer: null, ruler: null }).stepMm).toBe(1);
});
