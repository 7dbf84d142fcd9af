import type { TradeWords } from "../../parts/trade.ts";
import type { WordsOf } from "../../parts/words-of.ts";

const english = (_trade: TradeWords) => ({
  guess: "Guess first: how much of the ground is covered, in %?",
  guessHint: "It is kept beside the result. May stay empty.",
  guessed: (percent: string) => `Guessed on this strip: ${percent} % ground cover.`,
  notAGuess: "That is no percentage from 0 to 100.",
  leftOut: "What stands as the guess is no percentage from 0 to 100: the line begins without it.",
});

/** Words of guessing ground cover before the first line. */
export const GUESS_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
