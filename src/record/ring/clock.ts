/**
 * Time at a ring. The wall clock can be set, by a person or a network, in the middle of a test; the clock of
 * a page cannot, but it ends with the page. So within one page its own clock counts, and pages are tied
 * together by the wall clock at the place where one follows the other.
 */
import type { Entry } from "../entry.ts";

/** The moment at which something was looked at, in both clocks. */
export interface Anchor {
  readonly lookedAtMs: number;
  /** The same moment by the clock of the page; may lie before the page began. */
  readonly lookedAtMonoMs: number;
  readonly page: string;
  readonly device: string;
  /** When it was entered, by the clock of the page. */
  readonly enteredAtMonoMs: number;
}

/** Moments as read from the clocks of all pages; made by `clockOf`, read by `timeOf` and `timeNow`. */
export interface RingClock {
  /** Per page what has to be added to its clock to reach the time line of its device. */
  readonly pages: ReadonlyMap<string, { readonly device: string; readonly shiftMs: number }>;
  /** The last entry made, on which a page without an entry of its own builds; null for none. */
  readonly last: { readonly page: string; readonly monoMs: number; readonly enteredAtMs: number } | null;
  readonly zero: Anchor | null;
}

/** Wall clock and page clock that differ by more than this are said. */
export const CLOCKS_APART_MS = 2000;

/** The moment of one entry as it says it itself. */
export const anchorOf = (entry: Entry): Anchor => ({
  lookedAtMs: entry.lookedAtMs,
  lookedAtMonoMs: entry.monoMs - (entry.enteredAtMs - entry.lookedAtMs),
  page: entry.page,
  device: entry.device,
  enteredAtMonoMs: entry.monoMs,
});

/**
 * Ties the pages together. The first page of a device stands on its wall clock; each further one is tied to
 * the entry that the same device made just before it, by the wall clock between those two entries alone. A
 * wall clock that is set while a page is open therefore shifts nothing: before and behind it both pages read
 * the same clock.
 *
 * @param ordered entries as `inOrder` gives them
 * @param zero the moment that counts as nought; null when nothing was read
 */
export const clockOf = (ordered: readonly Entry[], zero: Anchor | null): RingClock => {
  const pages = new Map<string, { device: string; shiftMs: number }>();
  const lastOf = new Map<string, Entry>();
  for (const entry of ordered) {
    if (!pages.has(entry.page)) {
      const before = lastOf.get(entry.device);
      const tied = before === undefined ? undefined : pages.get(before.page);
      const enteredMs =
        before === undefined || tied === undefined
          ? entry.enteredAtMs
          : before.monoMs + tied.shiftMs + (entry.enteredAtMs - before.enteredAtMs);
      pages.set(entry.page, { device: tied?.device ?? entry.device, shiftMs: enteredMs - entry.monoMs });
    }
    lastOf.set(entry.device, entry);
  }
  const last = ordered.at(-1);
  return {
    pages,
    last: last === undefined ? null : { page: last.page, monoMs: last.monoMs, enteredAtMs: last.enteredAtMs },
    zero,
  };
};

const sinceZero = ({ pages, zero }: RingClock, page: string, monoMs: number): number | null => {
  const there = pages.get(page);
  const first = zero === null ? undefined : pages.get(zero.page);
  if (zero === null || there === undefined || first === undefined) return null;
  // Another phone shares no clock with the one that started: between the two only wall clocks are left.
  const zeroMs = there.device === first.device ? zero.lookedAtMonoMs + first.shiftMs : zero.lookedAtMs;
  return monoMs + there.shiftMs - zeroMs;
};

/** What the clocks say of one moment. */
export interface Told {
  readonly sinceStartMs: number;
  /** The wall clocks say something else, by more than two seconds. */
  readonly clocksApart: boolean;
}

/**
 * How long after nought a moment lies; 0 when nothing was read.
 *
 * @param anchor of an entry that the clock was made from
 */
export const timeOf = (clock: RingClock, anchor: Anchor): Told => {
  const sinceStartMs = sinceZero(clock, anchor.page, anchor.lookedAtMonoMs) ?? 0;
  const byWallMs = anchor.lookedAtMs - (clock.zero?.lookedAtMs ?? anchor.lookedAtMs);
  return { sinceStartMs, clocksApart: Math.abs(byWallMs - sinceStartMs) > CLOCKS_APART_MS };
};

/** The clocks of this page just now. */
export interface RingNow {
  readonly wallMs: number;
  readonly monoMs: number;
  readonly page: string;
}

/**
 * How long after nought it is now. A page without an entry of its own builds on the last entry made.
 *
 * @returns null when nothing was read
 */
export const timeNow = (clock: RingClock, now: RingNow): number | null => {
  const own = sinceZero(clock, now.page, now.monoMs);
  if (own !== null || clock.last === null) return own;
  const last = sinceZero(clock, clock.last.page, clock.last.monoMs);
  return last === null ? null : last + (now.wallMs - clock.last.enteredAtMs);
};
