/** Questions of the timeline: when, where, how much rain, and the correction of what stands there. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import type { ManagementEvent } from "../../record/kinds/event.ts";
import type { Rain } from "../../record/kinds/rain.ts";
import { inUnit } from "../../record/units.ts";
import { AskOnce } from "../parts/ask-once.tsx";
import { useHouse } from "../parts/house.ts";
import { Choice, Key, WriteLine } from "../parts/keys.tsx";
import { stripName } from "../parts/names.ts";
import { type NumberDraft, NumberLine, numberState } from "../parts/number-line.tsx";
import { useOnce } from "../parts/once.ts";
import type { Listed } from "../parts/reader.ts";
import { useTried } from "../parts/tried.ts";
import { Brought, useForget, useKeeping, useTyped, withTyped } from "../parts/typed.tsx";
import { useToday } from "../parts/visits.ts";
import { UNIT_WORDS } from "../parts/words.units.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { dayBefore, depthMmOf, isDay, rainRule, USUAL } from "./timeline-model.ts";
import { TIMELINE_WORDS } from "./timeline-words.ts";

/** Any day of the calendar, by the device's own picker. */
export const DayLine = (props: {
  readonly day: string | null;
  readonly onDay: (day: string | null) => void;
  /** A day that is missing is told only once somebody tried to go on without it. */
  readonly tried: boolean;
}) => {
  const says = useWordsOf(TIMELINE_WORDS);
  const today = useToday();
  const { day, tried } = props;
  const missing = day === null && tried;
  return (
    <label class="write">
      {says.dayLabel}
      <input
        type="date"
        value={day ?? ""}
        aria-invalid={missing}
        onInput={(event) => {
          const { value } = event.currentTarget;
          props.onDay(isDay(value) ? value : null);
        }}
      />
      <span class={missing || (day !== null && day > today) ? "wrong" : "aside"}>
        {missing ? says.dayMissing : day !== null && day > today ? says.ahead : null}
      </span>
    </label>
  );
};

/** Today, yesterday, or any day of the calendar. `null` while what is written is no day. */
export const DayChoice = (props: {
  readonly day: string | null;
  readonly onDay: (day: string | null) => void;
}) => {
  const says = useWordsOf(TIMELINE_WORDS);
  const today = useToday();
  const { day, onDay } = props;
  const near = { today, yesterday: dayBefore(today) };
  const [other, setOther] = useState(day !== near.today && day !== near.yesterday);
  const chosen = other ? "other" : day === near.yesterday ? "yesterday" : "today";
  return (
    <>
      <Choice
        question={says.when}
        options={[
          { value: "today", label: says.today },
          { value: "yesterday", label: says.yesterday },
          { value: "other", label: says.anotherDay },
        ]}
        chosen={chosen}
        onChoose={(value) => {
          setOther(value === "other");
          if (value === "today" || value === "yesterday") onDay(near[value]);
        }}
      />
      {other ? <DayLine day={day} onDay={onDay} tried /> : null}
    </>
  );
};

/** The whole field or one of its strips; nothing to ask where there is none. */
export const StripChoice = (props: {
  readonly strips: readonly Listed<"strip">[];
  readonly strip: RecordId<"strip"> | null;
  readonly onStrip: (strip: RecordId<"strip"> | null) => void;
}) => {
  const words = useHouse().words.value;
  const says = useWordsOf(TIMELINE_WORDS);
  if (props.strips.length === 0) return null;
  return (
    <Choice
      question={says.where}
      options={[
        { value: "", label: says.wholeField },
        ...props.strips.map((strip) => ({ value: strip.id as string, label: stripName(words, strip) })),
      ]}
      chosen={props.strip ?? ""}
      onChoose={(value) => props.onStrip(props.strips.find(({ id }) => id === value)?.id ?? null)}
    />
  );
};

