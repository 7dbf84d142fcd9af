/**
 * What was entered into database 3, counted by hand from scenario-3.ts; nothing here comes out of the app.
 * Positions of every kind of test and of a marked spot, with what their radius stands for.
 */
import type { Kind } from "../../src/record/ids.ts";

const of = <K extends Kind>(kind: K, digit: string): `${K}-${string}` => `${kind}-${digit.padStart(32, "3")}`;

/** Ids of the records that were entered. */
export const IDS_3 = {
  field: of("field", "1"),
  visit: of("visit", "1"),
  strip: of("strip", "1"),
  rope: of("kit", "1"),
  ring: of("kit", "2"),
  spot: of("spot", "1"),
  line: of("observation", "1"),
  running: of("observation", "2"),
  hole: of("observation", "4"),
  note: of("observation", "5"),
} as const;

/** All records together. */
export const RECORD_COUNT_3 = 10;

/** What the device stated, in metres, and what it meant by it. */
export const STATED = {
  phone: { accuracyM: 5.5, accuracyMeans: "68-percent", how: "standing-still" },
  kept: { accuracyM: 9, accuracyMeans: "95-percent", how: "standing-still" },
  unsaid: { accuracyM: 7, accuracyMeans: "not-known", how: "standing-still" },
  byHand: { accuracyM: null, accuracyMeans: null, how: "by-hand" },
} as const;
