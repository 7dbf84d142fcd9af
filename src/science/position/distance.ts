/** Short distances on the ellipsoid. */
import { failed, ok, type Result } from "../../record/result.ts";
import { FARTHEST_M, WGS84_INVERSE_FLATTENING, WGS84_SEMI_MAJOR_M } from "../constants.ts";

/** A place on WGS 84, in degrees. */
export interface LatitudeLongitude {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

const RADIANS = Math.PI / 180;
const E2 = (2 - 1 / WGS84_INVERSE_FLATTENING) / WGS84_INVERSE_FLATTENING;

/**
 * A longitude difference taken the short way round, −180 up to 180, so that a field on the date line is not
 * 40 000 km wide.
 */
export const turnedDeg = (differenceDeg: number): number => {
  const turned = differenceDeg - 360 * Math.floor((differenceDeg + 180) / 360);
  // Just below 180 the sum above rounds up to a full turn, and −180.000…3 would be no place on earth.
  return turned < -180 ? turned + 360 : turned;
};

/** Whether both angles are degrees of a place on earth. */
export const isPlace = ({ latitudeDeg, longitudeDeg }: LatitudeLongitude): boolean =>
  Math.abs(latitudeDeg) <= 90 && Math.abs(longitudeDeg) <= 180;

/** Metres per degree of latitude and of longitude at a latitude. */
export const metresPerDegree = (latitudeDeg: number): { readonly north: number; readonly east: number } => {
  const sin = Math.sin(latitudeDeg * RADIANS);
  const w2 = 1 - E2 * sin ** 2;
  return {
    north: (RADIANS * WGS84_SEMI_MAJOR_M * (1 - E2)) / w2 ** 1.5,
    east: (RADIANS * WGS84_SEMI_MAJOR_M * Math.cos(latitudeDeg * RADIANS)) / Math.sqrt(w2),
  };
};

/** `distanceM` without its limits: a number for any two places, rough when they lie far apart. */
export const roughDistanceM = (a: LatitudeLongitude, b: LatitudeLongitude): number => {
  const { north, east } = metresPerDegree((a.latitudeDeg + b.latitudeDeg) / 2);
  return Math.hypot(
    (b.latitudeDeg - a.latitudeDeg) * north,
    turnedDeg(b.longitudeDeg - a.longitudeDeg) * east,
  );
};

/**
 * Distance between two places, in metres, from the radii of curvature halfway between them:
 * `√((M·Δφ)² + (N·cos φ·Δλ)²)`.
 *
 * Error against the geodesic, from the equator to 85° of latitude: below 0.2 mm for 1 km and below 15 cm for
 * 10 km; at 60° below 0.004 mm and 4 mm (tests/reference). It grows towards the poles. A fix is a thousand
 * times worse.
 *
 * @returns `science/not-a-place` for degrees out of bounds or not finite, `science/too-far-apart` beyond
 * 10 km. The same place twice is 0 m.
 *
 * Source: NIMA TR8350.2 for the ellipsoid.
 *
 * @example
 * distanceM({ latitudeDeg: 0, longitudeDeg: 0 }, { latitudeDeg: 0, longitudeDeg: 0.001 }); // 111.32 m
 */
export const distanceM = (a: LatitudeLongitude, b: LatitudeLongitude): Result<number> => {
  if (!(isPlace(a) && isPlace(b))) return failed("science/not-a-place");
  const metres = roughDistanceM(a, b);
  return metres <= FARTHEST_M ? ok(metres) : failed("science/too-far-apart", { most: FARTHEST_M });
};
