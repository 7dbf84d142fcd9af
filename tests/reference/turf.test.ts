/**
 * Source: @turf/area and @turf/distance 7.4 (npm), general libraries that reckon on a sphere of 6 371 008.8 m.
 * Mark: computed here with them, in the test, against areas within geodesics and geodesics on WGS 84 by geographiclib-
 * geodesic 2.2.0.
 *
 * The shares that the words of our methods and the docstrings of `fieldSize` and `geodesicBetween` state are the ones
 * checked here; they follow from geometry too: R²/(M·N) − 1 for areas, R/M − 1 and R/N − 1 for lengths.
 */
import { area } from "@turf/area";
import { distance } from "@turf/distance";
import { Geodesic } from "geographiclib-geodesic";
import { expect, it } from "vitest";
import { boundaryOf } from "../../src/science/position/boundary.ts";
import { fieldSize } from "../../src/science/position/field-size.ts";
import { geodesicBetween } from "../../src/science/position/geodesic.ts";
import { plansMethods } from "../../src/screens/findings/specialist/plans.ts";
import { reached } from "../unit/science/counts.ts";
import { placesOf } from "../unit/science/position/places.ts";

type LongitudeLatitude = readonly [number, number];
interface Quarter {
  readonly corners: readonly LongitudeLatitude[];
  readonly south: LongitudeLatitude;
  readonly north: LongitudeLatitude;
}

/** A hundredth of a degree each way about a latitude. */
const fieldAt = (latitude: number): Quarter => {
  const [south, north] = [latitude - 0.005, latitude + 0.005];
  return {
    corners: [
      [10, south],
      [10.01, south],
      [10.01, north],
      [10, north],
    ],
    south: [10, south],
    north: [10, north],
  };
};

const onEllipsoidM2 = (corners: readonly LongitudeLatitude[]): number => {
  const ring = Geodesic.WGS84.Polygon(false);
  for (const [longitude, latitude] of corners) ring.AddPoint(latitude, longitude);
  return Math.abs(ring.Compute(false, true).area ?? Number.NaN);
};

const onSphereM2 = (corners: readonly LongitudeLatitude[]): number => {
  const ring = corners.map(([longitude, latitude]) => [longitude, latitude]);
  return area({ type: "Polygon", coordinates: [[...ring, ring[0] ?? []]] });
};

const wayM = ([lon1, lat1]: LongitudeLatitude, [lon2, lat2]: LongitudeLatitude): number =>
  Geodesic.WGS84.Inverse(lat1, lon1, lat2, lon2).s12 ?? Number.NaN;

const sphereM = (from: LongitudeLatitude, to: LongitudeLatitude): number =>
  distance([...from], [...to], { units: "meters" });

// Percent that the sphere is off: area, northwards, eastwards.
it.each([
  [0, 0.45, 0.56, -0.11],
  [20, 0.29, 0.44, -0.15],
  [35.3, 0, 0.22, -0.22],
  [45, -0.22, 0.06, -0.28],
  [52, -0.38, -0.06, -0.32],
  [60, -0.56, -0.19, -0.36],
  [70, -0.74, -0.33, -0.41],
  [80, -0.85, -0.42, -0.44],
])(
  "at %d° the sphere is off by %d %% of the area, %d %% northwards, %d %% eastwards",
  (latitude, ofArea, ofNorth, ofEast) => {
    const { corners, south, north } = fieldAt(latitude);
    const east: LongitudeLatitude = [10.01, south[1]];
    const percent = (sphere: number, ellipsoid: number): number => 100 * (sphere / ellipsoid - 1);
    expect(Math.abs(percent(onSphereM2(corners), onEllipsoidM2(corners)) - ofArea)).toBeLessThan(0.01);
    expect(Math.abs(percent(sphereM(south, north), wayM(south, north)) - ofNorth)).toBeLessThan(0.01);
    expect(Math.abs(percent(sphereM(south, east), wayM(south, east)) - ofEast)).toBeLessThan(0.01);
    // Ours against the same outside answer: 2 parts in 10 million of the area, 0.1 mm of a way.
    const places = placesOf(corners.map(([longitude, lat]) => [lat, longitude]));
    const size = reached(fieldSize(reached(boundaryOf(places))));
    expect(Math.abs(size.areaM2 / onEllipsoidM2(corners) - 1)).toBeLessThan(2e-7);
    for (const to of [north, east]) {
      const [from, there] = placesOf([south, to].map(([longitude, lat]) => [lat, longitude]));
      if (from === undefined || there === undefined) throw new Error("two places are missing");
      expect(Math.abs(reached(geodesicBetween(from, there)).distanceM - wayM(south, to))).toBeLessThan(1e-4);
    }
  },
);

it("the words of both methods state how far a sphere would be off", () => {
  for (const share of ["0.45 %", "0.38 %", "0.56 %"])
    expect(plansMethods["field-area"].says).toContain(share);
  expect(plansMethods.geodesic.says).toContain("0.56 %");
});
