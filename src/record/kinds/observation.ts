import { idOf, name, place, stood, wallMs, within } from "../shapes.ts";
import * as z from "../zod.ts";

/** Ways to count a line. */
export const WAYS = ["mark-by-mark", "misses-only", "totals"] as const;

const line = z.strictObject({
  type: z.literal("line"),
  visit: idOf("visit"),
  field: idOf("field"),
  strip: idOf("strip"),
  /** The rope or tape; its marks and spacing are the kit's. */
  rope: idOf("kit"),
  way: z.oneOf(WAYS),
  /** Angle between line and rows in degrees: 90 straight across, 45 diagonal, 0 along; null when not said. */
  angleToRowsDeg: z.nullable(within(0, 90)),
  /** From row to row, and the width of one full machine pass; null when not said. */
  rowSpacingM: z.nullable(within(0.01, 10)),
  passWidthM: z.nullable(within(0.1, 100)),
  place: z.nullable(place),
  start: stood,
  end: stood,
  person: z.nullable(idOf("person")),
  /** What the fifth key counts; null when it is not used. */
  fifthKey: z.nullable(name),
  /** Ask for the mulch thickness at every tenth mark. */
  askThickness: z.boolean(),
  startedAtMs: wallMs,
});

/**
 * The header of a measurement. What was counted stands in its entries, which are only ever added to;
 * percentages are derived and never stored.
 */
export const version = 1;
export const body = z.discriminatedUnion("type", [line]);
export type Observation = z.Infer<typeof body>;
export type LineHeader = z.Infer<typeof line>;
export type Way = (typeof WAYS)[number];
