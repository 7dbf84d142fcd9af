/** A result that stands on paper: what, how much, when, where, and from where it is. */
import type { RecordId } from "../../record/ids.ts";
import type { EarlierResult } from "../../record/kinds/earlier.ts";
import { MEASURES } from "../../record/kinds/guess.ts";
import { useHouse } from "../parts/house.ts";
import { Choice, Key, WriteLine } from "../parts/keys.tsx";
import { type NumberDraft, NumberLine, numberState } from "../parts/number-line.tsx";
import { useOnce } from "../parts/once.ts";
import type { Listed } from "../parts/reader.ts";
import { useTried } from "../parts/tried.ts";
import { Brought, useForget, useKeeping, useTyped, withTyped } from "../parts/typed.tsx";
import { UNIT_WORDS } from "../parts/words.units.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { readSamples, ruleOf, toKeep, toType, unitOf } from "./papers-model.ts";
import { DayLine, StripChoice } from "./timeline-form.tsx";
import { isDay } from "./timeline-model.ts";
import { YEARS_WORDS } from "./years-words.ts";

interface Props {
  /** What stands on record; null for one that is new. */
  readonly before: (EarlierResult & { readonly id: RecordId<"earlier"> }) | null;
  readonly field: RecordId<"field">;
  readonly strips: readonly Listed<"strip">[];
  /** Writes it down, and closes the form once that is done: true then. */
  readonly onKeep: (said: EarlierResult) => Promise<boolean>;
  readonly onClose: () => void;
}

/** Names of the forms of papers on their page begin like that. */
export const PAPER_FORM = "paper ";

const Form = ({ before, field, strips, onKeep, onClose }: Props) => {
  const house = useHouse();
  const words = house.words.value;
  const { papers, paperForm: says } = useWordsOf(YEARS_WORDS);
  const units = useWordsOf(UNIT_WORDS);
  const { habits } = house.settings.value;
  const unit = habits.depthSoaked;
  const [what, setWhat] = useTyped("what", before?.what ?? "ground-cover-percent", (typed) =>
    MEASURES.includes(typed),
  );
  const [draft, setDraft] = useTyped<NumberDraft>(`value, ${unit}`, {
    typed: before === null ? "" : toType(before.what, before.value, unit),
    confirmed: before !== null,
  });
  const [day, setDay] = useTyped<string | null>(
    "day",
    before?.day ?? null,
    (typed) => typed === null || isDay(typed),
  );
  const [strip, setStrip] = useTyped("strip", before?.strip ?? null, (typed) =>
    [null, before?.strip, ...strips.map(({ id }) => id)].includes(typed),
  );
  const [samples, setSamples] = useTyped("samples", before?.samples == null ? "" : String(before.samples));
  const [origin, setOrigin] = useTyped("origin", before?.origin ?? "");
  const [tried, triedNow] = useTried();
  const [busy, once] = useOnce();
  const forget = useForget();
  const keeping = useKeeping();
  const state = numberState(words, draft, ruleOf(what, unit, says.refused[what]));
  const count = readSamples(samples);
  const asked = says.value[what];
  const keep = async () => {
    triedNow();
    if (state.is !== "good" || day === null || count === undefined) return;
    const value = toKeep(what, state.value, unit);
    const said = { field, strip, day, what, value, samples: count, origin: origin.trim() };
    if (await keeping(() => onKeep(said))) forget();
  };
  return (
    <div class="strip-form">
      <Brought />
      <p class="aside">{says.hint}</p>
      <Choice
        question={says.what}
        options={MEASURES.map((one) => ({ value: one, label: papers[one] }))}
        chosen={what}
        onChoose={(one) => {
          // What was typed in percent is no depth.
          if (one !== what) setDraft({ typed: "", confirmed: false });
          setWhat(one);
        }}
      />
      <NumberLine
        label={typeof asked === "string" ? asked : asked(units[unit])}
        unit={unitOf(what, habits)}
        draft={draft}
        onDraft={setDraft}
        state={state}
        tried={tried}
      />
      <DayLine day={day} onDay={setDay} tried={tried} />
      <StripChoice strips={strips} strip={strip} onStrip={setStrip} />
      <WriteLine
        label={says.samples}
        numeric
        value={samples}
        wrong={tried && count === undefined ? says.samplesRefused : null}
        onWrite={setSamples}
      />
      <WriteLine label={says.origin} hint={says.originHint} value={origin} onWrite={setOrigin} />
      <div class="keys two beside">
        <Key
          onPress={() => {
            forget();
            onClose();
          }}
        >
          {words.common.close}
        </Key>
        <Key look="solid" off={busy} onPress={() => once(keep)}>
          {before === null ? says.keep : words.common.done}
        </Key>
      </div>
    </div>
  );
};

export const PaperForm = withTyped(({ before }: Props) => PAPER_FORM + (before?.id ?? "new"), Form);
