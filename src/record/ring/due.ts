/** How long a ring has been running, and which of its planned readings is next. */
import { type RingNow, timeNow } from "./clock.ts";
import type { RingReading } from "./events.ts";

const MINUTE_MS = 60_000;

/** A reading this much ahead of its planned time still counts as that one. */
const EARLY_MS = MINUTE_MS;

/**
 * Milliseconds since the start; after the stop, up to the stop.
 *
 * @param now the clocks of this page; nothing here reads a clock
 * @returns null before the start
 */
export const elapsedNow = (reading: RingReading, now: RingNow): number | null => {
  if (reading.start === null) return null;
  const runsMs = timeNow(reading.clock, now);
  return reading.stop === null ? runsMs : reading.stop.moment.sinceStartMs;
};

/** A planned reading. */
export interface Due {
  /** Its place in the plan, from 0. */
  readonly index: number;
  readonly planMin: number;
  /** Until it is due; below 0 when it is late. */
  readonly dueInMs: number;
  /** Planned readings before it that nobody took. */
  readonly missed: number;
}

/**
 * Looks count as readings: the moment is kept, even while the number is missing. Pours are readings only
 * where no ruler is read: there they say how much has soaked in. Of a double ring the inner one gives the
 * result: what was read in the outer one takes no reading of the plan.
 */
const takenAtMs = ({ events, openLooks, inDoubt, happenings }: RingReading): number[] => {
  const inner = events.filter(({ ring }) => ring === "inner");
  const ruled = inner.some(({ type }) => type === "level");
  return [
    ...inner.flatMap(({ type, moment }) => (ruled && type === "pour" ? [] : [moment.sinceStartMs])),
    ...openLooks.flatMap(({ look, moment }) => (look.ring === "inner" ? [moment.sinceStartMs] : [])),
    ...inDoubt.flatMap(({ ring, moment }) => (ring === "inner" ? [moment.sinceStartMs] : [])),
    ...happenings.flatMap(({ what, ring, moment }) =>
      what === "missed-reading" && ring === "inner" ? [moment.sinceStartMs] : [],
    ),
  ];
};

/**
 * Which planned reading is due next. One taken up to a minute early, and not more than half the time since
 * the one planned before it, counts as taken. Of several that are late the last one is due: the others can
 * no longer be read.
 *
 * @param planMin minutes after the start; read in rising order, numbers that are none left out
 * @param now the clocks of this page
 * @returns null before the start, after the stop, and when nothing is left to read
 *
 * @example
 * nextDue(header.planMin, reading, now); // { index: 2, planMin: 30, dueInMs: 240000, missed: 0 }
 */
export const nextDue = (planMin: readonly number[], reading: RingReading, now: RingNow): Due | null => {
  const runsMs = elapsedNow(reading, now);
  if (runsMs === null || reading.stop !== null) return null;
  const taken = takenAtMs(reading);
  const plan = [...planMin].filter((minutes) => Number.isFinite(minutes * MINUTE_MS)).sort((a, b) => a - b);
  let due: Due | null = null;
  let missed = 0;
  for (const [index, minutes] of plan.entries()) {
    const atMs = minutes * MINUTE_MS;
    const gapMs = atMs - (plan[index - 1] ?? 0) * MINUTE_MS;
    const fromMs = atMs - Math.min(EARLY_MS, Math.max(0, gapMs) / 2);
    if (taken.some((oneMs) => oneMs >= fromMs)) continue;
    if (due !== null && atMs > runsMs) break;
    if (due !== null) missed++;
    due = { index, planMin: minutes, dueInMs: atMs - runsMs, missed };
    if (atMs > runsMs) break;
  }
  return due;
};
