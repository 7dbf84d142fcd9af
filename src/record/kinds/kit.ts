import { name, whole, within } from "../shapes.ts";
import * as z from "../zod.ts";

const rope = z.strictObject({
  type: z.literal("rope"),
  /** Short name written on the rope itself. */
  name,
  marks: whole(1, 10_000),
  /** Distance from mark to mark in metres. */
  spacingM: within(0.001, 100),
});

/**
 * Things measured once and chosen by name at each test. A corrected kit record corrects every test
 * made with it, because tests hold its id and not its sizes.
 */
export const version = 1;
export const body = z.discriminatedUnion("type", [rope]);
export type Kit = z.Infer<typeof body>;
export type Rope = z.Infer<typeof rope>;
