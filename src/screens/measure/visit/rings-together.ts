/** What the rings of one strip say together: how deep water had soaked in after 30, 60 and 180 minutes. */
import type { RecordId } from "../../../record/ids.ts";
import { failed, type Result } from "../../../record/result.ts";
import type { Caution } from "../../../science/estimate.ts";
import { HEADLINE_MINUTES } from "../../../science/infiltration/depth-after.ts";
import { meanOfRings, type RingPoint, type RingsMean } from "../../../science/infiltration/replicates.ts";
import type { DayRing } from "../rings/day.ts";
import { resultOf } from "../rings/result.ts";

/** The minutes of a headline. */
export type SoakMinutes = (typeof HEADLINE_MINUTES)[number];

/** A ring with its place among the rings of the day. */
export interface SoakAfter {
  readonly minutes: SoakMinutes;
  /** Mean over rings, its range from three rings on. */
  readonly mean: Result<RingsMean>;
  readonly points: readonly RingPoint[];
  /** Rings that were not read for so long, or whose readings do not count so far. */
  readonly without: readonly DayRing[];
}

export interface RingsTogether {
  /** In the order in which they were set out. */
  readonly rings: readonly DayRing[];
  readonly after: readonly SoakAfter[];
  readonly leaked: readonly DayRing[];
  /** Rings with a pour that is not gone yet. */
  readonly notDrained: readonly DayRing[];
  readonly withBurrow: readonly DayRing[];
  readonly withCrack: readonly DayRing[];
  /** What single rings say beside their numbers, each once. */
  readonly cautions: readonly Caution[];
}

const pointAfter = (ring: DayRing, minutes: SoakMinutes): RingPoint | null => {
  const { soaking, headlines } = resultOf(ring);
  const depth = headlines.find((one) => one.minutes === minutes)?.depth;
  if (!soaking.ok || depth === undefined || !depth.ok) return null;
  return {
    id: ring.id,
    value: depth.value.value,
    least: soaking.value.stepMm,
    // A depth at a moment between two readings was seen, whether or not the rest has drained since.
    censored: false,
    ...soaking.value.named,
  };
};

/**
 * Rings that go on from each other after a leak stand at one place: together they are one sample, and the
 * newest of them that can say counts.
 */
const placesOf = (rings: readonly DayRing[]): readonly (readonly DayRing[])[] => {
  const rootOf = new Map<RecordId<"observation">, RecordId<"observation">>();
  const places = new Map<RecordId<"observation">, DayRing[]>();
  for (const ring of rings) {
    const before = ring.header.follows;
    const root = before === null ? ring.id : (rootOf.get(before) ?? before);
    rootOf.set(ring.id, root);
    places.set(root, [ring, ...(places.get(root) ?? [])]);
  }
  return [...places.values()];
};

/**
 * Puts the rings of a strip together.
 *
 * @param rings in the order in which they were set out
 * @returns the mean of a minute fails with `science/nothing-read` while no ring was read for so long
 */
export const ringsTogether = (rings: readonly DayRing[]): RingsTogether => {
  const places = placesOf(rings);
  const soakings = rings.map((ring) => ({ ring, soaking: resultOf(ring).soaking }));
  const which = (
    is: (soaking: Extract<(typeof soakings)[number]["soaking"], { ok: true }>["value"]) => boolean,
  ) => soakings.flatMap(({ ring, soaking }) => (soaking.ok && is(soaking.value) ? [ring] : []));
  const withBurrow = which(({ named }) => named.burrow);
  const after = HEADLINE_MINUTES.map((minutes): SoakAfter => {
    const points: RingPoint[] = [];
    const without: DayRing[] = [];
    for (const place of places) {
      const point = place.map((ring) => pointAfter(ring, minutes)).find((one) => one !== null);
      const [newest] = place;
      if (point !== undefined) points.push(point);
      else if (newest !== undefined) without.push(newest);
    }
    const mean =
      points.length === 0 ? failed("science/nothing-read") : meanOfRings(points, "mm", withBurrow.length > 0);
    return { minutes, mean, points, without };
  });
  const cautions = soakings.flatMap(({ soaking }) => (soaking.ok ? soaking.value.cautions : []));
  return {
    rings,
    after,
    // Said at once, not only when a reading behind the leak falls out.
    leaked: rings.filter(({ reading }) => reading.happenings.some(({ what }) => what === "leaked")),
    notDrained: which(({ pours }) => pours.some(({ drained, leftOut }) => !drained && leftOut === null)),
    withBurrow,
    withCrack: which(({ named }) => named.crack),
    cautions: [...new Map(cautions.map((caution) => [caution.code, caution])).values()],
  };
};

/** The minutes that a strip is spoken of by: an hour, else half an hour, else three. */
export const PREFERRED_MINUTES = [60, 30, 180] as const satisfies readonly SoakMinutes[];
