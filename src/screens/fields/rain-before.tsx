/**
 * Days since rain among the conditions of a ring or a hole: proposed from the rain notes of the field, and put
 * right there. Nothing is kept beside the notes, so no two places can say different things.
 */
import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { useLastShown } from "../parts/last-shown.ts";
import { useLive } from "../parts/live.ts";
import { writeDay } from "../parts/numbers.ts";
import type { Reader } from "../parts/reader.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { DayChoice, RainForm } from "./timeline-form.tsx";
import { handOf } from "./timeline-hand.ts";
import { rainText, readTimeline, type TimelineNow } from "./timeline-model.ts";
import { useSteps } from "./timeline-steps.ts";
import { TIMELINE_WORDS } from "./timeline-words.ts";
import "./rain-before.css";

/** The timeline of the field of a visit, with the last rain as it was known on that day. */
interface OnDay {
  readonly now: TimelineNow;
  readonly day: string;
}

const readOnDay = async (records: Reader, id: RecordId<"visit">): Promise<OnDay | null> => {
  const visit = await records.one(id);
  const day = visit?.body.day;
  const now = visit === undefined ? null : await readTimeline(records, visit.body.field, visit.body.day);
  return now === null || day === undefined ? null : { now, day };
};

export const RainBefore = ({ visit }: { readonly visit: RecordId<"visit"> }) => {
  const { records } = useHouse();
  const found = useLastShown(useLive(() => readOnDay(records, visit), [visit]));
  return found === undefined || found === null ? null : <Rain {...found} />;
};

const Rain = ({ now, day }: OnDay) => {
  const house = useHouse();
  const says = useWordsOf(TIMELINE_WORDS);
  const { tongue } = house.words.value.common;
  const unit = house.settings.value.habits.depthSoaked;
  const [open, setOpen] = useState<"correct" | "since" | null>(null);
  const [since, setSince] = useState<string | null>(day);
  const steps = useSteps(says);
  const hand = handOf(house, says, now, steps.take);
  const { lastRain } = now;
  const readings = now.axis.flatMap((one) =>
    one.kind === "rain" && one.day === lastRain?.day && one.of.body.depthMm > 0 ? [one.of] : [],
  );
  // Which of several readings of one day is meant only the timeline can ask.
  const [reading] = readings.length === 1 ? readings : [];
  const close = () => setOpen(null);
  return (
    <section class="rain-before">
      <h3>{says.before.title}</h3>
      <p role="status">
        {lastRain === null ? (
          says.before.none
        ) : (
          <>
            <b>{says.before.days(lastRain.days)}</b>{" "}
            {says.before.proposed(rainText(lastRain, unit), writeDay(lastRain.day, tongue))}
          </>
        )}
      </p>
      {open === null ? (
        <div class={`keys ${reading === undefined ? "" : "two"}`}>
          {reading === undefined ? null : <Key onPress={() => setOpen("correct")}>{says.before.correct}</Key>}
          <Key
            onPress={() => {
              setSince(day);
              setOpen("since");
            }}
          >
            {lastRain === null ? says.before.note : says.before.since}
          </Key>
        </div>
      ) : null}
      {open === "since" ? (
        <>
          <DayChoice day={since} onDay={setSince} />
          <RainForm
            before={null}
            day={since}
            onKeep={async (said) => {
              if (await hand.addRain(said)) close();
            }}
            onClose={close}
          />
        </>
      ) : null}
      {open === "correct" && reading !== undefined ? (
        <RainForm
          before={reading.body}
          day={null}
          onKeep={async (said) => {
            if (await hand.change(reading.id, reading.body, { ...reading.body, ...said })) close();
          }}
          onClose={close}
        />
      ) : null}
      {steps.said === null ? null : (
        <div class="rain-said">
          <p role="status">{steps.said}</p>
          <div class="keys two">
            <Key off={steps.undo === null} onPress={() => void steps.goBack()}>
              {house.words.value.common.undo}
            </Key>
            <Key off={steps.redo === null} onPress={() => void steps.goOn()}>
              {house.words.value.common.redo}
            </Key>
          </div>
        </div>
      )}
    </section>
  );
};
