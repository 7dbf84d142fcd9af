/** How exact a position is, in words. */
import type { AccuracyMeans } from "../../record/shapes.ts";
import type { UnitHabits } from "../../record/units.ts";
import { lengthWords } from "./lengths.ts";
import type { standingWords } from "./words.standing.ts";

/**
 * A stated radius with how often the true place lies within it; the radius alone where nobody says how often.
 *
 * @example
 * accuracyWords(4, "68-percent", words.standing, habits) // "4 m (2 times in 3)"
 */
export const accuracyWords = (
  accuracyM: number,
  means: AccuracyMeans | null,
  words: ReturnType<typeof standingWords>["standing"],
  habits: UnitHabits,
): string => {
  const length = lengthWords("distance", accuracyM, habits);
  return means === null || means === "not-known" ? length : words.within(length, words.often[means]);
};
