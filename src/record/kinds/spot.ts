import { idOf, name, position } from "../shapes.ts";
import * as z from "../zod.ts";

/** A marked spot: the same place every season, or the old-grass spot that is the farm's own yardstick. */
export const version = 1;
export const body = z.strictObject({
  field: idOf("field"),
  strip: z.nullable(idOf("strip")),
  name,
  position: z.nullable(position),
  oldGrass: z.boolean(),
});
export type Spot = z.Infer<typeof body>;
