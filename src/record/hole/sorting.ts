/** How long how many people sorted each layer. */
import type { Entry } from "../entry.ts";
import {
  anchorOf,
  CLOCKS_APART_MS,
  clockOf,
  type RingClock,
  type RingNow,
  timeNow,
  timeOf,
} from "../ring/clock.ts";
import { LAYERS, type Layer, type MustardEntry, type SortingEntry } from "./entries.ts";

/** So many people at one layer, from one moment to the next. */
export interface SortingStretch {
  readonly people: number;
  readonly began: SortingEntry;
  /** How long it took; null while it goes on. */
  readonly lastedMs: number | null;
  /** The wall clocks say something else, by more than two seconds. */
  readonly clocksApart: boolean;
}

/** The sorting of one layer: its stretches in order, pauses left out. */
export type SortingRead = readonly SortingStretch[];

/** A layer at this moment. */
export interface SortedNow {
  /** People sorting now; 0 in a pause. */
  readonly people: number;
  /** People × minutes so far. */
  readonly personMinutes: number;
  readonly clocksApart: boolean;
}

interface Running {
  readonly began: SortingEntry;
  readonly atMs: number;
}

type Ends = Pick<Entry, "lookedAtMs">;

/**
 * The clock of a hole, the same as the clock of a ring: within one page its own clock, which nobody can set;
 * pages are tied together by the wall clock.
 *
 * @param ordered entries as `inOrder` gives them
 */
export const holeClock = (ordered: readonly Entry[]): RingClock => {
  const [first] = ordered;
  return clockOf(ordered, first === undefined ? null : anchorOf(first));
};

const apart = (lastedMs: number, byWallMs: number): boolean =>
  Math.abs(lastedMs - byWallMs) > CLOCKS_APART_MS;

const ended = ({ began, atMs }: Running, by: Ends, endMs: number): SortingStretch => {
  const lastedMs = Math.max(0, endMs - atMs);
  return {
    people: began.people,
    began,
    lastedMs,
    clocksApart: apart(lastedMs, by.lookedAtMs - began.lookedAtMs),
  };
};

/** Stretches of one layer. Each phone has its own: two people with two phones sort at the same time. */
const stretchesOf = (layer: Layer, counting: readonly Entry[], clock: RingClock): SortingRead => {
  const done: SortingStretch[] = [];
  const running = new Map<string, Running>();
  const end = (devices: readonly string[], by: Entry): void => {
    for (const device of devices) {
      const open = running.get(device);
      if (open !== undefined) done.push(ended(open, by, timeOf(clock, anchorOf(by)).sinceStartMs));
      running.delete(device);
    }
  };
  let closed: Entry | null = null;
  for (const entry of counting) {
    if (entry.type === "closed") {
      end([...running.keys()], entry);
      closed = entry;
    } else if (entry.type === "sorting" && entry.from === layer) {
      // A pause on a phone that sorts nothing was meant for everybody.
      const everybody = entry.people === 0 && !running.has(entry.device);
      end(everybody ? [...running.keys()] : [entry.device], entry);
      if (entry.people > 0)
        running.set(entry.device, { began: entry, atMs: timeOf(clock, anchorOf(entry)).sinceStartMs });
    }
  }
  // A phone that did not know yet that the hole was finished elsewhere would sort for ever.
  if (closed !== null)
    end(
      [...running.keys()].filter((device) => device !== closed.device),
      closed,
    );
  const open = [...running.values()].map(({ began }) => ({
    people: began.people,
    began,
    lastedMs: null,
    clocksApart: false,
  }));
  return [...done, ...open];
};

/**
 * The sorting of every layer.
 *
 * @param counting entries that count, in order
 */
export const sortingOf = (
  counting: readonly Entry[],
  clock: RingClock,
): Readonly<Record<Layer, SortingRead>> => ({
  mulch: stretchesOf("mulch", counting, clock),
  soil: stretchesOf("soil", counting, clock),
  "mustard-water": stretchesOf("mustard-water", counting, clock),
});

