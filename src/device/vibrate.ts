/** Each answer feels different, so that eyes stay on the ground. */
import type { Cue } from "./cue.ts";

/**
 * On, off, on … in milliseconds. Told apart by length and by number of pulses; all answers end within
 * 250 ms, since a new pattern cuts the running one off and counting goes up to four touches a second.
 * Own choice, no source.
 */
export const VIBRATIONS: Readonly<Record<Cue, readonly number[]>> = {
  residue: [30],
  bare: [120],
  green: [30, 50, 30],
  stone: [80, 50, 80],
  own: [30, 50, 120],
  undo: [30, 40, 30, 40, 30],
  problem: [250, 80, 250],
};

/** Whether this browser lets a page vibrate at all (no iPhone does; the setting is then not shown). */
export const canVibrate = (): boolean =>
  typeof navigator !== "undefined" && typeof navigator.vibrate === "function";

/**
 * Vibrates for one answer. Whether it is wanted is a setting, and the caller's business.
 *
 * @returns false when the phone cannot or would not, for example before the first touch on the page
 * @example
 * vibrateFor("bare"); // one long pulse
 */
export const vibrateFor = (cue: Cue): boolean => vibrate(VIBRATIONS[cue]);

/** Long enough to be felt through a pocket; no answer feels like it. Own choice, no source. */
export const DUE_VIBRATION: readonly number[] = [400, 200, 400, 200, 700];

/** Vibrates because a reading is due. Returns false when the phone cannot or would not. */
export const vibrateForDue = (): boolean => vibrate(DUE_VIBRATION);

const vibrate = (pattern: readonly number[]): boolean => {
  if (!canVibrate()) return false;
  try {
    return navigator.vibrate([...pattern]);
  } catch {
    return false;
  }
};
