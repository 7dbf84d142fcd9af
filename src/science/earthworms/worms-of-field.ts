/** Worms of a whole field: every strip on every day on which holes were dug. */
import type { RecordId } from "../../record/ids.ts";
import { ok, type Result } from "../../record/result.ts";
import type { Bounds, Caution, Estimate } from "../estimate.ts";
import { wormsPerHole, wormsPerM2 } from "./field.ts";
import type { HoleCount } from "./hole-count.ts";

/** A hole of the field, with the day of its visit. */
export interface HoleOfField {
  readonly visit: RecordId<"visit">;
  readonly day: string;
  readonly strip: RecordId<"strip">;
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

/** What belongs together: one strip on one day, whoever began a visit. In the order of what came first. */
export const byStripAndDay = <T extends { readonly day: string; readonly strip: string }>(
  all: readonly T[],
): readonly (readonly [T, ...T[]])[] => {
  const groups = new Map<string, [T, ...T[]]>();
  for (const one of all) {
    const key = `${one.day} ${one.strip}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [one]);
    else group.push(one);
  }
  return [...groups.values()];
};

/** The newest day first. */
export const newestFirst = (a: { readonly day: string }, b: { readonly day: string }): number =>
  a.day === b.day ? 0 : a.day < b.day ? 1 : -1;

/**
 * Worms of every strip on every day. Holes of several visits on one day belong together: a visit is one field
 * on one day, even when two people began one each.
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
    .map((group): WormsOnDay => {
      const counts = group.map(({ count }) => count);
      const [perHole, perM2] = [wormsPerHole(counts), wormsPerM2(counts)];
      const said = [perHole, perM2].flatMap((one) => (one.ok ? one.value.cautions : []));
      return {
        day: group[0].day,
        visits: [...new Set(group.map(({ visit }) => visit))],
        strip: group[0].strip,
        unfinished: counts.filter(({ finished }) => !finished).length,
        perHole: meanFound(perHole),
        perM2: meanFound(perM2),
        cautions: [...new Map(said.map((caution) => [caution.code, caution])).values()],
      };
    })
    .sort(newestFirst);
