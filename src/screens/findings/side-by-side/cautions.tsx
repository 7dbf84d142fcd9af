/** What has to be borne in mind with a measure, and how it was worked out. */
import type { Caution } from "../../../science/estimate.ts";
import type { Catalogue } from "../../catalogue.ts";
import { nameWithFate } from "../../fields/cover-model.ts";
import { useHouse } from "../../parts/house.ts";
import { ownSentence } from "../../parts/own-units.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { WorkedBy } from "../method-list.tsx";
import { SENTENCES } from "../sentences.ts";
import type { MeasureNow } from "./model.ts";
import { SIDE_WORDS } from "./words.ts";

/** Every number and comparison of a measure. */
export const answersOf = ({ sides, likeness, places, reps }: MeasureNow): readonly WorkedBy[] => [
  ...sides.map(({ estimate }) => estimate),
  ...likeness,
  ...places.flatMap(({ compared }) => (compared.ok ? [compared.value.comparison] : [])),
  ...(reps?.compared.ok === true ? [reps.compared.value] : []),
];

/** Said once for the whole screen, in plainer words. */
const ONCE: ReadonlySet<string> = new Set(["science/ground-and-treatment", "science/ratio-turned"]);

const cautionsOf = (
  { sides, places, reps }: MeasureNow,
  catalogue: Catalogue,
): readonly { readonly of: string | null; readonly caution: Caution }[] => {
  const ofTwo = [
    ...places.flatMap(({ compared }) => (compared.ok ? compared.value.comparison.cautions : [])),
    ...(reps?.compared.ok === true ? reps.compared.value.cautions : []),
  ];
  return [
    ...sides.flatMap(({ strip, estimate }) =>
      estimate.cautions.map((caution) => ({ of: nameWithFate(catalogue, strip.strip), caution })),
    ),
    ...ofTwo.map((caution) => ({ of: null, caution })),
  ].filter(({ caution }) => !ONCE.has(caution.code));
};

/** What has to be borne in mind; what holds for several strips is said once, with their names. */
export const Cautions = ({ measure }: { readonly measure: MeasureNow }) => {
  const { words: catalogues, settings } = useHouse();
  const catalogue = catalogues.value;
  const words = useWordsOf(SIDE_WORDS);
  const sentences = useWordsOf(SENTENCES);
  const namesOf = new Map<string, Set<string>>();
  for (const { of, caution } of cautionsOf(measure, catalogue)) {
    const sentence = ownSentence(catalogue, settings.value.habits, caution, sentences);
    const names = namesOf.get(sentence) ?? new Set();
    namesOf.set(sentence, of === null ? names : names.add(of));
  }
  if (namesOf.size === 0) return null;
  return (
    <>
      <h3>{words.bearInMind}</h3>
      <ul class="caution-list">
        {[...namesOf].map(([sentence, names]) => (
          <li key={sentence}>
            {names.size === 0 ? sentence : words.saidOf([...names].join(", "), sentence)}
          </li>
        ))}
      </ul>
    </>
  );
};
