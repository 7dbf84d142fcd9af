/**
 * Source: public tables of the lengths of a degree on WGS 84.
 * Mark: published (a degree of latitude 110 574 m at the equator, about 111 132 m at 45°, 111 694 m at the pole, of
 * longitude 111 320 m at the equator; a second 30.715 and 30.92 m there; the two series); from memory (the table of
 * whole kilometres).
 *
 * Latitude by 111132.92 − 559.82 cos 2φ + 1.175 cos 4φ − 0.0023 cos 6φ, right to a centimetre; longitude by 111412.84
 * cos φ − 93.5 cos 3φ + 0.118 cos 5φ. Tables that print 15.42 m for a second of longitude at 60° reckon with a sphere
 * (the ellipsoid has 15.50 m) and are not used.
 */
import { describe, expect, it } from "vitest";
import { distanceM, metresPerDegree } from "../../src/science/position/distance.ts";
import { reached } from "../unit/science/counts.ts";

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
