/**
 * Source: Geocentric Datum of Australia Technical Manual, test line Flinders Peak to Buninyong.
 * Mark: from memory (54 972.271 m, azimuth 306°52′05.37″, reverse azimuth 127°10′25.07″; GRS 80, no difference here).
 */
import { expect, it } from "vitest";
import { geodesicBetween, placeAt } from "../../src/science/position/geodesic.ts";
import { reached } from "../unit/science/counts.ts";
import { vincentyM } from "./vincenty.ts";

const degrees = (sign: 1 | -1, whole: number, minutes: number, seconds: number) =>
  sign * (whole + minutes / 60 + seconds / 3600);
const flindersPeak = {
  latitudeDeg: degrees(-1, 37, 57, 3.7203),
  longitudeDeg: degrees(1, 144, 25, 29.5244),
};
const buninyong = { latitudeDeg: degrees(-1, 37, 39, 10.1561), longitudeDeg: degrees(1, 143, 55, 35.3839) };
/** Half of the last printed digit of a bearing. */
const HALF_DIGIT = 0.005 / 3600 + 1e-9;

it("there and back", () => {
  const there = reached(geodesicBetween(flindersPeak, buninyong));
  const back = reached(geodesicBetween(buninyong, flindersPeak));
  expect(there.distanceM).toBeCloseTo(54_972.271, 3);
  expect(back.distanceM).toBeCloseTo(54_972.271, 3);
  expect(Math.abs((there.initialBearingDeg ?? 0) - degrees(1, 306, 52, 5.37))).toBeLessThan(HALF_DIGIT);
  expect(Math.abs((back.initialBearingDeg ?? 0) - degrees(1, 127, 10, 25.07))).toBeLessThan(HALF_DIGIT);
});

it("sets the second place off from the first", () => {
  const place = reached(placeAt(flindersPeak, degrees(1, 306, 52, 5.37), 54_972.271));
  // A hundredth of a second of bearing is 3 mm there: 0.000 000 03°.
  expect(Math.abs(place.latitudeDeg - buninyong.latitudeDeg)).toBeLessThan(3e-8);
  expect(Math.abs(place.longitudeDeg - buninyong.longitudeDeg)).toBeLessThan(3e-8);
});

it("the formula that judges short distances has it too", () => {
  expect(vincentyM(flindersPeak, buninyong)).toBeCloseTo(54_972.271, 3);
});
