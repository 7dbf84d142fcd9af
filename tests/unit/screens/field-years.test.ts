import { expect, it } from "vitest";
import { failed, ok } from "../../../src/record/result.ts";
import { HABITS } from "../../../src/record/units.ts";
import type { FieldResults } from "../../../src/science/field-results.ts";
import { depthMmOf, rainRule } from "../../../src/screens/fields/timeline-model.ts";
import { OLD_GRASS, saidYears, yearsFound } from "../../../src/screens/fields/years-model.ts";
import { chartOf, seriesOf, type Writing } from "../../../src/screens/fields/years-series.ts";
import { YEARS_WORDS } from "../../../src/screens/fields/years-words.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { idOf } from "../record/made-up.ts";

const mean = (value: number) =>
  ok({ value, n: 2, range: failed("science/too-few-holes", { needs: 3, has: 2 }) });
const worms = (day: string, strip: number, value: number) => ({
  day,
  visits: [],
  strip: idOf("strip", strip),
  unfinished: 0,
  perHole: mean(value),
  perM2: failed("science/no-hole-size"),
  places: [],
  cautions: [],
});
const results = (found: FieldResults["worms"]): FieldResults => ({
  cover: { lines: 0, unfinished: [], onDays: [], oldGrass: [] },
  worms: found,
  soaked: [],
  oldGrass: { worms: [], soaked: [] },
});
const paper = (day: string, value: number) => ({
  id: idOf("earlier", 1),
  field: idOf("field", 1),
  strip: null,
  day,
  what: "worms-per-hole" as const,
  value,
  samples: null,
  origin: "",
});
const as: Writing = {
  words: YEARS_WORDS.en(TRADE_WORDS["uk-ie"]),
  habits: HABITS.metric,
  range: (low, high) => `${low} to ${high}`,
  noRange: () => "too few",
};
const visits = (of: Readonly<Record<string, number | null>>) =>
  saidYears(Object.entries(of).map(([day, harvestYear]) => ({ body: { day, harvestYear } })));
const itself = <T>(one: T): T => one;

it("puts days under the harvest year that was said, and newest first", () => {
  const years = yearsFound(
    results([worms("2025-11-02", 1, 4), worms("2026-03-01", 1, 6), worms("2024-05-01", 2, 8)]),
    [],
    visits({ "2025-11-02": 2026, "2026-03-01": 2026, "2024-05-01": null }),
    itself,
  );
  expect(years.map(({ year, said }) => [year, said])).toEqual([
    [2026, true],
    [2024, false],
  ]);
  expect(years[0]?.strips[0]?.days.map(({ day }) => day)).toEqual(["2026-03-01", "2025-11-02"]);
});

it("keeps what came from paper apart from what was measured", () => {
  const [year] = yearsFound(
    results([worms("2024-05-01", 1, 8)]),
    [paper("2024-04-01", 5)],
    visits({}),
    itself,
  );
  expect(year?.strips.map(({ strip, days, papers }) => [strip, days.length, papers.length])).toEqual([
    [idOf("strip", 1), 1, 0],
    [null, 0, 1],
  ]);
});

it("stands old grass below the strips of its year, whenever it was measured, and in a series of its own", () => {
  const { strip: _strip, ...grass } = worms("2026-03-20", 1, 20);
  const years = yearsFound(
    {
      ...results([worms("2026-03-01", 1, 6), worms("2026-03-10", 2, 8)]),
      oldGrass: { worms: [{ ...grass, spots: [idOf("spot", 1)] }], soaked: [] },
    },
    [],
    visits({}),
    itself,
  );
  expect(years[0]?.strips.map(({ strip }) => strip)).toEqual([idOf("strip", 2), idOf("strip", 1), OLD_GRASS]);
  const series = seriesOf(years, "worms-per-hole", (strip) => strip ?? "", as);
  expect(series.map(({ label, points }) => [label, points[0]?.value])).toEqual([
    [idOf("strip", 2), 8],
    [idOf("strip", 1), 6],
    [OLD_GRASS, 20],
  ]);
});

it("draws the last day of a year that has a number, and never the mean of several", () => {
  const empty = { ...worms("2026-06-01", 1, 0), perHole: failed("science/nothing-read") };
  const years = yearsFound(
    results([worms("2025-11-02", 1, 4), worms("2026-03-01", 1, 6), empty]),
    [],
    visits({ "2025-11-02": 2026, "2026-03-01": 2026, "2026-06-01": 2026 }),
    itself,
  );
  const [series] = seriesOf(years, "worms-per-hole", () => "A", as);
  expect(series?.points).toMatchObject([{ year: 2026, value: 6, lower: null, rangeText: "too few" }]);
});

it("draws nothing before there are two years", () => {
  const one = yearsFound(results([worms("2026-03-01", 1, 6)]), [], visits({}), itself);
  expect(chartOf(one, "worms-per-hole", () => "A", as)).toBeNull();
  const two = yearsFound(results([worms("2026-03-01", 1, 6)]), [paper("2019-05-01", 5)], visits({}), itself);
  expect(chartOf(two, "worms-per-hole", () => "A", as)?.series).toHaveLength(2);
  // Paper says worms per hole, of holes whose size nobody knows.
  expect(chartOf(two, "worms-per-m2", () => "A", as)).toBeNull();
});

it("takes rain in the person's unit, asks about much of it and refuses what no gauge shows", () => {
  expect(depthMmOf(0.1, "in")).toBe(2.54);
  expect(depthMmOf(12.5, "mm")).toBe(12.5);
  const { bounds, refuse } = rainRule("mm", "no");
  expect(bounds.max).toBeCloseTo(150, 9);
  expect([refuse(-1), refuse(0), refuse(2001)]).toEqual(["no", null, "no"]);
});
