import { plural, writeNumber } from "../../parts/numbers.ts";
import type { TradeWords } from "../../parts/trade.ts";
import { TONGUE } from "../../parts/words.common.ts";
import type { WordsOf } from "../../parts/words-of.ts";

const marks = (count: number): string =>
  `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one: "mark", other: "marks" })}`;

const english = (_trade: TradeWords) => ({
  correct: { line: "Correct strip and rope", hole: "Correct strip and place" },
  hint: "What was read stays as it was read. Results go by what is said here from now on.",
  keep: "Correct it",
  needsStrip: "Choose a strip first.",
  otherMarks: (counted: number, other: number) =>
    `This line was counted on a rope with ${marks(counted)}, and that one has ${marks(other)}. Choose a rope with ${marks(counted)}.`,
  atSpot: (name: string) => `At the marked spot ${name}.`,
  lastChanged: (when: string, by: string | null) =>
    by === null
      ? `What is said of it was last changed ${when}.`
      : `What is said of it was last changed ${when} by ${by}.`,
});

/** Words of correcting where a line or a hole lies. */
export const LIES_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
