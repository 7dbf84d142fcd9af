/** What every comparison hands back. */
import { failed, ok, type Result } from "../../record/result.ts";
import { LIKELY_LEVEL } from "../constants/comparison.ts";
import { CONFIDENCE_LEVEL, SAMPLES_FOR_A_RANGE } from "../constants.ts";
import type { Interval, Unit, Worked } from "../estimate.ts";
import type { MethodId } from "../methods.ts";
import { studentRange } from "../statistics/student-range.ts";
import type { StudentTest } from "../statistics/two-means.ts";
import type { ComparisonPlan } from "./plan.ts";
import { boundsOn, noneOn, type Scale, shownOn } from "./scale.ts";
import { type Word, wordFor } from "./words.ts";

export interface Comparison extends Worked {
  readonly scale: Scale;
  /** First less second in `unit`, or first over second (unit "1"). */
  readonly value: number;
  readonly unit: Unit;
  readonly range: Result<Interval>;
  /** The narrower range of *probably different*. */
  readonly likely: Result<Interval>;
  readonly word: Word;
  /** How often chance alone gives a difference this far from none, by the rule of the ranges. */
  readonly chance: Result<number>;
}

/** A comparison that can say what more samples would bring. */
export interface PlannedComparison extends Comparison {
  readonly plan: ComparisonPlan;
}

/** What is asked of a comparison. */
export interface Asked {
  readonly scale: Scale;
  /** Unit of the values. */
  readonly unit: Unit;
  /** The difference called worthwhile: above 0, or above 1 for a ratio. */
  readonly worthwhile: number;
  /** For drawn arrangements, where there are too many to try each. */
  readonly seed: number;
}

/** The parts of a comparison that Student's t gives, on the scale that is shown. */
export const studentParts = (
  test: Result<StudentTest>,
  samples: number,
  scale: Scale,
  method: MethodId,
): Pick<Comparison, "range" | "likely" | "word" | "chance"> => {
  const enough: Result<StudentTest> =
    samples < SAMPLES_FOR_A_RANGE
      ? failed("science/too-few-to-compare", { needs: SAMPLES_FOR_A_RANGE, has: samples })
      : test;
  const at = (level: number): Result<Interval> => {
    if (!enough.ok) return enough;
    const { difference, standardError, degreesOfFreedom } = enough.value;
    const bounds = boundsOn(scale, studentRange(difference, standardError, degreesOfFreedom, level));
    return bounds.ok ? ok({ ...bounds.value, level, sides: "both", method }) : bounds;
  };
  const [range, likely] = [at(CONFIDENCE_LEVEL), at(LIKELY_LEVEL)];
  return {
    range,
    likely,
    word: wordFor(range, likely, noneOn(scale)),
    chance: enough.ok ? ok(enough.value.chance) : enough,
  };
};

/** A value back on the scale shown, or the reason when it is too large to be a number. */
export const shownValue = (scale: Scale, number: number): Result<number> => {
  const value = shownOn(scale, number);
  return Number.isFinite(value) ? ok(value) : failed("science/no-number");
};
