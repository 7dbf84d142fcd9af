/** What the ground of a test is called. */
import type { Catalogue } from "../catalogue.ts";
import { stripName } from "./names.ts";
import type { Listed } from "./reader.ts";

/** Where a test was made: its strip, with the marked spot on it; an old-grass spot lies in no strip. */
export const groundName = (
  words: Catalogue,
  strip: Listed<"strip"> | undefined,
  spot: Listed<"spot"> | undefined,
): string => {
  const name = spot?.body.name ?? "";
  if (spot?.body.oldGrass === true) return words.common.oldGrass(name);
  return name === "" ? stripName(words, strip) : `${stripName(words, strip)}, ${name}`;
};
