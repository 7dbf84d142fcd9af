/**
 * Words that only "How this was worked out" needs, per language. They stand beside the catalogue and not in
 * it, because everything in the catalogue is loaded before the first key answers.
 */
import type { Settings } from "../parts/settings.ts";
import { markWords, methodWords } from "./words.methods.ts";
import { commonSymbolWords, symbolWords } from "./words.symbols.ts";

const english = {
  methods: methodWords,
  marks: markWords,
  symbols: symbolWords,
  commonSymbols: commonSymbolWords,
} as const;

/** The words by language; a language that misses some does not compile. */
export const SPECIALIST: Readonly<Record<Settings["language"], typeof english>> = { en: english };
