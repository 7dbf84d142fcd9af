/** Touches that nobody meant: drops and the ball of the thumb on wet glass, and keys that moved under the finger. */

/** A touch on a key. */
export interface KeyTouch {
  /** Which key of the screen. */
  readonly key: string;
  /** When, in milliseconds on a clock that cannot be set (the event's `timeStamp`). */
  readonly atMs: number;
}

/** A touch on another key within this time is not a second answer. Own choice, no source. */
export const WET_GLASS_MS = 250;

/**
 * Whether a touch is to be ignored: it lies on another key than the last touch that counted and came
 * within 250 ms of it. The same key twice is a fast thumb and counts.
 *
 * Compare with the last touch that *counted*, not with an ignored one: in steady rain the ignored touches
 * would follow each other for ever and lock every key.
 *
 * @param lastCounted null before the first touch
 * @example
 * isWetGlass({ key: "residue", atMs: 1000 }, { key: "bare", atMs: 1100 }) // => true
 * isWetGlass({ key: "residue", atMs: 1000 }, { key: "residue", atMs: 1100 }) // => false
 */
export const isWetGlass = (lastCounted: KeyTouch | null, next: KeyTouch): boolean => {
  if (lastCounted === null || lastCounted.key === next.key) return false;
  const sinceMs = next.atMs - lastCounted.atMs;
  // A negative time is two clocks mixed up; ignoring such touches could lock the keys for hours.
  return sinceMs >= 0 && sinceMs <= WET_GLASS_MS;
};

/** A touch this close to a change of places was meant for what stood there before. Own choice, no source. */
export const MOVED_MS = 400;

/**
 * Whether a touch is to be ignored because what lies under it has only just come there: the finger was on its way
 * to something else. A touch from before the change that is told after it counts among them: a browser looks up
 * what was hit when it tells of it. Both times by the clock of events.
 *
 * @param movedAtMs when things changed places last; null while they never did
 * @example
 * isUnderMoved(1000, 1300) // => true
 * isUnderMoved(1000, 1500) // => false
 */
export const isUnderMoved = (movedAtMs: number | null, atMs: number): boolean => {
  if (movedAtMs === null) return false;
  // Times further apart either way are of other touches, or two clocks mixed up.
  return Math.abs(atMs - movedAtMs) <= MOVED_MS;
};
