/** Strips by their tests at one place against the row alone: in the row, between rows, wheel track … */
import { PLACES, type Place } from "../../../record/shapes.ts";
import { type DayStrip, resultsOf } from "../../measure/visit/day-strips.ts";
import type { Settings } from "../../parts/settings.ts";
import type { Measure } from "./conditions.ts";
import { inReps } from "./reps.ts";
import type { Side } from "./sides.ts";

/** Which tests may be compared, with how many of them each strip has. */
export interface PlaceOffered {
  /** Null for all places together. */
  readonly place: Place | null;
  readonly counts: readonly { readonly strip: DayStrip; readonly count: number }[];
}

const testsOf = ({ spots, conditions }: Side): number =>
  Math.max(spots.length, conditions.places?.length ?? 0);

const testsAt = ({ conditions }: Side, place: Place): number =>
  (conditions.places ?? []).filter((one) => one === place).length;

/** Whether what is compared of all sides can be compared of these, which are some of them. */
const standsIn = (sides: readonly Side[], some: readonly Side[]): boolean =>
  inReps(sides) === null ? some.length > 1 && some[0] === sides[0] : inReps(some) !== null;

/**
 * The places against the row of which one can be looked at by itself.
 *
 * @param sides the first of them is set against the others where they do not stand in reps
 * @returns all places together first; empty when no place would leave a test out and still hold two sides
 */
export const placesOffered = (sides: readonly Side[]): readonly PlaceOffered[] => {
  const offered = PLACES.flatMap((place): readonly PlaceOffered[] => {
    const there = sides.filter((side) => testsAt(side, place) > 0);
    const leavesOut = sides.some((side) => testsAt(side, place) < testsOf(side));
    if (!leavesOut || !standsIn(sides, there)) return [];
    return [{ place, counts: there.map((side) => ({ strip: side.strip, count: testsAt(side, place) })) }];
  });
  if (offered.length === 0) return [];
  return [
    { place: null, counts: sides.map((side) => ({ strip: side.strip, count: testsOf(side) })) },
    ...offered,
  ];
};

/** A strip with those of its tests of one measure that were made at a place; what was guessed speaks of all places. */
export const stripAt = (strip: DayStrip, measure: Measure, place: Place, settings: Settings): DayStrip => {
  const only = <T extends { readonly header: { readonly place: Place | null } }>(
    of: Measure,
    tests: readonly T[],
  ): readonly T[] => (of === measure ? tests.filter(({ header }) => header.place === place) : []);
  const { cover, holes, soak } = strip;
  const measured = {
    lines: only("cover", cover.lines),
    holes: only("worms", holes),
    rings: only("soak", soak.rings),
  };
  return { ...strip, ...resultsOf(measured, settings), guesses: {} };
};

/** The place that was chosen for each measure, by name. */
export type OnlyAt = Readonly<Record<string, string | undefined>>;

/** Reads a choice from an address; what it names is not checked, and a place that is not offered is passed over. */
export const onlyAt = (written: string | undefined): OnlyAt =>
  Object.fromEntries((written ?? "").split("+").map((one) => one.split(".") as [string, string]));

/** Writes it for an address. */
export const writeOnlyAt = (only: OnlyAt): string =>
  Object.entries(only)
    .flatMap(([measure, place]) => (place === undefined ? [] : [`${measure}.${place}`]))
    .join("+");
