import { idOf, name, whole } from "../shapes.ts";
import * as z from "../zod.ts";

/** What was done on a strip, as answers that can be compared across languages. */
export const TREATMENTS = [
  "straw-left",
  "straw-carried-off",
  "cover-crop",
  "no-cover-crop",
  "not-tilled",
  "tilled",
] as const;

/** Part of a field that was treated alike; "whole field" is a strip too. */
export const version = 1;
export const body = z.strictObject({
  field: idOf("field"),
  name,
  done: z.array(z.oneOf(TREATMENTS)).check(z.maxLength(TREATMENTS.length)),
  wholeField: z.boolean(),
  /** Which block or pair the strip belongs to, when strips are repeated. */
  rep: z.nullable(whole(1, 1000)),
});
export type Strip = z.Infer<typeof body>;
export type Treatment = (typeof TREATMENTS)[number];
