/** Schemas that several kinds of record share. Everything is a plain JSON value. */
import type { Kind, RecordId } from "./ids.ts";
import * as z from "./zod.ts";

/** Longest text that a record may hold, in UTF-16 code units. */
export const MAX_TEXT = 10_000;

// A lone surrogate cannot be written as UTF-8: it would come back from a file as another text.
const wellFormed = (text: string): boolean => !/\p{Surrogate}/u.test(text);

/** A text as somebody typed it. */
export const text = z.string().check(
  z.maxLength(MAX_TEXT),
  z.refine((value) => wellFormed(value), { error: "not well-formed text" }),
);

/** A short name; may be empty while it is not given yet. */
export const name = z.string().check(
  z.maxLength(200),
  z.refine((value) => wellFormed(value), { error: "not well-formed text" }),
);

// Negative zero is written as 0 by JSON, so a row that held it would change by going through a file.
const plain = (value: number): boolean => Number.isFinite(value) && !Object.is(value, -0);

/** A finite number that JSON keeps as it is. */
export const finite = z.number().check(z.refine(plain, { error: "not a plain number" }));

/** A number within bounds, ends included. */
export const within = (low: number, high: number) =>
  z.number().check(z.minimum(low), z.maximum(high), z.refine(plain, { error: "not a plain number" }));

/** A whole number within bounds, ends included. */
export const whole = (low: number, high: number) =>
  z.int().check(z.minimum(low), z.maximum(high), z.refine(plain, { error: "not a plain number" }));

/** Milliseconds since 1970 as a clock read them, right or wrong (the range of an ECMAScript date). */
export const wallMs = whole(-8.64e15, 8.64e15);

/** A 64-bit id in hexadecimal. */
export const shortId = z.string().check(z.regex(/^[0-9a-f]{16}$/));

// 31 February would silently become a day in March wherever a date is reckoned from it.
const inMonth = (value: string): boolean => {
  const [year = 0, month = 0, ofMonth = 0] = value.split("-").map(Number);
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const days = month === 2 ? (leap ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;
  return ofMonth <= days;
};

/** A calendar day as the person's own calendar showed it. */
export const day = z.string().check(
  z.regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/),
  z.refine((value) => inMonth(value), { error: "no such day" }),
);

/** An id that names a record of one kind. */
export const idOf = <K extends Kind>(kind: K): z.Schema<RecordId<K>> =>
  z.string().check(z.regex(new RegExp(`^${kind}-[0-9a-f]{32}$`))) as unknown as z.Schema<RecordId<K>>;

/** Latitude and longitude in degrees on WGS 84. */
export const latitudeDeg = within(-90, 90);
export const longitudeDeg = within(-180, 180);

/**
 * What a stated radius stands for: the true place lies within it 95 or 68 times in 100, or nobody says which.
 * A list and not a number, because platforms promise one of the two and a page can tell no other.
 */
export const ACCURACY_MEANS = ["95-percent", "68-percent", "not-known"] as const;
export type AccuracyMeans = (typeof ACCURACY_MEANS)[number];

/** A position taken by standing still, or put there by hand. */
const placed = {
  latitudeDeg,
  longitudeDeg,
  /** Radius in metres as the device gave it, null when it gave none or the position was put there by hand. */
  accuracyM: z.nullable(within(0, 1e7)),
  /** What that radius stands for on the device that gave it; null when there is none. */
  accuracyMeans: z.nullable(z.oneOf(ACCURACY_MEANS)),
  /** Scatter of the fixes that were put together, in metres; null for a single fix. */
  spreadM: z.nullable(within(0, 1e7)),
  /** How many fixes were put together. */
  fixes: whole(0, 100_000),
  how: z.oneOf(["standing-still", "by-hand"]),
  /** When the last fix was taken, by its own clock. */
  atMs: wallMs,
} as const;
export const position = z.strictObject({
  ...placed,
  /** Where it was before somebody moved it by hand; the one that was measured, however often it was moved. */
  movedFrom: z.exactOptional(z.strictObject(placed)),
});
export type Position = z.Infer<typeof position>;

/** Where somebody stood, or why that is not known. A missing position never holds up a test. */
export const stood = z.strictObject({
  position: z.nullable(position),
  why: z.nullable(z.oneOf(["denied", "unavailable", "slow", "not-asked"])),
});
export type Stood = z.Infer<typeof stood>;

/** Where a line, hole or ring lies against the crop row. */
export const PLACES = [
  "in-row",
  "between-rows",
  "across-rows",
  "wheel-track",
  "tramline",
  "swath",
  "standing-stubble",
  "other",
] as const;
export const place = z.oneOf(PLACES);
export type Place = z.Infer<typeof place>;
