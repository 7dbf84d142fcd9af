/** Two strips against each other, as the two places that they are. */
import type { Result } from "../../../record/result.ts";
import { countedHoles } from "../../../science/earthworms/field.ts";
import type { Comparison } from "../../../science/side-by-side/comparison.ts";
import {
  type CountsOf,
  compareCounts,
  equalCounts,
  samplesEachSide,
} from "../../../science/side-by-side/counts.ts";
import { compareGroups, type GroupsComparison } from "../../../science/side-by-side/groups.ts";
import type { ComparisonPlan } from "../../../science/side-by-side/plan.ts";
import type { Asked, Side } from "./sides.ts";

/** For arrangements that are drawn by chance: the same strips always give the same answer. */
const SEED = 1;

/** A comparison with what more samples would bring. */
export interface Compared {
  readonly comparison: Comparison;
  readonly plan: ComparisonPlan;
  /** Samples of the side that has fewer. */
  readonly fewest: number;
  /** As many on each side as tell as much as what there is. */
  readonly each: number;
  /** Second over first, because nothing was found in the second. */
  readonly turned: boolean;
}

/** The holes of one place as equal counts; null when they are of several sizes or of none that is known. */
const countsOf = ({ strip }: Side, per: Asked["per"]): CountsOf | null => {
  const all = countedHoles(strip.holeCounts);
  if (!all.ok) return null;
  const counts = equalCounts(
    all.value.counted.map(({ hole, worms }) => ({ worms, sidesM: hole.sidesM })),
    per,
  );
  return counts.ok ? counts.value : null;
};

/**
 * Compares two strips by the lines, holes or rings on them. It describes two places: ground and treatment cannot
 * be told apart.
 */
export const comparePlaces = (a: Side, b: Side, asked: Asked): Result<Compared> => {
  const { scale, worthwhile } = asked;
  const unit = a.estimate.unit;
  const groups: Result<GroupsComparison> = compareGroups(
    a.spots,
    b.spots,
    asked.measure === "worms" ? "holes" : "spots",
    {
      scale,
      unit,
      worthwhile,
      seed: SEED,
    },
  );
  const samples = {
    fewest: Math.min(a.spots.length, b.spots.length),
    each: samplesEachSide(a.spots.length, b.spots.length),
  };
  const counts = asked.measure === "worms" ? [countsOf(a, asked.per), countsOf(b, asked.per)] : [];
  const [first, second] = counts;
  if (first !== undefined && first !== null && second !== undefined && second !== null) {
    const compared = compareCounts(first, second, worthwhile);
    if (!compared.ok) return compared;
    const { plan, turned } = compared.value;
    return { ok: true, value: { comparison: compared.value, plan, turned, ...samples } };
  }
  if (!groups.ok) return groups;
  return {
    ok: true,
    value: { comparison: groups.value, plan: groups.value.plan, turned: false, ...samples },
  };
};
