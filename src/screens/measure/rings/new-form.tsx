/** The lines of the set-out that are typed: rim to ground, the plan, the guess. */
import type { RingWay } from "../../../record/kinds/observation.ts";
import type { RulerReads } from "../../../record/ring/entries.ts";
import { inUnit, toSi } from "../../../record/units.ts";
import { standingOf } from "../../../science/infiltration/ring-set.ts";
import { type Measured, useMeasured } from "../../kit/measured.ts";
import { useHouse } from "../../parts/house.ts";
import { Key, WriteLine } from "../../parts/keys.tsx";
import { type NumberDraft, NumberLine, type NumberState, numberState } from "../../parts/number-line.tsx";
import { useTyped } from "../../parts/typed.tsx";
import { UNIT_WORDS } from "../../parts/words.units.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { depthText } from "./figures.ts";
import { planText, readPlan, USUAL_PLAN_MIN } from "./reading-plan.ts";
import { RING_WORDS } from "./words.ts";

/** From the rim down to the ground, in metres: usual, and what a record can hold (own choice, no source). */
const RIM = { usual: [0.01, 0.4], possible: [0, 2] } as const;

/**
 * The four places; each may stay empty.
 *
 * @param before what was read there already, in metres
 */
export const useRims = (before: readonly number[]): readonly Measured[] => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).setOut;
  const unit = house.settings.value.habits.ringSize;
  const rule = { ...RIM, refused: words.rimWrong };
  const catalogue = house.words.value;
  return [
    useMeasured("rim 1", catalogue, unit, rule, before[0] ?? null, true),
    useMeasured("rim 2", catalogue, unit, rule, before[1] ?? null, true),
    useMeasured("rim 3", catalogue, unit, rule, before[2] ?? null, true),
    useMeasured("rim 4", catalogue, unit, rule, before[3] ?? null, true),
  ];
};

/** What was measured; undefined while one of them cannot be kept. */
export const rimsToKeep = (rims: readonly Measured[]): readonly number[] | undefined => {
  const all = rims.map(({ si }) => si);
  return all.includes(undefined) ? undefined : all.filter((one) => typeof one === "number");
};

export const Rims = (props: {
  readonly rims: readonly Measured[];
  readonly heightsM: readonly number[];
  readonly reads: RulerReads;
  readonly tried: boolean;
}) => {
  const { settings } = useHouse();
  const words = useWordsOf(RING_WORDS).setOut;
  const units = useWordsOf(UNIT_WORDS);
  const { habits } = settings.value;
  const measured = props.rims.flatMap(({ si }) => (typeof si === "number" ? [si] : []));
  const standing = standingOf({ rimToSoilM: measured, heightsM: props.heightsM });
  return (
    <fieldset>
      <legend class="question">{words.rim}</legend>
      <p class="aside">{words.rimHints[props.reads]}</p>
      <div class="rims">
        {props.rims.map((rim, at) => (
          <NumberLine
            key={String(at)}
            label={words.rimAt(at + 1, units[habits.ringSize])}
            unit={habits.ringSize}
            draft={rim.draft}
            onDraft={rim.onDraft}
            state={rim.state}
            tried={props.tried}
          />
        ))}
      </div>
      <p role="status" class="aside">
        {[
          ...(standing.insertionMm.ok ? [words.standsIn(depthText(standing.insertionMm.value, habits))] : []),
          ...(standing.outOfLevelMm.ok
            ? [words.outOfLevel(depthText(standing.outOfLevelMm.value, habits))]
            : []),
        ].join(" ")}
      </p>
    </fieldset>
  );
};

/** When it is to be read. */
export const Plan = (props: {
  readonly way: RingWay;
  readonly text: string;
  readonly onText: (text: string) => void;
}) => {
  const words = useWordsOf(RING_WORDS).setOut;
  const usual = planText(USUAL_PLAN_MIN[props.way]);
  return (
    <section>
      <h2 class="question">{words.plan}</h2>
      <WriteLine
        label={words.planLabel}
        hint={words.planHint}
        value={props.text}
        wrong={readPlan(props.text).ok ? null : words.planWrong}
        onWrite={props.onText}
      />
      {props.text === usual ? null : <Key onPress={() => props.onText(usual)}>{words.planUsual}</Key>}
    </section>
  );
};

/** No soil takes more within an hour without being asked about (own choice, no source). */
const USUAL_GUESS_MM = 600;
const MOST_GUESS_MM = 10_000;

/** The grower's guess; empty is no guess. */
export const useGuess = () => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).setOut;
  const unit = house.settings.value.habits.depthSoaked;
  const [draft, setDraft] = useTyped<NumberDraft>(`guess, ${unit}`, { typed: "", confirmed: false });
  const empty = draft.typed.trim() === "";
  const state: NumberState = empty
    ? { is: "good", value: 0 }
    : numberState(house.words.value, draft, {
        bounds: { min: 0, max: inUnit(USUAL_GUESS_MM / 1000, unit) },
        refuse: (value) => (value < 0 || toSi(value, unit) * 1000 > MOST_GUESS_MM ? words.guessWrong : null),
      });
  const mm = empty ? null : state.is === "good" ? toSi(state.value, unit) * 1000 : undefined;
  return { draft, setDraft, state, unit, mm };
};

export const Guess = (props: { readonly of: ReturnType<typeof useGuess>; readonly tried: boolean }) => {
  const words = useWordsOf(RING_WORDS).setOut;
  const { draft, setDraft, state, unit } = props.of;
  return (
    <section>
      <h2 class="question">{words.guess}</h2>
      <NumberLine
        label={words.guessLabel(useWordsOf(UNIT_WORDS)[unit])}
        hint={words.guessHint}
        unit={unit}
        draft={draft}
        onDraft={setDraft}
        state={state}
        tried={props.tried}
      />
    </section>
  );
};
