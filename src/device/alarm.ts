/** The alarm: sounds each reading of the running tests once when it is due, and says how late. */
import { type ClockReading, type PauseListener, timeBetween } from "./clock.ts";

/** A reading that will be due, or is. */
export interface DueReading {
  /** Names this one reading for ever, on every page: it is sounded once. A corrected start needs a new name. */
  readonly id: string;
  /** The test that it belongs to. */
  readonly test: string;
  /** Until it is due, in milliseconds; below 0 when it is late. */
  readonly inMs: number;
}

/** A reading whose time has come. */
export interface Rung {
  readonly id: string;
  readonly test: string;
  /** How long it had been due when it was sounded, in milliseconds. */
  readonly lateMs: number;
  /** Sounded by this page; else by another one that is open. */
  readonly here: boolean;
}

/** What the alarm is made of; `alarmParts` gives those of the device. */
export interface AlarmParts {
  readonly readClock: () => ClockReading;
  readonly watchPauses: (tell: PauseListener, signal: AbortSignal) => void;
  /** Does a job later; returns what calls it off. */
  readonly later: (job: () => void, inMs: number) => () => void;
  /** Whether this page is the one that sounds the reading. */
  readonly claim: (id: string) => Promise<boolean>;
  /** Makes itself heard and felt. */
  readonly ring: () => void;
  /** Shows at the app's picture how many tests wait for a reading. */
  readonly showBadge: (count: number) => void;
}

export interface Alarm {
  /**
   * The readings to come of all running tests, and the late ones. Give all of them again whenever something
   * changed: a reading taken, a ring started, corrected or stopped, and after every pause.
   *
   * @param at the look at the clocks from which every `inMs` counts
   */
  readonly give: (readings: readonly DueReading[], at: ClockReading) => void;
}

/** Two readings due within this time, in milliseconds, are one ringing: it lasts about as long. */
export const ONE_RINGING_MS = 2000;

/** Longer waits are cut: browsers take a wait of more than 24 days for none at all. */
const LONGEST_WAIT_MS = 3_600_000;

/**
 * Starts the alarm. While the page is in sight it follows the clock that nobody can set; over a pause it
 * follows the wall clock, since the other one may have stood still. It holds one timer, for the reading that
 * comes next, and looks at once when the page comes back.
 *
 * @param tell told once of each reading that is due, also when another page sounds it
 * @param signal ends it
 * @example
 * const alarm = startAlarm(alarmParts(settings), ({ lateMs }) => say(lateMs), signal);
 * alarm.give([{ id: "ring-b 30", test: "ring-b", inMs: 240_000 }], readClock());
 */
export const startAlarm = (parts: AlarmParts, tell: (rung: Rung) => void, signal: AbortSignal): Alarm => {
  let at = parts.readClock();
  let readings: readonly DueReading[] = [];
  let rangAt: ClockReading | null = null;
  let callOff: () => void = () => undefined;
  /** Readings whose time came. Kept for the life of the page: some hundred short names on a long day. */
  const come = new Set<string>();

  const moveTo = (now: ClockReading): void => {
    const goneMs = timeBetween(at, now);
    readings = readings.map((one) => ({ ...one, inMs: one.inMs - goneMs }));
    at = now;
  };

  const settle = async ({ id, test }: DueReading): Promise<void> => {
    const here = await parts.claim(id);
    if (signal.aborted) return;
    moveTo(parts.readClock());
    const still = readings.find((one) => one.id === id);
    // Taken while the pages settled who sounds it.
    if (still === undefined) return;
    if (here && (rangAt === null || Math.abs(timeBetween(rangAt, at)) >= ONE_RINGING_MS)) {
      rangAt = at;
      parts.ring();
    }
    tell({ id, test, lateMs: Math.max(0, -still.inMs), here });
  };

  const look = (): void => {
    if (signal.aborted) return;
    moveTo(parts.readClock());
    const due = readings.filter(({ inMs }) => inMs <= 0);
    for (const one of due) {
      if (come.has(one.id)) continue;
      come.add(one.id);
      void settle(one);
    }
    parts.showBadge(new Set(due.map(({ test }) => test)).size);
    callOff();
    const nextMs = Math.min(...readings.flatMap(({ inMs }) => (inMs > 0 ? [inMs] : [])));
    callOff = Number.isFinite(nextMs)
      ? parts.later(look, Math.min(nextMs, LONGEST_WAIT_MS))
      : () => undefined;
  };

  parts.watchPauses((last, first) => {
    // Up to the pause the time is known by one clock, from then on by the other.
    moveTo(last);
    at = first;
    look();
  }, signal);
  signal.addEventListener(
    "abort",
    () => {
      callOff();
      parts.showBadge(0);
    },
    { once: true },
  );

  return {
    give: (next, from) => {
      readings = next;
      at = from;
      look();
    },
  };
};
