/** What is said of a strip, new or corrected: the same questions wherever one is added. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import { type Strip, TREATMENTS } from "../../record/kinds/strip.ts";
import { readNumber } from "../../record/number.ts";
import { sentenceFor } from "../catalogue.ts";
import { FIELD_WORDS } from "../fields/words.ts";
import { Key, Tick, WriteLine } from "./keys.tsx";
import { useOnce } from "./once.ts";
import { Brought, useForget, useKeeping, useTyped, withTyped } from "./typed.tsx";
import { useWordsWith } from "./words-of.ts";

/** Highest rep that a strip may have, as its record allows. */
const MOST_REPS = 1000;

/** A strip as a person says it; to which field it belongs is known already. */
export type StripSaid = Omit<Strip, "field">;

const SAID_NOTHING: StripSaid = { name: "", done: [], wholeField: false, rep: null };

interface StripFormProps {
  /** The strip and what stands there already; left out for a new one. */
  readonly strip?: { readonly id: RecordId<"strip">; readonly body: StripSaid };
  /** Writes it down, and closes the form once that is done: true then, else what was typed stays. */
  readonly onKeep: (said: StripSaid) => Promise<boolean>;
  readonly onClose: () => void;
}

/** Names of the forms of strips on their page begin like that. */
export const STRIP_FORM = "strip ";

const Form = (props: StripFormProps) => {
  const words = useWordsWith(FIELD_WORDS);
  const before = props.strip?.body ?? SAID_NOTHING;
  const [name, setName] = useTyped("name", before.name);
  const [done, setDone] = useTyped("done", before.done, (typed) =>
    typed.every((one) => TREATMENTS.includes(one)),
  );
  const [wholeField, setWholeField] = useTyped("whole field", before.wholeField);
  const [rep, setRep] = useTyped("rep", before.rep === null ? "" : String(before.rep));
  const forget = useForget();
  const keeping = useKeeping();
  const [wrong, setWrong] = useState<string | null>(null);
  const [busy, once] = useOnce();
  // A strip of which nothing at all was said could not be told from the next one.
  const nothing = name.trim() === "" && done.length === 0 && !wholeField && rep.trim() === "";
  const keep = (number: number | null) =>
    once(async () => {
      const said = { name: name.trim(), done, wholeField, rep: number };
      if (await keeping(() => props.onKeep(said))) forget();
    });
  const tryToKeep = () => {
    if (rep.trim() === "") {
      keep(null);
      return;
    }
    const read = readNumber(rep, { min: 0, max: MOST_REPS + 1 });
    if (!read.ok) setWrong(sentenceFor(words, read.problem));
    else if (!Number.isInteger(read.value.value) || read.value.value < 1 || read.value.value > MOST_REPS)
      setWrong(words.fields.stripRepWrong);
    else keep(read.value.value);
  };
  return (
    <div class="strip-form">
      <Brought />
      <WriteLine label={words.fields.stripName} value={name} onWrite={setName} />
      <fieldset>
        <legend class="question">{words.fields.stripDone}</legend>
        <div class="ticks">
          {TREATMENTS.map((one) => (
            <Tick
              key={one}
              label={words.treatment[one]}
              on={done.includes(one)}
              onChange={(on) => setDone(on ? [...done, one] : done.filter((other) => other !== one))}
            />
          ))}
          <Tick label={words.fields.stripWhole} on={wholeField} onChange={setWholeField} />
        </div>
      </fieldset>
      <WriteLine
        label={words.fields.stripRep}
        hint={words.fields.stripRepHint}
        value={rep}
        wrong={wrong}
        numeric
        onWrite={(text) => {
          setRep(text);
          setWrong(null);
        }}
      />
      <div class="keys two beside">
        <Key
          onPress={() => {
            forget();
            props.onClose();
          }}
        >
          {words.common.close}
        </Key>
        <Key look="solid" off={busy || nothing} onPress={tryToKeep}>
          {words.common.done}
        </Key>
      </div>
    </div>
  );
};

/** The form, for a new strip or one that is corrected. */
export const StripForm = withTyped(({ strip }: StripFormProps) => `${STRIP_FORM}${strip?.id ?? "new"}`, Form);
