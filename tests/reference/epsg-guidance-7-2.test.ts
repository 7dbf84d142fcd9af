/**
 * Source: IOGP Publication 373-7-2 (EPSG Guidance Note 7-2), Lambert azimuthal equal area.
 * Mark: published (worked example of ETRS89 / LAEA Europe: 50° N 5° E is E 3 962 799.45 m, N 2 999 718.85 m from a
 * middle of 52° N 10° E with false E 4 321 000 and N 3 210 000; test 5110 has 60° N 5° E and 70° N 5° E).
 *
 * GRS 80 differs from WGS 84 by a tenth of a millimetre over such lengths.
 */
import { describe, expect, it } from "vitest";
import { planeAbout } from "../../src/science/position/plane.ts";
import { reached } from "../unit/science/counts.ts";

describe("Lambert azimuthal equal area", () => {
  const plane = reached(planeAbout({ latitudeDeg: 52, longitudeDeg: 10 }));

  it.each([
    [50, 5, 3_962_799.45, 2_999_718.85],
    [60, 5, 4_041_548.13, 4_109_791.66],
    [70, 5, 4_127_824.658, 5_214_090.649],
    [52, 10, 4_321_000, 3_210_000],
  ])("%d° N %d° E there and back", (latitudeDeg, longitudeDeg, east, north) => {
    const point = plane.toPlane({ latitudeDeg, longitudeDeg });
    expect(Math.abs(point.eastM + 4_321_000 - east)).toBeLessThan(0.006);
    expect(Math.abs(point.northM + 3_210_000 - north)).toBeLessThan(0.006);
    const place = plane.toPlace({ eastM: east - 4_321_000, northM: north - 3_210_000 });
    expect(place.latitudeDeg).toBeCloseTo(latitudeDeg, 6);
    expect(place.longitudeDeg).toBeCloseTo(longitudeDeg, 6);
  });
});
