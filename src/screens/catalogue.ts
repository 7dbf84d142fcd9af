/** Every word on screen, one typed catalogue per language. A language that misses a word does not compile. */

import type { Problem } from "../record/result.ts";
import { sharedFieldWords } from "./fields/words.shared.ts";
import { homeWords } from "./measure/home/words.ts";
import { lineWords } from "./measure/line/words.ts";
import { visitWords } from "./measure/visit/words.shared.ts";
import { plural } from "./parts/numbers.ts";
import type { TradeWords } from "./parts/trade.ts";
import { barWords } from "./parts/words.bars.ts";
import { commonWords, problemWords, TONGUE } from "./parts/words.common.ts";
import { standingWords } from "./parts/words.standing.ts";
import { kindWords } from "./send/words.kinds.ts";
import { filesProblemWords } from "./send/words.problems.ts";

/** English, in the trade words of a region. */
export const english = (trade: TradeWords) => ({
  ...commonWords(trade),
  ...barWords(),
  ...standingWords(),
  ...lineWords(trade),
  ...homeWords(),
  ...visitWords(),
  ...sharedFieldWords(),
  ...kindWords(),
  problems: { ...problemWords, ...filesProblemWords },
});

/** What every language has to say. */
export type Catalogue = ReturnType<typeof english>;

/** The catalogues by language. */
export const CATALOGUES: { readonly en: (trade: TradeWords) => Catalogue } = { en: english };

/**
 * Fills the gaps of a sentence with facts; a gap without its fact stays as it is.
 *
 * @example
 * fillGaps("{marks} {marks|mark|marks}", { marks: 1 }) // => "1 mark"
 */
export const fillGaps = (sentence: string, facts: Problem["facts"]): string =>
  sentence.replace(
    /\{(\w+)(?:\|([^|}]*)\|([^|}]*))?\}/g,
    (gap, key: string, one?: string, other?: string) => {
      const fact = facts[key];
      if (fact === undefined) return gap;
      return one === undefined || other === undefined
        ? String(fact)
        : plural(Number(fact), TONGUE, { one, other });
    },
  );

/**
 * The sentence for a problem; one without words of its own shows its code, so that it can be reported.
 *
 * @param more sentences that came with a screen, where the catalogue has none
 */
export const sentenceFor = (
  words: Catalogue,
  problem: Problem,
  more: Readonly<Record<string, string>> = {},
): string => fillGaps(words.problems[problem.code] ?? more[problem.code] ?? problem.code, problem.facts);
