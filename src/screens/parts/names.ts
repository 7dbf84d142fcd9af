/** What fields and strips are called. */
import type { Catalogue } from "../catalogue.ts";
import type { Listed } from "./reader.ts";

/** A strip by its name, or by what was done there. */
export const stripName = (words: Catalogue, strip: Listed<"strip"> | undefined): string => {
  if (strip === undefined) return words.common.noName;
  if (strip.body.name !== "") return strip.body.name;
  if (strip.body.wholeField) return words.common.wholeField;
  const done = strip.body.done.map((one) => words.treatment[one]).join(", ");
  return done === "" ? words.common.noName : done;
};

/** A field by its name. */
export const fieldName = (words: Catalogue, field: Listed<"field"> | undefined): string =>
  field === undefined || field.body.name === "" ? words.common.noName : field.body.name;
