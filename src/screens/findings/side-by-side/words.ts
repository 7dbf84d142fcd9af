import type { ConditionName } from "../../../science/side-by-side/like-with-like.ts";
import type { Word } from "../../../science/side-by-side/words.ts";
import { plural, writeNumber } from "../../parts/numbers.ts";
import type { TradeWords } from "../../parts/trade.ts";
import { TONGUE } from "../../parts/words.common.ts";
import type { WordsOf } from "../../parts/words-of.ts";
import type { Measure } from "./conditions.ts";

const number = (value: number): string => writeNumber(value, TONGUE);
const counted = (count: number, one: string, other = `${one}s`): string =>
  `${number(count)} ${plural(count, TONGUE, { one, other })}`;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "twice", "1.5 times". */
const times = (ratio: number): string =>
  ratio >= 1.9 && ratio <= 2.1 ? "twice" : `${writeNumber(ratio, TONGUE, ratio < 10 ? 1 : 0)} times`;
const much = { cover: "ground cover", worms: "as many worms", soak: "as much water soaked in" } as const;

const samples: Readonly<Record<Measure, (count: number) => string>> = {
  cover: (count) => counted(count, "line"),
  worms: (count) => counted(count, "hole"),
  soak: (count) => counted(count, "ring"),
};

const between = (low: number, high: number): string =>
  low === high ? number(low) : `${number(low)} to ${number(high)}`;

/** "2 to 4 more lines". */
const more = (measure: Measure, low: number, high: number): string => {
  const [one, other] = { cover: ["line", "lines"], worms: ["hole", "holes"], soak: ["ring", "rings"] }[
    measure
  ] as [string, string];
  return `${between(low, high)} more ${plural(high, TONGUE, { one, other })}`;
};

/** The difference called worth while. */
const worth = (measure: Measure, worthwhile: number): string =>
  measure === "cover"
    ? `a difference of ${counted(Math.round(worthwhile * 100), "point")}`
    : `${times(worthwhile)} ${measure === "worms" ? "as many" : "as much"}`;

