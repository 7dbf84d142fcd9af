/** How many holes it takes to see a group of worms at all, and what holes without it leave open. */
import { failed, ok, type Result } from "../../record/result.ts";
import { CONFIDENCE_LEVEL, MOST_HOLES, SAMPLES_FOR_A_RANGE } from "../constants.ts";
import type { Estimate, Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import { largestShareUnseen } from "../statistics/proportion.ts";

const METHODS = ["holes-to-see"] as const;
const WORKED = {
  cautions: [{ code: "science/holes-as-if-apart", facts: {} }],
  methods: METHODS,
  sources: sourcesOf(METHODS),
} as const;

const isShare = (share: number): boolean => share > 0 && share <= 1;
const notAShare = (share: number) => failed("science/not-a-probability", { probability: String(share) });

/** Holes in which to look; n counts the one share that was supposed. */
export interface HolesToSee extends Worked {
  readonly holes: number;
}

/**
 * The least number of holes of which at least one holds the group in 95 of 100 tries: `1 − (1 − p)^n ≥ 0.95`.
 *
 * @param share of the ground's holes that hold it, above 0, up to 1
 * @returns `science/not-a-probability`; `science/too-many-holes` where more than 300 would be needed
 *
 * Source: the chance of independent trials.
 *
 * @example
 * holesToSee(0.2).value.holes // => 14
 */
export const holesToSee = (share: number): Result<HolesToSee> => {
  if (!isShare(share)) return notAShare(share);
  // A hair off, so that a chance of exactly 95 of 100 does not ask for one hole more.
  const holes = share === 1 ? 1 : Math.ceil(Math.log(1 - CONFIDENCE_LEVEL) / Math.log1p(-share) - 1e-9);
  if (holes > MOST_HOLES) return failed("science/too-many-holes", { most: MOST_HOLES });
  return ok({ holes, n: 1, sampledBy: "assumptions", ...WORKED });
};

/**
 * How often at least one of n holes holds the group: `1 − (1 − p)^n`.
 *
 * @param share of the ground's holes that hold it, above 0, up to 1
 * @param holes whole, 1 or more
 * @returns a share without a range, for it follows from the share supposed; `science/not-a-probability`,
 * `science/not-a-count`
 *
 * Source: the chance of independent trials.
 *
 * @example
 * chanceToSee(0.2, 10).value.value // => ≈ 0.893
 */
export const chanceToSee = (share: number, holes: number): Result<Estimate> => {
  if (!isShare(share)) return notAShare(share);
  if (!(Number.isSafeInteger(holes) && holes > 0))
    return failed("science/not-a-count", { count: String(holes) });
  return ok({
    value: share === 1 ? 1 : -Math.expm1(holes * Math.log1p(-share)),
    unit: "1",
    n: 1,
    sampledBy: "assumptions",
    range: failed("science/exact-by-definition"),
    ...WORKED,
  });
};

/**
 * The share of holes that may still hold a group that none of n holes showed: the exact one-sided 95 % bound
 * `1 − 0.05^(1/n)`. Not seen is never the same as absent.
 *
 * @param holes in which it could have been seen, whole, 1 or more
 * @returns 0 with its upper bound, from three holes on (`science/too-few-holes`); `science/not-a-count`
 *
 * Source: Clopper & Pearson 1934, the one-sided case.
 *
 * @example
 * shareIfNoneSeen(10).value.range.value.upper // => ≈ 0.2589
 */
export const shareIfNoneSeen = (holes: number): Result<Estimate> => {
  if (!(Number.isSafeInteger(holes) && holes > 0))
    return failed("science/not-a-count", { count: String(holes) });
  const upper = largestShareUnseen(holes, CONFIDENCE_LEVEL);
  if (!upper.ok) return upper;
  return ok({
    value: 0,
    unit: "1",
    n: holes,
    sampledBy: "holes",
    range:
      holes < SAMPLES_FOR_A_RANGE
        ? failed("science/too-few-holes", { needs: SAMPLES_FOR_A_RANGE, has: holes })
        : ok({
            lower: 0,
            upper: upper.value,
            level: CONFIDENCE_LEVEL,
            sides: "upper-only",
            method: "holes-to-see",
          }),
    ...WORKED,
  });
};
