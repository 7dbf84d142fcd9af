/** Holes of one visit against holes of another: is it like with like? */
import type { Caution } from "../estimate.ts";
import { effortsOf, effortsUnlike, sameDepth, sameSides } from "./conditions.ts";
import type { HoleCount } from "./hole-count.ts";

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** The largest hole stands for the visit: sizes of one visit seldom differ, and a mean of sizes is none. */
const sidesOf = (holes: readonly HoleCount[]): HoleCount["sidesM"] =>
  holes.reduce<HoleCount["sidesM"]>(
    (largest, { sidesM }) =>
      sidesM !== null && (largest === null || sidesM[0] * sidesM[1] > largest[0] * largest[1])
        ? sidesM
        : largest,
    null,
  );

/**
 * What differs between the holes of two visits. To be said before any number of a comparison; it never
 * removes one.
 *
 * @param now holes of this visit
 * @param before holes of the visit that they are compared with
 * @returns nothing when either is empty or all is alike. `science/depth-unlike-last-time` when mean depths
 * differ by more than 10 %, `science/hole-size-unlike-last-time` beyond 5 % of a side,
 * `science/efforts-unlike-last-time` when mean people × minutes differ by more than half; these limits are
 * rules of this product
 *
 * @example
 * unlikeLastTime(holes20cmDeep, holes10cmDeep); // depth unlike last time
 */
export const unlikeLastTime = (
  now: readonly HoleCount[],
  before: readonly HoleCount[],
): readonly Caution[] => {
  if (now.length === 0 || before.length === 0) return [];
  const cautions: Caution[] = [];
  const depth = (holes: readonly HoleCount[]): number => meanOf(holes.map(({ depthM }) => depthM));
  if (!sameDepth(depth(now), depth(before)))
    cautions.push({ code: "science/depth-unlike-last-time", facts: {} });
  if (!sameSides(sidesOf(now), sidesOf(before)))
    cautions.push({ code: "science/hole-size-unlike-last-time", facts: {} });
  const [efforts, effortsBefore] = [effortsOf(now), effortsOf(before)];
  if (
    efforts.length > 0 &&
    effortsBefore.length > 0 &&
    effortsUnlike([meanOf(efforts), meanOf(effortsBefore)])
  )
    cautions.push({ code: "science/efforts-unlike-last-time", facts: {} });
  return cautions;
};