const english = (trade: TradeWords) => ({
  title: "Side by side",
  gone: "This visit is not on this device.",
  alone: "Only one strip was measured on this day: there is nothing to set beside it.",
  toVisit: "Back to the strips",
  meaning: "What these words mean",
  which: "Which strip is set against the others?",
  like: "Like with like first",
  alike: (what: string, conditions: string) => `${what}: alike in ${conditions}.`,
  atPlace: (what: string) => `${what}: tests at which place against the row?`,
  allPlaces: "all places",
  testsThere: (name: string, count: number) => `${name} ${number(count)}`,
  byItself: "The choice above looks at one place by itself.",
  asked: (what: string) => `${what}: no condition was written down, so nobody can know.`,
  two: (a: string, b: string) => `${a} and ${b}`,
  of: (what: string, names: string) => `${what}, ${names}`,
  sides: (a: string, saidA: string, b: string, saidB: string) => `${a}: ${saidA}. ${b}: ${saidB}.`,
  share: (what: string, count: number, all: number) => `${what} ${number(count)} of ${number(all)}`,
  notSaid: "not said",
  anyway: "Compare anyway",
  notAlike:
    "These are not like with like, so no number is shown yet. You can compare them all the same; these words stay.",
  comparedAnyway: "Compared all the same, at your word.",
  measure: { cover: "Ground cover", worms: "Worms", soak: "Soaked in" } satisfies Record<Measure, string>,
  unit: {
    cover: "percent of the ground",
    hole: "worms per hole",
    m2: "worms per m²",
    soak: (minutes: string, unit: string) => `${unit} soaked in after ${minutes} min`,
  },
  about: {
    places: "the place against the row",
    mulchInRing: "the mulch in the ring",
    pours: "first or later pour",
    wetness: "how wet the ground was",
    ways: "the way to read",
    sizesM: "the size of the kit",
    depthsM: "the depth",
    personMinutes: "people and minutes",
    seasons: "the season",
    harvestYears: trade.harvestYear,
  } satisfies Record<ConditionName, string>,
  pours: { first: "first pour, on ground not wetted yet", later: "later pour" },
  personMinutes: (minutes: string) => `${minutes} minutes of one person`,
  across: (size: string) => `${size} across`,
  deep: (size: string) => `${size} deep`,
  samples,
  oneOnly: "Only one strip has this: there is nothing to set beside it.",
  showTable: "Show as table",
  showDrawing: "Show as drawing",
  strip: "Strip",
  value: "Value",
  range: "Range, samples",
  afterMinutes: (name: string, minutes: string) => `${name}, after ${minutes} min`,
  notSoLong: "not read for so long",
  grass: "old-grass spot",
  guessed: (value: string) => `guessed before: ${value}`,
  seen: "Seen",
  proves: "What it proves",
  same: (a: string, b: string) => `About the same on ${a} and on ${b}.`,
  morePoints: (points: number, most: string, least: string) =>
    `${capital(most)}: ${counted(points, "point")} more ground cover than ${least}.`,
  ratio: (measure: Exclude<Measure, "cover">, ratio: number, most: string, least: string) =>
    `${capital(most)}: about ${times(ratio)} ${much[measure]} as on ${least}.`,
  noneThere: (most: string, least: string) => `${capital(most)}: worms there, and none on ${least}.`,
  places: {
    "clearly-different": "These two places differ clearly on this day.",
    "probably-different": "These two places probably differ on this day.",
    "cannot-tell-yet": "Cannot tell yet whether these two places differ: it could still be chance.",
  } satisfies Record<Word, string>,
  treatments: {
    "clearly-different": (a: string, b: string) => `${capital(a)} and ${b}: clearly different.`,
    "probably-different": (a: string, b: string) => `${capital(a)} and ${b}: probably different.`,
    "cannot-tell-yet": (a: string, b: string) =>
      `${capital(a)} and ${b}: cannot tell yet, it could still be chance.`,
  } satisfies Record<Word, (a: string, b: string) => string>,
  ground:
    "With one strip of each, nothing can tell what the ground did from what was done to it. Several strips of each, side by side in reps, could.",
  pointsRange: (low: string, high: string) =>
    `The difference lies between ${low} and ${high} points (95 % range).`,
  ratioRange: (low: string, high: string) => `The ratio lies between ${low} and ${high} (95 % range).`,
  ratioUpTo: (high: string) => `The ratio lies below ${high} (95 % range).`,
  moreForRange: (measure: Measure, needs: number) =>
    `${capital(more(measure, needs, needs))} where there are fewest would give a range.`,
  moreEach: (measure: Measure, low: number, high: number, worthwhile: number) =>
    `About ${more(measure, low, high)} on each would show ${worth(measure, worthwhile)}.`,
  enough: (measure: Measure, worthwhile: number) =>
    `${capital(worth(measure, worthwhile))} would most likely have shown by now. There may still be a smaller difference.`,
  moreReps: {
    pair: (low: number, high: number, measure: Measure, worthwhile: number) =>
      `About ${between(low, high)} more ${plural(high, TONGUE, { one: "pair", other: "pairs" })} would show ${worth(measure, worthwhile)}.`,
    block: (low: number, high: number, measure: Measure, worthwhile: number) =>
      `About ${between(low, high)} more ${plural(high, TONGUE, { one: "block", other: "blocks" })} would show ${worth(measure, worthwhile)} between any two.`,
  },
  manyLooks: (count: number) =>
    `${counted(count, "comparison")} stand here. Where nothing differs, chance alone calls about one in 20 clearly different.`,
  pairs: (count: number) => `Compared over ${counted(count, "pair")}.`,
  blocks: (count: number) => `Compared over ${counted(count, "block")}.`,
  eachPair: (most: string, least: string) => `Each pair by itself: ${most} against ${least}`,
  rep: (rep: string) => `rep ${rep}`,
  pointsOf: (points: string) => `${points} ${/^\D?1$/u.test(points) ? "point" : "points"}`,
  timesOf: (ratio: string) => `${ratio} times`,
  incomplete: (reps: readonly number[]) =>
    `Left out, because a treatment is missing there: ${reps.map((rep) => `rep ${number(rep)}`).join(", ")}.`,
  local: "Local codes, conservation rules and licensed advice come first.",
  ringsCompare: "Ring figures are for comparing places, not for sizing drains or structures.",
});

/** Words of strips side by side, beside those of the catalogue. */
export type SideWords = ReturnType<typeof english>;
export const SIDE_WORDS: WordsOf<SideWords> = { en: english };
