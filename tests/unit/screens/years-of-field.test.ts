import { expect, it } from "vitest";
import type { StripOnDay } from "../../../src/science/ground-cover/field-cover.ts";
import { stripsOfYear, yearsOf } from "../../../src/screens/fields/cover-model.ts";
import { idOf } from "../record/made-up.ts";

const visit = (day: string, harvestYear: number | null = null) => ({
  body: { field: idOf("field", 1), day, harvestYear },
});

const on = (day: string, strip: number): StripOnDay => ({
  day,
  visits: [],
  strip: idOf("strip", strip),
  finished: 1,
  unfinished: 0,
  places: [],
  cover: {
    ok: true,
    value: { value: 0.5, n: 1, range: { ok: false, problem: { code: "science/too-few-lines", facts: {} } } },
  },
  chance: null,
});

it("puts a visit under the harvest year that was said, not under the year of its day", () => {
  const [year] = yearsOf([visit("2025-11-02", 2026)]);
  expect(year).toMatchObject({ year: 2026, said: true });
});

it("puts a visit without a harvest year under its calendar year, marked as such", () => {
  const years = yearsOf([visit("2026-03-01"), visit("2025-11-02", 2026)]);
  expect(years.map(({ year, said }) => [year, said])).toEqual([
    [2026, false],
    [2026, true],
  ]);
});

it("takes a year that was said for one of two visits of a day for both", () => {
  const years = yearsOf([visit("2026-03-01"), visit("2026-03-01", 2026)]);
  expect(years).toHaveLength(1);
  expect(years[0]).toMatchObject({ year: 2026, said: true });
});

it("shows only days of the year, newest first within a strip", () => {
  const [year] = yearsOf([visit("2026-03-01", 2026), visit("2025-11-02", 2026)]);
  if (year === undefined) throw new Error("no year");
  const strips = stripsOfYear(
    [on("2026-03-01", 1), on("2025-11-02", 1), on("2025-11-02", 2), on("2024-05-01", 1)],
    year,
  );
  expect(strips.map(({ strip, onDays }) => [strip, onDays.map(({ day }) => day)])).toEqual([
    [idOf("strip", 1), ["2026-03-01", "2025-11-02"]],
    [idOf("strip", 2), ["2025-11-02"]],
  ]);
});
