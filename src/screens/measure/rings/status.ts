/** Where a ring stands now, and when it is to be read next. */

import type { RingNow } from "../../../record/ring/clock.ts";
import { type Due, elapsedNow, nextDue } from "../../../record/ring/due.ts";
import type { Happening, StopEntry } from "../../../record/ring/entries.ts";
import type { DayRing } from "./day.ts";

const SECOND_MS = 1000;
const MINUTE_MS = 60_000;

export type Stage = "waiting" | "running" | "stopped";

/** A reading that is planned, by the wall clock. */
export interface NextReading {
  /** Whole seconds, so that it does not change from tick to tick. */
  readonly atMs: number;
  readonly when: "in" | "soon" | "now" | "late";
  /** Minutes until it is due, or since; 0 for *soon* and *now*. */
  readonly minutes: number;
  readonly missed: number;
}

/** Whether a ring waits, runs or is over. */
export const stageOf = ({ reading }: Pick<DayRing, "reading">): Stage =>
  reading.stop !== null ? "stopped" : reading.start === null ? "waiting" : "running";

/** Why a ring was stopped; null while it was not. */
export const whyStopped = ({ reading }: Pick<DayRing, "reading">): StopEntry["why"] | null =>
  reading.stop?.entry.why ?? null;

/** After these nothing that follows can be compared with what came before. */
type Loss = Extract<Happening, StopEntry["why"]>;

/** Whether a ring is lost by what happened to it. */
export const isLoss = (what: Happening): what is Loss =>
  what === "leaked" || what === "moved" || what === "no-water-left";

/** What a ring lost: it leaked, it was moved, or no water is left. Null while none of it happened. */
export const lostBy = ({ reading }: Pick<DayRing, "reading">): Loss | null =>
  reading.happenings
    .map(({ what }) => what)
    .filter(isLoss)
    .at(-1) ?? null;

const told = ({ dueInMs, missed }: Due, wallMs: number): NextReading => {
  const atMs = Math.round((wallMs + dueInMs) / SECOND_MS) * SECOND_MS;
  const base = { atMs, missed };
  if (dueInMs >= MINUTE_MS) return { ...base, when: "in", minutes: Math.ceil(dueInMs / MINUTE_MS) };
  if (dueInMs > 0) return { ...base, when: "soon", minutes: 0 };
  const minutes = Math.floor(-dueInMs / MINUTE_MS);
  return { ...base, when: minutes === 0 ? "now" : "late", minutes };
};

/**
 * The next planned reading of a ring.
 *
 * @returns null before the start, after the stop, and when nothing is left to read
 */
export const nextReading = ({ header, reading }: DayRing, now: RingNow): NextReading | null => {
  const due = nextDue(header.planMin, reading, now);
  return due === null ? null : told(due, now.wallMs);
};

/** Full minutes since the start, up to the stop; null before the start. */
export const minutesRun = ({ reading }: DayRing, now: RingNow): number | null => {
  const ms = elapsedNow(reading, now);
  return ms === null ? null : Math.floor(ms / MINUTE_MS);
};

/**
 * Rings in the order in which they are to be read: the longest late one first, then by the clock time of the
 * next reading, then those without one, those that wait, and those that are over.
 */
export const inReadingOrder = (rings: readonly DayRing[], now: RingNow): readonly DayRing[] => {
  const rank = (ring: DayRing): readonly [number, number] => {
    const stage = stageOf(ring);
    if (stage === "stopped") return [3, ring.header.startedAtMs];
    if (stage === "waiting") return [2, ring.header.startedAtMs];
    const due = nextDue(ring.header.planMin, ring.reading, now);
    return due === null ? [1, ring.header.startedAtMs] : [0, due.dueInMs];
  };
  return rings
    .map((ring) => ({ ring, at: rank(ring) }))
    .sort((a, b) => a.at[0] - b.at[0] || a.at[1] - b.at[1])
    .map(({ ring }) => ring);
};
