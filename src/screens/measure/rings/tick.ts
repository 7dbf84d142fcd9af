/** The clock that rings are shown by, in full minutes: one tick every few seconds for the whole screen. */
import { type ReadonlySignal, signal } from "@preact/signals";
import { useEffect, useMemo } from "preact/hooks";
import { type ClockReading, readClock } from "../../../device/clock.ts";
import { everyFewSeconds } from "../../../device/ticker.ts";
import type { RingNow } from "../../../record/ring/clock.ts";

/** A look at the clocks, as rings are reckoned by it. */
export const ringNow = ({ wallMs, monoMs, pageId }: ClockReading = readClock()): RingNow => ({
  wallMs,
  monoMs,
  page: pageId,
});

/** The time now, told every few seconds while the screen can be seen, and when a reading becomes due. */
export const useNow = (): ReadonlySignal<RingNow> => {
  const now = useMemo(() => signal(ringNow()), []);
  useEffect(() => {
    const stop = new AbortController();
    const tell = (clock: ClockReading): void => {
      now.value = ringNow(clock);
    };
    tell(readClock());
    everyFewSeconds(tell, stop.signal);
    return () => stop.abort();
  }, [now]);
  return now;
};
