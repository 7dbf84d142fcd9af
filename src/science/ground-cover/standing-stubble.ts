/** Height of standing stubble. */
import { failed, type Result } from "../../record/result.ts";
import { TALLEST_STUBBLE_MM } from "../constants/straw.ts";
import type { Estimate } from "../estimate.ts";
import { meanOverLines } from "../statistics/mean.ts";

/**
 * Mean height of the stubble that stands, over the lines of a strip; the line is the unit, since stems of one line
 * were cut by the same pass. Where nothing stands there is no height: such a place belongs to the count of marks, and
 * a height of 0 would make tall stubble with gaps look like short stubble.
 *
 * @param lines per line the heights of standing stems in mm, measured from the ground along the stem; lines without
 * one are left out
 * @returns mm, with its range from three lines on, as `meanOverLines`; `science/not-a-stubble-height` for a height
 * that is 0, negative, above 3000 mm or not finite, `science/nothing-read` when nothing was measured
 *
 * Source: Lohr 1999, chapter 5 (ratio estimator over clusters).
 *
 * @example
 * stubbleHeight([[180, 220], [200], [150, 250]]).value.value // => 200
 */
export const stubbleHeight = (lines: readonly (readonly number[])[]): Result<Estimate> => {
  const bad = lines.flat().find((height) => !(height > 0 && height <= TALLEST_STUBBLE_MM));
  if (bad !== undefined)
    return failed("science/not-a-stubble-height", { value: String(bad), most: TALLEST_STUBBLE_MM });
  return meanOverLines(lines, "mm");
};
