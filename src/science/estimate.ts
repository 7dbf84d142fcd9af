/** What a method hands back: a number with everything that a screen must be able to say about it. */
import type { Problem, Result } from "../record/result.ts";
import type { MethodId } from "./methods.ts";
import type { SourceId } from "./sources.ts";

/** Units in UCUM spelling; "1" is a share between 0 and 1, "/{hole}" is per hole. */
export type Unit =
  | "1"
  | "/{hole}"
  | "/m2"
  | "mm"
  | "m"
  | "mm/h"
  | "/d"
  | "d"
  | "kg"
  | "kg/har"
  | "kg/t"
  | "kg/m3"
  | "m2/kg"
  | "{money}/kg"
  | "{money}/t"
  | "{money}/har"
  | "{money}/har/mm"
  | "kg/har/mm"
  | "mm/d"
  | "m/s"
  | "L"
  | "deg";

/** What `n` counts: the things whose differences make the range. */
export type SampledBy =
  | "lines"
  | "holes"
  | "marks"
  | "readings"
  | "conditions"
  | "fixes"
  | "intervals"
  | "rings"
  | "spots"
  | "strips"
  | "pairs"
  | "blocks"
  | "farms"
  | "corners"
  | "years"
  | "photos"
  | "quadrats"
  | "assumptions";

/** Something to say beside a number. It never removes the number. */
export type Caution = Problem;

/** The two ends of a range, both in the unit of the value. */
export interface Bounds {
  readonly lower: number;
  readonly upper: number;
}

/** A range and how it was made. */
export interface Interval extends Bounds {
  /** Share of such ranges that would hold the truth, for example 0.95. */
  readonly level: number;
  /** Which ends were worked out; the other end of a one-sided range is the natural limit. */
  readonly sides: "both" | "upper-only" | "lower-only";
  readonly method: MethodId;
}

/**
 * What stands behind any answer of this room: whatever a screen would show as a number or as a finding is handed back
 * with it. Building blocks, which only lead to an answer, hand back plain numbers: all of `statistics/`, the parts of
 * evaporation in `water/` (air, sun, radiation, drying), the geometry of `position/` and `plan/`, the curves of
 * `infiltration/models/`, and sizes (areas of holes and rings).
 */
export interface Worked {
  readonly n: number;
  readonly sampledBy: SampledBy;
  readonly cautions: readonly Caution[];
  /** The methods used, in the order in which they were applied. */
  readonly methods: readonly MethodId[];
  readonly sources: readonly SourceId[];
}

/** A number with its unit, the samples behind it, and its range or the reason why there is none. */
export interface Estimate extends Worked {
  readonly value: number;
  readonly unit: Unit;
  readonly range: Result<Interval>;
}