/** Mustard water that was poured. */
export interface MustardRead {
  readonly entry: MustardEntry;
  /** The entry that holds the moment: a correction that keeps the moment also keeps its clock. */
  readonly poured: MustardEntry;
}

/**
 * Each pouring of mustard water, in order.
 *
 * @param ordered all entries that were not taken back, in order
 * @param counts whether an entry was not replaced either
 */
export const mustardOf = (
  ordered: readonly Entry[],
  counts: (entry: Entry) => boolean,
): readonly MustardRead[] => {
  const poured = new Map<string, MustardEntry>();
  const reads: MustardRead[] = [];
  for (const entry of ordered) {
    if (entry.type !== "mustard") continue;
    const same = (entry.replaces ?? [])
      .map((id) => poured.get(id))
      .find((before) => before?.lookedAtMs === entry.lookedAtMs);
    poured.set(entry.id, same ?? entry);
    if (counts(entry)) reads.push({ entry, poured: same ?? entry });
  }
  return reads;
};

/** What the moments of a reading need to be told in time. */
export interface Timed {
  readonly sorting: Readonly<Record<Layer, SortingRead>>;
  readonly mustard: readonly MustardRead[];
  readonly clock: RingClock;
}

/** How long ago a moment is; what the clocks cannot tell is no time at all. */
const agoMs = (clock: RingClock, entry: Entry, now: RingNow) => {
  const nowMs = timeNow(clock, now);
  const ms = nowMs === null ? 0 : Math.max(0, nowMs - timeOf(clock, anchorOf(entry)).sinceStartMs);
  return { ms, clocksApart: apart(ms, now.wallMs - entry.lookedAtMs) };
};

const sortedNow = (stretches: SortingRead, clock: RingClock, now: RingNow): SortedNow => {
  let people = 0;
  let personMs = 0;
  let clocksApart = false;
  for (const stretch of stretches) {
    const running = stretch.lastedMs === null ? agoMs(clock, stretch.began, now) : null;
    if (running !== null) people += stretch.people;
    personMs += stretch.people * (stretch.lastedMs ?? running?.ms ?? 0);
    clocksApart ||= stretch.clocksApart || running?.clocksApart === true;
  }
  return { people, personMinutes: personMs / 60_000, clocksApart };
};

/**
 * Who sorts now and how long it took so far, for the running screen. Nothing is read here: it only adds the
 * time since.
 *
 * @param reading as `readHole` gives it
 * @param now both clocks of this page
 * @returns per layer; 0 people and 0 minutes for a layer that nobody sorted
 */
export const sortedSoFarNow = (
  { sorting, clock }: Timed,
  now: RingNow,
): Readonly<Record<Layer, SortedNow>> => ({
  mulch: sortedNow(sorting.mulch, clock, now),
  soil: sortedNow(sorting.soil, clock, now),
  "mustard-water": sortedNow(sorting["mustard-water"], clock, now),
});

/** A wait for worms that come up. */
export interface MustardNow {
  readonly entry: MustardEntry;
  readonly agoMs: number;
  readonly clocksApart: boolean;
}

/** How long ago each mustard water was poured, in the order of pouring; empty when none was. */
export const mustardNow = ({ mustard, clock }: Timed, now: RingNow): readonly MustardNow[] =>
  mustard.map(({ entry, poured }) => {
    const { ms, clocksApart } = agoMs(clock, poured, now);
    return { entry, agoMs: ms, clocksApart };
  });

/**
 * People × minutes that mulch and soil of a hole took, stretches that still go on left out. The wait for
 * mustard water is no sorting.
 *
 * @returns null when no time was taken, which is not the same as no time
 */
export const personMinutesOf = ({ sorting }: Timed): number | null => {
  const done = LAYERS.filter((layer) => layer !== "mustard-water")
    .flatMap((layer) => sorting[layer])
    .filter(({ lastedMs }) => lastedMs !== null);
  return done.length === 0
    ? null
    : done.reduce((sum, { people, lastedMs }) => sum + people * (lastedMs ?? 0), 0) / 60_000;
};
