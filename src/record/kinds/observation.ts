import { RULER_READS } from "../ring/entries.ts";
import { idOf, name, place, stood, text, wallMs, whole, within } from "../shapes.ts";
import * as z from "../zod.ts";

/** Ways to count a line. */
export const WAYS = ["mark-by-mark", "misses-only", "totals"] as const;

/** Ways to read a ring. */
export const RING_WAYS = ["measured-pour", "ruler", "kept-at-one-level"] as const;
/** What was done with the mulch that lay where the ring stands. */
export const MULCH_INSIDE = ["kept", "parted", "removed", "replaced"] as const;
/** What the ground is used for; guides for worms are chosen by it. */
export const LAND_USES = ["cropland", "grassland", "orchard-or-vineyard"] as const;

/** What lines, rings and holes share: the day, the ground and who. */
const shared = {
  visit: idOf("visit"),
  field: idOf("field"),
  strip: idOf("strip"),
  place: z.nullable(place),
  person: z.nullable(idOf("person")),
  startedAtMs: wallMs,
  /** The marked spot where it was made; left out when at none. */
  spot: z.exactOptional(idOf("spot")),
} as const;

const line = z.strictObject({
  ...shared,
  type: z.literal("line"),
  /** The rope or tape; its marks and spacing are the kit's. */
  rope: idOf("kit"),
  way: z.oneOf(WAYS),
  /** Angle between line and rows in degrees: 90 straight across, 45 diagonal, 0 along; null when not said. */
  angleToRowsDeg: z.nullable(within(0, 90)),
  /** From row to row, and the width of one full machine pass; null when not said. */
  rowSpacingM: z.nullable(within(0.01, 10)),
  passWidthM: z.nullable(within(0.1, 100)),
  start: stood,
  end: stood,
  /** What the fifth key counts; null when it is not used. */
  fifthKey: z.nullable(name),
  /** Ask for the mulch thickness at every tenth mark. */
  askThickness: z.boolean(),
});

const ring = z.strictObject({
  ...shared,
  type: z.literal("ring"),
  /** The ring of the kit, by its letter; the outer one of a double ring, else null. */
  ring: idOf("kit"),
  outer: z.nullable(idOf("kit")),
  ruler: z.nullable(idOf("kit")),
  bottle: z.nullable(idOf("kit")),
  way: z.oneOf(RING_WAYS),
  rulerReads: z.oneOf(RULER_READS),
  mulch: z.nullable(z.oneOf(MULCH_INSIDE)),
  /** From the rim down to the ground at up to four places round: how deep the ring stands, and how level. */
  rimToSoilM: z.array(within(0, 2)).check(z.maxLength(4)),
  /** When readings are due, in minutes after the start, rising. */
  planMin: z.array(within(0.25, 1440)).check(z.maxLength(200)),
  at: stood,
  /** The test that this one goes on from, one pace away, after a leak. */
  follows: z.nullable(idOf("observation")),
});

const hole = z.strictObject({
  ...shared,
  type: z.literal("hole"),
  /** The hole template of the kit, or null for a hole measured by itself. */
  template: z.nullable(idOf("kit")),
  /** The two sides when there is no template. */
  sidesM: z.nullable(z.tuple([within(0.02, 3), within(0.02, 3)])),
  depthM: within(0.01, 3),
  /** Short name of the worm method that set size, depth and minutes; null for own sizes. */
  method: z.nullable(name),
  landUse: z.nullable(z.oneOf(LAND_USES)),
  /** How long one person is meant to sort the soil of a hole; null when not said. */
  minutes: z.nullable(within(0.5, 600)),
  /** How long mustard water is given; null when it is not used. */
  mustardMin: z.nullable(within(0.5, 240)),
  at: stood,
  /** Its number on that day, for saying aloud. */
  number: whole(1, 10_000),
});

/** Something seen, in words; photos hang on it. Of a strip, or of the field when no strip is named. */
const note = z.strictObject({
  type: z.literal("note"),
  visit: idOf("visit"),
  field: idOf("field"),
  strip: z.nullable(idOf("strip")),
  text,
  at: stood,
  person: z.nullable(idOf("person")),
  startedAtMs: wallMs,
  spot: z.exactOptional(idOf("spot")),
});

/**
 * The header of a measurement. What was counted stands in its entries, which are only ever added to;
 * percentages are derived and never stored.
 */
export const version = 3;
export const body = z.discriminatedUnion("type", [line, ring, hole, note]);
export type Observation = z.Infer<typeof body>;
export type LineHeader = z.Infer<typeof line>;
export type RingHeader = z.Infer<typeof ring>;
export type HoleHeader = z.Infer<typeof hole>;
export type NoteHeader = z.Infer<typeof note>;
export type RingWay = (typeof RING_WAYS)[number];
export type MulchInside = (typeof MULCH_INSIDE)[number];
export type LandUse = (typeof LAND_USES)[number];
export type Way = (typeof WAYS)[number];
