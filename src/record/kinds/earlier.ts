import { day, finite, idOf, text, whole } from "../shapes.ts";
import * as z from "../zod.ts";
import { MEASURES } from "./guess.ts";

/** A result from paper, without raw readings: drawn apart from what was measured here, and said so. */
export const version = 1;
export const body = z.strictObject({
  field: idOf("field"),
  strip: z.nullable(idOf("strip")),
  day,
  what: z.oneOf(MEASURES),
  value: finite,
  /** How many samples it rests on, when the paper says so. */
  samples: z.nullable(whole(1, 100_000)),
  origin: text,
});
export type EarlierResult = z.Infer<typeof body>;
