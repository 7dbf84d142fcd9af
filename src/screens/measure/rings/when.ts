/** When something was looked at: now, some minutes ago, or at a time that was typed. */
import type { Moment } from "../../../record/command/command.ts";
import { failed, ok, type Result } from "../../../record/result.ts";
import type { Timed } from "../../../record/ring/entries.ts";
import type { Pen } from "../../parts/pen.ts";

const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;

/** Minutes that are offered as one touch. */
export const MINUTES_AGO = [1, 2, 5] as const;

/** What was said of the moment. */
export type When =
  | { readonly how: "now" }
  | { readonly how: "minutes-ago"; readonly minutes: number }
  | { readonly how: "typed"; readonly text: string };

export const NOW: When = { how: "now" };

/** A moment ready to be written down. */
export interface Timing {
  readonly at: Moment;
  readonly timed: Timed;
}

const CLOCK = /^\s*(\d{1,2})\s*(?:[:.,h ]\s*)?(\d{2})\s*$/u;

/**
 * The last moment at which a clock showed this time, on this device's own calendar: "14:05", "14.05", "1405".
 * A time that is still to come today was yesterday's.
 *
 * @param nowMs wall milliseconds
 * @returns wall milliseconds; `screens/not-a-time` for what no clock shows
 *
 * @example
 * clockTime("14:05", Date.now())
 */
export const clockTime = (text: string, nowMs: number): Result<number> => {
  const found = CLOCK.exec(text);
  const hours = Number(found?.[1] ?? Number.NaN);
  const minutes = Number(found?.[2] ?? Number.NaN);
  if (!(hours < 24 && minutes < 60)) return failed("screens/not-a-time");
  const date = new Date(nowMs);
  date.setHours(hours, minutes, 0, 0);
  // A clock of the same minute is not ahead: its seconds were not typed.
  const atMs = date.getTime();
  return ok(atMs - nowMs > MINUTE_MS ? atMs - DAY_MS : Math.min(atMs, nowMs));
};

/** Signs a moment; `screens/not-a-time` when what was typed is none. */
export const timingOf = (pen: Pick<Pen, "moment">, when: When): Result<Timing> => {
  const at = pen.moment();
  switch (when.how) {
    case "now":
      return ok({ at, timed: "now" });
    case "minutes-ago":
      return ok({
        at: { ...at, lookedAtMs: at.lookedAtMs - when.minutes * MINUTE_MS },
        timed: "minutes-ago",
      });
    case "typed": {
      const time = clockTime(when.text, at.enteredAtMs);
      return time.ok ? ok({ at: { ...at, lookedAtMs: time.value }, timed: "typed" }) : time;
    }
  }
};
