import type { WordsOf } from "../parts/words-of.ts";

const english = () => ({
  note: "This is the example farm. All of it is invented.",
  tag: "example farm, invented",
});

/** The one sentence that stands on every screen of the example farm, and its short form in rows of lists. */
export const DEMO_NOTE_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
