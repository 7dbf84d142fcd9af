/** Made-up entries of a ring, as phones write them. */
import type { Entry } from "../../../src/record/entry.ts";
import type { RingNow } from "../../../src/record/ring/clock.ts";
import type { Happening } from "../../../src/record/ring/entries.ts";
import { hex, NOON_MS } from "./made-up.ts";

const MINUTE_MS = 60_000;

type Body<E> = E extends Entry
  ? Omit<E, "v" | "id" | "n" | "lookedAtMs" | "enteredAtMs" | "monoMs" | "page" | "device" | "by">
  : never;
export type RingBody = Body<Entry>;

/** One phone: what its clocks show when the test has been running so many minutes. */
export interface Phone {
  readonly number: number;
  readonly page: number;
  /** The wall clock is ahead by so much. */
  readonly aheadMs: number;
  /** The page began this long before the test. */
  readonly pageBeganMs: number;
}

export const PHONE: Phone = { number: 1, page: 1, aheadMs: 0, pageBeganMs: 30_000 };

/** Writes entries one after the other, each with the next place in the order. */
export const notebook = () => {
  const entries: Entry[] = [];
  const write = (atMin: number, body: RingBody, phone: Phone = PHONE, lookedAtMin = atMin): string => {
    const n = entries.length + 1;
    const id = hex(phone.number * 2 ** 32 + n);
    const wallMs = (min: number): number => NOON_MS + Math.round(min * MINUTE_MS) + phone.aheadMs;
    entries.push({
      v: 2,
      id,
      n,
      lookedAtMs: wallMs(lookedAtMin),
      enteredAtMs: wallMs(atMin),
      monoMs: Math.round(atMin * MINUTE_MS) + phone.pageBeganMs,
      page: hex(phone.number * 1000 + phone.page),
      device: hex(phone.number),
      by: null,
      ...body,
    } as Entry);
    return id;
  };
  return { entries, write };
};

/** What the clocks of a phone show now. */
export const nowOf = (atMin: number, phone: Phone = PHONE): RingNow => ({
  wallMs: NOON_MS + Math.round(atMin * MINUTE_MS) + phone.aheadMs,
  monoMs: Math.round(atMin * MINUTE_MS) + phone.pageBeganMs,
  page: hex(phone.number * 1000 + phone.page),
});

export const start = { type: "start", timed: "now" } as const;
export const stop = { type: "stop", why: "done", timed: "now" } as const;
export const look = { type: "look", ring: "inner" } as const;
export const gone = { type: "gone", ring: "inner", timed: "now" } as const;
export const happened = (what: Happening) => ({ type: "happened", what, words: "", timed: "now" }) as const;

/** Water from a bottle, in millilitres. */
export const pour = (value: number, ring: "inner" | "outer" = "inner") =>
  ({ type: "pour", ring, value, unit: "mL", typed: String(value), timed: "now" }) as const;

/** A ruler that stands in the water, in millimetres. */
export const level = (value: number, more: { of?: string; afterRefill?: true; replaces?: string[] } = {}) =>
  ({
    type: "level",
    ring: "inner",
    value,
    unit: "mm",
    reads: "water-depth",
    typed: String(value),
    timed: "now",
    ...more,
  }) as const;

/** Down from the rim, in millimetres. */
export const down = (value: number, more: { of?: string; afterRefill?: true } = {}) =>
  ({ ...level(value, more), reads: "down-from-rim" }) as const;
