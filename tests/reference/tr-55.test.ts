/**
 * Source: USDA SCS 1986, TR-55: examples 2-1 to 2-3, cells of table 2-1 and table 2-2b.
 * Mark: published; computed here (runoff of row crops from the published curve numbers).
 */
import { describe, expect, it } from "vitest";
import { compositeCurveNumber, curveNumberRunoff } from "../../src/science/storm/curve-number.ts";
import { CURVE_NUMBERS, SOIL_GROUPS } from "../../src/science/storm/curve-number-table.ts";
import { reached } from "../unit/science/counts.ts";

const inches = (rain: number, curveNumber: number): number =>
  reached(curveNumberRunoff(rain * 25.4, curveNumber)).value / 25.4;

it("example 2-1: 30 % at 61 and 70 % at 74 make 70, and 2.81 in of 6.0 run off", () => {
  const curveNumber = reached(
    compositeCurveNumber([
      { area: 30, curveNumber: 61 },
      { area: 70, curveNumber: 74 },
    ]),
  ).value;
  expect(curveNumber).toBe(70);
  expect(inches(6, curveNumber)).toBeCloseTo(2.81, 2);
});

it("example 2-2: 3.28 in of 6.0 run off at 75", () => {
  expect(inches(6, 75)).toBeCloseTo(3.28, 2);
});

it("example 2-3: 75 × 74 + 100 × 82 + 75 × 74 make 77, and 3.48 in run off", () => {
  const parts = [
    { area: 75, curveNumber: 74 },
    { area: 100, curveNumber: 82 },
    { area: 75, curveNumber: 74 },
  ];
  expect(reached(compositeCurveNumber(parts)).value).toBe(77);
  expect(inches(6, 77)).toBeCloseTo(3.48, 2);
});

describe("cells of table 2-1", () => {
  it.each([
    [3, 75, 0.96],
    [4, 80, 2.04],
    [2, 90, 1.09],
    [6, 70, 2.81],
  ])("%d in on %d", (rain, curveNumber, printed) => {
    expect(inches(rain, curveNumber)).toBeCloseTo(printed, 2);
  });

  it("7.0 in on 50 is 1.67 by the formula; the table prints 1.68", () => {
    expect(inches(7, 50)).toBeCloseTo(1.67, 2);
  });
});

it("row crops in group B: straight and poor against residue and good", () => {
  const numberOf = (treatment: string, side: "poor" | "good"): number =>
    CURVE_NUMBERS.find((row) => row.cover === "row" && row.treatment === treatment)?.[side][
      SOIL_GROUPS.indexOf("B")
    ] ?? Number.NaN;
  const bare = numberOf("straight", "poor");
  const covered = numberOf("straight-residue", "good");
  expect([bare, covered]).toEqual([81, 75]);
  const runoff = (rain: number, curveNumber: number): number =>
    reached(curveNumberRunoff(rain, curveNumber)).value;
  for (const [rain, poor, good] of [
    [25, 2.36, 0.7],
    [50, 14.85, 9.29],
    [75, 32.44, 23.62],
    [100, 52.54, 41.14],
  ] as const) {
    expect(runoff(rain, bare)).toBeCloseTo(poor, 2);
    expect(runoff(rain, covered)).toBeCloseTo(good, 2);
  }
});

it.each([
  ["A", 72, 64, 4.3],
  ["B", 81, 75, 5.56],
  ["C", 88, 82, 7.92],
  ["D", 91, 85, 9.25],
] as const)(
  "group %s, 50 mm: from %i to %i saves %f mm (computed independently)",
  (group, poor, good, saved) => {
    const at = SOIL_GROUPS.indexOf(group);
    const rowOf = (treatment: string) =>
      CURVE_NUMBERS.find((row) => row.cover === "row" && row.treatment === treatment);
    expect(rowOf("straight")?.poor[at]).toBe(poor);
    expect(rowOf("straight-residue")?.good[at]).toBe(good);
    const runoff = (curveNumber: number): number => reached(curveNumberRunoff(50, curveNumber)).value;
    expect(Math.abs(runoff(poor) - runoff(good) - saved)).toBeLessThan(0.006);
  },
);

it("table 2-2b: more residue, contours and terraces never give a higher number", () => {
  expect(CURVE_NUMBERS).toHaveLength(17);
  for (const { poor, good } of CURVE_NUMBERS) {
    for (const [group, value] of poor.entries()) {
      expect(good[group]).toBeLessThanOrEqual(value);
      expect(value).toBeGreaterThan(poor[group - 1] ?? 0);
    }
  }
});
