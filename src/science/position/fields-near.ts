/** Which fields may be meant by a position. */
import { failed, ok, type Result } from "../../record/result.ts";
import { FIELD_NEAR_M } from "../constants/plans.ts";
import type { Caution, Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import { boundaryOf } from "./boundary.ts";
import { isPlace, type LatitudeLongitude, roughDistanceM } from "./distance.ts";
import { inField } from "./in-field.ts";

/** What is known of where a field lies. */
export interface FieldPlaces {
  readonly id: string;
  /** Corners of its boundary, null when none was walked. */
  readonly boundary: readonly LatitudeLongitude[] | null;
  /** Where earlier measurements on it were made. */
  readonly measuredAt: readonly LatitudeLongitude[];
}

/** A field that may be meant. */
export interface FieldNear {
  readonly id: string;
  /** To its edge, or to the nearest earlier measurement; 0 inside its boundary. */
  readonly distanceM: number;
  readonly by: "boundary" | "measurements";
  /** Why its boundary could not be used. */
  readonly cautions: readonly Caution[];
}

/** The fields that may be meant; n counts the one position that they are measured from. */
export interface FieldsNear extends Worked {
  /** Nearest first. */
  readonly fields: readonly FieldNear[];
}

const near = (place: LatitudeLongitude, { id, boundary, measuredAt }: FieldPlaces): FieldNear => {
  const cautions: Caution[] = [];
  const byMeasurements = measuredAt
    .filter(isPlace)
    .reduce((least, spot) => Math.min(least, roughDistanceM(place, spot)), Number.POSITIVE_INFINITY);
  let byBoundary = Number.POSITIVE_INFINITY;
  const looked = boundary === null ? null : boundaryOf(boundary);
  if (looked?.ok) {
    const where = inField(looked.value, place);
    if (where.ok) byBoundary = where.value.inside ? 0 : where.value.toEdgeM;
  } else if (looked !== null) cautions.push(looked.problem);
  return byBoundary <= byMeasurements
    ? { id, distanceM: byBoundary, by: "boundary", cautions }
    : { id, distanceM: byMeasurements, by: "measurements", cautions };
};

/**
 * The fields nearest to a position, for offering their names at a gateway: by boundary (0 m inside), or by the
 * nearest earlier measurement where that is closer or no boundary can be used. A fix at a gateway is no better
 * than a few metres, so several are offered and the nearest is not taken for granted.
 *
 * @param most how many to offer, two or three
 * @returns nearest first, equal distances by id; none beyond 2 km. A boundary that crosses itself or has too few
 * corners falls back on measurements and says why. `science/not-a-place`, `science/not-a-count`
 *
 * Source: Snyder 1987 for the map; the 2 km are a rule of this product.
 *
 * @example
 * const here = { latitudeDeg: 52, longitudeDeg: 5 };
 * const fields = [{ id: "a", boundary: null, measuredAt: [{ latitudeDeg: 52.001, longitudeDeg: 5 }] }];
 * fieldsNear(here, fields, 3).value.fields[0].distanceM // => ≈ 111.27
 */
export const fieldsNear = (
  place: LatitudeLongitude,
  fields: readonly FieldPlaces[],
  most: number,
): Result<FieldsNear> => {
  if (!isPlace(place)) return failed("science/not-a-place");
  if (!(Number.isSafeInteger(most) && most > 0)) return failed("science/not-a-count");
  const all = fields
    .map((field) => near(place, field))
    .filter(({ distanceM }) => distanceM <= FIELD_NEAR_M)
    .sort((a, b) => a.distanceM - b.distanceM || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  const offered = all.slice(0, most);
  const methods = ["fields-near"] as const;
  return ok({
    fields: offered,
    n: 1,
    sampledBy: "fixes",
    cautions: offered.flatMap(({ cautions }) => cautions),
    methods,
    sources: sourcesOf(methods),
  });
};
