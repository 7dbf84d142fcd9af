/** The clocks of the device: the only place that reads them. */
import { randomHex } from "./chance.ts";

/** One look at both clocks. */
export interface ClockReading {
  /** Wall clock in milliseconds since 1970: can be wrong, and can be set back. */
  readonly wallMs: number;
  /** Milliseconds since this page began: nobody can set it, but it may stand still while a phone sleeps. */
  readonly monoMs: number;
  /** The page that `monoMs` belongs to; two pages have clocks that cannot be compared. */
  readonly pageId: string;
}

/** Whether two looks at the clocks tell of the same time in between. */
export type ClockAgreement =
  | {
      readonly verdict: "agree" | "apart";
      /** How much more time went by on the wall clock than on the monotonic one; negative when less. */
      readonly apartMs: number;
    }
  | { readonly verdict: "cannot-tell" };

/** The two clocks may differ by this much over any time before it is flagged. */
export const CLOCKS_APART_LIMIT_MS = 2000;

const pageId = randomHex(8);

/**
 * Reads both clocks now, in whole milliseconds.
 *
 * @example
 * const { wallMs, monoMs, pageId } = readClock();
 */
export const readClock = (): ClockReading => ({
  wallMs: Date.now(),
  monoMs: Math.round(performance.now()),
  pageId,
});

/**
 * Compares the time between two readings on both clocks. More than two seconds apart: the wall clock was
 * set, or the monotonic one stood still in a sleeping phone. Looks taken on two pages: cannot tell.
 *
 * @example
 * clocksApart(
 *   { wallMs: 0, monoMs: 0, pageId: "p" },
 *   { wallMs: 3_600_000, monoMs: 1000, pageId: "p" },
 * ) // => { verdict: "apart", apartMs: 3_599_000 }
 */
export const clocksApart = (earlier: ClockReading, later: ClockReading): ClockAgreement => {
  if (earlier.pageId !== later.pageId) return { verdict: "cannot-tell" };
  const apartMs = later.wallMs - earlier.wallMs - (later.monoMs - earlier.monoMs);
  return { verdict: Math.abs(apartMs) > CLOCKS_APART_LIMIT_MS ? "apart" : "agree", apartMs };
};
