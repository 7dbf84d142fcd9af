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

const acrossM = within(0.02, 3);

const ring = z.strictObject({
  type: z.literal("ring"),
  /** The letter painted on it. */
  name,
  /** From inside edge to inside edge; the second one at right angles to the first, null when not measured. */
  insideM: z.tuple([acrossM, z.nullable(acrossM)]),
  /** From the lower edge to the rim at up to four places round: a dented rim reads wrong. */
  heightsM: z.array(within(0.01, 2)).check(z.maxLength(4)),
  /** From outside edge to outside edge, for the inner ring of a double ring; null when not measured. */
  outsideM: z.nullable(acrossM),
});

const holeTemplate = z.strictObject({
  type: z.literal("hole-template"),
  name,
  /** The two sides of the hole that it marks out. */
  sidesM: z.tuple([within(0.05, 2), within(0.05, 2)]),
});

const bottle = z.strictObject({
  type: z.literal("bottle"),
  name,
  /** What it holds when full to its mark, in cubic metres. */
  volumeM3: within(1e-5, 0.2),
});

const ruler = z.strictObject({
  type: z.literal("ruler"),
  name,
  /** The smallest step that can be read on it. */
  stepM: within(0.0001, 0.05),
});

/**
 * Things measured once and chosen by name at each test. A corrected kit record corrects every test
 * made with it, because tests hold its id and not its sizes.
 */
export const version = 2;
export const body = z.discriminatedUnion("type", [rope, ring, holeTemplate, bottle, ruler]);
export type Kit = z.Infer<typeof body>;
export type Rope = z.Infer<typeof rope>;
export type Ring = z.Infer<typeof ring>;
export type HoleTemplate = z.Infer<typeof holeTemplate>;
export type Bottle = z.Infer<typeof bottle>;
export type Ruler = z.Infer<typeof ruler>;
