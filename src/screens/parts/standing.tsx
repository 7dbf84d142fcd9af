/** A position taken while standing still. It never holds anyone up: everything goes on without it. */
import { useEffect, useRef, useState } from "preact/hooks";
import { type ClockReading, readClock } from "../../device/clock.ts";
import {
  LOST_AFTER_MS,
  type PositionFix,
  type PositionProblem,
  positionPermission,
  watchStandingStill,
} from "../../device/position.ts";
import type { Position, Stood } from "../../record/shapes.ts";
import { FIXES_FOR_A_DRIFT } from "../../science/constants.ts";
import { standingStill } from "../../science/position/standing-still.ts";
import { accuracyWords } from "./accuracy.ts";
import { useHouse } from "./house.ts";
import { Key } from "./keys.tsx";

/** Where somebody stands, as far as it is known now. */
export interface Standing {
  /** What may be written down at this very moment: a position that grew old is none. */
  readonly stood: Stood;
  /** The fixes wander more than the device says they should. */
  readonly moving: boolean;
  readonly asking: boolean;
  /** How old the last position is, once it is too old to be taken for here; else null. */
  readonly lostForMs: number | null;
  readonly start: () => void;
}

/** No position, because nobody asked for one. */
export const NOT_ASKED: Stood = { position: null, why: "not-asked" };

/** Metres beyond which a position hardly finds a line again (own choice, no source). */
const COARSE_M = 50;
/** Fixes that have to lie together after a walk (own choice, no source). */
const FIXES_TO_SETTLE = 2 * FIXES_FOR_A_DRIFT;
/** How often the age of a lost position is said anew. */
const AGE_EVERY_MS = 5000;

/** What the fixes of one stand come to. */
export interface Here {
  readonly position: Position;
  readonly moving: boolean;
}

/**
 * The fixes of one stand as the position to write down; null before the first fresh one. Fixes from a walk
 * to the place are left out: as long as they wander, the older quarter is given up.
 */
export const positionOf = (fixes: readonly PositionFix[]): Here | null => {
  // A stale fix is where the phone was before: it is never passed off as here.
  const fresh = fixes.filter((fix) => !fix.stale);
  let newest = fresh;
  for (;;) {
    const standing = standingStill(newest);
    if (!standing.ok) return null;
    const { latitudeDeg, longitudeDeg, accuracyM, accuracyMeans, spreadM, n, lastAtMs, cautions } =
      standing.value;
    const moving = cautions.some(({ code }) => code === "science/moving");
    if (moving && newest.length > FIXES_FOR_A_DRIFT) {
      newest = newest.slice(Math.min(Math.ceil(newest.length / 4), newest.length - FIXES_FOR_A_DRIFT));
      continue;
    }
    const position: Position = {
      latitudeDeg,
      longitudeDeg,
      accuracyM,
      accuracyMeans,
      spreadM,
      fixes: n,
      how: "standing-still",
      atMs: lastAtMs,
    };
    // A slow walk looks still over a few seconds: once fixes were given up, more of them have to agree.
    const settled = newest === fresh || newest.length >= FIXES_TO_SETTLE;
    return { position, moving: moving || !settled };
  }
};

/** What is known, and when the last fresh fix came. */
interface Known extends Here {
  readonly heard: ClockReading;
}

// Neither clock alone will do: one can be set, the other may stand still while the phone sleeps.
const ageMs = (heard: ClockReading, now: ClockReading): number =>
  Math.max(now.monoMs - heard.monoMs, Math.abs(now.wallMs - heard.wallMs));

/** Watches the position from `start` on until the screen is left. Starts by itself where it was allowed before. */
export const useStanding = (): Standing => {
  const [asking, setAsking] = useState(false);
  const [known, setKnown] = useState<Known | null>(null);
  const [why, setWhy] = useState<PositionProblem | null>(null);
  const [, drawAgain] = useState(0);
  const lost = useRef(false);
  useEffect(() => {
    void positionPermission().then((permission) => {
      if (permission === "granted") setAsking(true);
    });
  }, []);
  useEffect(() => {
    if (!asking) return;
    const stop = new AbortController();
    let fixes: PositionFix[] = [];
    watchStandingStill({
      signal: stop.signal,
      onFix: (fix) => {
        // Nobody knows how far somebody walked while there was no position.
        if (!fix.stale && lost.current) fixes = [];
        fixes.push(fix);
        const here = positionOf(fixes);
        if (here === null || fix.stale) return;
        lost.current = false;
        setWhy(null);
        setKnown({ ...here, heard: readClock() });
      },
      onProblem: (problem) => {
        lost.current = true;
        setWhy(problem);
      },
    });
    const age = setInterval(() => lost.current && drawAgain((n) => n + 1), AGE_EVERY_MS);
    return () => {
      clearInterval(age);
      stop.abort();
    };
  }, [asking]);
  const lostForMs = (): number | null => {
    if (known === null) return null;
    const gone = ageMs(known.heard, readClock());
    return why !== null || gone > LOST_AFTER_MS ? gone : null;
  };
  return {
    // Asked for when it is written down: a phone that slept in between has drawn nothing new.
    get stood() {
      if (!asking) return NOT_ASKED;
      if (known === null) return why === null ? NOT_ASKED : { position: null, why };
      return lostForMs() === null
        ? { position: known.position, why: null }
        : { position: null, why: why ?? "slow" };
    },
    moving: known?.moving === true,
    asking,
    lostForMs: lostForMs(),
    start: () => setAsking(true),
  };
};

/** What is known of the position, in a box of fixed height. */
export const StandingWords = (props: { readonly standing: Standing; readonly question: string }) => {
  const { words, settings } = useHouse();
  const { stood, moving, asking, lostForMs, start } = props.standing;
  const sentences = (): readonly string[] => {
    const { position, why } = stood;
    const { setOut, noPosition, standing } = words.value;
    if (position !== null) {
      const { accuracyM, accuracyMeans, fixes } = position;
      return [
        accuracyM === null
          ? standing.unstated
          : setOut.positionAt(
              accuracyWords(accuracyM, accuracyMeans, standing, settings.value.habits),
              fixes,
            ),
        ...(accuracyM !== null && accuracyM > COARSE_M ? [standing.coarse] : []),
        ...(moving ? [setOut.moving] : []),
      ];
    }
    if (lostForMs !== null && why !== "denied") return [standing.lost(lostForMs / 1000)];
    if (why !== null && why !== "not-asked") return [noPosition[why]];
    return [setOut.looking];
  };
  return (
    <section class="standing">
      <h2>{props.question}</h2>
      {asking ? (
        <p role="status">{sentences().join(" ")}</p>
      ) : (
        <Key onPress={start}>{words.value.setOut.takePosition}</Key>
      )}
    </section>
  );
};
