/** One clock for everything on screen that shows time: one timer for all, none when nobody looks. */
import { type ClockReading, readClock } from "./clock.ts";

const SECOND_MS = 1000;
/** What shows minutes alone may be late by this much; what becomes due is told at once (`tellNow`). */
const FEW_SECONDS_MS = 5000;
/** Just behind the full second, so that a timer that comes a moment early still shows the new one. */
export const BEHIND_MS = 20;

type Listener = (now: ClockReading) => void;

/** Who wants to know, and how often. */
const listeners = new Map<Listener, number>();
let timer: ReturnType<typeof setTimeout> | undefined;
/** How often the timer that waits goes off. */
let waitsForMs = 0;

/** Tells everybody the time at once: something has become due between two ticks. */
export const tellNow = (): void => {
  const now = readClock();
  for (const listener of [...listeners.keys()]) listener(now);
  run(now.wallMs);
};

/** Waits for the next full second or few; one that is nearly there was shown just now. */
const run = (wallMs: number): void => {
  clearTimeout(timer);
  timer = undefined;
  if (listeners.size === 0 || document.visibilityState !== "visible") return;
  const stepMs = Math.min(...listeners.values());
  const leftMs = stepMs - ((((wallMs - BEHIND_MS) % stepMs) + stepMs) % stepMs);
  waitsForMs = stepMs;
  timer = setTimeout(tellNow, leftMs < SECOND_MS / 2 ? leftMs + stepMs : leftMs);
};

const tellEvery = (stepMs: number, listener: Listener, signal: AbortSignal): void => {
  if (signal.aborted || typeof document === "undefined") return;
  if (listeners.size === 0) document.addEventListener("visibilitychange", tellNow);
  listeners.set(listener, stepMs);
  if (timer === undefined || stepMs < waitsForMs) run(readClock().wallMs);
  signal.addEventListener(
    "abort",
    () => {
      listeners.delete(listener);
      if (listeners.size > 0) return;
      clearTimeout(timer);
      timer = undefined;
      document.removeEventListener("visibilitychange", tellNow);
    },
    { once: true },
  );
};

/**
 * Tells the time at every full second of the wall clock while the page can be seen, and at once when it
 * comes back, until `signal` ends it. Everybody shares one timer: five rings wake the phone as often as one.
 *
 * @param listener not told at the beginning: draw with `readClock()` first
 * @example
 * everySecond((now) => (elapsed.value = elapsedNow(reading, now)), signal);
 */
export const everySecond = (listener: Listener, signal: AbortSignal): void =>
  tellEvery(SECOND_MS, listener, signal);

/** Like `everySecond`, every five seconds: for what shows full minutes, and for a battery that lasts the day. */
export const everyFewSeconds = (listener: Listener, signal: AbortSignal): void =>
  tellEvery(FEW_SECONDS_MS, listener, signal);
