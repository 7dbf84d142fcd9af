/** Rings and holes for samples: headers as usual, and entries a given time apart. */
import { ENTRY_VERSION, type Entry } from "../../src/record/entry.ts";
import type { RecordId } from "../../src/record/ids.ts";
import type { HoleHeader, RingHeader } from "../../src/record/kinds/observation.ts";
import { sampleStartMs } from "./seed.ts";

const nowhere = { position: null, why: "not-asked" } as const;

/** What of a ring or a hole a sample has to say. */
export interface On {
  readonly visit: RecordId<"visit">;
  readonly field: RecordId<"field">;
  readonly strip: RecordId<"strip">;
}

/** The body of a ring that is read with a ruler. */
export const ringOf = (
  on: On & { readonly ring: RecordId<"kit"> },
  more: Partial<RingHeader> = {},
): RingHeader => ({
  ...on,
  type: "ring",
  outer: null,
  ruler: null,
  bottle: null,
  way: "ruler",
  rulerReads: "water-depth",
  mulch: "kept",
  rimToSoilM: [],
  planMin: [5, 10, 20, 30, 60, 120, 180],
  at: nowhere,
  follows: null,
  place: "between-rows",
  person: null,
  startedAtMs: sampleStartMs,
  ...more,
});

/** The body of a hole of 20 cm by 20 cm. */
export const holeOf = (on: On, more: Partial<HoleHeader> = {}): HoleHeader => ({
  ...on,
  type: "hole",
  template: null,
  sidesM: [0.2, 0.2],
  depthM: 0.2,
  method: null,
  landUse: "cropland",
  minutes: 5,
  mustardMin: null,
  at: nowhere,
  number: 1,
  place: "between-rows",
  person: null,
  startedAtMs: sampleStartMs,
  ...more,
});

type Said<E> = E extends Entry
  ? Omit<E, "v" | "id" | "n" | "lookedAtMs" | "enteredAtMs" | "monoMs" | "page" | "device" | "by">
  : never;

/** Entries as one phone with one page makes them, each at its minute after `firstMs`. */
export const entriesAt = (
  said: readonly (readonly [minute: number, entry: Said<Entry>])[],
  firstMs = sampleStartMs,
  letter = "e",
): Entry[] =>
  said.map(
    ([minute, entry], at) =>
      ({
        ...entry,
        v: ENTRY_VERSION,
        id: letter + (at + 1).toString(16).padStart(15, "0"),
        n: at + 1,
        lookedAtMs: firstMs + minute * 60_000,
        enteredAtMs: firstMs + minute * 60_000,
        monoMs: 5000 + minute * 60_000,
        page: letter.repeat(16),
        device: "d".repeat(16),
        by: null,
      }) as Entry,
  );

/** The level that a ruler shows. */
export const levelAt = (value: number, afterRefill = false): Said<Entry> => ({
  type: "level",
  ring: "inner",
  value,
  unit: "mm",
  reads: "water-depth",
  typed: String(value),
  timed: "now",
  ...(afterRefill ? { afterRefill: true as const } : {}),
});

export const startAt: Said<Entry> = { type: "start", timed: "now" };
export const lookAt: Said<Entry> = { type: "look", ring: "inner" };
