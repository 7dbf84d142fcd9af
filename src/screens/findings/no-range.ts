/** Why a number stands without a range: the same words on every screen that shows numbers of several tests. */
import type { Problem } from "../../record/result.ts";
import { type Catalogue, sentenceFor } from "../catalogue.ts";
import { useHouse } from "../parts/house.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { SENTENCES } from "./sentences.ts";
import { BESIDE_WORDS, type BesideWords } from "./words.beside.ts";

/** Reasons that all say the same: too few samples. */
const TOO_FEW: ReadonlySet<string> = new Set([
  "science/too-few-lines",
  "science/too-few-holes",
  "science/too-few-rings",
]);

/**
 * The reason in words that the number of samples can follow.
 *
 * @param sentences by code, for reasons that have no short words of their own
 */
export const noRangeText = (
  words: Catalogue,
  beside: BesideWords,
  sentences: Readonly<Record<string, string>>,
  problem: Problem,
): string => {
  if (TOO_FEW.has(problem.code)) return words.common.tooFew;
  if (problem.code === "science/rings-all-alike") return beside.ringsAlike;
  return sentenceFor(words, problem, sentences).replace(/\.$/u, "");
};

/** The same with the words at hand. */
export const useNoRange = (): ((problem: Problem) => string) => {
  const { words } = useHouse();
  const beside = useWordsOf(BESIDE_WORDS);
  const sentences = useWordsOf(SENTENCES);
  return (problem) => noRangeText(words.value, beside, sentences, problem);
};
