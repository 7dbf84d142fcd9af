/** Ground cover of a whole field: every strip on every day it was visited. */
import type { RecordId } from "../../record/ids.ts";
import { ok, type Result } from "../../record/result.ts";
import type { Place } from "../../record/shapes.ts";
import type { Bounds, Caution } from "../estimate.ts";
import {
  byStripAndDay,
  grassByDay,
  newestFirst,
  type OfGround,
  type OnGrass,
  placesOf,
  spotsOf,
} from "../together.ts";
import type { Counting, LineCounts } from "./line.ts";
import { coverOfStrip } from "./strip.ts";
import { chanceOfAtLeast, kindAimedAt } from "./targets.ts";

/** A line of the field, with the day of its visit and what its marks add up to. */
export interface LineOfField extends OfGround {
  readonly id: RecordId<"observation">;
  readonly visit: RecordId<"visit">;
  /** Only finished lines count towards a strip. */
  readonly finished: boolean;
  readonly counts: LineCounts;
}

/** What the person wants to know. */
export interface CoverWanted extends Counting {
  /** Share of the ground that is enough; null for none. */
  readonly target: number | null;
}

/**
 * A strip's cover as lists and drawings need it. A field of many years has hundreds of them: whatever else
 * `coverOfStrip` says is worked out again where somebody asks for it.
 */
export interface CoverFound {
  readonly value: number;
  readonly n: number;
  readonly range: Result<Bounds>;
}

/** One strip on one day. */
export interface StripOnDay {
  readonly day: string;
  /** The visits of that day; several when two people began one each. */
  readonly visits: readonly RecordId<"visit">[];
  readonly strip: RecordId<"strip">;
  readonly finished: number;
  readonly unfinished: number;
  /** Each place against the row that lines lie at, once; null among them where it was not said. */
  readonly places: readonly (Place | null)[];
  readonly cover: Result<CoverFound>;
  /** What has to be borne in mind with the cover; none without one. */
  readonly cautions: readonly Caution[];
  /** Chance that the true cover, of the kind that is aimed at, is at least the target; null without a target or with too few lines. */
  readonly chance: number | null;
}

/** Old grass on one day. What is enough on a strip is not asked of it. */
export type GrassOnDay = Omit<OnGrass<StripOnDay>, "chance">;

/** A field as its lines tell it. */
export interface FieldCover {
  /** Lines at old-grass spots too. */
  readonly lines: number;
  /** Lines that were begun and not finished, newest first. */
  readonly unfinished: readonly RecordId<"observation">[];
  /** Newest day first; the strips of a day in the order of their first lines. */
  readonly onDays: readonly StripOnDay[];
  /** Newest day first; none of it stands among the strips. */
  readonly oldGrass: readonly GrassOnDay[];
}

const found = (
  counts: readonly LineCounts[],
  wanted: CoverWanted,
): Pick<StripOnDay, "cover" | "cautions"> => {
  const cover = coverOfStrip(counts, "ground-cover", wanted);
  if (!cover.ok) return { cover, cautions: [] };
  const { value, n, range, cautions } = cover.value;
  return {
    cover: ok({
      value,
      n,
      range: range.ok ? ok({ lower: range.value.lower, upper: range.value.upper }) : range,
    }),
    cautions,
  };
};

const chanceIn = (counts: readonly LineCounts[], wanted: CoverWanted): number | null => {
  if (wanted.target === null) return null;
  const chance = chanceOfAtLeast(counts, kindAimedAt(wanted.target), wanted, wanted.target);
  return chance.ok ? chance.value.chance : null;
};

const countsIn = (lines: readonly LineOfField[]): readonly LineCounts[] =>
  lines.flatMap(({ finished, counts }) => (finished ? [counts] : []));

const coverThen = (
  lines: readonly [LineOfField, ...LineOfField[]],
  wanted: CoverWanted,
): Omit<StripOnDay, "strip" | "chance"> => {
  const counts = countsIn(lines);
  return {
    day: lines[0].day,
    visits: [...new Set(lines.map(({ visit }) => visit))],
    finished: counts.length,
    unfinished: lines.length - counts.length,
    places: placesOf(lines),
    ...found(counts, wanted),
  };
};

/**
 * Ground cover of every strip on every day, from all lines of a field. Lines of several visits on one day
 * belong together: a visit is one field on one day, even when two people began one each. Lines at an old-grass
 * spot are part of no strip and stand apart.
 *
 * @param lines oldest first
 * @param wanted how kinds are added up, which target
 * @returns a strip without a finished line carries `science/no-marks-read` in place of its cover
 *
 * Source: `coverOfStrip`, `chanceOfAtLeast`.
 *
 * @example
 * coverOfField(lines, { stoneCounts: false, target: 0.75 }).onDays[0];
 */
export const coverOfField = (lines: readonly LineOfField[], wanted: CoverWanted): FieldCover => ({
  lines: lines.length,
  unfinished: lines.flatMap(({ id, finished }) => (finished ? [] : [id])).reverse(),
  onDays: byStripAndDay(lines)
    .map((group) => ({
      ...coverThen(group, wanted),
      strip: group[0].strip,
      chance: chanceIn(countsIn(group), wanted),
    }))
    .sort(newestFirst),
  oldGrass: grassByDay(lines)
    .map((group) => ({ ...coverThen(group, wanted), spots: spotsOf(group) }))
    .sort(newestFirst),
});
