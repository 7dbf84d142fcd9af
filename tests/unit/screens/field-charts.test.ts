import fc from "fast-check";
import { expect, it } from "vitest";
import {
  placed,
  spreadOut,
  valueAxis,
  type YearPoint,
  yearsIn,
} from "../../../src/screens/parts/charts/chart-data.ts";

const point = (year: number, value: number, upper: number | null = null): YearPoint => ({
  year,
  value,
  lower: upper === null ? null : 0,
  upper,
  text: "",
  rangeText: "",
  samplesText: "",
});

it("ends the value axis above every value, and not far beyond for one wide range", () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 1e6, noNaN: true }), { minLength: 1 }), (values) => {
      const { end, step } = valueAxis(
        values.map((value) => ({ value, upper: value * 1000 })),
        null,
      );
      const largest = Math.max(...values);
      expect(end).toBeGreaterThanOrEqual(largest * (1 - 1e-9));
      expect(end).toBeGreaterThan(0);
      expect(end).toBeLessThanOrEqual(largest === 0 ? 1 : largest * 5);
      expect(Math.round(end / step)).toBeLessThanOrEqual(10);
    }),
  );
});

it("keeps a scale that has an end of its own", () => {
  expect(valueAxis([point(2024, 12)], 100)).toEqual({ end: 100, step: 25 });
});

it("places labels apart, in their order, and above the lowest place", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 200 }), { minLength: 1, maxLength: 4 }), (wanted) => {
      const places = spreadOut(wanted, 18, 200);
      const sorted = [...places].sort((a, b) => a - b);
      for (const [at, place] of sorted.entries())
        if (at > 0) expect(place - (sorted[at - 1] ?? 0)).toBeGreaterThanOrEqual(18);
      expect(Math.max(...places)).toBeLessThanOrEqual(200);
    }),
  );
});

it("counts every year from the first to the last, those of paper too, and none without a point", () => {
  const series = { key: "a", label: "A", points: [point(2024, 1), point(2022, 1)], paper: [point(2019, 1)] };
  expect(yearsIn([series])).toEqual([2019, 2020, 2021, 2022, 2023, 2024]);
  expect(yearsIn([])).toEqual([]);
});

it("sets strips of one year a little apart, evenly round the year", () => {
  const series = ["a", "b"].map((key) => ({ key, label: key, points: [point(2024, 1)], paper: [] }));
  const [first, second] = placed(series);
  expect(first?.x).toBeLessThan(2024);
  expect((first?.x ?? 0) + (second?.x ?? 0)).toBeCloseTo(4048, 9);
});
