/** One clock for everything on screen that shows time: one wake-up a second, none when nobody looks. */
import { type ClockReading, readClock } from "./clock.ts";

const SECOND_MS = 1000;
/** Just behind the full second, so that a timer that comes a moment early still shows the new one. */
const BEHIND_MS = 20;

const listeners = new Set<(now: ClockReading) => void>();
let timer: ReturnType<typeof setTimeout> | undefined;

const tick = (): void => {
  const now = readClock();
  for (const listener of [...listeners]) listener(now);
  run(now.wallMs);
};

/** Waits for the next full second; one that is nearly there was shown just now. */
const run = (wallMs: number): void => {
  clearTimeout(timer);
  timer = undefined;
  if (listeners.size === 0 || document.visibilityState !== "visible") return;
  const leftMs = SECOND_MS - ((((wallMs - BEHIND_MS) % SECOND_MS) + SECOND_MS) % SECOND_MS);
  timer = setTimeout(tick, leftMs < SECOND_MS / 2 ? leftMs + SECOND_MS : leftMs);
};

/**
 * Tells the time at every full second of the wall clock while the page can be seen, and at once when it
 * comes back, until `signal` ends it. Everybody shares one timer: five rings wake the phone as often as one.
 *
 * @param listener not told at the beginning: draw with `readClock()` first
 * @example
 * everySecond((now) => (elapsed.value = elapsedNow(reading, now)), signal);
 */
export const everySecond = (listener: (now: ClockReading) => void, signal: AbortSignal): void => {
  if (signal.aborted || typeof document === "undefined") return;
  if (listeners.size === 0) document.addEventListener("visibilitychange", tick);
  listeners.add(listener);
  if (timer === undefined) run(readClock().wallMs);
  signal.addEventListener(
    "abort",
    () => {
      listeners.delete(listener);
      if (listeners.size > 0) return;
      clearTimeout(timer);
      timer = undefined;
      document.removeEventListener("visibilitychange", tick);
    },
    { once: true },
  );
};
