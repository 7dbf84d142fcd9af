/** The next reading of any ring, above every screen but the board; and the dimmed screen while rings run. */

import type { ReadonlySignal } from "@preact/signals";
import { useEffect, useState } from "preact/hooks";
import { readClock } from "../device/clock.ts";
import type { RecordId } from "../record/ids.ts";
import { bellWaits, useScreenOn } from "../screens/parts/can-ring.ts";
import type { House } from "../screens/parts/house.ts";
import { writeClock } from "../screens/parts/numbers.ts";
import { ALARM_WORDS } from "../screens/parts/words.alarm.ts";
import { wordsOf } from "../screens/parts/words-of.ts";
import { Dimmed, useDimmed } from "./dimmed.tsx";
import "./next-reading.css";
import { type NextReading as Next, type NextReadingModel, nextReadingModel } from "./next-reading-model.ts";
import { noteToCome, wasToCome } from "./reading-to-come.ts";
import type { RunningRing } from "./running-rings.ts";

const MINUTE_MS = 60_000;

type Words = ReturnType<(typeof ALARM_WORDS)["en"]>;

/** How far away the reading is, in words. */
const whenInWords = (words: Words, { when, minutes }: Next): string => {
  switch (when) {
    case "in":
      return words.in(minutes);
    case "late":
      return words.late(minutes);
    default:
      return words[when];
  }
};

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
      <b class="next-reading-letter">{words.ring(next.letter)}</b>
      <b>{writeClock(next.atMs, tongue)}</b>
      <span>{whenInWords(words, next)}</span>
      <span class="next-reading-silent">{props.silent ? words.silent : ""}</span>
    </a>
  );
};

/**
 * The bar, the alarm and the dimming. Stays mounted on every screen: the alarm ends with it.
 *
 * @param props.rings undefined while they are not known yet
 * @param props.onBoard the ring board shows the readings itself
 * @param props.bright never dimmed, as for figures that are read from a few steps away
 * @param props.boardOf address of the board of a visit
 */
export const NextReading = (props: {
  readonly house: Pick<House, "settings" | "words" | "say">;
  readonly rings: ReadonlySignal<readonly RunningRing[] | undefined>;
  readonly onBoard: boolean;
  readonly bright: boolean;
  readonly boardOf: (visit: RecordId<"visit">) => string;
}) => {
  const { house, rings } = props;
  const runs = (rings.value ?? []).length > 0;
  const dim = useDimmed(runs && !props.bright);
  const model = useModel(house, rings, dim.wake);
  useScreenOn(runs);
  const next = model?.next.value ?? null;
  const silent = model?.silent.value === true;
  useEffect(() => {
    bellWaits.value = silent;
  }, [silent]);
  const known = rings.value !== undefined && model !== null;
  useEffect(() => {
    if (known) noteToCome(next !== null);
  }, [known, next]);
  if (next === null)
    return !known && !props.onBoard && wasToCome() ? <div class="next-reading" aria-hidden="true" /> : null;
  const words = wordsOf(ALARM_WORDS, house.settings.value);
  const { tongue } = house.words.value.common;
  return (
    <>
      {props.onBoard ? null : (
        <Bar words={words} tongue={tongue} next={next} silent={silent} to={props.boardOf(next.visit)} />
      )}
      {dim.dimmed ? (
        <Dimmed
          letter={words.ring(next.letter)}
          clock={writeClock(next.atMs, tongue)}
          when={whenInWords(words, next)}
          hint={words.wake}
          onWake={dim.wake}
        />
      ) : null}
    </>
  );
};

const useModel = (
  house: Pick<House, "settings" | "words" | "say">,
  rings: ReadonlySignal<readonly RunningRing[] | undefined>,
  wake: () => void,
): NextReadingModel | null => {
  const [model, setModel] = useState<NextReadingModel | null>(null);
  useEffect(() => {
    const stop = new AbortController();
    setModel(
      nextReadingModel(
        house,
        rings,
        ({ letter }, { lateMs }) => {
          wake();
          const clock = writeClock(readClock().wallMs - lateMs, house.words.value.common.tongue);
          house.say(
            wordsOf(ALARM_WORDS, house.settings.value).due(letter, clock, Math.floor(lateMs / MINUTE_MS)),
          );
        },
        stop.signal,
      ),
    );
    return () => stop.abort();
  }, [house, rings, wake]);
  return model;
};
