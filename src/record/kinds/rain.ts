import { day, idOf, within } from "../shapes.ts";
import * as z from "../zod.ts";

/** One reading of the rain gauge. */
export const version = 1;
export const body = z.strictObject({ field: idOf("field"), day, depthMm: within(0, 2000) });
export type Rain = z.Infer<typeof body>;
