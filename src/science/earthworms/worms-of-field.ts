/** Worms of a whole field: every strip on every day on which holes were dug. */
import type { RecordId } from "../../record/ids.ts";
import { ok, type Result } from "../../record/result.ts";
import type { Place } from "../../record/shapes.ts";
import type { Bounds, Caution, Estimate } from "../estimate.ts";
import {
  byStripAndDay,
  grassByDay,
  newestFirst,
  type OfGround,
  type OnGrass,
  placesOf,
  spotsOf,
} from "../together.ts";
import { wormsPerHole, wormsPerM2 } from "./field.ts";
import type { HoleCount } from "./hole-count.ts";

/** A hole of the field, with the day of its visit. */
export interface HoleOfField extends OfGround {
  readonly visit: RecordId<"visit">;
  readonly count: HoleCount;
}

/** A mean of a strip as lists and drawings need it; the rest is worked out again where somebody asks. */
export interface MeanFound {
  readonly value: number;
  readonly n: number;
  readonly range: Result<Bounds>;
}

/** The worms of one strip on one day. */
export interface WormsOnDay {
  readonly day: string;
  readonly visits: readonly RecordId<"visit">[];
  readonly strip: RecordId<"strip">;
  readonly unfinished: number;
  /** Each place against the row that they lie at, once; null among them where it was not said. */
  readonly places: readonly (Place | null)[];
  readonly perHole: Result<MeanFound>;
  readonly perM2: Result<MeanFound>;
  /** What to say beside the numbers, each once. */
  readonly cautions: readonly Caution[];
}

/** Keeps of an estimate what lists and drawings need. */
export const meanFound = (estimate: Result<Estimate>): Result<MeanFound> => {
  if (!estimate.ok) return estimate;
  const { value, n, range } = estimate.value;
  return ok({
    value,
    n,
    range: range.ok ? ok({ lower: range.value.lower, upper: range.value.upper }) : range,
  });
};

const wormsThen = (group: readonly [HoleOfField, ...HoleOfField[]]): Omit<WormsOnDay, "strip"> => {
  const counts = group.map(({ count }) => count);
  const [perHole, perM2] = [wormsPerHole(counts), wormsPerM2(counts)];
  const said = [perHole, perM2].flatMap((one) => (one.ok ? one.value.cautions : []));
  return {
    day: group[0].day,
    visits: [...new Set(group.map(({ visit }) => visit))],
    unfinished: counts.filter(({ finished }) => !finished).length,
    places: placesOf(group),
    perHole: meanFound(perHole),
    perM2: meanFound(perM2),
    cautions: [...new Map(said.map((caution) => [caution.code, caution])).values()],
  };
};

/**
 * Worms of every strip on every day. Holes of several visits on one day belong together: a visit is one field
 * on one day, even when two people began one each. Holes at an old-grass spot are part of no strip.
 *
 * @param holes oldest first
 * @returns newest day first; a strip without a finished hole carries `science/nothing-read` in place of its
 * numbers, other reasons as `wormsPerHole` and `wormsPerM2`
 *
 * Source: `wormsPerHole`, `wormsPerM2`.
 *
 * @example
 * wormsOfField(holes)[0].perM2; // 225 per m², 3 holes, 57 to 892
 */
export const wormsOfField = (holes: readonly HoleOfField[]): readonly WormsOnDay[] =>
  byStripAndDay(holes)
    .map((group) => ({ ...wormsThen(group), strip: group[0].strip }))
    .sort(newestFirst);

/** The same of the holes at old-grass spots, all spots of the field together. */
export const wormsOfGrass = (holes: readonly HoleOfField[]): readonly OnGrass<WormsOnDay>[] =>
  grassByDay(holes)
    .map((group) => ({ ...wormsThen(group), spots: spotsOf(group) }))
    .sort(newestFirst);
