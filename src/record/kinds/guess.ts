import { finite, idOf, wallMs } from "../shapes.ts";
import * as z from "../zod.ts";

/** What is guessed before it is measured. */
export const MEASURES = ["ground-cover-percent", "worms-per-hole", "soaked-in-60-min-mm"] as const;

/** A grower's guess, kept beside the result. */
export const version = 1;
export const body = z.strictObject({
  field: idOf("field"),
  strip: z.nullable(idOf("strip")),
  visit: z.nullable(idOf("visit")),
  person: z.nullable(idOf("person")),
  what: z.oneOf(MEASURES),
  value: finite,
  atMs: wallMs,
});
export type Guess = z.Infer<typeof body>;
