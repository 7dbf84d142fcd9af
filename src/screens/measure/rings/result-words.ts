/** The result of a ring in sentences. */

import type { UnitHabits } from "../../../record/units.ts";
import type { Levelling } from "../../../science/infiltration/levelling.ts";
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
    case "cannot-tell":
      return `${words.result.cannotTell(rate)} ${words.result.topUp}`;
  }
};

/** The short form, for the board. */
export const levellingWord = (words: RingWords, { levelling }: RingResult): string =>
  levelling.ok ? words.result.short[levelling.value.status] : "";

/** The headline: what soaked in after 30, 60 and 180 minutes, as far as it is known. */
export const headlineText = (words: RingWords, { headlines }: RingResult, habits: UnitHabits): string =>
  headlines
    .flatMap(({ minutes, depth }) =>
      depth.ok ? [words.result.after(depthText(depth.value.value, habits), minutes)] : [],
    )
    .join(" · ");

/** Everything that has to be said at once beside the figure, most urgent first. */
export const saidBeside = (
  catalogue: Catalogue,
  words: RingWords,
  ring: DayRing,
  result: RingResult,
  habits: UnitHabits,
  sentences: Sentences,
): readonly string[] => {
  const { soaking, lastHalfHour, levelling } = result;
  const lines: string[] = [];
  if (soaking.ok && soaking.value.leaked) lines.push(words.result.leaked);
  if (soaking.ok && ring.header.way === "measured-pour" && soaking.value.pours.length === 1)
    lines.push(words.result.wetting);
  if (soaking.ok && soaking.value.named.burrow) lines.push(words.result.burrow);
  if (soaking.ok && soaking.value.named.crack) lines.push(words.result.crack);
  if (levelling.ok) lines.push(levellingText(catalogue, words, levelling.value, habits, sentences));
  else if (lastHalfHour.ok) lines.push(words.result.lastHalfHour(rateText(lastHalfHour.value.value, habits)));
  return lines;
};
