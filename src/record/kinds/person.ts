import { name } from "../shapes.ts";
import * as z from "../zod.ts";

/** Somebody who measures, reads aloud or counts. Can be forgotten: only the id then stays. */
export const version = 1;
export const body = z.strictObject({ name });
export type Person = z.Infer<typeof body>;
