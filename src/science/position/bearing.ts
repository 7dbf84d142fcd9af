/** True and magnetic bearings. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Estimate } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";

/**
 * An angle as a bearing, 0 up to 360 without 360 itself. Two remainders, so that a hair below 0 comes out as 0 and
 * neither as 360 nor below 0.
 *
 * @param degrees any finite number
 *
 * @example
 * wrapped360(-10) // => 350
 */
export const wrapped360 = (degrees: number): number => (((degrees % 360) + 360) % 360) + 0;

const turnedBy = (bearingDeg: number, declinationDeg: number, sign: 1 | -1): Result<Estimate> => {
  if (!Number.isFinite(bearingDeg)) return failed("science/not-a-bearing");
  if (!(Math.abs(declinationDeg) <= 180)) return failed("science/not-a-declination");
  const methods = ["true-magnetic"] as const;
  return ok({
    value: wrapped360(bearingDeg + sign * declinationDeg),
    unit: "deg",
    n: 1,
    sampledBy: "readings",
    range: failed("science/exact-by-definition"),
    cautions: [],
    methods,
    sources: sourcesOf(methods),
  });
};

/**
 * True bearing of what a compass shows: `true = magnetic + D`, D above 0 where the needle points east of true
 * north. Compass 45° where the declination is 10° east is 55° true.
 *
 * @param magneticDeg any finite number
 * @param declinationDeg east above 0, west below; at most 180 either way
 * @returns 0 up to 360, without a range: of how well the compass was read nothing is known. `science/not-a-bearing`, `science/not-a-declination`
 *
 * Source: definition of declination (D positive east), as of the World Magnetic Model.
 *
 * @example
 * trueFromMagnetic(45, 10).value.value // => 55
 */
export const trueFromMagnetic = (magneticDeg: number, declinationDeg: number): Result<Estimate> =>
  turnedBy(magneticDeg, declinationDeg, 1);

/**
 * What a compass shows along a true bearing: `magnetic = true − D`.
 *
 * @returns as `trueFromMagnetic`, which it undoes
 *
 * @example
 * magneticFromTrue(5, 10).value.value // => 355
 */
export const magneticFromTrue = (trueDeg: number, declinationDeg: number): Result<Estimate> =>
  turnedBy(trueDeg, declinationDeg, -1);
