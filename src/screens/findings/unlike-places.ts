/** Whether tests of several strips lie at like places against the row, by the rule of side by side. */
import type { RecordId } from "../../record/ids.ts";
import type { Place } from "../../record/shapes.ts";
import { unlikenesses } from "../../science/side-by-side/like-with-like.ts";
import type { DayOfField } from "../measure/visit/day-strips.ts";
import type { SoakMinutes } from "../measure/visit/rings-together.ts";
import { conditionsOf, type Measure, NOT_ASKED } from "./side-by-side/conditions.ts";

/** The places at which the tests behind the number of a strip lie: one for each test that said it. */
export interface PlacesOfStrip {
  readonly strip: RecordId<"strip">;
  readonly places: readonly string[];
}

/** A strip that has a number. */
interface Numbered {
  readonly strip: RecordId<"strip">;
  readonly visits: readonly RecordId<"visit">[];
  /** Each place that any of its tests lies at, once. */
  readonly places: readonly (Place | null)[];
}

const areUnlike = (a: PlacesOfStrip, b: PlacesOfStrip): boolean =>
  unlikenesses({ ...NOT_ASKED, places: a.places }, { ...NOT_ASKED, places: b.places }).unlike.some(
    ({ notKnown }) => !notKnown,
  );

/**
 * The places of each strip where those of any two of them are unlike; empty where all are alike, or nobody can know.
 *
 * @param dayOf reads the day of a visit; asked only when tests lie at more than one place
 */
export const unlikePlaces = async (
  asked: { readonly measure: Measure; readonly minutes: SoakMinutes },
  strips: readonly Numbered[],
  dayOf: (visit: RecordId<"visit">) => Promise<DayOfField | null>,
): Promise<readonly PlacesOfStrip[]> => {
  const visit = strips[0]?.visits[0];
  const places = new Set(strips.flatMap((one) => one.places).filter((place) => place !== null));
  if (strips.length < 2 || places.size < 2 || visit === undefined) return [];
  const day = await dayOf(visit);
  const found = strips.flatMap(({ strip }): readonly PlacesOfStrip[] => {
    const of = day?.strips.find(({ id }) => id === day.stripOf(strip));
    return of === undefined
      ? []
      : [{ strip, places: conditionsOf(asked.measure, of, asked.minutes).places ?? [] }];
  });
  return found.some((a, at) => found.slice(at + 1).some((b) => areUnlike(a, b))) ? found : [];
};
