/** Looks a word up in everything that "Methods and sources" says. */
import { METHODS } from "../../science/methods/all.ts";
import type { MethodId } from "../../science/methods.ts";
import { SOURCES, type SourceId } from "../../science/sources.ts";
import { SPECIALIST } from "../findings/specialist.ts";
import type { Settings } from "../parts/settings.ts";
import { CHAPTERS } from "./chapters.ts";

export interface FoundMethods {
  readonly methods: readonly MethodId[];
  readonly sources: readonly SourceId[];
}

/** Accents and case make no difference to somebody who types with a thumb. */
const plain = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();

/** Texts by language and id: made once, since the same words are looked through at every letter. */
const made = new Map<string, string>();

const textOf = (key: string, text: () => string): string => {
  const before = made.get(key);
  if (before !== undefined) return before;
  const now = plain(text());
  made.set(key, now);
  return now;
};

const sourceText = (id: SourceId, language: Settings["language"]): string =>
  textOf(
    `${language} source ${id}`,
    () => `${id} ${SOURCES[id].citation} ${SPECIALIST[language].marks[SOURCES[id].mark]}`,
  );

const methodText = (id: MethodId, language: Settings["language"]): string =>
  textOf(`${language} method ${id}`, () => {
    const { title, says } = SPECIALIST[language].methods[id];
    const symbols = Object.values<string>(SPECIALIST[language].symbols[id]);
    const { formulas, sources } = METHODS[id];
    return [id, title, says, ...formulas, ...symbols, ...sources.map((of) => sourceText(of, language))].join(
      "\n",
    );
  });

const ALL_METHODS = CHAPTERS.flatMap(({ methods }) => methods);
const ALL_SOURCES = [...new Set(CHAPTERS.flatMap(({ sources }) => sources))];

/** So many texts are made ready in one go. */
const AT_ONCE = 2;

/**
 * Makes the texts ready before the first letter is typed, a few at a time.
 *
 * @returns what ends it
 */
export const makeReady = (language: Settings["language"]): (() => void) => {
  let next = 0;
  let waiting = setTimeout(some);
  function some(): void {
    for (const id of ALL_METHODS.slice(next, next + AT_ONCE)) methodText(id, language);
    next += AT_ONCE;
    if (next < ALL_METHODS.length) waiting = setTimeout(some);
  }
  return () => clearTimeout(waiting);
};

/**
 * The methods and sources whose words hold every word that is looked for.
 *
 * @param query what was typed; null comes back for a text without two letters, which would find everything
 *
 * @example
 * findMethods("wilson", "en") // => { methods: ["wilson-one-line", …], sources: ["wilson-1927"] }
 */
export const findMethods = (query: string, language: Settings["language"]): FoundMethods | null => {
  const wanted = plain(query).split(/\s+/).filter(Boolean);
  if (wanted.join("").length < 2) return null;
  const holds = (text: string): boolean => wanted.every((word) => text.includes(word));
  return {
    methods: ALL_METHODS.filter((id) => holds(methodText(id, language))),
    sources: ALL_SOURCES.filter((id) => holds(sourceText(id, language))),
  };
};
