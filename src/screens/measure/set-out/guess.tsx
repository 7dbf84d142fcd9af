/** The grower's guess before the first test of a strip: one line that may stay empty, and never holds up. */
import { readNumber } from "../../../record/number.ts";
import { WriteLine } from "../../parts/keys.tsx";
import "./spots.css";

/**
 * A guess as it was typed; null for an empty line, and for what is no number from 0 to the most.
 *
 * @example
 * readGuess("45", 100) // 45
 */
export const readGuess = (typed: string, most: number): number | null => {
  // The line asks for a percentage: some write its sign.
  const read = readNumber(typed.replace(/\s*%\s*$/u, ""), { min: -1, max: most + 1 });
  return read.ok && read.value.value >= 0 && read.value.value <= most ? read.value.value : null;
};

/** Whether something stands there that is no guess: the test begins without it. */
export const isNoGuess = (typed: string, most: number): boolean =>
  typed.trim() !== "" && readGuess(typed, most) === null;

/** The line, or what was guessed on the strip before. */
export const GuessLine = (props: {
  /** Whether it may be guessed still; what is guessed after the first test is no guess. */
  readonly asks: boolean;
  readonly typed: string;
  readonly most: number;
  readonly onWrite: (typed: string) => void;
  readonly words: { readonly guess: string; readonly guessHint: string; readonly notAGuess: string };
  /** What was guessed, in words; empty when nobody did. */
  readonly guessed: string;
}) => (
  <div class="guess">
    {props.asks ? (
      <WriteLine
        numeric
        label={props.words.guess}
        hint={props.words.guessHint}
        value={props.typed}
        wrong={isNoGuess(props.typed, props.most) ? props.words.notAGuess : null}
        onWrite={props.onWrite}
      />
    ) : (
      <p>{props.guessed}</p>
    )}
  </div>
);
