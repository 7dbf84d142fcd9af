/** What has to be borne in mind with a measure, and how it was worked out. */
import type { Catalogue } from "../../catalogue.ts";
import { nameWithFate } from "../../fields/cover-model.ts";
import { useHouse } from "../../parts/house.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { WorkedBy } from "../method-list.tsx";
import { type Mind, useMinds } from "../minds.tsx";
import { BESIDE_WORDS } from "../words.beside.ts";
import type { MeasureNow } from "./model.ts";

/** Every number and comparison of a measure. */
export const answersOf = ({ sides, likeness, places, reps }: MeasureNow): readonly WorkedBy[] => [
  ...sides.map(({ estimate }) => estimate),
  ...likeness,
  ...places.flatMap(({ compared }) => (compared.ok ? [compared.value.comparison] : [])),
  ...(reps?.compared.ok === true ? [reps.compared.value] : []),
];

/** Said once for the whole screen, in plainer words. */
const ONCE: ReadonlySet<string> = new Set(["science/ground-and-treatment", "science/ratio-turned"]);

const mindsOf = ({ sides, places, reps }: MeasureNow, catalogue: Catalogue): readonly Mind[] => {
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

/** What has to be borne in mind, each sentence once. */
export const Cautions = ({ measure }: { readonly measure: MeasureNow }) => {
  const catalogue = useHouse().words.value;
  const beside = useWordsOf(BESIDE_WORDS);
  const texts = useMinds()(mindsOf(measure, catalogue));
  if (texts.length === 0) return null;
  return (
    <>
      <h3>{beside.mind}</h3>
      <ul class="caution-list">
        {texts.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </>
  );
};
