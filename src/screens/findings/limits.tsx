/** Where the cautions of a method begin: what each says, and the limits that it looks at. */
import type { CautionLimit, Method } from "../../science/method.ts";
import { METHODS } from "../../science/methods/all.ts";
import type { MethodId } from "../../science/methods.ts";
import { SOURCES } from "../../science/sources.ts";
import { useHouse } from "../parts/house.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { SENTENCES } from "./sentences.ts";
import { SPECIALIST } from "./specialist.ts";
import { LIMITS_WORDS } from "./words.limits.ts";

/** A sentence without the facts of a result: each gap becomes a dot row, a choice of words its plural. */
export const withoutFacts = (sentence: string): string =>
  sentence.replace(/\{\w+\|[^|}]*\|([^|}]*)\}/g, "$1").replace(/\{\w+\}/g, "…");

export const Limits = ({ id }: { readonly id: MethodId }) => {
  const { settings, words: catalogue } = useHouse();
  const words = useWordsOf(LIMITS_WORDS);
  const sentences = useWordsOf(SENTENCES);
  const { marks } = SPECIALIST[settings.value.language];
  const { limits = [] }: Method = METHODS[id];
  if (limits.length === 0) return null;
  const inWords = ({ of, said, value, unit }: CautionLimit): string =>
    `${words.looksAt[of]} ${words.said[said](words.value(value, unit))}`;
  return (
    <div class="limits">
      <h4>{words.begin}</h4>
      <ul class="source-list">
        {[...new Set(limits.map(({ caution }) => caution))].map((caution) => {
          const looked = limits.filter((one) => one.caution === caution);
          const from = [...new Set(looked.map(({ source }) => source))];
          return (
            <li key={caution}>
              {withoutFacts(catalogue.value.problems[caution] ?? sentences[caution] ?? caution)}
              <small>{looked.map(inWords).join("; ")}</small>
              {from.map((source) => (
                <small key={source}>{`${marks[SOURCES[source].mark]}: ${SOURCES[source].citation}`}</small>
              ))}
            </li>
          );
        })}
      </ul>
    </div>
  );
};
