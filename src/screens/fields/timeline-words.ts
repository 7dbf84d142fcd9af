/** Words of what was done on a field. */
import type { EVENTS } from "../../record/kinds/event.ts";
import { plural, writeNumber } from "../parts/numbers.ts";
import type { TradeWords } from "../parts/trade.ts";
import { TONGUE } from "../parts/words.common.ts";
import type { WordsOf } from "../parts/words-of.ts";

const number = (value: number): string => writeNumber(value, TONGUE);
const upper = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

const english = (trade: TradeWords) => ({
  title: "Timeline",
  events: {
    drilled: upper(trade.drilled),
    harvested: "Harvested",
    "straw-baled": "Straw baled",
    "straw-left": "Straw left",
    grazed: "Grazed",
    "cover-crop-sown": "Cover crop sown",
    "cover-crop-terminated": "Cover crop terminated",
    tilled: "Tilled",
    sprayed: "Sprayed",
    other: "Something else",
  } satisfies Record<(typeof EVENTS)[number], string>,
  visit: "Visit",
  rain: "Rain",
  rainOf: (depth: string): string => `Rain, ${depth}`,
  lastRain: (days: number, day: string, depth: string): string =>
    days === 0
      ? `Rain noted today: ${depth}.`
      : `${number(days)} ${plural(days, TONGUE, { one: "day", other: "days" })} since the last rain noted: ${depth} on ${day}.`,
  noRain: "No rain noted yet.",
  /** Days since rain among the conditions of a ring or a hole. */
  before: {
    title: "Days since rain",
    days: (days: number): string =>
      days === 0
        ? "Rain on this day."
        : `${number(days)} ${plural(days, TONGUE, { one: "day", other: "days" })} since rain.`,
    proposed: (depth: string, day: string): string =>
      `Proposed from the rain notes of this field: ${depth} on ${day}.`,
    none: "No rain was noted on this field up to this day. That does not mean that none fell.",
    correct: "Correct this rain",
    since: "It rained since",
    note: "Note the last rain",
  },
  today: "today",
  yesterday: "yesterday",
  anotherDay: "another day",
  wholeField: "whole field",
  touch: (day: string, where: string): string => `Touch what was done: ${day}, ${where}.`,
  change: "Another day or strip",
  changeClose: "Close day and strip",
  when: "When?",
  where: "Where?",
  dayLabel: "Which day?",
  dayMissing: "Choose a day of the calendar.",
  ahead: "This day is still to come by the clock of this device.",
  written: (what: string): string => `Written down: ${what}.`,
  changed: (what: string): string => `Corrected: ${what}.`,
  deleted: (what: string): string => `Deleted: ${what}.`,
  takenBack: (what: string): string => `Taken back: ${what}`,
  doneAgain: (what: string): string => `Done again: ${what}`,
  undo: (what: string): string => `Undo: ${what}`,
  redo: (what: string): string => `Redo: ${what}`,
  correct: "Correct it or add words",
  what: "What was done?",
  words: "In your own words (may stay empty)",
  remove: "Delete this",
  removeAsk: "Delete this?",
  removeHint: "It can be brought back for 30 days under Deleted records.",
  removeYes: "Yes, delete it",
  rainLabel: (unit: string): string => `How much rain, in ${unit}?`,
  rainHint: "What the gauge shows. 0 is an answer too: no rain fell.",
  rainRefused: "No gauge shows that.",
  keepRain: "Write it down",
  sprayedTitle: (days: number): string =>
    days <= 0 ? "Sprayed today" : days === 1 ? "Sprayed yesterday" : `Sprayed ${number(days)} days ago`,
  none: "Nothing written down yet.",
  listTitle: "What was done, newest first",
  more: (count: number): string => `Show ${number(count)} more`,
  harvestYear: (year: number): string => `${trade.harvestYear} ${year}`,
});

export type TimelineWords = ReturnType<typeof english>;
export const TIMELINE_WORDS: WordsOf<TimelineWords> = { en: english };
