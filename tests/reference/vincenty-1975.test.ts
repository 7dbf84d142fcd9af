/**
 * Vincenty 1975, Survey Review 23(176): 88-93, inverse formula. It is checked first on the line that the
 * Geocentric Datum of Australia Technical Manual prints, Flinders Peak to Buninyong: 54 972.271 m (coordinates
 * and length from memory; GRS 80, which differs from WGS 84 by less than a millimetre there). Then it judges
 * the short-distance formula.
 */
import { describe, expect, it } from "vitest";
import { WGS84_INVERSE_FLATTENING, WGS84_SEMI_MAJOR_M } from "../../src/science/constants.ts";
import { distanceM, type LatitudeLongitude, metresPerDegree } from "../../src/science/position/distance.ts";
import { reached } from "../unit/science/counts.ts";

const RADIANS = Math.PI / 180;
const degrees = (whole: number, minutes: number, seconds: number) =>
  Math.sign(whole) * (Math.abs(whole) + minutes / 60 + seconds / 3600);

const vincentyM = (from: LatitudeLongitude, to: LatitudeLongitude): number => {
  const a = WGS84_SEMI_MAJOR_M;
  const f = 1 / WGS84_INVERSE_FLATTENING;
  const b = a * (1 - f);
  const u1 = Math.atan((1 - f) * Math.tan(from.latitudeDeg * RADIANS));
  const u2 = Math.atan((1 - f) * Math.tan(to.latitudeDeg * RADIANS));
  const l = (to.longitudeDeg - from.longitudeDeg) * RADIANS;
  let lambda = l;
  let distance = 0;
  for (let round = 0; round < 20; round++) {
    const x = Math.cos(u2) * Math.sin(lambda);
    const y = Math.cos(u1) * Math.sin(u2) - Math.sin(u1) * Math.cos(u2) * Math.cos(lambda);
    const sinSigma = Math.hypot(x, y);
    const cosSigma = Math.sin(u1) * Math.sin(u2) + Math.cos(u1) * Math.cos(u2) * Math.cos(lambda);
    const sigma = Math.atan2(sinSigma, cosSigma);
    const sinAlpha = (Math.cos(u1) * Math.cos(u2) * Math.sin(lambda)) / sinSigma;
    const cos2Alpha = 1 - sinAlpha ** 2;
    const cos2m = cosSigma - (2 * Math.sin(u1) * Math.sin(u2)) / cos2Alpha;
    const c = (f / 16) * cos2Alpha * (4 + f * (4 - 3 * cos2Alpha));
    lambda =
      l + (1 - c) * f * sinAlpha * (sigma + c * sinSigma * (cos2m + c * cosSigma * (2 * cos2m ** 2 - 1)));
    const uu = (cos2Alpha * (a ** 2 - b ** 2)) / b ** 2;
    const big = 1 + (uu / 16384) * (4096 + uu * (-768 + uu * (320 - 175 * uu)));
    const small = (uu / 1024) * (256 + uu * (-128 + uu * (74 - 47 * uu)));
    const inner =
      cosSigma * (2 * cos2m ** 2 - 1) - (small / 6) * cos2m * (4 * sinSigma ** 2 - 3) * (4 * cos2m ** 2 - 3);
    distance = b * big * (sigma - small * sinSigma * (cos2m + (small / 4) * inner));
  }
  return distance;
};

it("reproduces the printed line", () => {
  const flindersPeak = { latitudeDeg: degrees(-37, 57, 3.7203), longitudeDeg: degrees(144, 25, 29.5244) };
  const buninyong = { latitudeDeg: degrees(-37, 39, 10.1561), longitudeDeg: degrees(143, 55, 35.3839) };
  expect(vincentyM(flindersPeak, buninyong)).toBeCloseTo(54972.271, 3);
});

describe("short distances", () => {
  // Limits: what the docstring states, in metres; the comparison itself is good to a few micrometres.
  it.each([
    [1_000, 10, 0.000_02],
    [1_000, 60, 0.000_02],
    [1_000, 85, 0.000_2],
    [9_000, 10, 0.001],
    [9_000, 60, 0.004],
    [9_000, 85, 0.15],
  ])("%i m at %i° are right to %d m in every direction", (metres, latitudeDeg, limit) => {
    const { north, east } = metresPerDegree(latitudeDeg);
    const from = { latitudeDeg, longitudeDeg: 8 };
    for (let azimuth = 5; azimuth < 360; azimuth += 15) {
      const to = {
        latitudeDeg: latitudeDeg + (metres * Math.cos(azimuth * RADIANS)) / north,
        longitudeDeg: 8 + (metres * Math.sin(azimuth * RADIANS)) / east,
      };
      expect(Math.abs(reached(distanceM(from, to)) - vincentyM(from, to))).toBeLessThan(limit);
    }
  });
});
