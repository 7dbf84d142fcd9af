/** What every entry carries: which one it is, when it was looked at and entered, and by whom. */
import { idOf, shortId, wallMs, whole, within } from "./shapes.ts";
import * as z from "./zod.ts";

/** Current version of the entries. */
export const ENTRY_VERSION = 2;

/** Highest place in the order of entries; a file that claims more is refused. */
export const MAX_ORDER = 2 ** 40;

export const moment = {
  v: z.literal(ENTRY_VERSION),
  id: shortId,
  /** Place in the order of entries: one more than the highest that stood there when it was made. */
  n: whole(1, MAX_ORDER),
  /** When it was looked at, by the wall clock. */
  lookedAtMs: wallMs,
  /** When it was entered, by the wall clock. */
  enteredAtMs: wallMs,
  /** When it was entered, by the clock that nobody can set: milliseconds since the page began. */
  monoMs: within(0, 1e12),
  /** The page whose monotonic clock that was. */
  page: shortId,
  device: shortId,
  by: z.nullable(idOf("person")),
} as const;

/** The earlier answers that a correction takes the place of. */
export const replaces = z.exactOptional(z.array(shortId).check(z.minLength(1), z.maxLength(1000)));

/** Looked impossible, and was kept after "yes, I read that". */
export const unusual = z.exactOptional(z.literal(true));
