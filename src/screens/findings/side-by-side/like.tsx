/** Whether it is like with like: said before any number, with what stands on each side. */
import type { RingWay, Way } from "../../../record/kinds/observation.ts";
import type { Place } from "../../../record/shapes.ts";
import { wormMethod } from "../../../science/earthworms/worm-methods.ts";
import type { ConditionName, Conditions } from "../../../science/side-by-side/like-with-like.ts";
import { sentenceFor } from "../../catalogue.ts";
import { nameWithFate } from "../../fields/cover-model.ts";
import { RING_WORDS } from "../../measure/rings/words.ts";
import { useHouse } from "../../parts/house.ts";
import { Choice } from "../../parts/keys.tsx";
import { lengthWords } from "../../parts/lengths.ts";
import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { SENTENCES } from "../sentences.ts";
import type { Measure } from "./conditions.ts";
import type { Likeness, MeasureNow } from "./model.ts";
import { measureName, sharesText } from "./say.ts";
import { SIDE_WORDS } from "./words.ts";

/** Numbers are spoken of by themselves, and not by how many there are of each. */
const NUMBERS: ReadonlySet<ConditionName> = new Set(["sizesM", "depthsM", "personMinutes"]);

/** Writes what was found of one condition, with how many there are of each where that is asked for. */
const useConditionWords = (): ((
  measure: Measure,
  about: ConditionName,
  of: Conditions,
  withShares?: boolean,
) => string) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(SIDE_WORDS);
  const rings = useWordsOf(RING_WORDS);
  const { habits } = house.settings.value;
  const wayWords = (measure: Measure, way: string): string => {
    if (measure === "cover") return catalogue.setOut.ways[way as Way] ?? way;
    if (measure === "soak") return rings.ways[way as RingWay] ?? way;
    return wormMethod(way)?.name ?? way;
  };
  const word = (measure: Measure, about: ConditionName, value: string | number): string => {
    const lookUp = (from: object): string =>
      (from as Readonly<Record<string, string>>)[value] ?? String(value);
    switch (about) {
      case "places":
        return lookUp(catalogue.place);
      case "mulchInRing":
        return lookUp(rings.mulch);
      case "pours":
        return lookUp(words.pours);
      case "wetness":
        return lookUp(rings.setOut.wetnesses);
      case "ways":
        return wayWords(measure, String(value));
      case "sizesM":
        return words.across(lengthWords("ringSize", Number(value), habits));
      case "depthsM":
        return words.deep(lengthWords("ringSize", Number(value), habits));
      case "personMinutes":
        return words.personMinutes(writeNumber(Number(value), TONGUE, 1));
      default:
        return String(value);
    }
  };
  return (measure, about, of, withShares = false) => {
    const values: readonly (string | number)[] = of[about] ?? [];
    const said = values.map((value) => word(measure, about, value));
    if (said.length === 0) return words.notSaid;
    return withShares && !NUMBERS.has(about) ? sharesText(words, said) : [...new Set(said)].join(", ");
  };
};

const ALL = [
  "places",
  "mulchInRing",
  "pours",
  "wetness",
  "ways",
  "sizesM",
  "depthsM",
  "personMinutes",
] as const satisfies readonly ConditionName[];

/** Conditions that both sides were asked for, and that are alike. */
const alikeIn = ({ a, b, unlike }: Likeness): readonly ConditionName[] =>
  ALL.filter(
    (about) =>
      (a.conditions[about] ?? []).length > 0 &&
      (b.conditions[about] ?? []).length > 0 &&
      unlike.every((one) => one.about !== about),
  );

const ALL_PLACES = "";

/** All tests, or those at one place against the row. */
const AtPlace = (props: {
  readonly measure: MeasureNow;
  readonly onPlace: (place: Place | undefined) => void;
}) => {
  const catalogue = useHouse().words.value;
  const words = useWordsOf(SIDE_WORDS);
  const { asked, offered, at } = props.measure;
  if (offered.length === 0) return null;
  return (
    <Choice<Place | typeof ALL_PLACES>
      column
      question={words.atPlace(words.measure[asked.measure])}
      options={offered.map(({ place, counts }) => ({
        value: place ?? ALL_PLACES,
        label: place === null ? words.allPlaces : catalogue.place[place],
        hint: counts
          .map(({ strip, count }) => words.testsThere(nameWithFate(catalogue, strip.strip), count))
          .join(", "),
      }))}
      chosen={at ?? ALL_PLACES}
      onChoose={(place) => props.onPlace(place === ALL_PLACES ? undefined : place)}
    />
  );
};

/** The part of one measure. */
export const LikeWithLike = (props: {
  readonly measure: MeasureNow;
  readonly onPlace: (place: Place | undefined) => void;
}) => {
  const { measure } = props;
  const catalogue = useHouse().words.value;
  const words = useWordsOf(SIDE_WORDS);
  const sentences = useWordsOf(SENTENCES);
  const say = useConditionWords();
  const what = measureName(words, catalogue, measure);
  return (
    <>
      <AtPlace {...props} />
      {measure.likeness.map((likeness, at) => {
        const [a, b] = [nameWithFate(catalogue, likeness.a.strip), nameWithFate(catalogue, likeness.b.strip)];
        const alike = alikeIn(likeness);
        const whose = measure.likeness.length > 1 ? words.of(what, words.two(a, b)) : what;
        return (
          // Two strips stand at the same place in the list as long as the list stands.
          <div key={`${at} ${a} ${b}`}>
            {likeness.unlike.map(({ about, caution }) => (
              <p class="unlike" key={about}>
                {`${whose}. ${sentenceFor(catalogue, caution, sentences)}`}
                {about === "places" && measure.offered.length > 0 ? ` ${words.byItself}` : ""}
                <small>
                  {words.sides(
                    a,
                    say(measure.asked.measure, about, likeness.a.conditions, true),
                    b,
                    say(measure.asked.measure, about, likeness.b.conditions, true),
                  )}
                </small>
              </p>
            ))}
            {alike.length > 0 ? (
              <p>
                {words.alike(
                  whose,
                  alike
                    .map(
                      (about) =>
                        `${words.about[about]} (${say(measure.asked.measure, about, likeness.a.conditions)})`,
                    )
                    .join(", "),
                )}
              </p>
            ) : likeness.unlike.length === 0 ? (
              <p>{words.asked(whose)}</p>
            ) : null}
          </div>
        );
      })}
    </>
  );
};
