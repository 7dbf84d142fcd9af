/**
 * Source: USDA SCS 1986, TR-55: examples 2-1 to 2-3, cells of table 2-1 and table 2-2b.
 * Mark: published; from memory (the row of 5.0 in of table 2-1); computed here (runoff of row crops from the published
 * curve numbers).
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

it.each([
  [40, 0.24],
  [45, 0.44],
  [50, 0.69],
  [55, 0.98],
  [60, 1.3],
  [65, 1.65],
  [70, 2.04],
  [75, 2.45],
  [80, 2.89],
  [85, 3.37],
  [90, 3.88],
  [95, 4.42],
  [98, 4.76],
])("table 2-1, 5.0 in on %i: %d", (curveNumber, printed) => {
  // Printed to a hundredth.
  expect(Math.abs(inches(5, curveNumber) - printed)).toBeLessThanOrEqual(0.005 + 1e-3);
});

it.each([
  ["fallow", "bare", "77 86 91 94", "77 86 91 94"],
  ["fallow", "residue", "76 85 90 93", "74 83 88 90"],
  ["row", "straight", "72 81 88 91", "67 78 85 89"],
  ["row", "straight-residue", "71 80 87 90", "64 75 82 85"],
  ["row", "contour", "70 79 84 88", "65 75 82 86"],
  ["row", "contour-residue", "69 78 83 87", "64 74 81 85"],
  ["row", "terraced", "66 74 80 82", "62 71 78 81"],
  ["row", "terraced-residue", "65 73 79 81", "61 70 77 80"],
  ["grain", "straight", "65 76 84 88", "63 75 83 87"],
  ["grain", "straight-residue", "64 75 83 86", "60 72 80 84"],
  ["grain", "contour", "63 74 82 85", "61 73 81 84"],
  ["grain", "contour-residue", "62 73 81 84", "60 72 80 83"],
  ["grain", "terraced", "61 72 79 82", "59 70 78 81"],
  ["grain", "terraced-residue", "60 71 78 81", "58 69 77 80"],
  ["legume", "straight", "66 77 85 89", "58 72 81 85"],
  ["legume", "contour", "64 75 83 85", "55 69 78 83"],
  ["legume", "terraced", "63 73 80 83", "51 67 76 80"],
])("table 2-2b: %s, %s", (cover, treatment, poor, good) => {
  const found = CURVE_NUMBERS.find((row) => row.cover === cover && row.treatment === treatment);
  expect([found?.poor.join(" "), found?.good.join(" ")]).toEqual([poor, good]);
});
