/** What fields and strips are called. */
import type { Catalogue } from "../catalogue.ts";
import { dayOf, writeClock, writeDay } from "./numbers.ts";
import type { Listed } from "./reader.ts";

/** A strip by its name, or by what was done there. */
export const stripName = (words: Catalogue, strip: Listed<"strip"> | undefined): string => {
  if (strip === undefined) return words.common.noName;
  if (strip.body.name !== "") return strip.body.name;
  if (strip.body.wholeField) return words.common.wholeField;
  const done = strip.body.done.map((one) => words.treatment[one]).join(", ");
  return done === "" ? words.common.noName : done;
};

/**
 * A field by its name. One without a name carries the day and time at which it was written down: two fields
 * that were measured before they were named could not be told apart otherwise.
 */
export const fieldName = (words: Catalogue, field: Listed<"field"> | undefined): string => {
  if (field === undefined) return words.common.noName;
  if (field.body.name !== "") return field.body.name;
  const { tongue, noName } = words.common;
  const { atMs } = field.row.keys;
  return `${noName} (${writeDay(dayOf(atMs), tongue)}, ${writeClock(atMs, tongue)})`;
};
