import type { LatitudeLongitude } from "../../../../src/science/position/distance.ts";

/** Places from rows of latitude and longitude. */
export const placesOf = (rows: readonly (readonly number[])[]): readonly LatitudeLongitude[] =>
  rows.map(([latitudeDeg, longitudeDeg]) => ({
    latitudeDeg: latitudeDeg ?? Number.NaN,
    longitudeDeg: longitudeDeg ?? Number.NaN,
  }));

/** Degrees of a metre to the north, and to the east at the equator, within 1 part in 10 000 there. */
const NORTH_DEG = 1 / 110_574.3;
const EAST_DEG = 1 / 111_319.5;

/** Places from rows of metres east and north of 0°, `atDeg` east; fields there are almost plane. */
export const nearEquator = (rows: readonly (readonly number[])[], atDeg = 0): readonly LatitudeLongitude[] =>
  rows.map(([east, north]) => {
    const longitudeDeg = atDeg + (east ?? Number.NaN) * EAST_DEG;
    return {
      latitudeDeg: (north ?? Number.NaN) * NORTH_DEG,
      longitudeDeg:
        longitudeDeg > 180 ? longitudeDeg - 360 : longitudeDeg < -180 ? longitudeDeg + 360 : longitudeDeg,
    };
  });
