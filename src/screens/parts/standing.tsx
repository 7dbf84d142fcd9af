/** A position taken while standing still. It never holds anyone up: everything goes on without it. */
import { useEffect, useState } from "preact/hooks";
import {
  type PositionFix,
  type PositionProblem,
  positionPermission,
  watchStandingStill,
} from "../../device/position.ts";
import type { Position, Stood } from "../../record/shapes.ts";
import { standingStill } from "../../science/position/standing-still.ts";
import { useHouse } from "./house.ts";
import { Key } from "./keys.tsx";
import { lengthWords } from "./lengths.ts";

/** Where somebody stands, as far as it is known now. */
export interface Standing {
  readonly stood: Stood;
  /** The fixes wander more than the device says they should. */
  readonly moving: boolean;
  readonly asking: boolean;
  readonly start: () => void;
}

/** No position, because nobody asked for one. */
export const NOT_ASKED: Stood = { position: null, why: "not-asked" };

/** The fixes of one stand as the position to write down, and whether it moved; null before the first fresh one. */
export const positionOf = (
  fixes: readonly PositionFix[],
): { readonly position: Position; readonly moving: boolean } | null => {
  // A stale fix is where the phone was before: it is never passed off as here.
  const fresh = fixes.filter((fix) => !fix.stale);
  const standing = standingStill(fresh);
  if (!standing.ok) return null;
  const { latitudeDeg, longitudeDeg, accuracyM, spreadM, n, lastAtMs, cautions } = standing.value;
  const position: Position = {
    latitudeDeg,
    longitudeDeg,
    accuracyM,
    spreadM,
    fixes: n,
    how: "standing-still",
    atMs: lastAtMs,
  };
  return { position, moving: cautions.some(({ code }) => code === "science/moving") };
};

/** Watches the position from `start` on until the screen is left. Starts by itself where it was allowed before. */
export const useStanding = (): Standing => {
  const [asking, setAsking] = useState(false);
  const [stood, setStood] = useState<Stood>(NOT_ASKED);
  const [moving, setMoving] = useState(false);
  useEffect(() => {
    void positionPermission().then((permission) => {
      if (permission === "granted") setAsking(true);
    });
  }, []);
  useEffect(() => {
    if (!asking) return;
    const stop = new AbortController();
    const fixes: PositionFix[] = [];
    watchStandingStill({
      signal: stop.signal,
      onFix: (fix) => {
        fixes.push(fix);
        const standing = positionOf(fixes);
        if (standing === null) return;
        setStood({ position: standing.position, why: null });
        setMoving(standing.moving);
      },
      onProblem: (why: PositionProblem) =>
        setStood((before) => (before.position === null ? { position: null, why } : before)),
    });
    return () => stop.abort();
  }, [asking]);
  return { stood, moving, asking, start: () => setAsking(true) };
};

/** What is known of the position, in a box of fixed height. */
export const StandingWords = (props: { readonly standing: Standing; readonly question: string }) => {
  const { words, settings } = useHouse();
  const { stood, moving, asking, start } = props.standing;
  const sentence = (): string => {
    const { position, why } = stood;
    if (position !== null)
      return words.value.setOut.positionAt(
        position.accuracyM === null
          ? "?"
          : lengthWords("distance", position.accuracyM, settings.value.habits),
        position.fixes,
      );
    if (why !== null && why !== "not-asked") return words.value.noPosition[why];
    return words.value.setOut.looking;
  };
  return (
    <section class="standing">
      <h2>{props.question}</h2>
      {asking ? (
        <p role="status">
          {sentence()} {moving ? words.value.setOut.moving : ""}
        </p>
      ) : (
        <Key onPress={start}>{words.value.setOut.takePosition}</Key>
      )}
    </section>
  );
};
