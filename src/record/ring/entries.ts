/** What is written down at a ring: when it began, water poured, levels read, and what happened to it. */
import { moment, replaces, unusual } from "../moment.ts";
import { finite, name, shortId, text } from "../shapes.ts";
import * as z from "../zod.ts";

/** What a ruler in the ring shows: the water itself, or how far the water lies below the rim. */
export const RULER_READS = ["water-depth", "down-from-rim"] as const;

/** What can happen to a ring. A burrow or a crack counts and is named; after a leak nothing counts. */
export const HAPPENINGS = [
  "leaked",
  "burrow",
  "crack",
  "bumped",
  "rain-began",
  "rain-ended",
  "ran-dry",
  "no-water-left",
  "topped-up-late",
  "missed-reading",
  "moved",
] as const;

/** How the moment is known at which something was looked at. */
const timed = z.oneOf(["now", "minutes-ago", "typed"]);
const volumeUnit = z.oneOf(["mL", "L", "fl-oz", "gal"]);
/** Of a double ring: the inner ring gives the result. */
const inRing = z.oneOf(["inner", "outer"]);

/** The clock of the test begins. */
const start = z.strictObject({ ...moment, type: z.literal("start"), timed, replaces });
/** *Read now*: the moment is kept, the number follows. */
const look = z.strictObject({ ...moment, type: z.literal("look"), ring: inRing });
/** Water poured in from a measured bottle. */
const pour = z.strictObject({
  ...moment,
  type: z.literal("pour"),
  ring: inRing,
  value: finite,
  unit: volumeUnit,
  typed: name,
  timed,
  unusual,
  replaces,
});
/** The level that a ruler shows. A refill is two of them: before and after the water. */
const level = z.strictObject({
  ...moment,
  type: z.literal("level"),
  ring: inRing,
  value: finite,
  unit: z.oneOf(["mm", "cm", "in"]),
  reads: z.oneOf(RULER_READS),
  /** The look whose number this is, when the moment was kept first. */
  of: z.exactOptional(shortId),
  /** The first level behind a refill: what was poured in before it did not soak in. */
  afterRefill: z.exactOptional(z.literal(true)),
  typed: name,
  timed,
  unusual,
  replaces,
});
/** The last of the water is gone: the ground only glistens. */
const gone = z.strictObject({
  ...moment,
  type: z.literal("gone"),
  ring: inRing,
  /** The look whose answer this is. */
  of: z.exactOptional(shortId),
  timed,
  replaces,
});
const happened = z.strictObject({
  ...moment,
  type: z.literal("happened"),
  what: z.oneOf(HAPPENINGS),
  words: text,
  timed,
  replaces,
});
/** The test is over. */
const stop = z.strictObject({
  ...moment,
  type: z.literal("stop"),
  why: z.oneOf(["done", "leaked", "no-water-left", "moved", "other"]),
  timed,
  replaces,
});

export const ringEntries = [start, look, pour, level, gone, happened, stop] as const;
export type StartEntry = z.Infer<typeof start>;
export type LookEntry = z.Infer<typeof look>;
export type PourEntry = z.Infer<typeof pour>;
export type LevelEntry = z.Infer<typeof level>;
export type GoneEntry = z.Infer<typeof gone>;
export type HappenedEntry = z.Infer<typeof happened>;
export type StopEntry = z.Infer<typeof stop>;
export type Happening = (typeof HAPPENINGS)[number];
export type RulerReads = (typeof RULER_READS)[number];
export type Timed = z.Infer<typeof timed>;
export type InRing = z.Infer<typeof inRing>;
