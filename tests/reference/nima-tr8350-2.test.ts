/**
 * WGS 84: NIMA TR8350.2 (third edition, 2000) gives a = 6 378 137 m and 1/f = 298.257223563; first
 * eccentricity squared 0.00669437999014 (from memory). Lengths of a degree and of a second as printed in public tables:
 * a degree of latitude 110 574 m at the equator, about 111 132 m at 45°, 111 694 m at the pole, and by the
 * series 111132.92 − 559.82 cos 2φ + 1.175 cos 4φ − 0.0023 cos 6φ (right to a centimetre); of longitude
 * 111 320 m at the equator and by the series 111412.84 cos φ − 93.5 cos 3φ + 0.118 cos 5φ; a second of
 * latitude 30.715 m and of longitude 30.92 m at the equator. The table of whole kilometres is from memory.
 * Tables that print 15.42 m for a second of longitude at 60° reckon with a sphere (the ellipsoid has 15.50 m)
 * and are not used.
 */
import { describe, expect, it } from "vitest";
import { WGS84_INVERSE_FLATTENING, WGS84_SEMI_MAJOR_M } from "../../src/science/constants.ts";
import { distanceM, metresPerDegree } from "../../src/science/position/distance.ts";
import { reached } from "../unit/science/counts.ts";

it("uses the constants of the ellipsoid", () => {
  expect(WGS84_SEMI_MAJOR_M).toBe(6_378_137);
  expect(WGS84_INVERSE_FLATTENING).toBe(298.257223563);
  // From the radii at the pole and the equator: M(0) = a(1 − e²).
  const meridian = (metresPerDegree(0).north * 180) / Math.PI;
  expect(1 - meridian / WGS84_SEMI_MAJOR_M).toBeCloseTo(0.00669437999014, 12);
});

describe("degrees and seconds", () => {
  /** A degree of latitude about φ, in pieces short enough for the short-distance formula. */
  const latitudeDegree = (about: number) => {
    let sum = 0;
    for (let piece = 0; piece < 50; piece++) {
      const from = about - 0.5 + piece / 50;
      sum += reached(
        distanceM({ latitudeDeg: from, longitudeDeg: 8 }, { latitudeDeg: from + 1 / 50, longitudeDeg: 8 }),
      );
    }
    return sum;
  };

  it.each([0, 15, 30, 45, 52, 60, 75, 89])(
    "a degree of latitude about %i° follows the series",
    (latitude) => {
      const phi = (latitude * Math.PI) / 180;
      const series =
        111132.92 - 559.82 * Math.cos(2 * phi) + 1.175 * Math.cos(4 * phi) - 0.0023 * Math.cos(6 * phi);
      expect(Math.abs(latitudeDegree(latitude) - series)).toBeLessThan(0.05);
    },
  );

  it("printed degrees", () => {
    expect(metresPerDegree(0).north).toBeCloseTo(110_574, -0.5);
    expect(metresPerDegree(45).north).toBeCloseTo(111_132, -0.5);
    expect(metresPerDegree(90).north).toBeCloseTo(111_694, -0.5);
    expect(metresPerDegree(0).east).toBeCloseTo(111_320, -0.5);
  });

  it.each([0, 15, 30, 45, 52, 60, 75, 85])(
    "a degree of longitude at %i° follows the series",
    (latitudeDeg) => {
      const phi = (latitudeDeg * Math.PI) / 180;
      const series = 111412.84 * Math.cos(phi) - 93.5 * Math.cos(3 * phi) + 0.118 * Math.cos(5 * phi);
      const piece = distanceM({ latitudeDeg, longitudeDeg: 0 }, { latitudeDeg, longitudeDeg: 1 / 3600 });
      expect(Math.abs(3600 * reached(piece) - series)).toBeLessThan(0.05);
    },
  );

  it.each([
    [0, 110.574, 111.32],
    [15, 110.649, 107.551],
    [30, 110.852, 96.486],
    [45, 111.132, 78.847],
    [60, 111.412, 55.8],
    [75, 111.618, 28.902],
    [90, 111.694, 0],
  ])("kilometres of a degree at %i° (from memory)", (latitudeDeg, north, east) => {
    // The table is rounded to metres, at 0° and 15° a hair the other way.
    expect(Math.abs(metresPerDegree(latitudeDeg).north / 1000 - north)).toBeLessThan(0.001);
    expect(Math.abs(metresPerDegree(latitudeDeg).east / 1000 - east)).toBeLessThan(0.001);
  });

  it("a second of longitude at the equator is 30.92 m", () => {
    const second = distanceM({ latitudeDeg: 0, longitudeDeg: 0 }, { latitudeDeg: 0, longitudeDeg: 1 / 3600 });
    expect(reached(second)).toBeCloseTo(30.92, 2);
  });

  it("a second of latitude at the equator is 30.715 m", () => {
    const second = distanceM({ latitudeDeg: 0, longitudeDeg: 0 }, { latitudeDeg: 1 / 3600, longitudeDeg: 0 });
    expect(reached(second)).toBeCloseTo(30.715, 3);
  });
});
