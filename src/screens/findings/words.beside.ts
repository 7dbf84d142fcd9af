/** Words that stand beside a number on several screens. */
import type { WordsOf } from "../parts/words-of.ts";

const english = () => ({
  ringsAlike: "no range: all rings read the same",
  mind: "To bear in mind",
  saidOf: (names: string, sentence: string) =>
    `${names.charAt(0).toUpperCase()}${names.slice(1)}: ${sentence}`,
});

export type BesideWords = ReturnType<typeof english>;
export const BESIDE_WORDS: WordsOf<BesideWords> = { en: english };
