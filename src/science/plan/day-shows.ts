/** What so many lines, holes and rings on each strip can show, before the first of them. */
import { failed, ok, type Problem, type Result } from "../../record/result.ts";
import {
  CONFIDENCE_LEVEL,
  PLANNING_K,
  PLANNING_SPREAD,
  PLANNING_WORMS_PER_M2,
  POWER,
  SAMPLES_FOR_A_RANGE,
} from "../constants.ts";
import { variationOf } from "../earthworms/holes-needed.ts";
import { studentQuantile } from "../statistics/distributions.ts";
import { smallestVisible } from "../statistics/power.ts";

/** What a mean can show; both in the unit of the spread. */
export interface Shows {
  /** Half width of the range of one strip. */
  readonly giveOrTake: number;
  /** Difference between two strips that shows in 80 of 100 tries. */
  readonly smallestDifference: number;
}

const showsWith = (spread: number, n: number, few: Problem["code"]): Result<Shows> => {
  if (n < SAMPLES_FOR_A_RANGE)
    return failed(few, { needs: SAMPLES_FOR_A_RANGE, has: Number.isFinite(n) ? n : 0 });
  const t = studentQuantile((1 + CONFIDENCE_LEVEL) / 2, n - 1);
  if (!t.ok) return t;
  const smallest = smallestVisible(spread, n, {
    design: "two-groups",
    level: CONFIDENCE_LEVEL,
    power: POWER,
  });
  if (!smallest.ok) return smallest;
  return ok({ giveOrTake: (t.value * spread) / Math.sqrt(n), smallestDifference: smallest.value });
};

/**
 * What n lines on each strip can show at half cover, where lines differ most: shares, 0.05 is 5 points.
 *
 * @param marks of the rope, whole, 1 or more
 * @returns `science/too-few-lines` under three, `science/no-marks-read` for a rope without marks
 *
 * Source: as `linesNeeded` and `smallestVisible`.
 *
 * @example
 * const shows = linesShow(9, 100);
 * shows.ok && shows.value.giveOrTake // => ≈ 0.048
 */
export const linesShow = (n: number, marks: number): Result<Shows> =>
  Number.isSafeInteger(marks) && marks > 0
    ? showsWith(PLANNING_SPREAD * Math.sqrt(0.25 / marks), n, "science/too-few-lines")
    : failed("science/no-marks-read");

/** Spread between holes of an area that is planned with, as a share of the mean. */
export const plannedHoleSpread = (areaM2: number): Result<number> =>
  variationOf(PLANNING_WORMS_PER_M2 * areaM2, PLANNING_K);

/**
 * What n holes on each strip can show, as shares of the mean, with the spread of worms in clumps.
 *
 * @param areaM2 of a hole, above 0
 * @returns `science/too-few-holes` under three, `science/no-number` for an area that is 0, negative or not finite
 *
 * Source: as `holesNeeded` and `smallestVisible`.
 */
export const holesShow = (n: number, areaM2: number): Result<Shows> => {
  const spread = plannedHoleSpread(areaM2);
  return spread.ok ? showsWith(spread.value, n, "science/too-few-holes") : spread;
};
