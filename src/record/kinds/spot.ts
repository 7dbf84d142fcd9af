import { idOf, name, position } from "../shapes.ts";
import * as z from "../zod.ts";

/**
 * A marked spot: the same place every season, the old-grass spot that is the farm's own yardstick, or the
 * beginning of a visible edge.
 */
export const version = 3;
export const body = z.strictObject({
  field: idOf("field"),
  strip: z.nullable(idOf("strip")),
  name,
  position: z.nullable(position),
  oldGrass: z.boolean(),
  /** A visible edge begins here: the strips on both sides, and where the edge ends when that was marked. */
  edge: z.exactOptional(
    z.strictObject({
      between: z.tuple([z.nullable(idOf("strip")), z.nullable(idOf("strip"))]),
      to: z.nullable(position),
    }),
  ),
});
export type Spot = z.Infer<typeof body>;
