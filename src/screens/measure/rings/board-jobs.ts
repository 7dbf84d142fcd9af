/** What the keys on the rows of the board do. */
import type { ReadonlySignal } from "@preact/signals";
import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import { isUnderMoved, isWetGlass, type KeyTouch } from "../../../device/glass.ts";
import { fromHere } from "../../parts/from-here.ts";
import { useHouse } from "../../parts/house.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { cue } from "../line/cues.ts";
import type { OnJob, RowJob } from "./board-row.tsx";
import type { DayRing } from "./day.ts";
import { lookNow, startRing, stopRing } from "./hand.ts";
import { RING_WORDS } from "./words.ts";

/** When each row came to its place, by the clock of events; one that stands where it first stood is left out. */
const useMovedAt = (order: ReadonlySignal<string>): ReadonlyMap<string, number> => {
  const movedAt = useMemo(() => new Map<string, number>(), []);
  const before = useRef(order.value);
  useLayoutEffect(() => {
    const places = before.current.split(" ");
    const nowMs = new Event("").timeStamp;
    for (const [at, id] of order.value.split(" ").entries()) if (places[at] !== id) movedAt.set(id, nowMs);
    before.current = order.value;
  }, [order.value]);
  return movedAt;
};

/** How long it is said that a touch was not taken, in milliseconds; own choice, no source. */
const SAID_MS = 4000;

/**
 * What the keys of the rows do. A touch on another row within a quarter of a second comes from wet glass. One on a
 * row that has only just come to its place was meant for another ring: it is not taken, and that is said. The
 * keyboard is with its key wherever that goes.
 *
 * @returns what to call, and whether a touch was not taken just now
 */
export const useJobs = (
  order: ReadonlySignal<string>,
  onStopped: () => void,
): { readonly onJob: OnJob; readonly notTaken: boolean } => {
  const [notTaken, setNotTaken] = useState(false);
  useEffect(() => {
    if (!notTaken) return;
    const waiting = setTimeout(() => setNotTaken(false), SAID_MS);
    return () => clearTimeout(waiting);
  }, [notTaken]);
  const house = useHouse();
  const words = useWordsOf(RING_WORDS);
  const last = useRef<KeyTouch | null>(null);
  const movedAt = useMovedAt(order);
  const stopped = useRef(onStopped);
  stopped.current = onStopped;
  const run = async (ring: DayRing, job: RowJob): Promise<void> => {
    if (job === "read") {
      const done = await lookNow(house, ring.id);
      if (done === null) return;
      cue(house.settings.value, "residue");
      house.say(words.say.took(`${words.board.ringOf(ring.letter)}, ${words.board.readNow}`));
    } else if (job === "start") {
      const go = fromHere(house.go);
      if ((await startRing(house, ring)) === null) return;
      cue(house.settings.value, "residue");
      go({ at: "ring", ring: ring.id });
    } else if ((await stopRing(house, ring.id, "done")) !== null) stopped.current();
  };
  const onJob = useCallback<OnJob>(
    (ring, job, { detail, timeStamp }) => {
      const touch: KeyTouch = { key: ring.id, atMs: timeStamp };
      if (isWetGlass(last.current, touch)) return;
      const byHand = detail > 0;
      if (byHand && isUnderMoved(movedAt.get(ring.id) ?? null, timeStamp)) {
        setNotTaken(true);
        house.say(words.board.notTaken);
        return;
      }
      last.current = touch;
      setNotTaken(false);
      void run(ring, job);
    },
    [house, words],
  );
  return { onJob, notTaken };
};
