/** Parts of the set-out: a strip that is added on the way, and the picture of how the ruler is read. */
import { useId } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { RULER_READS, type RulerReads } from "../../../record/ring/entries.ts";
import { BottleForm } from "../../kit/bottle-form.tsx";
import type { KitList } from "../../kit/kit-list.ts";
import { RingForm } from "../../kit/ring-form.tsx";
import { RulerForm } from "../../kit/ruler-form.tsx";
import { useHouse } from "../../parts/house.ts";
import { Choice, Key } from "../../parts/keys.tsx";
import { lengthWords } from "../../parts/lengths.ts";
import { useOnce } from "../../parts/once.ts";
import { StripForm, type StripSaid } from "../../parts/strip-form.tsx";
import { useWordsOf } from "../../parts/words-of.ts";
import { RulerDrawing } from "./ruler-drawings.tsx";
import { outersFor, type RingChoices, type RingSetOut } from "./set-out.ts";
import { RING_WORDS } from "./words.ts";

/** Which form stands open. */
export type Adding = "strip" | "ring" | "ruler" | "bottle" | null;

/** The keys that add a strip, or its form. */
export const NewStrip = (props: {
  readonly open: boolean;
  readonly wholeField: boolean;
  readonly onOpen: (open: boolean) => void;
  readonly onAdd: (said: StripSaid) => Promise<void>;
}) => {
  const words = useHouse().words.value.setOut;
  const [busy, once] = useOnce();
  if (props.open)
    return (
      <StripForm
        onKeep={async (said) => {
          await props.onAdd(said);
          props.onOpen(false);
        }}
        onClose={() => props.onOpen(false)}
      />
    );
  return (
    <div class="keys two beside">
      {props.wholeField ? (
        <Key
          off={busy}
          onPress={() => once(() => props.onAdd({ name: "", done: [], wholeField: true, rep: null }))}
        >
          {words.wholeField}
        </Key>
      ) : null}
      <Key onPress={() => props.onOpen(true)}>{words.addStrip}</Key>
    </div>
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

/** Ruler and bottle of the kit; both may be left out. */
export const KitChoices = (props: {
  readonly kit: KitList;
  readonly choices: RingChoices;
  readonly onChoose: (patch: Partial<RingChoices>) => void;
  readonly adding: Adding;
  readonly onAdding: (adding: Adding) => void;
}) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).setOut;
  const { noName } = house.words.value.common;
  const { habits } = house.settings.value;
  const { kit, choices, adding, onChoose, onAdding } = props;
  const added = (key: "ruler" | "bottle") => (id?: RecordId<"kit">) => {
    if (id !== undefined) onChoose({ [key]: id });
    onAdding(null);
  };
  return (
    <>
      <Choice
        question={words.ruler}
        options={[
          { value: "", label: words.noRuler },
          ...kit.rulers.map(({ id, body }) => ({
            value: id as string,
            label: body.name === "" ? noName : body.name,
            hint: words.rulerStep(lengthWords("level", body.stepM, habits)),
          })),
        ]}
        chosen={choices.ruler ?? ""}
        onChoose={(id) => onChoose({ ruler: kit.rulers.find((one) => one.id === id)?.id ?? null })}
      />
      {adding === "ruler" ? (
        <RulerForm onDone={added("ruler")} />
      ) : (
        <div class="keys two beside">
          <Key onPress={() => onAdding("ruler")}>{words.addRuler}</Key>
        </div>
      )}
      <Choice
        question={words.bottle}
        options={[
          { value: "", label: words.noBottle },
          ...kit.bottles.map(({ id, body }) => ({
            value: id as string,
            label: body.name === "" ? noName : body.name,
            hint: lengthWords("volume", body.volumeM3, habits),
          })),
        ]}
        chosen={choices.bottle ?? ""}
        onChoose={(id) => onChoose({ bottle: kit.bottles.find((one) => one.id === id)?.id ?? null })}
      />
      {adding === "bottle" ? (
        <BottleForm onDone={added("bottle")} />
      ) : (
        <div class="keys two beside">
          <Key onPress={() => onAdding("bottle")}>{words.addBottle}</Key>
        </div>
      )}
    </>
  );
};

/** The ring by its letter, and the one around it where one of the kit is large enough. */
export const WhichRings = (props: {
  readonly setOut: RingSetOut;
  readonly choices: RingChoices;
  readonly onChoose: (patch: Partial<RingChoices>) => void;
  readonly adding: Adding;
  readonly onAdding: (adding: Adding) => void;
}) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).setOut;
  const { noName } = house.words.value.common;
  const { habits } = house.settings.value;
  const { choices, onChoose, adding, onAdding } = props;
  const { kit, taken } = props.setOut;
  const nameOf = (name: string): string => (name === "" ? noName : name);
  const outers = outersFor(props.setOut, choices.ring);
  return (
    <>
      {kit.rings.length > 0 ? (
        <Choice
          question={words.ring}
          options={kit.rings.map(({ id, body }) => ({
            value: id,
            label: nameOf(body.name),
            hint: taken.has(id)
              ? words.taken
              : words.ringSize(lengthWords("ringSize", body.insideM[0], habits)),
          }))}
          chosen={choices.ring}
          onChoose={(id) => onChoose({ ring: id, outer: null })}
        />
      ) : (
        <h2 class="question">{words.ring}</h2>
      )}
      {adding === "ring" || kit.rings.length === 0 ? (
        <RingForm
          onDone={(id) => {
            if (id !== undefined) onChoose({ ring: id });
            onAdding(null);
          }}
        />
      ) : (
        <div class="keys two beside">
          <Key onPress={() => onAdding("ring")}>{words.addRing}</Key>
        </div>
      )}
      {outers.length === 0 ? null : (
        <Choice
          question={words.double}
          options={[
            { value: "", label: words.single },
            ...outers.map(({ id, body }) => ({
              value: id as string,
              label: words.outerOf(nameOf(body.name)),
            })),
          ]}
          chosen={choices.outer ?? ""}
          onChoose={(id) => onChoose({ outer: outers.find((one) => one.id === id)?.id ?? null })}
        />
      )}
    </>
  );
};
