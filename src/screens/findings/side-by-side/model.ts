/** The strips of one day, side by side: like with like first, then the numbers, then what they prove. */
import type { RecordId } from "../../../record/ids.ts";
import type { Result } from "../../../record/result.ts";
import type { Place } from "../../../record/shapes.ts";
import {
  type Conditions,
  type Likeness as LikenessOfTwo,
  unlikenesses,
} from "../../../science/side-by-side/like-with-like.ts";
import type { DayOfField, DayStrip, Yardstick } from "../../measure/visit/day-strips.ts";
import type { Listed } from "../../parts/reader.ts";
import type { Settings } from "../../parts/settings.ts";
import { type OnlyAt, type PlaceOffered, placesOffered, stripAt } from "./at-place.ts";
import { conditionsTogether, type Measure } from "./conditions.ts";
import { type Compared, comparePlaces } from "./places.ts";
import { compareReps, type RepsNow } from "./reps.ts";
import { type Asked, askedOf, estimateOf, type Side, sidesOf } from "./sides.ts";

/** One of two that are compared, with its conditions. */
export interface Half {
  readonly strip: Listed<"strip"> | undefined;
  readonly conditions: Conditions;
}

/** Two that are compared: whether it is like with like. */
export interface Likeness extends LikenessOfTwo {
  readonly a: Half;
  readonly b: Half;
}

/** Two strips as places. */
export interface PlacesNow {
  readonly a: Side;
  readonly b: Side;
  readonly compared: Result<Compared>;
}

/** One measure on all strips. */
export interface MeasureNow {
  readonly asked: Asked;
  /** Which tests may be compared; empty when there is nothing to choose. */
  readonly offered: readonly PlaceOffered[];
  /** The place against the row whose tests alone are compared; null for all places. */
  readonly at: Place | null;
  readonly sides: readonly Side[];
  /** The old-grass spot's own number, or null. */
  readonly yardstick: ReturnType<typeof estimateOf> | null;
  readonly likeness: readonly Likeness[];
  /** Null when the strips do not stand in reps. */
  readonly reps: RepsNow | null;
  /** The chosen strip against each other one; empty where reps are compared. */
  readonly places: readonly PlacesNow[];
}

export interface SideBySideNow {
  readonly day: DayOfField;
  readonly visit: Listed<"visit">;
  readonly base: DayStrip | undefined;
  readonly yardstick: Yardstick | null;
  /** Measures that at least one strip has. */
  readonly measures: readonly MeasureNow[];
  /** Anything unlike, or not known to be alike: said before any number. */
  readonly isUnlike: boolean;
  /** Comparisons of two places that can be looked at, those of each place against the row among them. */
  readonly looks: number;
}

const looksAt = ({ reps, places, offered }: MeasureNow): number =>
  reps !== null || offered.length === 0
    ? places.length
    : offered.reduce((sum, { counts }) => sum + counts.length - 1, 0);

const MEASURES = ["cover", "worms", "soak"] as const satisfies readonly Measure[];

const likenessOf = (a: Half, b: Half): Likeness => ({
  a,
  b,
  ...unlikenesses(a.conditions, b.conditions),
});

const likenessOfReps = ({ treatments }: RepsNow): readonly Likeness[] => {
  const halves = treatments.map(
    ({ strip, sides }): Half => ({
      strip,
      conditions: conditionsTogether(sides.map(({ conditions }) => conditions)),
    }),
  );
  return halves.flatMap((a, at) => halves.slice(at + 1).map((b) => likenessOf(a, b)));
};

/**
 * One measure of these strips; the first of them is set against the others where they do not stand in reps.
 *
 * @param only the place against the row whose tests alone are compared; one that is not offered is passed over.
 * Of what is asked nothing changes by it: the same minutes, and the same unit, as of all places together
 */
export const measureOf = (
  measure: Measure,
  strips: readonly DayStrip[],
  yardstick: Yardstick | null,
  settings: Settings,
  only?: string,
): MeasureNow => {
  const asked = askedOf(measure, strips, settings.stonesCount);
  const all = sidesOf(strips, asked);
  const offered = placesOffered(all);
  const at = offered.find(({ place }) => place === only)?.place ?? null;
  const sides =
    at === null
      ? all
      : sidesOf(
          all.map(({ strip }) => stripAt(strip, measure, at, settings)),
          asked,
        );
  const reps = compareReps(sides, asked);
  const [base, ...others] = sides;
  const places =
    reps !== null || base === undefined
      ? []
      : others.map((b): PlacesNow => ({ a: base, b, compared: comparePlaces(base, b, asked) }));
  const half = ({ strip, conditions }: Side): Half => ({ strip: strip.strip, conditions });
  return {
    asked,
    offered,
    at,
    sides,
    yardstick: yardstick === null ? null : estimateOf(yardstick, asked),
    likeness: reps === null ? places.map(({ a, b }) => likenessOf(half(a), half(b))) : likenessOfReps(reps),
    reps,
    places,
  };
};

/**
 * The strips of a day side by side.
 *
 * @param strip the one that the others are compared with; null for the one measured last
 * @param only the places whose tests alone are compared
 * @returns null when the visit is not on this device
 */
export const sideBySideOf = (
  day: DayOfField | null,
  settings: Settings,
  strip: RecordId<"strip"> | null,
  only: OnlyAt,
): SideBySideNow | null => {
  const visit = day?.visits[0];
  if (day === null || visit === undefined) return null;
  const asked = strip === null ? undefined : day.stripOf(strip);
  const base = day.strips.find((one) => one.id === asked) ?? day.strips[0];
  const strips = [...day.strips].sort((a, b) => Number(b === base) - Number(a === base));
  const measures = MEASURES.map((measure) =>
    measureOf(measure, strips, day.yardstick, settings, only[measure]),
  ).filter(({ sides, offered }) => sides.length > 0 || offered.length > 0);
  return {
    day,
    visit,
    base,
    yardstick: day.yardstick,
    measures,
    isUnlike: measures.some(({ likeness }) => likeness.some(({ unlike }) => unlike.length > 0)),
    looks: measures.reduce((sum, one) => sum + looksAt(one), 0),
  };
};
