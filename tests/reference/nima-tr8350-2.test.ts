/**
 * Source: NIMA TR8350.2, World Geodetic System 84, third edition.
 * Mark: published (a = 6 378 137 m, 1/f = 298.257223563); from memory (first eccentricity squared 0.00669437999014).
 */
import { expect, it } from "vitest";
import { WGS84_INVERSE_FLATTENING, WGS84_SEMI_MAJOR_M } from "../../src/science/constants.ts";
import { metresPerDegree } from "../../src/science/position/distance.ts";

it("uses the constants of the ellipsoid", () => {
  expect(WGS84_SEMI_MAJOR_M).toBe(6_378_137);
  expect(WGS84_INVERSE_FLATTENING).toBe(298.257223563);
  // From the radii at the pole and the equator: M(0) = a(1 − e²).
  const meridian = (metresPerDegree(0).north * 180) / Math.PI;
  expect(1 - meridian / WGS84_SEMI_MAJOR_M).toBeCloseTo(0.00669437999014, 12);
});
