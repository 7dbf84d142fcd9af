/** The next reading of any ring or wait for worms, above every screen but its own; and the dimmed screen. */

import { type ReadonlySignal, useComputed, useSignal } from "@preact/signals";
import { useEffect, useState } from "preact/hooks";
import { readClock } from "../device/clock.ts";
import type { RecordId } from "../record/ids.ts";
import { bellWaits, useScreenOn } from "../screens/parts/can-ring.ts";
import type { House } from "../screens/parts/house.ts";
import { writeClock } from "../screens/parts/numbers.ts";
import { href } from "../screens/parts/route.ts";
import { ALARM_WORDS } from "../screens/parts/words.alarm.ts";
import { wordsOf } from "../screens/parts/words-of.ts";
import { Dimmed, useDimmed } from "./dimmed.tsx";
import "./next-reading.css";
import { type MustardWait, watchMustardWaits } from "./mustard-waits.ts";
import {
  type Awaited,
  isRing,
  type NextReading as Next,
  type NextReadingModel,
  nextReadingModel,
} from "./next-reading-model.ts";
import { noteToCome, wasToCome } from "./reading-to-come.ts";
import type { RunningRing } from "./running-rings.ts";

const MINUTE_MS = 60_000;

type Words = ReturnType<(typeof ALARM_WORDS)["en"]>;

/** How far away the reading is, in words. */
const whenInWords = (words: Words, { of, when, minutes }: Next): string => {
  if (!isRing(of) && (when === "now" || when === "late")) return words.look;
  switch (when) {
    case "in":
      return words.in(minutes);
    case "late":
      return words.late(minutes);
    default:
      return words[when];
  }
};

const nameOf = (words: Words, of: Awaited): string =>
  isRing(of) ? words.ring(of.letter) : words.hole(of.number);

const Bar = (props: {
  readonly words: Words;
  readonly tongue: string;
  readonly next: Next;
  readonly silent: boolean;
  readonly to: string;
}) => {
  const { words, tongue, next } = props;
  // Said aloud when a reading is due and not at every minute: so no live region here.
  return (
    <a class={`next-reading ${next.when}`} href={props.to}>
      <b class="next-reading-letter">{nameOf(words, next.of)}</b>
      <b>{writeClock(next.atMs, tongue)}</b>
      <span>{whenInWords(words, next)}</span>
      <span class="next-reading-silent">{props.silent ? words.silent : null}</span>
    </a>
  );
};

/**
 * The bar, the alarm and the dimming. Stays mounted on every screen: the alarm ends with it.
 *
 * @param props.rings undefined while they are not known yet
 * @param props.onBoard the ring board shows the readings itself
 * @param props.bright never dimmed, as for figures that are read from a few steps away
 * @param props.hole the hole that is on the screen: worms that come up there are touched in at once
 * @param props.boardOf address of the board of a visit
 */
export const NextReading = (props: {
  readonly house: Pick<House, "records" | "tell" | "settings" | "words" | "say">;
  readonly rings: ReadonlySignal<readonly RunningRing[] | undefined>;
  readonly onBoard: boolean;
  readonly bright: boolean;
  readonly hole?: RecordId<"observation"> | undefined;
  readonly boardOf: (visit: RecordId<"visit">) => string;
}) => {
  const { house, rings } = props;
  const waits = useWaits(house);
  const [waiting, setWaiting] = useState(false);
  const runs = (rings.value ?? []).length > 0;
  const dim = useDimmed((runs || (waiting && props.hole === undefined)) && !props.bright);
  const all = useComputed(() => rings.value && [...rings.value, ...waits.value]);
  const model = useModel(house, all, dim.wake);
  useScreenOn(runs || waiting);
  const next = model?.next.value ?? null;
  const silent = model?.silent.value === true;
  useEffect(() => {
    bellWaits.value = silent;
  }, [silent]);
  const known = rings.value !== undefined && model !== null;
  // A hole tells of its own mustard water; where rings run the bar stays, so that nothing moves.
  const shown = !props.onBoard && (runs || next?.of.id !== props.hole);
  useEffect(() => {
    setWaiting(next !== null);
    if (known) noteToCome(next !== null);
  }, [known, next]);
  if (next === null)
    return !known && !props.onBoard && wasToCome() ? <div class="next-reading" aria-hidden="true" /> : null;
  const words = wordsOf(ALARM_WORDS, house.settings.value);
  const { tongue } = house.words.value.common;
  return (
    <>
      {shown ? (
        <Bar
          words={words}
          tongue={tongue}
          next={next}
          silent={silent}
          to={isRing(next.of) ? props.boardOf(next.of.visit) : href({ at: "hole", hole: next.of.id })}
        />
      ) : null}
      {dim.dimmed ? (
        <Dimmed
          letter={nameOf(words, next.of)}
          clock={writeClock(next.atMs, tongue)}
          when={whenInWords(words, next)}
          hint={words.wake}
          onWake={dim.wake}
        />
      ) : null}
    </>
  );
};

const useWaits = (house: Pick<House, "records" | "tell">): ReadonlySignal<readonly MustardWait[]> => {
  const waits = useSignal<readonly MustardWait[]>([]);
  useEffect(() => {
    const stop = new AbortController();
    const tell = (now: readonly MustardWait[]): void => {
      // A hole is touched every second, and none is waited at most of the time.
      if (now.length + waits.value.length > 0) waits.value = now;
    };
    watchMustardWaits(house, tell, stop.signal);
    return () => stop.abort();
  }, [house, waits]);
  return waits;
};

const useModel = (
  house: Pick<House, "settings" | "words" | "say">,
  all: ReadonlySignal<readonly Awaited[] | undefined>,
  wake: () => void,
): NextReadingModel | null => {
  const [model, setModel] = useState<NextReadingModel | null>(null);
  useEffect(() => {
    const stop = new AbortController();
    setModel(
      nextReadingModel(
        house,
        all,
        (of, { lateMs }) => {
          wake();
          const clock = writeClock(readClock().wallMs - lateMs, house.words.value.common.tongue);
          const words = wordsOf(ALARM_WORDS, house.settings.value);
          house.say(
            isRing(of)
              ? words.due(of.letter, clock, Math.floor(lateMs / MINUTE_MS))
              : words.waitOver(of.number, clock),
          );
        },
        stop.signal,
      ),
    );
    return () => stop.abort();
  }, [house, all, wake]);
  return model;
};
