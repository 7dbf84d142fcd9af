import type { Treatment } from "../../record/kinds/strip.ts";
import type { Place, Stood } from "../../record/shapes.ts";
import { plural, writeNumber } from "./numbers.ts";
import type { TradeWords } from "./trade.ts";

/** Language of this catalogue; days and numbers follow the person's region. */
export const TONGUE = "en";

/** Words that several screens share. */
export const commonWords = (trade: TradeWords) => ({
  common: {
    tongue: trade.tongue,
    product: "Mulchmark",
    tagline: "ground cover, worms and soak-in, measured in the field",
    back: "Back",
    close: "Close",
    howTo: "How it is done",
    skip: "Skip",
    keep: "Keep it",
    change: "Change",
    done: "Done",
    delete: "Delete",
    undo: "Undo",
    redo: "Redo",
    percent: "%",
    noName: "not named yet",
    wholeField: "whole field",
    oldGrass: (name: string) => (name === "" ? "old-grass spot" : `${name}, old-grass spot`),
    lines: (count: number) =>
      `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one: "line", other: "lines" })}`,
    marks: (count: number) =>
      `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one: "mark", other: "marks" })}`,
    range: (low: string, high: string) => `${low} to ${high}`,
    tooFew: "too few to give a range",
  },
  pad: {
    decimal: "decimal mark",
    decimalMark: ".",
    eraseLast: "erase the last digit",
  },
  unusual: {
    ask: (typed: string, unit: string) => `${typed} ${unit}: is that what you read?`,
    yes: "Yes, I read that",
  },
  areas: {
    label: "Areas",
    measure: "Measure",
    fields: "Fields",
    findings: "Findings",
    send: "Send & back up",
  },
  place: {
    "in-row": "in the row",
    "between-rows": "between rows",
    "across-rows": "across the rows",
    "wheel-track": "wheel track",
    tramline: trade.tramline,
    swath: trade.swath,
    "standing-stubble": "standing stubble",
    other: "other",
  } satisfies Record<Place, string>,
  treatment: {
    "straw-left": "straw left",
    "straw-carried-off": "straw carried off",
    "cover-crop": "cover crop",
    "no-cover-crop": "no cover crop",
    "not-tilled": "not tilled",
    tilled: "tilled",
  } satisfies Record<Treatment, string>,
  noPosition: {
    denied: "This browser does not give its position. Measuring goes on without it.",
    unavailable: "No position here just now. Measuring goes on without it.",
    slow: "The position is slow to come. Measuring goes on meanwhile.",
    "not-asked": "No position was taken.",
  } satisfies Record<NonNullable<Stood["why"]>, string>,
});

/** Sentences for problems, by their code. `{name}` is filled from the problem's facts. */
export const problemWords: Readonly<Record<string, string>> = {
  "record/number-empty": "Nothing is written here yet.",
  "record/number-not-a-number":
    "That is not a number. Write digits only, with one decimal mark if you need one.",
  "record/number-exponent": "Write the number out in full.",
  "record/number-grouped": "Write the number without gaps between its digits.",
  "record/number-two-separators":
    "There are two marks in this number, and it could mean two things. Write it with one decimal mark, or with none.",
  "record/number-unfinished":
    "This number is not finished. Write what follows the mark, or leave the mark out.",
  "record/number-too-long": "That is too long for a number.",
  "record/line-full": "The rope has only {marks} {marks|mark|marks}: the line is full.",
  "record/line-ended": "This line ended at mark {mark}. Undo takes the end back.",
  "record/more-placed-than-found":
    "{found} {found|worm|worms} found and {placed} placed: {more} more than found. Both are kept.",
  "record/counted-on-two-phones":
    "{touches} {touches|worm was|worms were} touched in on another phone and {touches|is|are} added to the number written here.",
  "record/sorting-clocks-apart": "A clock was set while worms were sorted: check the minutes.",
  "record/full": "This line holds {most} {most|reading|readings} and takes no more.",
  "record/nothing-to-undo": "There is nothing to undo.",
  "record/nothing-to-redo": "There is nothing to redo.",
  "record/erased": "This was forgotten for good and cannot be changed.",
  "record/exists": "This is there already.",
  "record/no-such-record": "This is not on this device.",
  "record/not-valid":
    "What was written there cannot be kept, and nothing was changed. Write it shorter, in plain letters and digits, and try again.",
  "record/from-the-future":
    "This was made by a newer Mulchmark: it needs version {needs} of {kind}, this one knows {knows}. Nothing was changed. Update Mulchmark, then try again.",
  "results/no-worker":
    "The results could not be worked out just now. Every reading is safe; open this page once more.",
  "store/queue-full": "One moment: the touches before are still being written down.",
  "record/forbidden-key": "A record holds something that could do harm ({key}). It was not taken.",
  "record/too-deep": "A record is built as none of Mulchmark's is. It was not taken.",
  "store/from-the-future":
    "The records were made by a newer Mulchmark: this one knows version {knows}. Nothing was changed.",
  "store/gone":
    "The records cannot be reached just now. Load this window again; nothing that was shown is lost.",
  "store/newer-window": "A newer Mulchmark is open in another window. Load this window again to go on.",
  "device/key-not-taught": "No key came. The answer keeps the key that it had.",
  "device/room-unknown": "This browser does not say how much room there is.",
  "store/upgrade-failed":
    "The records could not be brought up to date from version {from} to {to}. Nothing was changed.",
  "screens/not-a-time": "No clock shows that. Write hours and minutes, like 14:05.",
  "store/quota": "This device has no room left. Readings are still taken; photos are not.",
};
