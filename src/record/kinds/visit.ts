import { day, idOf, whole } from "../shapes.ts";
import * as z from "../zod.ts";

/** One field on one day. */
export const version = 1;
export const body = z.strictObject({
  field: idOf("field"),
  day,
  /** The year of the harvest that the visit belongs to; null until somebody says so. */
  harvestYear: z.nullable(whole(1800, 3000)),
});
export type Visit = z.Infer<typeof body>;
