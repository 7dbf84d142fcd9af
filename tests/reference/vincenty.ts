/** Vincenty's inverse formula, written out for the tests alone. */
import { WGS84_INVERSE_FLATTENING, WGS84_SEMI_MAJOR_M } from "../../src/science/constants.ts";
import type { LatitudeLongitude } from "../../src/science/position/distance.ts";

const RADIANS = Math.PI / 180;

/** Length by the inverse formula of Vincenty 1975, Survey Review 23(176): 88-93. */
export const vincentyM = (from: LatitudeLongitude, to: LatitudeLongitude): number => {
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
