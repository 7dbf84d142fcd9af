/** What soaked in on a whole field: every strip on every day on which rings stood. */
import type { RecordId } from "../../record/ids.ts";
import { failed, type Result } from "../../record/result.ts";
import type { Place } from "../../record/shapes.ts";
import { type MeanFound, meanFound } from "../earthworms/worms-of-field.ts";
import type { Caution } from "../estimate.ts";
import {
  byStripAndDay,
  grassByDay,
  newestFirst,
  type OfGround,
  type OnGrass,
  placesOf,
  spotsOf,
} from "../together.ts";
import { depthAfter, HEADLINE_MINUTES } from "./depth-after.ts";
import { meanOfRings, type RingPoint } from "./replicates.ts";
import type { Soaking } from "./soaking.ts";

/** A ring of the field, with the day of its visit and what soaked in there. */
export interface RingOfField extends OfGround {
  readonly id: RecordId<"observation">;
  readonly visit: RecordId<"visit">;
  /** The ring that this one goes on from, after a leak. */
  readonly follows: RecordId<"observation"> | null;
  readonly soaking: Result<Soaking>;
}

/** The depth after so many minutes, over the rings whose readings reach so far. */
export interface SoakedAfter {
  readonly minutes: (typeof HEADLINE_MINUTES)[number];
  /** In millimetres. */
  readonly depth: Result<MeanFound>;
}

/** The rings of one strip on one day. */
export interface SoakedOnDay {
  readonly day: string;
  readonly visits: readonly RecordId<"visit">[];
  readonly strip: RecordId<"strip">;
  /** Rings that stood there, whatever became of them; one that goes on after a leak is the same ring. */
  readonly rings: number;
  /** Each place against the row that they lie at, once; null among them where it was not said. */
  readonly places: readonly (Place | null)[];
  readonly after: readonly SoakedAfter[];
  readonly cautions: readonly Caution[];
}

const pointOf = (ring: RingOfField, minutes: number): readonly RingPoint[] => {
  if (!ring.soaking.ok) return [];
  const { named, stepMm } = ring.soaking.value;
  const depth = depthAfter(ring.soaking.value, minutes);
  if (!depth.ok) return [];
  // Nothing at all has no logarithm: one step of the ruler is the least that would have shown.
  return [{ id: ring.id, value: depth.value.value, least: stepMm, censored: false, ...named }];
};

/**
 * The points of a strip. A ring that leaked and the one that goes on from it a pace away are one sample: the
 * later one stands for both when it reaches so far, else the earlier one.
 */
const pointsOf = (rings: readonly RingOfField[], minutes: number): readonly RingPoint[] => {
  const points = new Map(rings.map((ring) => [ring.id, pointOf(ring, minutes)]));
  // A file may hold rings that follow each other in a circle: each is asked once.
  const isGoneOn = (id: RecordId<"observation">, asked = new Set<string>([id])): boolean =>
    rings.some((ring) => {
      if (ring.follows !== id || asked.has(ring.id)) return false;
      asked.add(ring.id);
      return (points.get(ring.id) ?? []).length > 0 || isGoneOn(ring.id, asked);
    });
  return rings.flatMap(({ id }) => (isGoneOn(id) ? [] : (points.get(id) ?? [])));
};

const soakedThen = (group: readonly [RingOfField, ...RingOfField[]]): Omit<SoakedOnDay, "strip"> => {
  const ids = new Set(group.map(({ id }) => id));
  const stood = group.filter(({ follows }) => follows === null || !ids.has(follows)).length;
  // A ring over a burrow runs dry first: it may have no number after so many minutes.
  const hasBurrow = group.some(({ soaking }) => soaking.ok && soaking.value.named.burrow);
  const means = HEADLINE_MINUTES.map((minutes) => {
    const points = pointsOf(group, minutes);
    return {
      minutes,
      mean: points.length === 0 ? failed("science/nothing-read") : meanOfRings(points, "mm", hasBurrow),
      missing: stood - points.length,
    };
  });
  const said = means.flatMap(({ mean }) => (mean.ok ? mean.value.cautions : []));
  const missing = means.flatMap(({ minutes, mean, missing: rings }): readonly Caution[] =>
    mean.ok && rings > 0
      ? [{ code: "science/rings-not-read-so-long", facts: { minutes, rings, of: stood } }]
      : [],
  );
  return {
    day: group[0].day,
    visits: [...new Set(group.map(({ visit }) => visit))],
    rings: stood,
    places: placesOf(group),
    after: means.map(({ minutes, mean }) => ({ minutes, depth: meanFound(mean) })),
    cautions: [...new Map(said.map((caution) => [caution.code, caution])).values(), ...missing],
  };
};

/**
 * Depth soaked in after 30, 60 and 180 minutes, for every strip on every day: the geometric mean of the rings
 * whose readings reach so far, with its range. A ring that soaks fast runs dry first, and a mean without it is too
 * low: how many of the rings a depth lacks is said (`science/rings-not-read-so-long`), for each depth. Rings at an
 * old-grass spot are part of no strip.
 *
 * @param rings oldest first
 * @returns newest day first; `science/nothing-read` in place of a depth that no ring reached
 *
 * Source: `depthAfter`, `meanOfRings`.
 *
 * @example
 * soakedOfField(rings)[0].after[1]; // { minutes: 60, depth: 37.6 mm, 5 rings, 10.5 to 135 }
 */
export const soakedOfField = (rings: readonly RingOfField[]): readonly SoakedOnDay[] =>
  byStripAndDay(rings)
    .map((group) => ({ ...soakedThen(group), strip: group[0].strip }))
    .sort(newestFirst);

/** The same of the rings at old-grass spots, all spots of the field together. */
export const soakedOfGrass = (rings: readonly RingOfField[]): readonly OnGrass<SoakedOnDay>[] =>
  grassByDay(rings)
    .map((group) => ({ ...soakedThen(group), spots: spotsOf(group) }))
    .sort(newestFirst);
