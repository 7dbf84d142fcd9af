/** The numbers of a ring: the one of a look, a level that came late, and water from a measured bottle. */
import { useState } from "preact/hooks";
import type { Applied } from "../../../record/command/apply.ts";
import type { InRing } from "../../../record/ring/entries.ts";
import type { OpenLook, RingReading } from "../../../record/ring/events.ts";
import { useHouse } from "../../parts/house.ts";
import { Halves, Key, Tick } from "../../parts/keys.tsx";
import { useOnce } from "../../parts/once.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { DayRing } from "./day.ts";
import { clockWithSeconds, typedIn } from "./figures.ts";
import {
  goneAtLook,
  levelOfLook,
  levelRead,
  lookMissed,
  pourAtLook,
  waterGone,
  waterPoured,
} from "./hand.ts";
import { levelBounds, pourBounds } from "./numbers-of-ring.ts";
import { type PadAnswer, PadQuestion } from "./pad-question.tsx";
import { NOW, type When } from "./when.ts";
import { WhenChips } from "./when-chips.tsx";
import { RING_WORDS } from "./words.ts";

type Written = Promise<readonly Applied[] | null>;

/** Water that was poured since the last level before this moment: the next level stands behind a refill. */
export const pouredSince = (reading: RingReading, ring: InRing, sinceStartMs: number): boolean => {
  const before = reading.events.filter(
    (event) => event.ring === ring && event.moment.sinceStartMs <= sinceStartMs,
  );
  const level = before.findLastIndex(({ type }) => type !== "pour");
  return level >= 0 && before.slice(level + 1).some(({ type }) => type === "pour");
};

/** Which ring of a double ring. */
export const WhichRing = (props: {
  readonly ring: DayRing;
  readonly chosen: InRing;
  readonly onChoose: (ring: InRing) => void;
}) => {
  const words = useWordsOf(RING_WORDS).ring;
  if (props.ring.header.outer === null) return null;
  return (
    <Halves
      label={words.whichRing}
      options={[
        { value: "inner", label: words.inner },
        { value: "outer", label: words.outer },
      ]}
      chosen={props.chosen}
      onChoose={props.onChoose}
    />
  );
};

/** The number of a look. The moment is kept already. */
export const LookNumber = (props: {
  readonly ring: DayRing;
  readonly look: OpenLook;
  /** How many looks of this kind wait, this one included. */
  readonly waiting: number;
  readonly behindRefill: boolean;
  readonly onWritten: (written: Written) => Promise<boolean>;
  readonly onLater: () => void;
  readonly above?: preact.ComponentChildren;
  /** Two more keys in one row with the one that says that nobody could read it. */
  readonly keys?: preact.ComponentChildren;
}) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const { ring, look, onWritten } = props;
  const { way, rulerReads } = ring.header;
  const { habits } = house.settings.value;
  const tongue = house.words.value.common.tongue;
  const [busy, once] = useOnce();
  const poured = pouredSince(ring.reading, look.look.ring, look.moment.sinceStartMs);
  const [refilled, setRefilled] = useState<boolean | null>(null);
  const afterRefill = refilled ?? (props.behindRefill || poured);
  const time = clockWithSeconds(look.moment.lookedAtMs, tongue);
  const kept = way === "kept-at-one-level";
  const answer = (write: () => Written) => once(async () => void (await onWritten(write())));
  const keep = ({ read, odd }: PadAnswer) =>
    answer(() =>
      kept
        ? pourAtLook(house, ring.id, look.look, { read, unit: habits.volume, odd })
        : levelOfLook(house, ring.id, look.look, {
            read,
            unit: habits.level,
            odd,
            reads: rulerReads,
            afterRefill,
          }),
    );
  const which = ring.header.outer === null || look.look.ring === "inner" ? "" : words.ring.outerRing;
  return (
    <PadQuestion
      question={
        kept
          ? words.ring.topUpQuestion(ring.letter, time, which)
          : words.ring.levelQuestion(ring.letter, time, which, rulerReads)
      }
      hint={props.waiting > 1 ? words.ring.waiting(props.waiting) : words.ring.momentKept}
      unit={kept ? habits.volume : habits.level}
      bounds={kept ? pourBounds(habits.volume) : levelBounds(ring, habits.level, look.look.ring)}
      onKeep={keep}
      busy={busy}
      three
      above={
        <div class="ring-above">
          {props.above}
          <div class={`keys ${props.keys ? "three" : ""}`}>
            {props.keys}
            <Key off={busy} onPress={() => answer(() => lookMissed(house, ring.id, look.look))}>
              {words.ring.couldNotRead}
            </Key>
          </div>
        </div>
      }
      over={
        kept ? null : way === "ruler" ? (
          <Tick label={words.ring.afterRefill} on={afterRefill} onChange={setRefilled} />
        ) : null
      }
      beside={
        <>
          <Key onPress={props.onLater}>{words.ring.later}</Key>
          {kept ? (
            <BottleKey ring={ring} onKeep={keep} />
          ) : (
            <Key off={busy} onPress={() => answer(() => goneAtLook(house, ring.id, look.look))}>
              {words.ring.allGone}
            </Key>
          )}
        </>
      }
    />
  );
};

