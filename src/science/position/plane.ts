/** A flat map about a place, on which areas are true. */
import { failed, ok, type Result } from "../../record/result.ts";
import { MOST_LATITUDE_DEG } from "../constants/plans.ts";
import { WGS84_INVERSE_FLATTENING, WGS84_SEMI_MAJOR_M } from "../constants.ts";
import { isPlace, type LatitudeLongitude, turnedDeg } from "./distance.ts";

/** A point of the map, in metres east and north of its middle. */
export interface PlanePoint {
  readonly eastM: number;
  readonly northM: number;
}

/** The map: there and back. */
export interface Plane {
  readonly toPlane: (place: LatitudeLongitude) => PlanePoint;
  readonly toPlace: (point: PlanePoint) => LatitudeLongitude;
}

const RADIANS = Math.PI / 180;
const E2 = (2 - 1 / WGS84_INVERSE_FLATTENING) / WGS84_INVERSE_FLATTENING;
const E = Math.sqrt(E2);

/** Twice the area of the ellipsoid from the equator up to a latitude, per radian and a². */
const areaUpTo = (sin: number): number =>
  (1 - E2) * (sin / (1 - E2 * sin ** 2) - Math.log((1 - E * sin) / (1 + E * sin)) / (2 * E));

const AREA_UP_TO_POLE = areaUpTo(1);
/** Radius of the sphere with the area of the ellipsoid. */
const AUTHALIC_RADIUS_M = WGS84_SEMI_MAJOR_M * Math.sqrt(AREA_UP_TO_POLE / 2);

const authalic = (latitudeDeg: number): number =>
  Math.asin(Math.min(1, Math.max(-1, areaUpTo(Math.sin(latitudeDeg * RADIANS)) / AREA_UP_TO_POLE)));

/** Latitude in degrees from the sine of the authalic one; five rounds reach the last digit. */
const geographicDeg = (sinAuthalic: number): number => {
  if (Math.abs(sinAuthalic) >= 1) return 90 * Math.sign(sinAuthalic);
  const q = AREA_UP_TO_POLE * sinAuthalic;
  let latitude = Math.asin(sinAuthalic);
  for (let round = 0; round < 5; round++) {
    const sin = Math.sin(latitude);
    const slope = (2 * (1 - E2) * Math.cos(latitude)) / (1 - E2 * sin ** 2) ** 2;
    if (slope > 0) latitude += (q - areaUpTo(sin)) / slope;
  }
  return Math.min(90, Math.max(-90, latitude / RADIANS));
};

/**
 * Lambert's azimuthal equal-area map of the ellipsoid about a place. Areas are exact; at the middle lengths and
 * directions are too, and 10 km from it lengths are right to 1 part in 50 000 (tests/reference). Straight lines
 * of the map are so nearly geodesics that the area of a field 10 km wide is right to 2 parts in a million.
 *
 * @param centre in degrees; a longitude of any place on the date line will do, the map runs across it
 * @returns metres east and north of the middle, and back to degrees from −180 up to 180;
 * `science/not-a-place`, `science/near-a-pole` beyond 89° of latitude
 *
 * Source: Snyder 1987, Map Projections: A Working Manual, formulas 3-12 to 3-16, 24-17 to 24-29.
 *
 * @example
 * const plane = planeAbout({ latitudeDeg: 52, longitudeDeg: 10 });
 * plane.ok && plane.value.toPlane({ latitudeDeg: 50, longitudeDeg: 5 }).eastM // => ≈ -358200.55
 */
export const planeAbout = (centre: LatitudeLongitude): Result<Plane> => {
  if (!isPlace(centre)) return failed("science/not-a-place");
  if (Math.abs(centre.latitudeDeg) > MOST_LATITUDE_DEG)
    return failed("science/near-a-pole", { most: MOST_LATITUDE_DEG });
  const middle = authalic(centre.latitudeDeg);
  const [sinMiddle, cosMiddle] = [Math.sin(middle), Math.cos(middle)];
  const sin = Math.sin(centre.latitudeDeg * RADIANS);
  /** Makes the scale at the middle the same to all sides. */
  const d =
    (WGS84_SEMI_MAJOR_M * Math.cos(centre.latitudeDeg * RADIANS)) /
    (Math.sqrt(1 - E2 * sin ** 2) * AUTHALIC_RADIUS_M * cosMiddle);
  const toPlane = ({ latitudeDeg, longitudeDeg }: LatitudeLongitude): PlanePoint => {
    const beta = authalic(latitudeDeg);
    const lambda = turnedDeg(longitudeDeg - centre.longitudeDeg) * RADIANS;
    const [sinBeta, cosBeta] = [Math.sin(beta), Math.cos(beta)];
    // Right through the earth the map has no point: held a hair off, so that nothing is without end.
    const towards = Math.max(1e-12, 1 + sinMiddle * sinBeta + cosMiddle * cosBeta * Math.cos(lambda));
    const scale = AUTHALIC_RADIUS_M * Math.sqrt(2 / towards);
    return {
      eastM: scale * d * cosBeta * Math.sin(lambda),
      northM: (scale / d) * (cosMiddle * sinBeta - sinMiddle * cosBeta * Math.cos(lambda)),
    };
  };
  const toPlace = ({ eastM, northM }: PlanePoint): LatitudeLongitude => {
    const rho = Math.hypot(eastM / d, northM * d);
    if (rho === 0) return { latitudeDeg: centre.latitudeDeg, longitudeDeg: centre.longitudeDeg };
    const angle = 2 * Math.asin(Math.min(1, rho / (2 * AUTHALIC_RADIUS_M)));
    const [sinAngle, cosAngle] = [Math.sin(angle), Math.cos(angle)];
    const lambda = Math.atan2(
      eastM * sinAngle,
      d * rho * cosMiddle * cosAngle - d ** 2 * northM * sinMiddle * sinAngle,
    );
    return {
      latitudeDeg: geographicDeg(cosAngle * sinMiddle + (d * northM * sinAngle * cosMiddle) / rho) + 0,
      longitudeDeg: turnedDeg(centre.longitudeDeg + lambda / RADIANS) + 0,
    };
  };
  return ok({ toPlane, toPlace });
};
