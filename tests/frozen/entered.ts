/**
 * What was entered into database 1, counted by hand from scenario.ts and from the keys that freeze.ts
 * touches; nothing here comes out of the app.
 */
import type { Kind } from "../../src/record/ids.ts";
import { emptyTally, type LineTally } from "../../src/record/line/reading.ts";

const of = <K extends Kind>(kind: K, digit: string): `${K}-${string}` => `${kind}-${digit.padStart(32, "0")}`;

/** Ids of the records that were entered. */
export const IDS = {
  person: of("person", "1"),
  forgotten: of("person", "2"),
  farm: of("farm", "1"),
  field: of("field", "1"),
  unnamed: of("field", "2"),
  sameField: of("field", "3"),
  strip: of("strip", "1"),
  twoVersions: of("strip", "2"),
  wholeField: of("strip", "3"),
  deletedStrip: of("strip", "4"),
  spot: of("spot", "1"),
  rope: of("kit", "1"),
  visit: of("visit", "1"),
  otherVisit: of("visit", "2"),
  finished: of("observation", "1"),
  misses: of("observation", "2"),
  totals: of("observation", "3"),
  half: of("observation", "4"),
  deletedLine: of("observation", "5"),
  twoPhones: of("observation", "6"),
  photo: of("photo", "1"),
  event: of("event", "1"),
  rain: of("rain", "1"),
  guess: of("guess", "1"),
  earlier: of("earlier", "1"),
  join: of("join", "1"),
  undoneJoin: of("join", "2"),
} as const;

export const ROPE_MARKS = 20;

/** Records of each kind that are shown in lists, and the others: deleted or forgotten. */
export const COUNTS: Readonly<Record<Kind, { readonly living: number; readonly other: number }>> = {
  person: { living: 1, other: 1 },
  farm: { living: 1, other: 0 },
  field: { living: 3, other: 0 },
  strip: { living: 3, other: 1 },
  spot: { living: 1, other: 0 },
  kit: { living: 1, other: 0 },
  visit: { living: 2, other: 0 },
  observation: { living: 5, other: 1 },
  photo: { living: 1, other: 0 },
  event: { living: 1, other: 0 },
  rain: { living: 1, other: 0 },
  guess: { living: 1, other: 0 },
  earlier: { living: 1, other: 0 },
  join: { living: 1, other: 1 },
};

/** A line as it was entered. */
export interface Entered {
  readonly way: "mark-by-mark" | "misses-only" | "totals";
  /** Entries of every type, undo and corrections too. */
  readonly entries: number;
  readonly tally: LineTally;
  /** The mark that the next touch is for; null where no mark is asked for in turn. */
  readonly next: number | null;
  readonly endedAt: number | null;
}

const tally = (sums: Partial<LineTally>): LineTally => ({ ...emptyTally(), ...sums });

/** Every line by its id. */
export const LINES: Readonly<Record<string, Entered>> = {
  // Flat at 1 to 6, 16, 17; standing at 8; green at 9 and, corrected, at 7; bare at 12 and 13; stone at 10;
  // dung at 11; 14 and 15 left out. 17 marks in all.
  [IDS.finished]: {
    way: "mark-by-mark",
    entries: 23,
    tally: tally({ residueFlat: 8, residueStanding: 1, green: 2, bare: 2, stone: 1, own: 1, notRead: 2 }),
    next: 18,
    endedAt: 17,
  },
  // 20 marks, three called; the rest stands.
  [IDS.misses]: {
    way: "misses-only",
    entries: 4,
    tally: tally({ residueStanding: 17, bare: 1, green: 1, stone: 1 }),
    next: null,
    endedAt: 20,
  },
  [IDS.totals]: {
    way: "totals",
    entries: 2,
    tally: tally({ residueFlat: 10, residueStanding: 3, bare: 4, green: 2, stone: 1 }),
    next: null,
    endedAt: null,
  },
  // Residue three times, bare, undo, green.
  [IDS.half]: {
    way: "mark-by-mark",
    entries: 6,
    tally: tally({ residueFlat: 3, green: 1 }),
    next: 5,
    endedAt: null,
  },
  [IDS.deletedLine]: {
    way: "mark-by-mark",
    entries: 2,
    tally: tally({ bare: 1, green: 1 }),
    next: 3,
    endedAt: null,
  },
  // Mark 2 has an answer of each of two phones, and counts nowhere.
  [IDS.twoPhones]: {
    way: "mark-by-mark",
    entries: 3,
    tally: tally({ residueFlat: 1, unsettled: 1 }),
    next: 3,
    endedAt: null,
  },
};

/** All entries together: 23 + 4 + 2 + 6 + 2 + 3. */
export const ENTRY_COUNT = 40;
/** All records together: those of COUNTS, living and other. */
export const RECORD_COUNT = 27;
