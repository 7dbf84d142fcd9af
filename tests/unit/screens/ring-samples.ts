/** A ring with readings, put together by hand for tests. */
import { ENTRY_VERSION, type Entry } from "../../../src/record/entry.ts";
import type { Ring } from "../../../src/record/kinds/kit.ts";
import type { RingHeader } from "../../../src/record/kinds/observation.ts";
import { readRing } from "../../../src/record/ring/reading.ts";
import { ringSetOf } from "../../../src/science/infiltration/ring-set.ts";
import type { DayRing } from "../../../src/screens/measure/rings/day.ts";

export const MINUTE_MS = 60_000;
/** 7 May 2024, 09:00 UTC. */
export const startMs = Date.UTC(2024, 4, 7, 9);

const hex = (digits: number, count: number): string => count.toString(16).padStart(digits, "0");

type Written = { readonly atMin: number } & (
  | { readonly type: "start" | "look" | "gone" }
  | { readonly type: "stop"; readonly why: Extract<Entry, { type: "stop" }>["why"] }
  | {
      readonly type: "level";
      readonly mm: number;
      readonly reads?: "water-depth" | "down-from-rim";
      readonly afterRefill?: true;
      readonly replaces?: string[];
      readonly of?: string;
    }
  | { readonly type: "pour"; readonly mL: number; readonly replaces?: string[] }
  | { readonly type: "happened"; readonly what: Extract<Entry, { type: "happened" }>["what"] }
);

const bodyOf = (one: Written) => {
  switch (one.type) {
    case "start":
      return { type: "start", timed: "now" };
    case "look":
      return { type: "look", ring: "inner" };
    case "gone":
      return { type: "gone", ring: "inner", timed: "now" };
    case "stop":
      return { type: "stop", why: one.why, timed: "now" };
    case "happened":
      return { type: "happened", what: one.what, words: "", timed: "now" };
    case "pour":
      return {
        type: "pour",
        ring: "inner",
        value: one.mL,
        unit: "mL",
        typed: String(one.mL),
        timed: "now",
        ...(one.replaces === undefined ? {} : { replaces: one.replaces }),
      };
    case "level":
      return {
        type: "level",
        ring: "inner",
        value: one.mm,
        unit: "mm",
        typed: String(one.mm),
        reads: one.reads ?? "water-depth",
        timed: "now",
        ...(one.afterRefill === true ? { afterRefill: true } : {}),
        ...(one.replaces === undefined ? {} : { replaces: one.replaces }),
        ...(one.of === undefined ? {} : { of: one.of }),
      };
  }
};

/** Id of the n-th entry, from 1. */
export const entryId = (n: number): string => hex(16, n);

/** Entries one after the other, each looked at so many minutes after nine. */
export const entriesOf = (written: readonly Written[]): Entry[] =>
  written.map(
    (one, at) =>
      ({
        v: ENTRY_VERSION,
        id: entryId(at + 1),
        n: at + 1,
        lookedAtMs: startMs + one.atMin * MINUTE_MS,
        enteredAtMs: startMs + one.atMin * MINUTE_MS,
        monoMs: 5000 + (one.atMin + 60) * MINUTE_MS,
        page: "e".repeat(16),
        device: "d".repeat(16),
        by: null,
        ...bodyOf(one),
      }) as Entry,
  );

/** The clocks of the same page so many minutes after nine. */
export const clockAt = (atMin: number) => ({
  wallMs: startMs + atMin * MINUTE_MS,
  monoMs: 5000 + (atMin + 60) * MINUTE_MS,
  page: "e".repeat(16),
});

const kitRing: Ring = { type: "ring", name: "A", insideM: [0.3, null], heightsM: [0.25], outsideM: null };

/** A ring of 30 cm with these readings. */
export const ringWith = (
  written: readonly Written[],
  more: Partial<RingHeader> & { readonly number?: number } = {},
): DayRing => {
  const { number = 1, ...rest } = more;
  const header: RingHeader = {
    type: "ring",
    visit: `visit-${hex(32, 1)}`,
    field: `field-${hex(32, 2)}`,
    strip: `strip-${hex(32, 3)}`,
    ring: `kit-${hex(32, number)}`,
    outer: null,
    ruler: null,
    bottle: null,
    way: "ruler",
    rulerReads: "water-depth",
    mulch: null,
    rimToSoilM: [],
    planMin: [5, 10, 20, 30, 60],
    at: { position: null, why: "not-asked" },
    follows: null,
    place: null,
    person: null,
    startedAtMs: startMs - MINUTE_MS + number,
    ...rest,
  };
  const entries = entriesOf(written);
  const kit = { ring: kitRing, outer: null, ruler: null, bottle: null };
  return {
    id: `observation-${hex(32, number)}`,
    header,
    letter: "A",
    kit,
    set: ringSetOf(header, kit),
    strip: undefined,
    spot: undefined,
    entries,
    reading: readRing(entries),
    deleted: false,
    changed: null,
    version: "",
  };
};
