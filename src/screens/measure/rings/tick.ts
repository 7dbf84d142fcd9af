/** The clock that rings are shown by: one tick a second for the whole screen. */
import { type ReadonlySignal, signal } from "@preact/signals";
import { useEffect, useMemo } from "preact/hooks";
import { type ClockReading, readClock } from "../../../device/clock.ts";
import { everySecond } from "../../../device/ticker.ts";
import type { RingNow } from "../../../record/ring/clock.ts";

/** A look at the clocks, as rings are reckoned by it. */
export const ringNow = ({ wallMs, monoMs, pageId }: ClockReading = readClock()): RingNow => ({
  wallMs,
  monoMs,
  page: pageId,
});

/** The time now, told once a second while the screen can be seen. */
export const useNow = (): ReadonlySignal<RingNow> => {
  const now = useMemo(() => signal(ringNow()), []);
  useEffect(() => {
    const stop = new AbortController();
    const tell = (clock: ClockReading): void => {
      now.value = ringNow(clock);
    };
    tell(readClock());
    everySecond(tell, stop.signal);
    return () => stop.abort();
  }, [now]);
  return now;
};
