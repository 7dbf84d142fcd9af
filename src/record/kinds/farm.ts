import { name } from "../shapes.ts";
import * as z from "../zod.ts";

/** A farm, so that two farms may each own a "Top Field". */
export const version = 1;
export const body = z.strictObject({ name });
export type Farm = z.Infer<typeof body>;
