/** Panels that stand in for the keys for a moment: a number typed, people, litres, a temperature. */
import { useState } from "preact/hooks";
import { type ReadNumber, readNumber } from "../../../record/number.ts";
import { sentenceFor } from "../../catalogue.ts";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { NumberPad } from "../../parts/number-pad.tsx";
import { useWordsOf } from "../../parts/words-of.ts";
import { POSSIBLE_SOIL, USUAL_SOIL } from "./conditions.ts";
import type { HoleModel } from "./model.ts";
import { degreesOf, litresFrom, usualWater } from "./sizes.ts";
import { type Counted, countedIn } from "./stand.ts";
import { HOLE_WORDS } from "./words.ts";

/** Most worms of one layer that are taken without asking (own choice, no source). */
const USUAL_WORMS = 150;
/** Most that a record holds. */
const MOST_WORMS = 10_000;
/** Most people that are taken without asking, and that a record holds. */
const USUAL_PEOPLE = 12;
const MOST_PEOPLE = 100;
/** Litres of mustard water that a record holds. */
const LEAST_LITRES = 0.01;
const MOST_LITRES = 100;

/** One number on the pad: asked about when it is odd, refused with a sentence when it cannot be. */
const TypedNumber = (props: {
  readonly question: string;
  readonly hint?: string;
  readonly unit: string;
  readonly decimals?: boolean;
  readonly usual: { readonly min: number; readonly max: number };
  /** A sentence for a number that cannot be kept at all, else null. */
  readonly refuse: (value: number) => string | null;
  readonly onKeep: (read: ReadNumber) => void;
  readonly onLeave: () => void;
}) => {
  const { words } = useHouse();
  const [typed, setTyped] = useState("");
  const [odd, setOdd] = useState(false);
  const [wrong, setWrong] = useState<string | null>(null);
  const keep = () => {
    const read = readNumber(typed, props.usual);
    if (!read.ok) {
      setWrong(sentenceFor(words.value, read.problem));
      return;
    }
    const refused = props.refuse(read.value.value);
    if (refused !== null) setWrong(refused);
    else if (read.value.unusual.length > 0 && !odd) setOdd(true);
    else props.onKeep(read.value);
  };
  return (
    <>
      <main class="running">
        <h2 class="running-question" tabIndex={-1}>
          {props.question}
        </h2>
        <p role="status" class={wrong === null ? "" : "wrong"}>
          {wrong ?? (odd ? words.value.unusual.ask(typed, props.unit) : props.hint)}
        </p>
      </main>
      <div class="count-keys panel">
        <NumberPad
          label={props.question}
          typed={typed}
          unit={props.unit}
          decimals={props.decimals === true}
          onType={(text) => {
            setTyped(text);
            setOdd(false);
            setWrong(null);
          }}
          onEnter={keep}
        />
        <div class="keys two">
          <Key onPress={props.onLeave}>{words.value.common.close}</Key>
          <Key look="solid" onPress={keep}>
            {odd ? words.value.unusual.yes : words.value.common.done}
          </Key>
        </div>
      </div>
    </>
  );
};

const wholeWithin = (most: number, sentence: string) => (value: number) =>
  Number.isInteger(value) && value >= 0 && value <= most ? null : sentence;

/** The worms of one layer or one group at once. */
export const CountAtOnce = (props: { readonly model: HoleModel; readonly counted: Counted }) => {
  const { model, counted } = props;
  const words = useWordsOf(HOLE_WORDS);
  const { count, standsFor } = countedIn(model.reading.value, counted);
  return (
    <TypedNumber
      question={words.count.question(counted)}
      unit={words.unit.worms}
      hint={standsFor.length > 0 ? words.count.instead(count) : counted === "soil" ? words.count.total : ""}
      usual={{ min: -1, max: USUAL_WORMS }}
      refuse={wholeWithin(MOST_WORMS, words.count.notWhole)}
      onKeep={(read) => void model.countAtOnce(counted, read)}
      onLeave={model.leave}
    />
  );
};

/** More people than have a key of their own. */
export const People = ({ model }: { readonly model: HoleModel }) => {
  const words = useWordsOf(HOLE_WORDS);
  return (
    <TypedNumber
      question={words.sorting.question}
      unit={words.unit.people}
      usual={{ min: 0, max: USUAL_PEOPLE }}
      refuse={wholeWithin(MOST_PEOPLE, words.count.notWhole)}
      onKeep={({ value }) => void model.sort(value)}
      onLeave={model.leave}
    />
  );
};

/** How much mustard water was poured; it may stay unsaid. */
export const Litres = (props: { readonly model: HoleModel; readonly pouring: string }) => {
  const { model } = props;
  const { habits } = useHouse().settings.value;
  const words = useWordsOf(HOLE_WORDS);
  return (
    <TypedNumber
      question={words.mustard.litresQuestion}
      unit={habits.waterCarried}
      decimals
      usual={{ min: 0, max: usualWater(habits) }}
      refuse={(value) => {
        const litres = litresFrom(value, habits);
        return litres >= LEAST_LITRES && litres <= MOST_LITRES ? null : words.mustard.tooMuch;
      }}
      onKeep={({ value }) => void model.pouredLitres(props.pouring, litresFrom(value, habits))}
      onLeave={model.leave}
    />
  );
};

/** Temperature of the soil, in the person's degrees. */
export const Temperature = ({ model }: { readonly model: HoleModel }) => {
  const { habits } = useHouse().settings.value;
  const words = useWordsOf(HOLE_WORDS);
  const unit = degreesOf(habits);
  const { min, max } = POSSIBLE_SOIL[unit];
  return (
    <TypedNumber
      question={words.conditions.temperatureQuestion}
      unit={`°${unit}`}
      decimals
      usual={USUAL_SOIL[unit]}
      refuse={(value) => (value >= min && value <= max ? null : words.conditions.tooFar)}
      onKeep={(read) => void model.temperature(read, unit)}
      onLeave={model.leave}
    />
  );
};
