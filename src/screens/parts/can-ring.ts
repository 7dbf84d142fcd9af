/** What keeps the alarm from being heard: a screen that the phone may darken, a bell that waits for a touch. */
import { signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { keepScreenOn, type ScreenOnState } from "../../device/screen-on.ts";

/** What the phone said last when it was asked to keep the screen on; null while nobody has asked. */
export const screenOn = signal<ScreenOnState | null>(null);

/** A reading is to come, and the page stays silent until somebody touches it. */
export const bellWaits = signal(false);

/** Keeps the screen on while it is wanted. */
export const useScreenOn = (wanted = true): void => {
  useEffect(() => {
    if (!wanted) return;
    const stop = new AbortController();
    keepScreenOn((state) => {
      screenOn.value = state;
    }, stop.signal);
    return () => stop.abort();
  }, [wanted]);
};
