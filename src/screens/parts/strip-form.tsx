/** What is said of a strip, new or corrected: the same questions wherever one is added. */
import { useState } from "preact/hooks";
import { type Strip, TREATMENTS } from "../../record/kinds/strip.ts";
import { readNumber } from "../../record/number.ts";
import { sentenceFor } from "../catalogue.ts";
import { FIELD_WORDS } from "../fields/words.ts";
import { Key, Tick, WriteLine } from "./keys.tsx";
import { useOnce } from "./once.ts";
import { useWordsWith } from "./words-of.ts";

/** Highest rep that a strip may have, as its record allows. */
const MOST_REPS = 1000;

/** A strip as a person says it; to which field it belongs is known already. */
export type StripSaid = Omit<Strip, "field">;

const SAID_NOTHING: StripSaid = { name: "", done: [], wholeField: false, rep: null };

export const StripForm = (props: {
  /** What stands there already; left out for a new strip. */
  readonly before?: StripSaid;
  /** Writes it down. */
  readonly onKeep: (said: StripSaid) => Promise<void>;
  readonly onClose: () => void;
}) => {
  const words = useWordsWith(FIELD_WORDS);
  const [said, setSaid] = useState<StripSaid>(props.before ?? SAID_NOTHING);
  const [rep, setRep] = useState(said.rep === null ? "" : String(said.rep));
  const [wrong, setWrong] = useState<string | null>(null);
  const [busy, once] = useOnce();
  const { name, done, wholeField } = said;
  const say = (more: Partial<StripSaid>) => setSaid((now) => ({ ...now, ...more }));
  // A strip of which nothing at all was said could not be told from the next one.
  const nothing = name.trim() === "" && done.length === 0 && !wholeField && rep.trim() === "";
  const keep = (number: number | null) =>
    once(() => props.onKeep({ ...said, name: name.trim(), rep: number }));
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
      <WriteLine label={words.fields.stripName} value={name} onWrite={(text) => say({ name: text })} />
      <fieldset>
        <legend class="question">{words.fields.stripDone}</legend>
        <div class="ticks">
          {TREATMENTS.map((one) => (
            <Tick
              key={one}
              label={words.treatment[one]}
              on={done.includes(one)}
              onChange={(on) => say({ done: on ? [...done, one] : done.filter((other) => other !== one) })}
            />
          ))}
          <Tick label={words.fields.stripWhole} on={wholeField} onChange={(on) => say({ wholeField: on })} />
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
        <Key onPress={props.onClose}>{words.common.close}</Key>
        <Key look="solid" off={busy || nothing} onPress={tryToKeep}>
          {words.common.done}
        </Key>
      </div>
    </div>
  );
};
