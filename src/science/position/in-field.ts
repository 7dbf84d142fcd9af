/** Whether a place lies in a field, and how deep. */
import { failed, ok, type Result } from "../../record/result.ts";
import { FARTHEST_ASKED_M, SAME_PLACE_M } from "../constants/plans.ts";
import type { Boundary } from "./boundary.ts";
import { isPlace, type LatitudeLongitude } from "./distance.ts";
import { depthM } from "./plane-geometry.ts";

/** Where a place lies. */
export interface InField {
  /** A place on the edge, within a millimetre, is inside. */
  readonly inside: boolean;
  /** Shortest way to the edge, from either side. */
  readonly toEdgeM: number;
}

/**
 * Whether a place lies inside a boundary and how far from its edge, across the date line too. The distance is
 * right to 1 part in 50 000 within 10 km of the middle of the field; a fix is a thousand times worse.
 *
 * @returns `science/not-a-place`; `science/too-far-from-field` beyond 100 km from the middle of the field
 *
 * Source: crossing numbers (plane geometry) on an equal-area map, Snyder 1987.
 *
 * @example
 * import { boundaryOf } from "./boundary.ts";
 * const corners = [[0, 0], [0, 0.01], [0.01, 0.01], [0.01, 0]];
 * const field = boundaryOf(corners.map(([latitudeDeg, longitudeDeg]) => ({ latitudeDeg, longitudeDeg })));
 * inField(field.value, { latitudeDeg: 0.005, longitudeDeg: 0.001 }).value.toEdgeM // => ≈ 111.32
 */
export const inField = ({ plane, ring }: Boundary, place: LatitudeLongitude): Result<InField> => {
  if (!isPlace(place)) return failed("science/not-a-place");
  const point = plane.toPlane(place);
  if (Math.hypot(point.eastM, point.northM) > FARTHEST_ASKED_M)
    return failed("science/too-far-from-field", { mostKm: FARTHEST_ASKED_M / 1000 });
  const depth = depthM(ring, point);
  return ok({ inside: depth > -SAME_PLACE_M, toEdgeM: Math.abs(depth) });
};

/**
 * Whether a place lies clear of the headland: inside, and at least so far from every edge.
 *
 * @param headlandM 0 or more
 * @returns reasons as `inField`; `science/not-a-length` for a width that is negative or not finite
 */
export const clearOfHeadland = (
  boundary: Boundary,
  place: LatitudeLongitude,
  headlandM: number,
): Result<boolean> => {
  if (!(headlandM >= 0 && Number.isFinite(headlandM)))
    return failed("science/not-a-length", { value: String(headlandM) });
  const where = inField(boundary, place);
  return where.ok ? ok(where.value.inside && where.value.toEdgeM >= headlandM) : where;
};
