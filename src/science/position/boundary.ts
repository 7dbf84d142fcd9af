/** A field's boundary, looked over and ready for geometry. */
import { failed, ok, type Result } from "../../record/result.ts";
import { FARTHEST_CORNER_M, SAME_PLACE_M } from "../constants/plans.ts";
import { isPlace, type LatitudeLongitude, turnedDeg } from "./distance.ts";
import { type Plane, type PlanePoint, planeAbout } from "./plane.ts";
import { apartM, leftOf, type Ring, signedAreaM2 } from "./plane-geometry.ts";
import { selfCrossing } from "./self-crossing.ts";

/** A ring that encloses an area and does not cross itself. */
export interface Boundary {
  /** Corners counter-clockwise, without the closing repeat and without corners that repeat the one before. */
  readonly places: readonly LatitudeLongitude[];
  /** The same corners on the plane. */
  readonly ring: Ring;
  /** Equal-area map about the mean of the corners. */
  readonly plane: Plane;
  /** Which way round it was given. */
  readonly winding: "clockwise" | "counter-clockwise";
}

interface Corner {
  /** Number of the corner as it was given, from 1. */
  readonly number: number;
  readonly place: LatitudeLongitude;
  readonly point: PlanePoint;
}

/**
 * The mean of places, taken the short way round from the first.
 *
 * @param places all of them places on earth
 * @returns `science/no-position` for none
 */
export const middleOf = (places: readonly LatitudeLongitude[]): Result<LatitudeLongitude> => {
  const [first] = places;
  if (first === undefined) return failed("science/no-position", { fixes: 0 });
  const n = places.length;
  const east = places.reduce((sum, place) => sum + turnedDeg(place.longitudeDeg - first.longitudeDeg), 0) / n;
  return ok({
    latitudeDeg: places.reduce((sum, { latitudeDeg }) => sum + latitudeDeg, 0) / n,
    longitudeDeg: turnedDeg(first.longitudeDeg + east),
  });
};

const withoutRepeats = (corners: readonly Corner[]): readonly Corner[] => {
  const kept: Corner[] = [];
  for (const corner of corners) {
    const before = kept.at(-1);
    if (before === undefined || apartM(before.point, corner.point) >= SAME_PLACE_M) kept.push(corner);
  }
  const first = kept[0];
  while (first !== undefined && kept.length > 1) {
    const last = kept.at(-1);
    if (last === undefined || apartM(last.point, first.point) >= SAME_PLACE_M) break;
    kept.pop();
  }
  return kept;
};

/** Whether all points lie within a millimetre of one straight line. */
const onALine = (ring: Ring): boolean => {
  const [first] = ring;
  if (first === undefined) return true;
  const far = ring.reduce(
    (most, point) => (apartM(first, point) > apartM(first, most) ? point : most),
    first,
  );
  const lengthM = apartM(first, far);
  return ring.every((point) => Math.abs(leftOf(first, far, point)) < SAME_PLACE_M * lengthM);
};

/**
 * Looks a boundary over. Either direction of walking and a closing repeat are taken as they come (GeoJSON closes
 * its rings, and older files run clockwise); corners that repeat the one before count once.
 *
 * @param places corners in the order walked, in degrees, across the date line too
 * @returns `science/too-few-corners` under three different ones, `science/not-a-place`, `science/near-a-pole`
 * beyond 89°, `science/field-too-large` when a corner lies beyond 50 km from the middle,
 * `science/boundary-without-area` when all corners lie on one line, `science/boundary-crosses-itself` with the
 * corners before which the two edges lie (counted from 1 as given) when edges cross, touch or run back: such a
 * ring has no one area
 *
 * @example
 * const boundary = boundaryOf([
 *   { latitudeDeg: 0, longitudeDeg: 179.995 },
 *   { latitudeDeg: 0, longitudeDeg: -179.995 },
 *   { latitudeDeg: 0.01, longitudeDeg: -179.995 },
 * ]);
 * boundary.ok && boundary.value.winding // => "counter-clockwise"
 */
export const boundaryOf = (places: readonly LatitudeLongitude[]): Result<Boundary> => {
  if (!places.every(isPlace)) return failed("science/not-a-place");
  if (places.length < 3) return failed("science/too-few-corners", { needs: 3, has: places.length });
  const middle = middleOf(places);
  if (!middle.ok) return middle;
  const plane = planeAbout(middle.value);
  if (!plane.ok) return plane;
  const { toPlane } = plane.value;
  const corners = withoutRepeats(
    places.map((place, index) => ({ number: index + 1, place, point: toPlane(place) })),
  );
  if (corners.length < 3) return failed("science/too-few-corners", { needs: 3, has: corners.length });
  const ring = corners.map(({ point }) => point);
  if (ring.some(({ eastM, northM }) => Math.hypot(eastM, northM) > FARTHEST_CORNER_M))
    return failed("science/field-too-large", { mostKm: FARTHEST_CORNER_M / 1000 });
  if (onALine(ring)) return failed("science/boundary-without-area");
  const crossing = selfCrossing(ring);
  if (crossing !== null) {
    const [first, second] = crossing.map((at) => corners[at]?.number ?? 0);
    return failed("science/boundary-crosses-itself", { first: first ?? 0, second: second ?? 0 });
  }
  const clockwise = signedAreaM2(ring) < 0;
  const turned = clockwise ? [...corners].reverse() : corners;
  return ok({
    places: turned.map(({ place }) => place),
    ring: turned.map(({ point }) => point),
    plane: plane.value,
    winding: clockwise ? "clockwise" : "counter-clockwise",
  });
};