/** The whole bottle of the kit in one touch. */
const BottleKey = (props: { readonly ring: DayRing; readonly onKeep: (answer: PadAnswer) => void }) => {
  const { settings } = useHouse();
  const words = useWordsOf(RING_WORDS).ring;
  const unit = settings.value.habits.volume;
  const { bottle } = props.ring.kit;
  if (bottle === null) return <span />;
  const typed = typedIn(bottle.volumeM3, unit);
  return (
    <Key onPress={() => props.onKeep({ read: { value: Number(typed), typed }, odd: false })}>
      {words.fullBottle(`${typed} ${unit}`)}
    </Key>
  );
};

/** A level that answers no look: read some minutes ago, or now. */
export const LevelPanel = (props: {
  readonly ring: DayRing;
  readonly onWritten: (written: Written) => Promise<boolean>;
  readonly onClose: () => void;
}) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const { ring } = props;
  const { rulerReads } = ring.header;
  const unit = house.settings.value.habits.level;
  const [when, setWhen] = useState<When>({ how: "minutes-ago", minutes: 1 });
  const [which, setWhich] = useState<InRing>("inner");
  const [refilled, setRefilled] = useState(false);
  const [busy, once] = useOnce();
  const answer = (write: () => Written) => once(async () => void (await props.onWritten(write())));
  return (
    <PadQuestion
      question={words.ring.earlierQuestion(ring.letter, rulerReads)}
      hint={words.when.legend}
      unit={unit}
      bounds={levelBounds(ring, unit, which)}
      busy={busy}
      three
      onKeep={({ read, odd }) =>
        answer(() =>
          levelRead(
            house,
            ring.id,
            { read, unit, odd, ring: which, reads: rulerReads, afterRefill: refilled },
            when,
          ),
        )
      }
      above={
        <div class="ring-above">
          <WhenChips when={when} onWhen={setWhen} lateOnly />
          {ring.header.way === "ruler" ? (
            <Tick label={words.ring.afterRefill} on={refilled} onChange={setRefilled} />
          ) : null}
          <WhichRing ring={ring} chosen={which} onChoose={setWhich} />
        </div>
      }
      beside={
        <>
          <Key onPress={props.onClose}>{house.words.value.common.close}</Key>
          <Key off={busy} onPress={() => answer(() => waterGone(house, ring.id, which, when))}>
            {words.ring.allGone}
          </Key>
        </>
      }
    />
  );
};

/** Water from a measured bottle. At the start it has the moment of the start. */
export const PourPanel = (props: {
  readonly ring: DayRing;
  readonly atStart: boolean;
  readonly inRefill: boolean;
  readonly onWritten: (written: Written) => Promise<boolean>;
  readonly onClose: () => void;
}) => {
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const { ring, atStart } = props;
  const unit = house.settings.value.habits.volume;
  const [when, setWhen] = useState<When>(NOW);
  const [which, setWhich] = useState<InRing>("inner");
  const [busy, once] = useOnce();
  const start = ring.reading.start?.entry;
  const keep = ({ read, odd }: PadAnswer) =>
    once(
      async () =>
        void (await props.onWritten(
          waterPoured(
            house,
            ring.id,
            { read, unit, odd, ring: which },
            atStart && start !== undefined ? { how: "at-start", start } : when,
          ),
        )),
    );
  const question = atStart
    ? ring.header.way === "kept-at-one-level"
      ? words.ring.fillQuestion(ring.letter)
      : words.ring.firstPourQuestion(ring.letter)
    : words.ring.pourQuestion(ring.letter);
  return (
    <PadQuestion
      question={question}
      hint={props.inRefill ? words.ring.refillMayStayOpen : atStart ? words.ring.atStart : words.when.legend}
      unit={unit}
      bounds={pourBounds(unit)}
      busy={busy}
      three
      onKeep={keep}
      above={
        <div class="ring-above">
          {atStart || props.inRefill ? null : <WhenChips when={when} onWhen={setWhen} />}
          <WhichRing ring={ring} chosen={which} onChoose={setWhich} />
        </div>
      }
      beside={
        <>
          <Key onPress={props.onClose}>
            {props.inRefill || atStart ? words.ring.notMeasured : house.words.value.common.close}
          </Key>
          <BottleKey ring={ring} onKeep={keep} />
        </>
      }
    />
  );
};
