/** When to start the rings of a day so that no two readings come at once. */
import { failed, ok, type Result } from "../../record/result.ts";
import { START_GAP_MIN } from "../constants.ts";

const MINUTE_MS = 60_000;

/** A ring with the minutes after its start at which it is to be read. */
export interface PlannedRing {
  readonly id: string;
  readonly planMin: readonly number[];
}

/** What is running and what is still to start. */
export interface StartGaps {
  readonly nowMs: number;
  /** Rings that run, with the moment they started at, by the same clock. */
  readonly running: readonly (PlannedRing & { readonly startedAtMs: number })[];
  /** Rings still to start, in the order in which they are to be started. */
  readonly waiting: readonly PlannedRing[];
}

/** When one ring may start. */
export interface ProposedStart {
  readonly id: string;
  readonly startAtMs: number;
}

/** Moments, after its start, at which somebody has to be at the ring. The start itself is one. */
const visitsMs = (planMin: readonly number[]): number[] => [
  0,
  ...planMin.map((minutes) => Math.round(minutes * MINUTE_MS)),
];

/** The first moment that lies in none of the stretches, both ends of which are free. */
const firstFree = (nowMs: number, taken: { readonly fromMs: number; readonly toMs: number }[]): number => {
  let atMs = nowMs;
  for (const { fromMs, toMs } of taken.sort((a, b) => a.fromMs - b.fromMs)) {
    if (fromMs >= atMs) break;
    if (toMs > atMs) atMs = toMs;
  }
  return atMs;
};

/**
 * The earliest start of each waiting ring, one after the other, so that none of its readings comes within a
 * minute of a reading of another ring. Readings of one ring that are planned closer than that stay as they are.
 *
 * @returns in the order of `waiting`, never before now; the same for the same question. `science/not-a-time`
 * when a moment or a plan holds something that is no number, or one too large to be a time
 *
 * @example
 * startGaps({ nowMs: 0, running: [], waiting: [{ id: "a", planMin: [5] }, { id: "b", planMin: [5] }] });
 * // a at 0, b at 60000
 */
export const startGaps = ({ nowMs, running, waiting }: StartGaps): Result<readonly ProposedStart[]> => {
  const times = [
    nowMs,
    ...running.map(({ startedAtMs }) => startedAtMs),
    ...[...running, ...waiting].flatMap(({ planMin }) => visitsMs(planMin)),
  ];
  // Beyond it a millisecond more is the same number, and the gaps would close.
  if (!times.every((ms) => Math.abs(ms) < Number.MAX_SAFE_INTEGER)) return failed("science/not-a-time");
  const gapMs = START_GAP_MIN * MINUTE_MS;
  const booked = new Set<number>();
  const book = (startMs: number, planMin: readonly number[]): void => {
    for (const visitMs of visitsMs(planMin))
      if (startMs + visitMs > nowMs - gapMs) booked.add(startMs + visitMs);
  };
  for (const { startedAtMs, planMin } of running) book(startedAtMs, planMin);
  const proposed: ProposedStart[] = [];
  for (const { id, planMin } of waiting) {
    const visits = new Set(visitsMs(planMin));
    const taken = [...booked].flatMap((bookedMs) =>
      [...visits].map((visitMs) => ({
        fromMs: bookedMs - visitMs - gapMs,
        toMs: bookedMs - visitMs + gapMs,
      })),
    );
    const startAtMs = firstFree(nowMs, taken);
    proposed.push({ id, startAtMs });
    book(startAtMs, planMin);
  }
  return ok(proposed);
};
