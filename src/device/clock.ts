/** The clocks of the device: the only place that reads them. */
import { randomHex } from "./chance.ts";

/** One look at both clocks. */
export interface ClockReading {
  /** Wall clock in milliseconds since 1970: can be wrong, and can be set back. */
  readonly wallMs: number;
  /** Milliseconds since this page began: nobody can set it, but it may stand still while a phone sleeps. */
  readonly monoMs: number;
  /** The page in sight that `monoMs` belongs to; two pages, or one before and behind a pause, cannot be compared. */
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

/**
 * Told whenever the page may have stood still: `last` is the moment up to which the clocks ran as before,
 * `first` the one from which a new page id counts. Between the two only the wall clock knows the time.
 */
export type PauseListener = (last: ClockReading, first: ClockReading) => void;

const inSight = (): boolean => typeof document === "undefined" || document.visibilityState === "visible";

let pageId = randomHex(8);
let awake = inSight();
const listeners = new Set<PauseListener>();

const look = (id: string): ClockReading => ({
  wallMs: Date.now(),
  monoMs: Math.round(performance.now()),
  pageId: id,
});

/** The page can no longer be seen, or is put to sleep. */
const goAway = (): void => {
  // It is hidden by now, but the clocks were right until this moment.
  const last = look(awake ? pageId : randomHex(8));
  pageId = randomHex(8);
  awake = false;
  const first = readClock();
  for (const tell of [...listeners]) tell(last, first);
};

/** The page is back. What its monotonic clock did meanwhile is not known, even when nobody saw it leave. */
const comeBack = (): void => {
  const last = look(randomHex(8));
  pageId = randomHex(8);
  awake = inSight();
  const first = readClock();
  for (const tell of [...listeners]) tell(last, first);
};

if (typeof document !== "undefined") {
  // At the window and on the way down: before anybody who reads the clock because of the same event.
  const first = { capture: true } as const;
  window.addEventListener("visibilitychange", () => (inSight() ? comeBack() : goAway()), first);
  window.addEventListener("freeze", goAway, first);
  window.addEventListener("resume", comeBack, first);
  window.addEventListener("pagehide", goAway, first);
  window.addEventListener("pageshow", ({ persisted }) => persisted && comeBack(), first);
}

/**
 * Reads both clocks now, in whole milliseconds. The page id is another one after every time in which the
 * page was hidden or frozen, and another one at each look while it is: so two readings with the same page
 * id were made on a page that was seen throughout, and the time between them on the monotonic clock can be
 * trusted. A phone that sleeps may stop that clock.
 *
 * @example
 * const { wallMs, monoMs, pageId } = readClock();
 */
export const readClock = (): ClockReading => look(awake && inSight() ? pageId : randomHex(8));

/** Tells `tell` of every pause, until `signal` ends it. */
export const watchPauses = (tell: PauseListener, signal: AbortSignal): void => {
  if (signal.aborted) return;
  listeners.add(tell);
  signal.addEventListener("abort", () => listeners.delete(tell), { once: true });
};

/**
 * How much time went by between two readings: on a page that was seen throughout by the clock that nobody
 * can set, else by the wall clock.
 *
 * @returns milliseconds; negative when `later` was before `earlier`, or the wall clock was set back meanwhile
 * @example
 * timeBetween(
 *   { wallMs: 7_200_000, monoMs: 1000, pageId: "p" },
 *   { wallMs: 3_610_000, monoMs: 11_000, pageId: "p" },
 * ) // => 10_000
 */
export const timeBetween = (earlier: ClockReading, later: ClockReading): number =>
  earlier.pageId === later.pageId ? later.monoMs - earlier.monoMs : later.wallMs - earlier.wallMs;

/**
 * Compares the time between two readings on both clocks. More than two seconds apart: the wall clock was
 * set, or the monotonic one stood still in a sleeping phone. Looks taken on two pages, or before and behind
 * a pause: cannot tell.
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
