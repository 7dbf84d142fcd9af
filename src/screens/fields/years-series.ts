/** Turns what was found over the years into series for the charts: one value a year for each strip. */
import type { Result } from "../../record/result.ts";
import { inUnit, type UnitHabits } from "../../record/units.ts";
import type { MeanFound } from "../../science/earthworms/worms-of-field.ts";
import type { YearPoint, YearSeries, YearsData } from "../parts/charts/chart-data.ts";
import { writeNumber } from "../parts/numbers.ts";
import { TONGUE } from "../parts/words.common.ts";
import type { DayFound, StripKey, YearFound } from "./years-model.ts";
import type { YearsWords } from "./years-words.ts";

/** What a chart shows. */
export type Measure = "cover" | "worms-per-m2" | "worms-per-hole" | "soaked";

/** What paper calls each measure; worms per m² are not among the earlier results. */
const ON_PAPER = {
  cover: "ground-cover-percent",
  "worms-per-m2": null,
  "worms-per-hole": "worms-per-hole",
  soaked: "soaked-in-60-min-mm",
} as const;

/** The minutes of the headline that charts show. */
const CHARTED_MINUTES = 60;

/** How values of a measure are shown: times so much, and written with so many decimals. */
export interface Scale {
  readonly times: number;
  readonly write: (shown: number) => string;
}

/** The scale of a measure for this person. */
export const scaleOf = (measure: Measure, { depthSoaked }: Pick<UnitHabits, "depthSoaked">): Scale => {
  const decimals = (shown: number): number => {
    if (measure === "cover") return 0;
    if (measure === "soaked" && depthSoaked === "in") return 2;
    return shown < 10 ? 1 : 0;
  };
  const times = measure === "cover" ? 100 : measure === "soaked" ? inUnit(1 / 1000, depthSoaked) : 1;
  return { times, write: (shown) => writeNumber(shown, TONGUE, decimals(shown)) };
};

/** What a day says of a measure; null when it was not measured then. */
export const meanOn = (day: DayFound, measure: Measure): Result<MeanFound> | null => {
  switch (measure) {
    case "cover":
      return day.cover?.cover ?? null;
    case "worms-per-m2":
      return day.worms?.perM2 ?? null;
    case "worms-per-hole":
      return day.worms?.perHole ?? null;
    case "soaked":
      return day.soaked?.after.find(({ minutes }) => minutes === CHARTED_MINUTES)?.depth ?? null;
  }
};

/** What is needed to write points down. */
export interface Writing {
  readonly words: YearsWords;
  readonly habits: UnitHabits;
  /** The range in words, from its two ends; and why there is none. */
  readonly range: (low: string, high: string) => string;
  readonly noRange: (found: MeanFound) => string;
}

const samplesOf = (measure: Measure, day: DayFound, n: number, words: YearsWords): string => {
  if (measure === "cover") return words.lines(n);
  return measure === "soaked" ? words.ofRings(n, day.soaked?.rings ?? n) : words.holes(n);
};

const measured = (
  year: number,
  day: DayFound,
  { value, n, range }: MeanFound,
  measure: Measure,
  as: Writing,
): YearPoint => {
  const { times, write } = scaleOf(measure, as.habits);
  const ends = range.ok ? { lower: range.value.lower * times, upper: range.value.upper * times } : null;
  return {
    year,
    value: value * times,
    lower: ends?.lower ?? null,
    upper: ends?.upper ?? null,
    text: write(value * times),
    rangeText:
      ends === null ? as.noRange({ value, n, range }) : as.range(write(ends.lower), write(ends.upper)),
    samplesText: samplesOf(measure, day, n, as.words),
  };
};

/** Paper keeps percent and millimetres as they were written there. */
const fromPaper = (
  year: number,
  papers: YearFound["strips"][number]["papers"],
  measure: Measure,
  as: Writing,
): readonly YearPoint[] =>
  papers
    .filter(({ what }) => what === ON_PAPER[measure])
    .map(({ value, samples }) => {
      const { times, write } = scaleOf(measure, as.habits);
      const shown = measure === "cover" ? value : value * times;
      return {
        year,
        value: shown,
        lower: null,
        upper: null,
        text: write(shown),
        rangeText: "",
        samplesText: as.words.samples(samples),
      };
    });

/** The day that stands for a year. Written down only once it is chosen: writing numbers costs the most here. */
interface Chosen {
  readonly day: DayFound;
  readonly mean: MeanFound;
}

/**
 * The series of one measure. Where a strip was measured on several days of a year the last one that has a
 * number stands for it; spring and autumn are not thrown together.
 *
 * @param years newest first
 * @param nameOf what a strip is called
 * @returns the strip measured last first; strips without any value of this measure are left out
 */
export const seriesOf = (
  years: readonly YearFound[],
  measure: Measure,
  nameOf: (strip: StripKey) => string,
  as: Writing,
): readonly YearSeries[] => {
  const strips = new Map<StripKey, { points: Map<number, Chosen>; paper: YearPoint[] }>();
  for (const { year, strips: found } of years)
    for (const { strip, days, papers } of found) {
      const series = strips.get(strip) ?? { points: new Map<number, Chosen>(), paper: [] };
      strips.set(strip, series);
      for (const day of days) {
        const mean = meanOn(day, measure);
        const before = series.points.get(year);
        if (mean?.ok === true && (before === undefined || day.day > before.day.day))
          series.points.set(year, { day, mean: mean.value });
      }
      series.paper.push(...fromPaper(year, papers, measure, as));
    }
  return [...strips].flatMap(([strip, { points, paper }]) =>
    points.size + paper.length === 0
      ? []
      : [
          {
            key: strip ?? "field",
            label: nameOf(strip),
            points: [...points]
              .map(([year, { day, mean }]) => measured(year, day, mean, measure, as))
              .sort((a, b) => a.year - b.year),
            paper,
          },
        ],
  );
};

/** The chart of one measure; null when it does not reach over two years yet. */
export const chartOf = (
  years: readonly YearFound[],
  measure: Measure,
  nameOf: (strip: StripKey) => string,
  as: Writing,
): YearsData | null => {
  const series = seriesOf(years, measure, nameOf, as);
  const seen = new Set(series.flatMap(({ points, paper }) => [...points, ...paper].map(({ year }) => year)));
  if (seen.size < 2) return null;
  return {
    title: as.words.chartOf[measure],
    unit: measure === "soaked" ? as.habits.depthSoaked : as.words.units[measure],
    end: measure === "cover" ? 100 : null,
    series,
  };
};
