import { idOf, latitudeDeg, longitudeDeg, name, within } from "../shapes.ts";
import * as z from "../zod.ts";

/**
 * A field. The name may be empty: measure now, name the field later. Its boundary is a ring of
 * positions without the closing repeat, or null when none was walked.
 */
export const version = 1;
export const body = z.strictObject({
  name,
  farm: z.nullable(idOf("farm")),
  boundary: z.nullable(
    z.array(z.strictObject({ latitudeDeg, longitudeDeg })).check(z.minLength(3), z.maxLength(20_000)),
  ),
  /** Direction of the rows in degrees from true north. */
  rowDirectionDeg: z.nullable(within(0, 180)),
  soilTexture: z.nullable(name),
  harvestCrop: z.nullable(name),
});
export type Field = z.Infer<typeof body>;
