/** What can be said beside a number, or in its place, on the screens that are loaded after the first key. */

import type { WordsOf } from "../parts/words-of.ts";
import { comparisonSentences } from "./sentences/comparison.ts";
import { earthwormSentences } from "./sentences/earthworms.ts";
import { infiltrationSentences } from "./sentences/infiltration.ts";
import { plansSentences } from "./sentences/plans.ts";
import { stormsSentences } from "./sentences/storms.ts";
import { strawSentences } from "./sentences/straw.ts";
import { waterSentences } from "./sentences/water.ts";
import { scienceWords } from "./words.science.ts";

/** Sentences by code, beside those of the catalogue. */
export const SENTENCES: WordsOf<Readonly<Record<string, string>>> = {
  en: () => ({
    ...scienceWords,
    ...earthwormSentences,
    ...infiltrationSentences,
    ...comparisonSentences,
    ...strawSentences,
    ...waterSentences,
    ...plansSentences,
    ...stormsSentences,
  }),
};
