/** Every word on screen, one typed catalogue per language. A language that misses a word does not compile. */

import type { Problem } from "../record/result.ts";
import { fieldWords } from "./fields/words.ts";
import { scienceWords } from "./findings/words.science.ts";
import { findingsWords } from "./findings/words.ts";
import { kitWords } from "./kit/words.ts";
import { homeWords } from "./measure/home/words.ts";
import { lineWords } from "./measure/line/words.ts";
import { visitWords } from "./measure/visit/words.ts";
import type { TradeWords } from "./parts/trade.ts";
import { barWords } from "./parts/words.bars.ts";
import { commonWords, problemWords } from "./parts/words.common.ts";
import { filesProblemWords } from "./send/words.problems.ts";
import { sendWords } from "./send/words.ts";
import { settingsWords } from "./settings/words.ts";
import { welcomeWords } from "./welcome/words.ts";

/** English, in the trade words of a region. */
export const english = (trade: TradeWords) => ({
  ...commonWords(trade),
  ...barWords(),
  ...lineWords(trade),
  ...homeWords(),
  ...visitWords(trade),
  ...fieldWords(trade),
  ...findingsWords(trade),
  ...welcomeWords(),
  ...settingsWords(trade),
  ...kitWords(trade),
  ...sendWords(trade),
  problems: { ...problemWords, ...scienceWords, ...filesProblemWords },
});

/** What every language has to say. */
export type Catalogue = ReturnType<typeof english>;

/** The catalogues by language. */
export const CATALOGUES: { readonly en: (trade: TradeWords) => Catalogue } = { en: english };

/** Fills the gaps (`{name}`) of a sentence with facts; a gap without its fact stays as it is. */
export const fillGaps = (sentence: string, facts: Problem["facts"]): string =>
  sentence.replace(/\{(\w+)\}/g, (gap, key: string) => String(facts[key] ?? gap));

/** The sentence for a problem; one without words of its own shows its code, so that it can be reported. */
export const sentenceFor = (words: Catalogue, problem: Problem): string =>
  fillGaps(words.problems[problem.code] ?? problem.code, problem.facts);
