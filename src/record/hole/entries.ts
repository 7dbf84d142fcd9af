/** What is written down at a spade hole: worms found, worms placed, who sorts, and mustard water. */
import { moment, replaces, unusual } from "../moment.ts";
import { name, whole, within } from "../shapes.ts";
import * as z from "../zod.ts";

/** Where worms of one hole are found; each has a count of its own and all of them add up. */
export const LAYERS = ["mulch", "soil", "mustard-water"] as const;
/** Young worms have no saddle; grown ones are told apart by where they live. */
export const WORM_GROUPS = ["young", "surface", "topsoil", "deep"] as const;

const layer = z.oneOf(LAYERS);
const group = z.oneOf(WORM_GROUPS);
const worms = whole(0, 10_000);

/** One more worm with a head into the pot. */
const worm = z.strictObject({ ...moment, type: z.literal("worm"), from: layer });
/** The worms of one layer counted at once; it stands in the place of what was counted there one by one. */
const found = z.strictObject({
  ...moment,
  type: z.literal("found"),
  from: layer,
  count: worms,
  typed: name,
  unusual,
  replaces,
});
/** One worm out of the pot, placed. */
const placed = z.strictObject({ ...moment, type: z.literal("placed"), group });
/** The worms of one group at once; it stands in the place of what was placed one by one. */
const sorted = z.strictObject({
  ...moment,
  type: z.literal("sorted"),
  group,
  count: worms,
  typed: name,
  unusual,
  replaces,
});
/** From now on so many people sort one layer; nobody is a pause. */
const sorting = z.strictObject({
  ...moment,
  type: z.literal("sorting"),
  people: whole(0, 100),
  from: layer,
});
/** Mustard water is in the hole: the wait begins. */
const mustard = z.strictObject({
  ...moment,
  type: z.literal("mustard"),
  litres: z.nullable(within(0.01, 100)),
  replaces,
});
/** The hole is finished. */
const closed = z.strictObject({ ...moment, type: z.literal("closed") });

export const holeEntries = [worm, found, placed, sorted, sorting, mustard, closed] as const;
export type WormEntry = z.Infer<typeof worm>;
export type FoundEntry = z.Infer<typeof found>;
export type PlacedEntry = z.Infer<typeof placed>;
export type SortedEntry = z.Infer<typeof sorted>;
export type SortingEntry = z.Infer<typeof sorting>;
export type MustardEntry = z.Infer<typeof mustard>;
export type Layer = (typeof LAYERS)[number];
export type WormGroup = (typeof WORM_GROUPS)[number];
