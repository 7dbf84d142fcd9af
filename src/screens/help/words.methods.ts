import { plural, writeNumber } from "../parts/numbers.ts";
import { TONGUE } from "../parts/words.common.ts";
import type { WordsOf } from "../parts/words-of.ts";
import type { ChapterId } from "./chapters.ts";

const counted = (count: number, one: string): string =>
  `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one, other: `${one}s` })}`;

const english = () => ({
  lead: "Every method of this app: in words, in symbols, with each number that it holds and where that number comes from. The page is made from the records that the app works with.",
  ahead:
    "Some methods stand here ready and are on no screen yet: storms, residue and straw, water, nitrogen, shelter, cover-crop mass, plans, changes over the years, ground cover across the machine pass, points on photos, how worms spread over a field and how many holes show a group, ranges by drawing anew, spots that are alike, conductivity from two depths of water, and directions.",
  marks: "How well a source stands",
  marksSay: {
    published: "read in the text that is named",
    "common-practice": "done so in the trade, without a text to point at",
    "not-checked": "from memory, not yet compared with the text",
    derived: "follows from what stands beside it, or is this app’s own choice",
  },
  search: "Look for a word",
  searchHint: "A method, a symbol, an author, a year.",
  found: (methods: number, sources: number) =>
    `${counted(methods, "method")} and ${counted(sources, "source")} with this word.`,
  foundNone: "Nothing with this word.",
  more: (count: number) => `${writeNumber(count, TONGUE)} more. Add a word to find fewer.`,
  sources: "Sources",
  sourcesOf: (chapter: string) => `Sources of this chapter: ${chapter}`,
  chapters: {
    "ground-cover": "Ground cover",
    earthworms: "Earthworms",
    infiltration: "Infiltration",
    storms: "Infiltration models and storms",
    comparison: "Comparing, and the years",
    straw: "Residue and straw",
    water: "Water, nitrogen, shelter, cover-crop mass",
    plans: "Positions and plans",
    general: "Further sources",
  } satisfies Record<ChapterId, string>,
});

/** Words of "Methods and sources". */
export const METHODS_PAGE_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
