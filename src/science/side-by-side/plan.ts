/** What it would take to see a difference that is worth while. */
import { failed, ok, type Result } from "../../record/result.ts";
import { LEAST_FREEDOM, WANTED_POWER } from "../constants/comparison.ts";
import { BAND_LEVEL, CONFIDENCE_LEVEL } from "../constants.ts";
import { chiSquareQuantile } from "../statistics/distributions.ts";
import {
  MOST_PLANNED,
  powerOf,
  samplesNeeded,
  smallestVisible,
  type TestDesign,
  type TestWanted,
} from "../statistics/power.ts";
import { type Scale, shownOn } from "./scale.ts";

/** A number of pairs, of blocks, or of samples on each side; the spread of few is known poorly, so it is a band. */
export interface Needed {
  readonly low: number;
  readonly middle: number;
  /** No more than 1000 is said. */
  readonly high: number;
}

export interface ComparisonPlan {
  readonly design: TestDesign;
  /** As the person named it: a difference above 0, or a ratio above 1; 0 for what is no number. */
  readonly worthwhile: number;
  /** In all, not in addition. */
  readonly needed: Result<Needed>;
  /** How often the worthwhile difference would show with what there is now. */
  readonly power: Result<number>;
  /** The smallest difference, or ratio above 1, that shows in 80 of 100 tries with what there is now. */
  readonly smallestVisible: Result<number>;
}

/** A spread as it is worked with, and how well it is known. */
export interface PlannedSpread {
  readonly spread: number;
  readonly degreesOfFreedom: number;
  /** Pairs, blocks, or samples on each side, so far. */
  readonly n: number;
}

/** With many pairs of treatments to look at every range is raised, and so is what it takes (Bonferroni). */
const levelOf = (design: TestDesign): number => {
  if (typeof design === "string") return CONFIDENCE_LEVEL;
  return 1 - (1 - CONFIDENCE_LEVEL) / ((design.treatments * (design.treatments - 1)) / 2);
};

const neededFor = (
  difference: number,
  { spread, degreesOfFreedom }: PlannedSpread,
  wanted: TestWanted,
): Result<Needed> => {
  const freedom = Math.max(LEAST_FREEDOM, degreesOfFreedom);
  const few = chiSquareQuantile((1 + BAND_LEVEL) / 2, freedom);
  const many = chiSquareQuantile((1 - BAND_LEVEL) / 2, freedom);
  if (!few.ok) return few;
  if (!many.ok) return many;
  const low = samplesNeeded(difference, spread * Math.sqrt(freedom / few.value), wanted);
  if (!low.ok) return low;
  const [middle, high] = [spread, spread * Math.sqrt(freedom / many.value)].map((wide) => {
    const needed = samplesNeeded(difference, wide, wanted);
    return needed.ok ? needed.value : MOST_PLANNED;
  });
  return ok({ low: low.value, middle: middle ?? MOST_PLANNED, high: high ?? MOST_PLANNED });
};

/**
 * Samples for 80 % power at the difference called worthwhile, the power of what there is, and the smallest
 * difference that it can show; all at the 95 % level, raised for blocks of three treatments or more as their ranges are. The band of the number is the middle half of what the
 * spread may be, known with at least five degrees of freedom.
 *
 * @param worthwhile above 0 for differences, above 1 for ratios (2 means twice or half as much)
 * @returns `science/no-worthwhile-difference` in all three for another one; `science/no-spread-seen`,
 * `science/too-many-samples` as `samplesNeeded`
 *
 * Source: NIST/SEMATECH e-Handbook, 7.2.2.2; the band is a rule of this product.
 *
 * @example
 * planFor({ spread: 0.1, degreesOfFreedom: 5, n: 6 }, 0.1, "pairs", "difference").needed.value // => { middle: 10 }
 */
export const planFor = (
  spread: PlannedSpread,
  worthwhile: number,
  design: TestDesign,
  scale: Scale,
): ComparisonPlan => {
  const difference = scale === "ratio" ? Math.log(worthwhile) : worthwhile;
  if (!(difference > 0 && Number.isFinite(difference))) {
    const none = failed("science/no-worthwhile-difference");
    const named = Number.isFinite(worthwhile) ? worthwhile : 0;
    return { design, worthwhile: named, needed: none, power: none, smallestVisible: none };
  }
  const wanted = { design, level: levelOf(design), power: WANTED_POWER };
  const smallest = smallestVisible(spread.spread, spread.n, wanted);
  const shown = smallest.ok ? shownOn(scale, smallest.value) : null;
  return {
    design,
    worthwhile,
    needed: neededFor(difference, spread, wanted),
    power: powerOf(difference, spread.spread, spread.n, wanted),
    smallestVisible:
      shown === null ? smallest : Number.isFinite(shown) ? ok(shown) : failed("science/no-number"),
  };
};
