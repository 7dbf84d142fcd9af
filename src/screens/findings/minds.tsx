/** What has to be borne in mind beside numbers: what holds for several of them is said once, with their names. */
import type { UnitHabits } from "../../record/units.ts";
import type { Caution } from "../../science/estimate.ts";
import type { Catalogue } from "../catalogue.ts";
import { useHouse } from "../parts/house.ts";
import { ownSentence } from "../parts/own-units.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { SENTENCES } from "./sentences.ts";
import { BESIDE_WORDS, type BesideWords } from "./words.beside.ts";
import "./minds.css";

/** A caution, and whose it is; null where it stands right beside the number. */
export interface Mind {
  readonly of: string | null;
  readonly caution: Caution;
}

/** Each sentence once. */
export const mindsTexts = (
  words: Catalogue,
  habits: UnitHabits,
  {
    beside,
    sentences,
  }: { readonly beside: BesideWords; readonly sentences: Readonly<Record<string, string>> },
  minds: readonly Mind[],
): readonly string[] => {
  const namesOf = new Map<string, Set<string>>();
  for (const { of, caution } of minds) {
    const sentence = ownSentence(words, habits, caution, sentences);
    const names = namesOf.get(sentence) ?? new Set();
    namesOf.set(sentence, of === null ? names : names.add(of));
  }
  return [...namesOf].map(([sentence, names]) =>
    names.size === 0 ? sentence : beside.saidOf([...names].join(", "), sentence),
  );
};

/** The same with the words at hand. */
export const useMinds = (): ((minds: readonly Mind[]) => readonly string[]) => {
  const { words, settings } = useHouse();
  const beside = useWordsOf(BESIDE_WORDS);
  const sentences = useWordsOf(SENTENCES);
  return (minds) => mindsTexts(words.value, settings.value.habits, { beside, sentences }, minds);
};

/** Folded up, where many numbers stand on one screen. */
export const Minds = ({ minds }: { readonly minds: readonly Mind[] }) => {
  const beside = useWordsOf(BESIDE_WORDS);
  const texts = useMinds()(minds);
  if (texts.length === 0) return null;
  return (
    <details class="found-minds">
      <summary>{beside.mind}</summary>
      {texts.map((text) => (
        <p key={text}>{text}</p>
      ))}
    </details>
  );
};
