/** Words that stand beside a number on several screens. */
import type { WordsOf } from "../parts/words-of.ts";

const english = () => ({
  ringsAlike: "no range: all rings read the same",
});

export type BesideWords = ReturnType<typeof english>;
export const BESIDE_WORDS: WordsOf<BesideWords> = { en: english };
