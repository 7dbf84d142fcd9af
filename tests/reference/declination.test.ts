/**
 * Source: teaching cases of navigation texts: a compass shows 45° where D is 10° E or 10° W.
 * Mark: from memory; computed here (the other bearings).
 *
 * By definition D is the angle from true north to magnetic north, above 0 to the east (World Magnetic Model; from
 * memory), so true = magnetic + D. Some pages on the web print the two cases the other way round; the rule "east is
 * least" is for true to magnetic.
 */
import { expect, it } from "vitest";
import { magneticFromTrue, trueFromMagnetic } from "../../src/science/position/bearing.ts";
import { geodesicBetween, placeAt } from "../../src/science/position/geodesic.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";

it.each([
  [45, 10, 55],
  [45, -10, 35],
  [355, 10, 5],
  [5, -10, 355],
  [0, 0, 0],
  [360, 0, 0],
  [90, -14.5, 75.5],
])("compass %d° with D %d° is %d° true", (magnetic, declination, truth) => {
  expect(reached(trueFromMagnetic(magnetic, declination)).value).toBeCloseTo(truth, 10);
  expect(reached(magneticFromTrue(truth, declination)).value).toBeCloseTo(magnetic % 360, 10);
});

it("points along the needle: where it points 10° east of true north, walking by its north leads 10° east", () => {
  const from = { latitudeDeg: 45, longitudeDeg: 20 };
  const there = reached(placeAt(from, reached(trueFromMagnetic(0, 10)).value, 1000));
  expect(there.longitudeDeg).toBeGreaterThan(20);
  expect(reached(geodesicBetween(from, there)).initialBearingDeg).toBeCloseTo(10, 6);
});

it("forgotten, 10° over 200 m are 34.7 m sideways (arithmetic)", () => {
  const from = { latitudeDeg: 52, longitudeDeg: 5 };
  const meant = reached(placeAt(from, 70, 200));
  const went = reached(placeAt(from, reached(magneticFromTrue(70, 10)).value, 200));
  // Along the chord 2·200·sin 5° = 34.86 m; at right angles 200·sin 10° = 34.73 m.
  expect(reached(geodesicBetween(meant, went)).distanceM).toBeCloseTo(400 * Math.sin(Math.PI / 36), 2);
});

it("keeps a hair below north within 0 to 360", () => {
  for (const hair of [-Number.MIN_VALUE, -1e-17, -1e-14, 720 - 1e-13]) {
    const truth = reached(trueFromMagnetic(hair, 0)).value;
    expect(truth).toBeGreaterThanOrEqual(0);
    expect(truth).toBeLessThan(360);
  }
});

it("says what is no bearing", () => {
  expect(reasonOf(trueFromMagnetic(Number.NaN, 0))).toBe("science/not-a-bearing");
  expect(reasonOf(magneticFromTrue(10, Number.NaN))).toBe("science/not-a-declination");
  expect(reasonOf(magneticFromTrue(10, 181))).toBe("science/not-a-declination");
});
