import { day, idOf, text } from "../shapes.ts";
import * as z from "../zod.ts";

/** Usual events in a field's year. */
export const EVENTS = [
  "drilled",
  "harvested",
  "straw-baled",
  "straw-left",
  "grazed",
  "cover-crop-sown",
  "cover-crop-terminated",
  "tilled",
  "sprayed",
  "other",
] as const;

/** Something that was done to the field or a strip of it. */
export const version = 1;
export const body = z.strictObject({
  field: idOf("field"),
  strip: z.nullable(idOf("strip")),
  day,
  what: z.oneOf(EVENTS),
  words: text,
});
export type ManagementEvent = z.Infer<typeof body>;
