/**
 * What was entered into database 2, counted by hand from scenario-2.ts; nothing here comes out of the app.
 * Rings and holes, their kit, a note, a visible edge and a line that ended twice.
 */
import type { Kind } from "../../src/record/ids.ts";

const of = <K extends Kind>(kind: K, digit: string): `${K}-${string}` => `${kind}-${digit.padStart(32, "2")}`;

/** Ids of the records that were entered. */
export const IDS_2 = {
  field: of("field", "1"),
  visit: of("visit", "1"),
  strip: of("strip", "1"),
  other: of("strip", "3"),
  rope: of("kit", "1"),
  ring: of("kit", "3"),
  template: of("kit", "4"),
  bottle: of("kit", "5"),
  ruler: of("kit", "6"),
  spot: of("spot", "1"),
  edge: of("spot", "3"),
  line: of("observation", "1"),
  running: of("observation", "3"),
  poured: of("observation", "4"),
  hole: of("observation", "5"),
  note: of("observation", "6"),
} as const;

/** All records together. */
export const RECORD_COUNT_2 = 16;

/**
 * The ring with the ruler: started; 80 mm at once, 71 mm after 5 min read as 70 first and corrected, 65 mm
 * after 10 min taken back and brought again, a burrow seen, and one look after 20 min without its number.
 */
export const RUNNING = {
  entries: 9,
  levelsMm: [80, 71, 65],
  minutes: [0, 5, 10],
  openLooks: 1,
  happenings: ["burrow"],
} as const;

/** The ring with the bottle: one litre at the start, gone after 12 min. */
export const POURED = { entries: 4, cubicMetres: 0.001, goneAfterMin: 12 } as const;

/** The hole: one worm in the mulch, four one by one in the soil and two more at once: "found 6" in the soil. */
export const HOLE = {
  entries: 11,
  found: { mulch: 1, soil: 6, "mustard-water": 0 },
  placed: { young: 1, surface: 0, topsoil: 2, deep: 0 },
} as const;
