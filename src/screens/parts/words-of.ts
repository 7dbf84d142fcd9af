/**
 * Words that come with their screen: the first test screen must not wait for the words of the others. They
 * are typed like the catalogue: a language that misses a word does not compile.
 */
import type { Catalogue } from "../catalogue.ts";
import { useHouse } from "./house.ts";
import type { Settings } from "./settings.ts";
import { TRADE_WORDS, type TradeWords } from "./trade.ts";

/** The words of one part of the app, by language. */
export type WordsOf<W> = { readonly [L in Settings["language"]]: (trade: TradeWords) => W };

const made = new WeakMap<object, { readonly of: string; readonly words: unknown }>();

/** The words of a part in a language and its trade words. */
export const wordsOf = <W>(
  part: WordsOf<W>,
  { language, trade }: Pick<Settings, "language" | "trade">,
): W => {
  const of = `${language} ${trade}`;
  const before = made.get(part);
  if (before?.of === of) return before.words as W;
  const words = part[language](TRADE_WORDS[trade]);
  made.set(part, { of, words });
  return words;
};

/** The words of a part as this person reads them. */
export const useWordsOf = <W>(part: WordsOf<W>): W => wordsOf(part, useHouse().settings.value);

const joined = new WeakMap<Catalogue, WeakMap<object, unknown>>();

/** The catalogue and the words of a part beside it. */
export const wordsWith = <W extends object>(
  catalogue: Catalogue,
  part: WordsOf<W>,
  chosen: Pick<Settings, "language" | "trade">,
): Catalogue & W => {
  const parts = joined.get(catalogue) ?? new WeakMap<object, unknown>();
  joined.set(catalogue, parts);
  const before = parts.get(part);
  if (before !== undefined) return before as Catalogue & W;
  const words = { ...catalogue, ...wordsOf(part, chosen) };
  parts.set(part, words);
  return words;
};

/** The catalogue and the words of a part beside it, as this person reads them. */
export const useWordsWith = <W extends object>(part: WordsOf<W>): Catalogue & W => {
  const { words, settings } = useHouse();
  return wordsWith(words.value, part, settings.value);
};
