import { plural, writeNumber } from "../../parts/numbers.ts";
import type { TradeWords } from "../../parts/trade.ts";
import { TONGUE } from "../../parts/words.common.ts";
import type { WordsOf } from "../../parts/words-of.ts";

const counted = (count: number, one: string, other: string): string =>
  `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one, other })}`;
const rings = (count: number): string => counted(count, "ring", "rings");
/** "ring A", "rings A and B". */
const named = (letters: readonly string[]): string =>
  `${plural(letters.length, TONGUE, { one: "ring", other: "rings" })} ${new Intl.ListFormat(TONGUE).format(letters)}`;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const english = (_trade: TradeWords) => ({
  cover: "Ground cover",
  soaked: "Soaked in",
  rings,
  after: (minutes: string) => `after ${minutes} min`,
  soFar: (minutes: string) => `soaked in after ${minutes} min`,
  range: (low: string, high: string, count: number) => `${low} to ${high}, ${rings(count)}`,
  tooFew: (count: number) => `too few to give a range, ${rings(count)}`,
  alike: (count: number) => `no range: all rings read the same, ${rings(count)}`,
  notSoLong: (letters: readonly string[]) => `not read for so long: ${named(letters)}`,
  nothingYet: "No ring has been read for half an hour yet.",
  burrow: (letters: readonly string[]) => `A burrow in ${named(letters)}. It counts.`,
  crack: (letters: readonly string[]) => `A crack in ${named(letters)}. It counts.`,
  leaked: (letters: readonly string[]) =>
    `${capital(named(letters))} leaked. Nothing counts from the leak on.`,
  notDrained: (letters: readonly string[]) =>
    `${capital(named(letters))}: the last pour has not drained. What it says is at least so much.`,
  comparing: "Ring figures are for comparing places, not for sizing drains or structures.",
  ringRow: (letter: string) => `Ring ${letter}`,
  goOn: "go on",
  guess: (value: string) => `Guessed before: ${value}.`,
  bearInMind: "To bear in mind",
  seenToo: (notes: number, photos: number) =>
    [
      ...(notes === 0 ? [] : [counted(notes, "note", "notes")]),
      ...(photos === 0 ? [] : [counted(photos, "photo", "photos")]),
    ].join(", "),
  grass: {
    title: "Old-grass spot",
    says: "The farm's own yardstick: what this ground does under old grass.",
    nothingYet: "Nothing finished there yet.",
    beside: (values: string) => `On the old-grass spot: ${values}.`,
    cover: (percent: string) => `${percent} % ground cover`,
    worms: (count: string) => `${count} worms per hole`,
    soak: (depth: string, minutes: string) => `${depth} soaked in after ${minutes} min`,
    on: (value: string, day: string) => `${value} (${day})`,
    from: (day: string) => `measured ${day}`,
    holes: (count: number) => counted(count, "hole", "holes"),
    wormsPerHole: "worms per hole",
    wormsPerM2: "worms per m²",
  },
  compare: "Compare with today's other strips",
  compareThen: "Compare with the other strips of that day",
  picture: "One picture to send",
  map: "Map of this day",
});

/** Words of everything measured on one day, beside those of the catalogue. */
export type DayWords = ReturnType<typeof english>;
export const DAY_WORDS: WordsOf<DayWords> = { en: english };
