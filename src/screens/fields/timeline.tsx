/** The timeline of a field: the usual events in one touch, and everything that was done beside the visits. */
import { useRef, useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import type { ManagementEvent } from "../../record/kinds/event.ts";
import { useAfterFrames } from "../parts/after-frames.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { useLastShown } from "../parts/last-shown.ts";
import { useLive } from "../parts/live.ts";
import { stripName } from "../parts/names.ts";
import { writeDay } from "../parts/numbers.ts";
import { useOnce } from "../parts/once.ts";
import { typedHere } from "../parts/typed-store.ts";
import { useToday } from "../parts/visits.ts";
import { CAUTION_WORDS } from "../parts/words.cautions.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { Axis } from "./timeline-axis.tsx";
import { DayChoice, EVENT_FORM, RainForm, StripChoice } from "./timeline-form.tsx";
import { handOf, type TimelineHand } from "./timeline-hand.ts";
import { daysBetween, rainText, readTimeline, type TimelineNow, USUAL } from "./timeline-model.ts";
import { useSteps } from "./timeline-steps.ts";
import { TIMELINE_WORDS } from "./timeline-words.ts";
import "./timeline.css";

/** A second touch that comes this soon is a drop of rain on the glass or a thumb that trembles. */
const SECOND_TOUCH_MS = 250;

/** @param props.field any id of the field */
export const FieldTimeline = (props: { readonly field: RecordId<"field"> }) => {
  const says = useWordsOf(TIMELINE_WORDS);
  const begun = useAfterFrames(2);
  return (
    <section class="ruled field-timeline">
      <h2>{says.title}</h2>
      {begun ? <Read field={props.field} /> : null}
    </section>
  );
};

const Read = ({ field }: { readonly field: RecordId<"field"> }) => {
  const { records } = useHouse();
  const today = useToday();
  const now = useLastShown(useLive(() => readTimeline(records, field, today), [field, today]));
  return now === undefined || now === null ? null : <Timeline now={now} today={today} />;
};

const Timeline = ({ now, today }: { readonly now: TimelineNow; readonly today: string }) => {
  const house = useHouse();
  const says = useWordsOf(TIMELINE_WORDS);
  const { tongue } = house.words.value.common;
  const unit = house.settings.value.habits.depthSoaked;
  const [opened, setOpened] = useState<string | null>(() => typedHere(EVENT_FORM)[0] ?? null);
  const [made, setMade] = useState<string | null>(null);
  const steps = useSteps(says);
  const hand = handOf(house, says, now, steps.take);
  const { lastRain } = now;
  return (
    <>
      <p>
        {lastRain === null
          ? says.noRain
          : says.lastRain(lastRain.days, writeDay(lastRain.day, tongue), rainText(lastRain, unit))}
      </p>
      <Writing now={now} today={today} hand={hand} onMade={setMade} />
      <Sprayed now={now} today={today} />
      <div class="timeline-said">
        {steps.said === null ? null : <p>{steps.said}</p>}
        <div class="keys">
          {steps.undo === null ? null : (
            <Key onPress={() => void steps.goBack()}>{says.undo(steps.undo.what)}</Key>
          )}
          {steps.redo === null ? null : (
            <Key onPress={() => void steps.goOn()}>{says.redo(steps.redo.what)}</Key>
          )}
          {made === null || !now.axis.some(({ of }) => of.id === made) ? null : (
            <Key onPress={() => setOpened(made)}>{says.correct}</Key>
          )}
        </div>
      </div>
      <Axis now={now} hand={hand} opened={opened} onOpen={setOpened} />
    </>
  );
};

/**
 * Said as long as a spraying may still keep people out; only the label knows how long that is. Below the keys:
 * above them it would push them from under the thumb.
 */
const Sprayed = ({ now, today }: { readonly now: TimelineNow; readonly today: string }) => {
  const says = useWordsOf(TIMELINE_WORDS);
  const cautions = useWordsOf(CAUTION_WORDS);
  if (now.sprayed === null) return null;
  return (
    <div class="timeline-caution" role="alert">
      <p>
        <b>{says.sprayedTitle(daysBetween(now.sprayed.body.day, today))}</b>
      </p>
      <p>{cautions.names.sprayed.mind}</p>
      <p>{cautions.local}</p>
    </div>
  );
};

/** The keys, and which day and strip they write under. */
const Writing = (props: {
  readonly now: TimelineNow;
  readonly today: string;
  readonly hand: TimelineHand;
  readonly onMade: (id: string | null) => void;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const says = useWordsOf(TIMELINE_WORDS);
  const { now, today, hand } = props;
  const [changing, setChanging] = useState(false);
  // Null follows the calendar: a page left open over midnight writes under the new day.
  const [ownDay, setOwnDay] = useState<{ readonly is: string | null } | null>(null);
  const [strip, setStrip] = useState<RecordId<"strip"> | null>(null);
  const [raining, setRaining] = useState(false);
  const [, once] = useOnce();
  const touched = useRef(0);
  const day = ownDay === null ? today : ownDay.is;
  const chosen = now.strips.find(({ id }) => id === strip);
  const touch = (what: ManagementEvent["what"], atMs: number) => {
    if (day === null || atMs - touched.current < SECOND_TOUCH_MS) return;
    touched.current = atMs;
    once(async () => props.onMade(await hand.addEvent(what, { day, strip: chosen?.id ?? null })));
  };
  const dayText = day === null ? "…" : day === today ? says.today : writeDay(day, words.common.tongue);
  return (
    <>
      <p class="timeline-under">
        <b>{says.touch(dayText, chosen === undefined ? says.wholeField : stripName(words, chosen))}</b>
      </p>
      <div class="keys two">
        {USUAL.map((what) => (
          <button
            type="button"
            class="key plain"
            key={what}
            data-event={what}
            disabled={day === null}
            onClick={(event) => touch(what, event.timeStamp)}
          >
            {says.events[what]}
          </button>
        ))}
        <Key off={day === null} onPress={() => setRaining(!raining)}>
          {says.rain}
        </Key>
        <Key onPress={() => setChanging(!changing)}>{changing ? says.changeClose : says.change}</Key>
      </div>
      {changing ? (
        <div class="strip-form">
          <DayChoice day={day} onDay={(next) => setOwnDay(next === today ? null : { is: next })} />
          <StripChoice strips={now.strips} strip={strip} onStrip={setStrip} />
        </div>
      ) : null}
      {raining ? (
        <RainForm
          before={null}
          day={day}
          onKeep={async (said) => {
            if (await hand.addRain(said)) setRaining(false);
          }}
          onClose={() => setRaining(false)}
        />
      ) : null}
    </>
  );
};
