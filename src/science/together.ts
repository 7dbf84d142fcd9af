/** What belongs together among the tests of a field: one strip on one day, or old grass on one day. */
import type { RecordId } from "../record/ids.ts";
import type { Place } from "../record/shapes.ts";

/** Where and when a test of a field was made. */
export interface OfGround {
  readonly day: string;
  readonly strip: RecordId<"strip">;
  /** The old-grass spot where it was made: it is part of no strip then; null on a strip. */
  readonly oldGrass: RecordId<"spot"> | null;
  /** The place against the row; null where it was not said. */
  readonly place: Place | null;
}

/** What is said of a strip on one day, said of old grass: the farm's own yardstick, which lies in no strip. */
export type OnGrass<T extends { readonly strip: RecordId<"strip"> }> = Omit<T, "strip"> & {
  readonly spots: readonly RecordId<"spot">[];
};

type Group<T> = readonly [T, ...T[]];

/** Puts together what has the same key, in the order of what came first. */
export const groupedBy = <T>(all: readonly T[], by: (one: T) => string): ReadonlyMap<string, Group<T>> => {
  const groups = new Map<string, [T, ...T[]]>();
  for (const one of all) {
    const group = groups.get(by(one));
    if (group === undefined) groups.set(by(one), [one]);
    else group.push(one);
  }
  return groups;
};

/** One strip on one day, whoever began a visit, in the order of what came first. Old grass is left out. */
export const byStripAndDay = <T extends OfGround>(all: readonly T[]): readonly Group<T>[] => [
  ...groupedBy(
    all.filter(({ oldGrass }) => oldGrass === null),
    ({ day, strip }) => `${day} ${strip}`,
  ).values(),
];

/** Old grass on one day, all spots of the field together, in the order of what came first. */
export const grassByDay = <T extends OfGround>(all: readonly T[]): readonly Group<T>[] => [
  ...groupedBy(
    all.filter(({ oldGrass }) => oldGrass !== null),
    ({ day }) => day,
  ).values(),
];

/** The old-grass spots of a group, each once. */
export const spotsOf = (group: readonly OfGround[]): readonly RecordId<"spot">[] => [
  ...new Set(group.flatMap(({ oldGrass }) => oldGrass ?? [])),
];

/** Each place against the row that the tests of a group lie at, once; null among them where it was not said. */
export const placesOf = (group: readonly OfGround[]): readonly (Place | null)[] => [
  ...new Set(group.map(({ place }) => place)),
];

/** The newest day first. */
export const newestFirst = (a: { readonly day: string }, b: { readonly day: string }): number =>
  a.day === b.day ? 0 : a.day < b.day ? 1 : -1;
