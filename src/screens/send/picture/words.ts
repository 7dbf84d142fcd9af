import type { Word } from "../../../science/side-by-side/words.ts";
import type { Measure } from "../../findings/side-by-side/conditions.ts";
import { plural, writeNumber } from "../../parts/numbers.ts";
import type { TradeWords } from "../../parts/trade.ts";
import { TONGUE } from "../../parts/words.common.ts";
import type { WordsOf } from "../../parts/words-of.ts";

const counted = (count: number, one: string): string =>
  `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one, other: `${one}s` })}`;

const english = (_trade: TradeWords) => ({
  title: "One picture to send",
  gone: "This visit is not on this device.",
  none: "Nothing was finished on this day yet: there is no number to put into a picture.",
  making: "The picture is being drawn …",
  failed: "This browser could not draw the picture. The words below can still be sent.",
  share: "Send this picture",
  save: "Save this picture",
  shareWords: "Send it in words",
  saveWords: "Save it in words",
  shared: "Handed over.",
  saved: (name: string) =>
    `The browser has it now, as ${name}. Look under Downloads or Files on this device, and send it from there. A picture that stays on this device is lost with it.`,
  cannotShare: "This browser does not share such a file: it is saved first and sent from where it lies.",
  choose: "What stands in it",
  measure: "Which number?",
  measures: {
    cover: "Ground cover",
    worms: "Worms",
    soak: "Soaked in",
  } satisfies Record<Measure, string>,
  first: "First strip",
  second: "Second strip",
  nothing: "none",
  grass: "old-grass spot",
  photos: "Photos, two at most",
  noPhotos: "No photo was taken on this day.",
  photo: (clock: string, strip: string) =>
    strip === "" ? `Photo of ${clock}` : `Photo of ${clock}, ${strip}`,
  invented: "Example farm: this field is invented, and so is what was measured on it.",
  photoLost: "One of the photos could not be opened and is left out.",
  samples: {
    cover: (count: number) => counted(count, "line"),
    worms: (count: number) => counted(count, "hole"),
    soak: (count: number) => counted(count, "ring"),
  } satisfies Record<Measure, (count: number) => string>,
  unit: {
    cover: "ground cover",
    hole: "worms per hole",
    m2: "worms per m²",
    soak: (minutes: string) => `soaked in after ${minutes} min`,
  },
  range: (low: string, high: string) => `range ${low} to ${high}`,
  guessed: (value: string) => `guessed before: ${value}`,
  places: {
    "clearly-different": "These two places differ clearly on this day.",
    "probably-different": "These two places probably differ on this day.",
    "cannot-tell-yet": "Cannot tell yet whether these two places differ: it could still be chance.",
  } satisfies Record<Word, string>,
  cannotCompare: "Cannot tell yet whether these two places differ.",
  byPlace: "Not like with like: look at each place against the row by itself",
  notShown: "What this does not show",
  onePlace: "One day, one place. Other days and other fields are not in it.",
  twoPlaces: "Two places on one day. Ground and treatment cannot be told apart by one strip of each.",
  withGrass: "The old-grass spot is a yardstick for this ground, and no strip to compare with.",
  sampling: "The range speaks of which places were sampled, not of misreading.",
  rings: "Ring figures are for comparing, not for sizing drains or structures.",
  local: "Local codes, conservation rules and licensed advice come first.",
  foot: (product: string, tagline: string) => `${product} · ${tagline}`,
  alt: (text: string) => `The picture says: ${text}`,
});

/** Words of the picture, and of the screen that makes it. */
export type PictureWords = ReturnType<typeof english>;
export const PICTURE_WORDS: WordsOf<PictureWords> = { en: english };
