/** Seen first, then what it proves: two strips as places, or treatments over their reps. */
import { sentenceFor } from "../../catalogue.ts";
import { nameWithFate } from "../../fields/cover-model.ts";
import { useHouse } from "../../parts/house.ts";
import { stripName } from "../../parts/names.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { SENTENCES } from "../sentences.ts";
import type { MeasureNow, PlacesNow } from "./model.ts";
import type { RepsNow, Treatment } from "./reps.ts";
import {
  moreRepsText,
  moreText,
  pairsText,
  seenText,
  type Versus,
  versusOf,
  versusRangeText,
} from "./say.ts";
import type { Asked } from "./sides.ts";
import { SIDE_WORDS } from "./words.ts";

/** What a measure says. */
export const Said = ({ measure }: { readonly measure: MeasureNow }) => {
  const words = useWordsOf(SIDE_WORDS);
  const { asked, sides, reps, places } = measure;
  if (sides.length < 2) return <p>{words.oneOnly}</p>;
  if (reps !== null) return <SaidOfReps reps={reps} asked={asked} />;
  return (
    <>
      {places.map((one) => (
        <SaidOfPlaces key={one.b.strip.id} places={one} asked={asked} />
      ))}
    </>
  );
};

/** One sentence after the other, those that are empty left out. */
const Sentences = (props: {
  readonly seen: string;
  readonly word: string;
  readonly more: readonly string[];
}) => (
  <div class="said">
    <p>{props.seen}</p>
    <p>
      <b>{props.word}</b>
      {props.more.filter((one) => one !== "").map((one) => ` ${one}`)}
    </p>
  </div>
);

const SaidOfPlaces = ({ places, asked }: { readonly places: PlacesNow; readonly asked: Asked }) => {
  const catalogue = useHouse().words.value;
  const words = useWordsOf(SIDE_WORDS);
  const sentences = useWordsOf(SENTENCES);
  const { a, b, compared } = places;
  const [nameA, nameB] = [nameWithFate(catalogue, a.strip.strip), nameWithFate(catalogue, b.strip.strip)];
  if (!compared.ok)
    return (
      <Sentences
        seen={`${words.two(nameA, nameB)}.`}
        word={words.places["cannot-tell-yet"]}
        more={[sentenceFor(catalogue, compared.problem, sentences)]}
      />
    );
  const versus = versusOf(asked.measure, compared.value, nameA, nameB);
  const { word } = compared.value.comparison;
  return (
    <Sentences
      seen={seenText(words, versus)}
      word={words.places[word]}
      more={[versusRangeText(words, versus), moreText(words, asked.measure, compared.value)]}
    />
  );
};

const SaidOfReps = ({ reps, asked }: { readonly reps: RepsNow; readonly asked: Asked }) => {
  const catalogue = useHouse().words.value;
  const words = useWordsOf(SIDE_WORDS);
  const sentences = useWordsOf(SENTENCES);
  const nameOf = ({ strip }: Treatment): string =>
    strip.body.done.map((one) => catalogue.treatment[one]).join(", ") || stripName(catalogue, strip);
  const left = reps.incomplete.length === 0 ? null : <p>{words.incomplete(reps.incomplete)}</p>;
  if (!reps.compared.ok)
    return (
      <>
        <p>{sentenceFor(catalogue, reps.compared.problem, sentences)}</p>
        {left}
      </>
    );
  const { measure, scale } = asked;
  if (reps.design === "pairs") {
    const found = reps.compared.value;
    const [first, second] = reps.treatments.map(nameOf);
    if (first === undefined || second === undefined) return null;
    const versus: Versus = { measure, scale, first, second, value: found.value, range: found.range };
    const { range } = found;
    const pairs = pairsText(words, versus, found.each);
    return (
      <>
        <p>{words.pairs(found.n)}</p>
        <Sentences
          seen={seenText(words, versus)}
          word={words.treatments[found.word](first, second)}
          more={[
            versusRangeText(words, versus),
            range.ok ? "" : sentenceFor(catalogue, range.problem, sentences),
            found.word === "cannot-tell-yet" ? moreRepsText(words, measure, found.plan, found.n, "pair") : "",
          ]}
        />
        <h4>{pairs.heading}</h4>
        <table class="figures">
          <tbody>
            {pairs.rows.map(({ rep, value }) => (
              <tr key={rep}>
                <th scope="row">{rep}</th>
                <td class="number">{value}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {left}
      </>
    );
  }
  const found = reps.compared.value;
  const named = (key: string): string => {
    const treatment = reps.treatments.find((one) => one.key === key);
    return treatment === undefined ? key : nameOf(treatment);
  };
  return (
    <>
      <p>{words.blocks(found.n)}</p>
      {found.twos.map(({ first, second, value, range, word }) => {
        const [a, b] = [named(first), named(second)];
        const versus: Versus = { measure, scale, first: a, second: b, value, range };
        return (
          <Sentences
            key={`${first} ${second}`}
            seen={seenText(words, versus)}
            word={words.treatments[word](a, b)}
            more={[versusRangeText(words, versus)]}
          />
        );
      })}
      {found.twos.some(({ word }) => word === "cannot-tell-yet") ? (
        <p>{moreRepsText(words, measure, found.plan, found.n, "block")}</p>
      ) : null}
      {left}
    </>
  );
};
