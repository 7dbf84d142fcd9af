/** What the running hole asks of the device: time, keys of a keyboard or clicker. */
import { useEffect, useRef, useState } from "preact/hooks";
import { type ClockReading, readClock } from "../../../device/clock.ts";
import { type KeyMeaning, listenForKeys } from "../../../device/keys.ts";
import { everySecond } from "../../../device/ticker.ts";
import { vibrateForDue } from "../../../device/vibrate.ts";
import type { WormGroup } from "../../../record/hole/entries.ts";
import type { RingNow } from "../../../record/ring/clock.ts";
import type { House } from "../../parts/house.ts";
import type { HoleModel } from "./model.ts";

const told = ({ wallMs, monoMs, pageId }: ClockReading): RingNow => ({ wallMs, monoMs, page: pageId });

/** Both clocks, anew every second while something runs; all that runs shares one wake-up. */
export const useNow = (running: boolean): RingNow => {
  const [now, setNow] = useState(() => told(readClock()));
  useEffect(() => {
    if (!running) return;
    const stop = new AbortController();
    setNow(told(readClock()));
    everySecond((clock) => setNow(told(clock)), stop.signal);
    return () => stop.abort();
  }, [running]);
  return now;
};

/** Vibrates once when a time that was being waited for is over; not for one that was over before. */
export const useOver = (over: boolean, wanted: boolean): void => {
  const before = useRef(over);
  useEffect(() => {
    if (over && !before.current && wanted) vibrateForDue();
    before.current = over;
  }, [over, wanted]);
};

type Find = "worm" | "undo";
type Place = WormGroup | "undo";

const UNDO = { answer: "undo", key: "Backspace", code: "Backspace" } as const;
const FINDING: readonly KeyMeaning<Find>[] = [{ answer: "worm", key: "w", code: "KeyW" }, UNDO];
const PLACING: readonly KeyMeaning<Place>[] = [
  { answer: "young", key: "y", code: "KeyY" },
  { answer: "surface", key: "s", code: "KeyS" },
  { answer: "topsoil", key: "t", code: "KeyT" },
  { answer: "deep", key: "d", code: "KeyD" },
  UNDO,
];

/** The key taught for the most frequent answer of a line counts worms too: a clicker may have no other. */
const taught = (house: House): readonly KeyMeaning<Find>[] =>
  house.settings.value.clicker.flatMap(({ answer, key, code }): KeyMeaning<Find>[] => {
    if (answer === "residue") return [{ answer: "worm", key, code }];
    return answer === "undo" ? [{ answer, key, code }] : [];
  });

/** Keys of a keyboard or clicker answer like the keys on the glass. */
export const useKeys = (house: House, model: HoleModel): void => {
  useEffect(() => {
    const stop = new AbortController();
    listenForKeys<Find | Place>(
      () => {
        // While a number is typed, keys belong to the number.
        if (model.panel.value.name !== "none" || model.stored.value === null) return [];
        if (model.reading.value.closed !== null) return [UNDO];
        return model.task.value === "place" ? PLACING : [...FINDING, ...taught(house)];
      },
      (answer, atMs) => {
        if (answer === "undo") void model.undo();
        else if (answer === "worm") void model.worm(atMs);
        else void model.place(answer, atMs);
      },
      stop.signal,
    );
    return () => stop.abort();
  }, [house, model]);
};