/** How much rain, typed in the person's own unit. */
export const RainForm = (props: {
  readonly before: Pick<Rain, "depthMm" | "day"> | null;
  /** The day it is written under; a rain that is corrected asks for its own. */
  readonly day: string | null;
  readonly onKeep: (said: Pick<Rain, "depthMm" | "day">) => Promise<void>;
  readonly onClose: () => void;
}) => {
  const house = useHouse();
  const says = useWordsOf(TIMELINE_WORDS);
  const unit = house.settings.value.habits.depthSoaked;
  const { before } = props;
  const [draft, setDraft] = useState<NumberDraft>({
    typed: before === null ? "" : String(Number(inUnit(before.depthMm / 1000, unit).toPrecision(6))),
    confirmed: before !== null,
  });
  const [tried, triedNow] = useTried();
  const [ownDay, setOwnDay] = useState<string | null>(before?.day ?? null);
  const [busy, once] = useOnce();
  const state = numberState(house.words.value, draft, rainRule(unit, says.rainRefused));
  const day = before === null ? props.day : ownDay;
  const keep = async () => {
    triedNow();
    if (state.is === "good" && day !== null)
      await props.onKeep({ day, depthMm: depthMmOf(state.value, unit) });
  };
  return (
    <div class="strip-form">
      <NumberLine
        label={says.rainLabel(useWordsOf(UNIT_WORDS)[unit])}
        unit={unit}
        hint={says.rainHint}
        draft={draft}
        onDraft={setDraft}
        state={state}
        tried={tried}
      />
      {before === null ? null : <DayChoice day={ownDay} onDay={setOwnDay} />}
      <div class="keys two beside">
        <Key onPress={props.onClose}>{house.words.value.common.close}</Key>
        <Key look="solid" off={busy} onPress={() => once(keep)}>
          {before === null ? says.keepRain : house.words.value.common.done}
        </Key>
      </div>
    </div>
  );
};

interface EventFormProps {
  readonly id: RecordId<"event">;
  readonly before: ManagementEvent;
  readonly strips: readonly Listed<"strip">[];
  /** Writes it down, and closes the form once that is done: true then. */
  readonly onKeep: (said: ManagementEvent) => Promise<boolean>;
  readonly onClose: () => void;
}

/** Names of the forms of events on their page begin like that. */
export const EVENT_FORM = "event ";

const CorrectEvent = (props: EventFormProps) => {
  const { common } = useHouse().words.value;
  const says = useWordsOf(TIMELINE_WORDS);
  const { before, strips } = props;
  const [words, setWords] = useTyped("words", before.words);
  const [what, setWhat] = useTyped("what", before.what, (typed) => USUAL.includes(typed));
  const [day, setDay] = useTyped<string | null>("day", before.day, (typed) => typed === null || isDay(typed));
  const [strip, setStrip] = useTyped("strip", before.strip, (typed) =>
    [null, ...strips.map(({ id }) => id)].includes(typed),
  );
  const [busy, once] = useOnce();
  const forget = useForget();
  const keeping = useKeeping();
  return (
    <div class="strip-form">
      <Brought />
      <WriteLine label={says.words} value={words} onWrite={setWords} />
      <Choice
        question={says.what}
        options={USUAL.map((what) => ({ value: what, label: says.events[what] }))}
        chosen={what}
        onChoose={setWhat}
      />
      <DayChoice day={day} onDay={setDay} />
      <StripChoice strips={strips} strip={strip} onStrip={setStrip} />
      <div class="keys two beside">
        <Key
          onPress={() => {
            forget();
            props.onClose();
          }}
        >
          {common.close}
        </Key>
        <Key
          look="solid"
          off={busy || day === null}
          onPress={() =>
            once(async () => {
              if (day === null) return;
              const said = { ...before, what, strip, day, words: words.trim() };
              if (await keeping(() => props.onKeep(said))) forget();
            })
          }
        >
          {common.done}
        </Key>
      </div>
    </div>
  );
};

/** The correction of an event. */
export const EventForm = withTyped(({ id }: EventFormProps) => EVENT_FORM + id, CorrectEvent);

/** Deletes one thing of the timeline, after asking once. */
export const DeleteThis = (props: { readonly onDelete: () => Promise<void> }) => {
  const says = useWordsOf(TIMELINE_WORDS);
  return (
    <AskOnce
      label={says.remove}
      question={says.removeAsk}
      hint={says.removeHint}
      yes={says.removeYes}
      onYes={props.onDelete}
    />
  );
};
