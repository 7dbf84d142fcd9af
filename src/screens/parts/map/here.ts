/** Where somebody is now, for the map and for walking an edge. What is old is never passed off as new. */
import { useEffect, useRef, useState } from "preact/hooks";
import { type ClockReading, readClock } from "../../../device/clock.ts";
import {
  LOST_AFTER_MS,
  type PositionFix,
  type PositionProblem,
  positionPermission,
  watchStandingStill,
} from "../../../device/position.ts";

/** What is known of where somebody is. */
export interface Here {
  /** The newest fix that was new when it came; null before the first. */
  readonly fix: PositionFix | null;
  /** How old that is once it is too old to be here; else null. */
  readonly oldForMs: number | null;
  readonly why: PositionProblem | null;
  readonly asking: boolean;
  readonly start: () => void;
}

const LOOK_EVERY_MS = 5000;

/**
 * Watches where somebody is while `on`, until the screen is left.
 *
 * @param on false: nothing is watched and nobody is asked
 * @param byItself starts by itself where the browser was allowed before
 * @param onFix told of every new fix
 */
export const useHere = (on: boolean, byItself: boolean, onFix?: (fix: PositionFix) => void): Here => {
  const [asking, setAsking] = useState(false);
  const [known, setKnown] = useState<{ readonly fix: PositionFix; readonly heard: ClockReading } | null>(
    null,
  );
  const [why, setWhy] = useState<PositionProblem | null>(null);
  const [, drawAgain] = useState(0);
  // The watch outlives many drawings of the screen; it must tell the newest listener.
  const listener = useRef(onFix);
  listener.current = onFix;
  useEffect(() => {
    if (!byItself) return;
    void positionPermission().then((permission) => {
      if (permission === "granted") setAsking(true);
    });
  }, [byItself]);
  useEffect(() => {
    if (!(asking && on)) return;
    const stop = new AbortController();
    watchStandingStill({
      signal: stop.signal,
      onFix: (fix) => {
        if (fix.stale) return;
        setWhy(null);
        setKnown({ fix, heard: readClock() });
        listener.current?.(fix);
      },
      onProblem: setWhy,
    });
    const timer = setInterval(() => drawAgain((n) => n + 1), LOOK_EVERY_MS);
    return () => {
      clearInterval(timer);
      stop.abort();
    };
  }, [asking, on]);
  const oldForMs = (): number | null => {
    if (known === null) return null;
    const now = readClock();
    // Neither clock alone will do: one can be set, the other may stand still while the phone sleeps.
    const goneMs = Math.max(now.monoMs - known.heard.monoMs, Math.abs(now.wallMs - known.heard.wallMs));
    return !on || why !== null || goneMs > LOST_AFTER_MS ? goneMs : null;
  };
  return {
    fix: known?.fix ?? null,
    oldForMs: oldForMs(),
    why,
    asking,
    start: () => setAsking(true),
  };
};
