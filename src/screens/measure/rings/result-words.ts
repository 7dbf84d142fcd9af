/** The result of a ring in sentences. */

import type { UnitHabits } from "../../../record/units.ts";
import { type Levelling, minutesForRuler } from "../../../science/infiltration/levelling.ts";
import { type Catalogue, sentenceFor } from "../../catalogue.ts";
import type { DayRing } from "./day.ts";
import { depthText, rateText } from "./figures.ts";
import type { RingResult } from "./result.ts";
import type { RingWords } from "./words.ts";

/** Sentences by code that the catalogue does not hold. */
type Sentences = Readonly<Record<string, string>>;

/** Levelled off, still slowing, or cannot tell with this ruler; and how long it would take. */
export const levellingText = (
  catalogue: Catalogue,
  words: RingWords,
  levelling: Levelling,
  stepMm: number,
  habits: UnitHabits,
  sentences: Sentences,
): string => {
  const rate = rateText(levelling.rate.value, habits);
  const { moreMin } = levelling;
  switch (levelling.status) {
    case "levelled-off":
      return words.result.levelledOff(rate);
    case "still-slowing":
      return `${words.result.stillSlowing(rate)} ${
        moreMin.ok
          ? words.result.moreMin(Math.ceil(moreMin.value))
          : sentenceFor(catalogue, moreMin.problem, sentences)
      }`;
    case "cannot-tell": {
      const each = minutesForRuler(levelling.rate.value, stepMm);
      return words.result.cannotTell(rate, each.ok ? Math.ceil(each.value) : null);
    }
  }
};

/** The short form, for the board. */
export const levellingWord = (words: RingWords, { levelling }: RingResult): string =>
  levelling.ok ? words.result.short[levelling.value.status] : "";

/** One figure of the headline, under its time; null where it is not known. */
export interface HeadlineCell {
  readonly of: string;
  readonly value: string | null;
  /** What was guessed before. */
  readonly guessed: string | null;
}

/** Minutes after which a guess is asked for. */
const GUESS_MIN = 60;

/**
 * The headline: what soaked in after 30, 60 and 180 minutes and the rate of the last half hour, with the guess
 * beside its result.
 */
export const headlineCells = (
  words: RingWords,
  { headlines, lastHalfHour }: RingResult,
  guessMm: number | null,
  habits: UnitHabits,
): readonly HeadlineCell[] => [
  ...headlines.map(({ minutes, depth }) => ({
    of: words.result.afterMin(minutes),
    value: depth.ok ? depthText(depth.value.value, habits) : null,
    guessed:
      guessMm === null || minutes !== GUESS_MIN ? null : words.result.guessed(depthText(guessMm, habits)),
  })),
  {
    of: words.result.lastHalfHour,
    value: lastHalfHour.ok ? rateText(lastHalfHour.value.value, habits) : null,
    guessed: null,
  },
];

/** Why what soaked in so far goes no further than it does; null while it goes on. */
export const standsStill = (words: RingWords, { soaking }: RingResult): string | null =>
  soaking.ok && soaking.value.brokenBy !== null && !soaking.value.leaked
    ? words.result.standsStill(words.sheet.leftOut[soaking.value.brokenBy])
    : null;

/** Everything that has to be said at once beside the figure, most urgent first. */
export const saidBeside = (
  catalogue: Catalogue,
  words: RingWords,
  ring: DayRing,
  result: RingResult,
  habits: UnitHabits,
  sentences: Sentences,
): readonly string[] => {
  const { soaking, levelling } = result;
  const lines: string[] = [];
  const still = standsStill(words, result);
  if (soaking.ok && soaking.value.leaked) lines.push(words.result.leaked);
  if (still !== null) lines.push(still);
  if (soaking.ok && ring.header.way === "measured-pour" && soaking.value.pours.length === 1)
    lines.push(words.result.wetting);
  if (soaking.ok && soaking.value.named.burrow) lines.push(words.result.burrow);
  if (soaking.ok && soaking.value.named.crack) lines.push(words.result.crack);
  if (levelling.ok)
    lines.push(levellingText(catalogue, words, levelling.value, ring.set.stepMm, habits, sentences));
  return lines;
};
