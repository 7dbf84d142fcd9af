/** Parts of the set-out: a strip that is added on the way, how the ruler is read, and how the ring stands. */
import { useId } from "preact/hooks";
import { WETNESS } from "../../../record/conditions.ts";
import { MULCH_INSIDE, RING_WAYS, type RingWay } from "../../../record/kinds/observation.ts";
import { RULER_READS, type RulerReads } from "../../../record/ring/entries.ts";
import { PLACES } from "../../../record/shapes.ts";
import { useHouse } from "../../parts/house.ts";
import { Choice, Key } from "../../parts/keys.tsx";
import { useOnce } from "../../parts/once.ts";
import { OpensHere } from "../../parts/opens-here.tsx";
import { StripForm, type StripSaid } from "../../parts/strip-form.tsx";
import { useWordsOf } from "../../parts/words-of.ts";
import { RulerDrawing } from "./ruler-drawings.tsx";
import type { RingChoices, Wetness } from "./set-out.ts";
import { RING_WORDS } from "./words.ts";

/** The keys that add a strip, or its form. */
export const NewStrip = (props: {
  readonly open: boolean;
  readonly wholeField: boolean;
  readonly onOpen: (open: boolean) => void;
  /** True once it is written down. */
  readonly onAdd: (said: StripSaid) => Promise<boolean>;
}) => {
  const words = useHouse().words.value.setOut;
  const [busy, once] = useOnce();
  return (
    <OpensHere
      label={words.addStrip}
      open={props.open}
      onOpen={() => props.onOpen(true)}
      before={
        props.wholeField ? (
          <Key
            off={busy}
            onPress={() =>
              once(async () => {
                await props.onAdd({ name: "", done: [], wholeField: true, rep: null });
              })
            }
          >
            {words.wholeField}
          </Key>
        ) : null
      }
      form={() => (
        <StripForm
          onKeep={async (said) => {
            const done = await props.onAdd(said);
            if (done) props.onOpen(false);
            return done;
          }}
          onClose={() => props.onOpen(false)}
        />
      )}
    />
  );
};

/** What the ruler shows, chosen by its picture. */
export const Reads = (props: {
  readonly chosen: RulerReads;
  readonly onChoose: (reads: RulerReads) => void;
}) => {
  const words = useWordsOf(RING_WORDS).setOut;
  const group = useId();
  return (
    <fieldset>
      <legend class="question">{words.reads}</legend>
      <div class="reads">
        {RULER_READS.map((reads) => (
          <label class="tick" key={reads}>
            <RulerDrawing reads={reads} />
            <input
              type="radio"
              name={group}
              checked={reads === props.chosen}
              onChange={() => props.onChoose(reads)}
            />
            <span>{words.readsWords[reads]}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
};

/** The way to read it, each with a hint. */
export const Ways = (props: { readonly chosen: RingWay; readonly onChoose: (way: RingWay) => void }) => {
  const { setOut: words, ways } = useWordsOf(RING_WORDS);
  return (
    <Choice<RingWay>
      question={words.way}
      options={RING_WAYS.map((way) => ({ value: way, label: ways[way], hint: words.wayHints[way] }))}
      chosen={props.chosen}
      onChoose={props.onChoose}
      column
    />
  );
};

/** How wet the ground was. */
export const Wet = (props: {
  readonly chosen: Wetness | null;
  /** It was said: a record can say it otherwise, but cannot take it back. */
  readonly stays?: boolean;
  readonly onChoose: (is: Wetness | null) => void;
}) => {
  const words = useWordsOf(RING_WORDS).setOut;
  return (
    <Choice<Wetness | typeof NONE>
      question={words.wetness}
      options={[
        ...WETNESS.map((is) => ({ value: is, label: words.wetnesses[is] })),
        ...(props.stays === true ? [] : [{ value: NONE, label: words.unsaid } as const]),
      ]}
      chosen={props.chosen ?? NONE}
      onChoose={(is) => props.onChoose(is === NONE ? null : is)}
    />
  );
};

/** "None" beside records, for a choice by words. */
const NONE = "unsaid";

/** Place against the row, and mulch inside. */
export const Standing = (props: {
  readonly choices: RingChoices;
  readonly onChoose: (patch: Partial<RingChoices>) => void;
}) => {
  const catalogue = useHouse().words.value;
  const all = useWordsOf(RING_WORDS);
  const words = all.setOut;
  const { choices, onChoose } = props;
  return (
    <>
      <Choice
        question={words.place}
        options={[
          ...PLACES.map((place) => ({ value: place, label: catalogue.place[place] })),
          { value: NONE, label: words.unsaid },
        ]}
        chosen={choices.place ?? NONE}
        onChoose={(place) => onChoose({ place: PLACES.find((one) => one === place) ?? null })}
      />
      <Choice
        question={words.mulch}
        options={[
          ...MULCH_INSIDE.map((mulch) => ({ value: mulch, label: all.mulch[mulch] })),
          { value: NONE, label: words.mulchUnsaid },
        ]}
        chosen={choices.mulch ?? NONE}
        onChoose={(mulch) => onChoose({ mulch: MULCH_INSIDE.find((one) => one === mulch) ?? null })}
      />
    </>
  );
};
