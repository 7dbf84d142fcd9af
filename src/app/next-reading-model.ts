/** What the bar with the next reading shows, and the alarm behind it. */
import { effect, type ReadonlySignal, signal, untracked } from "@preact/signals";
import { type DueReading, type Rung, startAlarm } from "../device/alarm.ts";
import { alarmParts } from "../device/alarm-parts.ts";
import { type ClockReading, readClock, timeBetween, watchPauses } from "../device/clock.ts";
import { bellState, unlockBellByTouch } from "../device/sound.ts";
import { everyFewSeconds, tellNow } from "../device/ticker.ts";
import { nextDue } from "../record/ring/due.ts";
import type { House } from "../screens/parts/house.ts";
import { type MustardWait, waitToCome } from "./mustard-waits.ts";
import type { RunningRing } from "./running-rings.ts";

const MINUTE_MS = 60_000;
/** The clock time that is shown moves when the wall clock was set, and not by the rounding of every second. */
const WALL_WAS_SET_MS = 2000;

/** What the alarm rings for: a ring to be read, or a hole with mustard water in it. */
export type Awaited = RunningRing | MustardWait;

export const isRing = (one: Awaited): one is RunningRing => "planMin" in one;

/** The reading that comes next, or waits longest. */
export interface NextReading {
  readonly of: Awaited;
  /** When it is due, by the wall clock. */
  readonly atMs: number;
  readonly when: "in" | "soon" | "now" | "late";
  /** Minutes until it is due, or since; 0 for *soon* and *now*. */
  readonly minutes: number;
}

export interface NextReadingModel {
  /** Null when nothing is left to read. Changes once a minute and not every second. */
  readonly next: ReadonlySignal<NextReading | null>;
  /** An alarm would not be heard before somebody touches the page. */
  readonly silent: ReadonlySignal<boolean>;
}

/**
 * The planned readings of a ring that are due or still to come. The one that is due is told by what was read;
 * those behind it follow from the plan.
 */
export const readingsToCome = (ring: RunningRing, now: ClockReading): readonly DueReading[] => {
  const { wallMs, monoMs, pageId } = now;
  const due = nextDue(ring.planMin, ring.reading, { wallMs, monoMs, page: pageId });
  const start = ring.reading.start?.entry.id;
  if (due === null || start === undefined) return [];
  return ring.planMin
    .filter((minutes) => minutes >= due.planMin)
    .map((minutes) => ({
      // A start that is corrected is another entry: its readings are due anew.
      id: `${ring.id} ${start} ${minutes}`,
      test: ring.id,
      inMs: Math.round(due.dueInMs + (minutes - due.planMin) * MINUTE_MS),
    }));
};

/** How the time until a reading is said: minutes are begun ones before it and full ones after it. */
export const tellWhen = (inMs: number): Pick<NextReading, "when" | "minutes"> => {
  if (inMs >= MINUTE_MS) return { when: "in", minutes: Math.ceil(inMs / MINUTE_MS) };
  if (inMs > 0) return { when: "soon", minutes: 0 };
  const late = Math.floor(-inMs / MINUTE_MS);
  return late === 0 ? { when: "now", minutes: 0 } : { when: "late", minutes: late };
};

/** So long the end of a wait is news; then every reading to come is more urgent. Own choice, no source. */
const NEWS_MS = 5 * MINUTE_MS;

/** What stands in the bar: a ring that is due comes before a wait that is over. */
export const firstOf = <T extends { readonly of: Awaited; readonly due: DueReading }>(
  all: readonly T[],
): T | null => {
  const rank = ({ of, due: { inMs } }: T): number =>
    isRing(of) || inMs > 0 ? inMs : inMs < -NEWS_MS ? Number.POSITIVE_INFINITY : 0;
  return [...all].sort((a, b) => (rank(a) < rank(b) ? -1 : rank(a) > rank(b) ? 1 : 0))[0] ?? null;
};

/**
 * Runs the alarm for these rings and holes and follows the next reading, until `stop` ends it.
 *
 * @param all undefined while they are not known yet
 * @param onRung told when a reading has become due, once for each
 */
export const nextReadingModel = (
  house: Pick<House, "settings">,
  all: ReadonlySignal<readonly Awaited[] | undefined>,
  onRung: (of: Awaited, rung: Rung) => void,
  stop: AbortSignal,
): NextReadingModel => {
  const next = signal<NextReading | null>(null);
  const silent = signal(false);
  let first: { readonly of: Awaited; readonly due: DueReading } | null = null;
  let at = readClock();
  let ticking: AbortController | null = null;

  const alarm = startAlarm(
    alarmParts(() => {
      const { alarm: sound, vibrate } = house.settings.value;
      return { sound, vibrate };
    }),
    (rung) => {
      const of = all.value?.find(({ id }) => id === rung.test);
      if (of !== undefined) onRung(of, rung);
      // Of several late readings only the last one can still be read.
      look();
      tellNow();
    },
    stop,
  );

  /** A wait that is over gives way by and by, without anything being written. */
  const tick = (now: ClockReading): void => {
    if (first !== null && !isRing(first.of)) look();
    else draw(now);
  };

  const draw = (now: ClockReading): void => {
    silent.value = first !== null && house.settings.value.alarm && bellState() === "needs-touch";
    if (first === null) {
      next.value = null;
      return;
    }
    const { of, due } = first;
    const inMs = due.inMs - timeBetween(at, now);
    const wouldBeMs = now.wallMs + inMs;
    const before = next.value;
    const same = before?.of.id === of.id;
    const atMs = same && Math.abs(before.atMs - wouldBeMs) < WALL_WAS_SET_MS ? before.atMs : wouldBeMs;
    const told = tellWhen(inMs);
    const unchanged =
      before?.of === of &&
      before.atMs === atMs &&
      before.when === told.when &&
      before.minutes === told.minutes;
    if (!unchanged) next.value = { of, atMs, ...told };
  };

  const look = (): void => {
    if (stop.aborted) return;
    const now = readClock();
    const due = (all.value ?? []).flatMap((of) =>
      (isRing(of) ? readingsToCome(of, now) : waitToCome(of, now)).map((one) => ({ of, due: one })),
    );
    at = now;
    first = firstOf(due);
    alarm.give(
      due.map((one) => one.due),
      now,
    );
    draw(now);
    if (first !== null && ticking === null) {
      ticking = new AbortController();
      everyFewSeconds(tick, ticking.signal);
      unlockBellByTouch(ticking.signal);
    } else if (first === null) {
      ticking?.abort();
      ticking = null;
    }
  };

  const end = effect(() => {
    // Before the rings are known nothing is said of them: an empty answer would take the badge away.
    if (all.value === undefined) return;
    look();
    // A start from another window must not lie ahead of the time that is shown.
    untracked(tellNow);
  });
  watchPauses(look, stop);
  stop.addEventListener(
    "abort",
    () => {
      end();
      ticking?.abort();
    },
    { once: true },
  );
  return { next, silent };
};
