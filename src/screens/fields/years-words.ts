/** Words of what was found over the harvest years. */
import type { EarlierResult } from "../../record/kinds/earlier.ts";
import { plural, writeNumber } from "../parts/numbers.ts";
import type { TradeWords } from "../parts/trade.ts";
import { TONGUE } from "../parts/words.common.ts";
import type { WordsOf } from "../parts/words-of.ts";

const number = (value: number): string => writeNumber(value, TONGUE);

const english = (trade: TradeWords) => ({
  title: `Found, by ${trade.harvestYear}`,
  none: "Nothing measured here yet.",
  working: "Being worked out …",
  titleBefore: "Found, not up to date",
  before: "From before the last changes …",
  broughtUpToDate: "Brought up to date.",
  year: (year: number, said: boolean): string =>
    said
      ? `${trade.harvestYear.charAt(0).toUpperCase()}${trade.harvestYear.slice(1)} ${year}`
      : `${year} by the calendar`,
  notSaid: `The ${trade.harvestYear} was not said for these days.`,
  show: (year: string): string => `Show ${year.charAt(0).toLowerCase()}${year.slice(1)}`,
  hide: "Close this year",
  more: (days: number): string =>
    `Show ${number(days)} more ${plural(days, TONGUE, { one: "day", other: "days" })}`,
  deleted: (name: string): string => `${name} (deleted)`,
  oldGrass: (names: string): string => (names === "" ? "Old-grass spot" : `Old-grass spot, ${names}`),
  yardstick: "The farm's own yardstick: it is part of no strip.",
  wholeField: "the field, no strip named",
  cover: "Ground cover",
  unlike: (places: string): string => `lines at unlike places: ${places}`,
  placeNotSaid: "place not said",
  noLine: "no finished line",
  worms: "Worms per hole",
  wormsPerM2Only: "Worms per m²",
  perM2: (value: string): string => `${value} per m²`,
  noHole: "no finished hole",
  soaked: (minutes: number): string => `Soaked in after ${number(minutes)} min`,
  soakedIn: "Soaked in",
  after: (minutes: number): string => `after ${number(minutes)} min`,
  noSoak: (rings: number): string =>
    `${number(rings)} ${plural(rings, TONGUE, { one: "ring", other: "rings" })}, none read up to 60 min`,
  ofRings: (read: number, rings: number): string =>
    read === rings
      ? `${number(rings)} ${plural(rings, TONGUE, { one: "ring", other: "rings" })}`
      : `${number(read)} of ${number(rings)} rings`,
  lines: (count: number): string =>
    `${number(count)} ${plural(count, TONGUE, { one: "line", other: "lines" })}`,
  holes: (count: number): string =>
    `${number(count)} ${plural(count, TONGUE, { one: "hole", other: "holes" })}`,
  open: (count: number): string => `${number(count)} not finished`,
  paper: "Earlier results from paper",
  paperHint: "Without raw readings behind them: they stand apart and enter no mean.",
  papers: {
    "ground-cover-percent": "Ground cover",
    "worms-per-hole": "Worms per hole",
    "soaked-in-60-min-mm": "Soaked in after 60 min",
  } satisfies Record<EarlierResult["what"], string>,
  fromPaper: "from paper, no raw readings",
  addPaper: "Earlier result (paper)",
  paperForm: {
    hint: "A number that you have on paper alone. It is drawn hollow, stands apart from what was measured here, and enters no mean.",
    what: "What does the paper say?",
    value: {
      "ground-cover-percent": "How much was covered, in %?",
      "worms-per-hole": "How many worms per hole?",
      "soaked-in-60-min-mm": (unit: string): string => `How much soaked in within 60 min, in ${unit}?`,
    },
    refused: {
      "ground-cover-percent": "That is no percentage from 0 to 100.",
      "worms-per-hole": "That is no number of worms.",
      "soaked-in-60-min-mm": "No ground takes that much.",
    } satisfies Record<EarlierResult["what"], string>,
    samples: "From how many lines, holes or rings? (not needed)",
    samplesRefused: "Write a whole number, or leave it empty.",
    origin: "Where is it written? (not needed)",
    originHint: "For example: notebook of 2019",
    keep: "Write it down",
    written: (what: string): string => `Written down: ${what}.`,
    deleted: "Deleted. It can be brought back for 30 days under Deleted records.",
  },
  samples: (count: number | null): string =>
    count === null
      ? "number of samples not said"
      : `${number(count)} ${plural(count, TONGUE, { one: "sample", other: "samples" })}`,
  charts: "Over the years",
  perHole: "per hole",
  perM2Half: "per m²",
  wormsUnit: "Worms in which unit?",
  chartOf: {
    cover: "Ground cover",
    "worms-per-m2": "Worms per m²",
    "worms-per-hole": "Worms per hole",
    soaked: "Soaked in after 60 min",
  },
  units: { cover: "%", "worms-per-m2": "per m²", "worms-per-hole": "per hole" },
  lastDay: (what: string): string =>
    `Where a strip was measured on several days of a ${what}, the last of them is drawn. Ground, weather and season differ from year to year: a line that rises does not say why.`,
  byCalendar: `Days without a ${trade.harvestYear} stand under their calendar year.`,
  harvestYear: trade.harvestYear,
});

export type YearsWords = ReturnType<typeof english>;
export const YEARS_WORDS: WordsOf<YearsWords> = { en: english };
