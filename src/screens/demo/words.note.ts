import type { WordsOf } from "../parts/words-of.ts";

const english = () => ({ note: "This is the example farm. All of it is invented." });

/** The one sentence that stands on every screen of the example farm. */
export const DEMO_NOTE_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
