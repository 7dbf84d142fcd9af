/** What a ring says: depth so far, the headline, rates. Worked out once for each state of the ring. */
import { failed, type Result } from "../../../record/result.ts";
import type { Estimate } from "../../../science/estimate.ts";
import { depthAfter, HEADLINE_MINUTES } from "../../../science/infiltration/depth-after.ts";
import { rateOfLastHalfHour } from "../../../science/infiltration/last-stretch.ts";
import { type Levelling, levellingOf } from "../../../science/infiltration/levelling.ts";
import { type Soaking, type SoakPoint, soakingOf } from "../../../science/infiltration/soaking.ts";
import type { DayRing } from "./day.ts";

export interface Headline {
  readonly minutes: (typeof HEADLINE_MINUTES)[number];
  readonly depth: Result<Estimate>;
}

export interface RingResult {
  readonly soaking: Result<Soaking>;
  /** Soaked in so far; null while nothing can be said. Stands still after a leak. */
  readonly soFar: SoakPoint | null;
  readonly headlines: readonly Headline[];
  readonly lastHalfHour: Result<Estimate>;
  readonly levelling: Result<Levelling>;
}

const kept = new WeakMap<DayRing, RingResult>();

const workOut = (ring: DayRing): RingResult => {
  const soaking = soakingOf(ring.reading, ring.set);
  const from = <T>(what: (of: Soaking) => Result<T>): Result<T> =>
    soaking.ok ? what(soaking.value) : failed(soaking.problem.code, soaking.problem.facts);
  const last = soaking.ok ? soaking.value.curve.at(-1) : undefined;
  return {
    soaking,
    soFar: last !== undefined && last.atMin > 0 ? last : null,
    headlines: HEADLINE_MINUTES.map((minutes) => ({
      minutes,
      depth: from((of) => depthAfter(of, minutes)),
    })),
    lastHalfHour: from(rateOfLastHalfHour),
    levelling: from(levellingOf),
  };
};

/** The result of a ring as it is now. */
export const resultOf = (ring: DayRing): RingResult => {
  const there = kept.get(ring);
  if (there !== undefined) return there;
  const result = workOut(ring);
  kept.set(ring, result);
  return result;
};
