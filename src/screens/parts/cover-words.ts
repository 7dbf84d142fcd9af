/** Ground cover in words: the value, its range or why there is none, and how many lines are still needed. */
import type { Catalogue } from "../catalogue.ts";
import { writeNumber, writePercent } from "./numbers.ts";
import type { Settings } from "./settings.ts";
import type { GroundCover, StripCover } from "./strip-cover.ts";
import { TONGUE } from "./words.common.ts";

/** "Strip so far: 81 %, 74 to 87, 3 lines." */
export const stripSentence = (words: Catalogue, { cover, oldGrass }: GroundCover): string => {
  if (!cover.ok) return words.line.stripNone(oldGrass);
  const lines = words.common.lines(cover.value.n);
  const value = writePercent(cover.value.value, TONGUE);
  const { range } = cover.value;
  const said = range.ok
    ? words.line.strip(
        value,
        writePercent(range.value.lower, TONGUE),
        writePercent(range.value.upper, TONGUE),
        lines,
      )
    : words.line.stripNoRange(value, lines);
  return `${words.line.ground(oldGrass)} ${said}`;
};

/** "About 2 more lines for give or take 5 points." Empty when it cannot be said. */
export const moreSentence = (
  words: Catalogue,
  { more, cover }: Pick<StripCover, "more" | "cover">,
  settings: Settings,
): string => {
  if (!cover.ok || !more.ok) return "";
  const { low, high } = more.value.more;
  return words.line.more(low, high, writeNumber(settings.marginPoints, TONGUE, 1));
};
