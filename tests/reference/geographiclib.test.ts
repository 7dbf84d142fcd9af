/**
 * Source: geographiclib-geodesic 2.2.0 (npm), the library of Karney 2013, J. Geodesy 87: 43-55.
 * Mark: computed here with it, good to some nanometres on WGS 84: asked in the test about ways and fields drawn by a
 * seed over the whole earth, written out for chosen ones.
 *
 * An outside check that no chosen example can miss.
 */

import { Geodesic } from "geographiclib-geodesic";
import { describe, expect, it } from "vitest";
import { boundaryOf } from "../../src/science/position/boundary.ts";
import { distanceM } from "../../src/science/position/distance.ts";
import { fieldSize } from "../../src/science/position/field-size.ts";
import { geodesicBetween, placeAt } from "../../src/science/position/geodesic.ts";
import { planeAbout } from "../../src/science/position/plane.ts";
import { seeded } from "../property/science/seeded.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";
import { placesOf } from "../unit/science/position/places.ts";

const EARTH = Geodesic.WGS84;
const known = (value: number | undefined): number => value ?? Number.NaN;

it("ways of any length are right to 0.1 mm, or said not to converge", () => {
  const random = seeded(20_130_000);
  let said = 0;
  for (let draw = 0; draw < 3000; draw++) {
    const from = { latitudeDeg: 178 * random() - 89, longitudeDeg: 360 * random() - 180 };
    const to = { latitudeDeg: 178 * random() - 89, longitudeDeg: 360 * random() - 180 };
    const theirs = EARTH.Inverse(from.latitudeDeg, from.longitudeDeg, to.latitudeDeg, to.longitudeDeg);
    const ours = geodesicBetween(from, to);
    if (!ours.ok) {
      said++;
      expect(reasonOf(ours)).toBe("science/nearly-opposite");
      expect(known(theirs.s12)).toBeGreaterThan(19_900_000);
    } else expect(Math.abs(ours.value.distanceM - known(theirs.s12))).toBeLessThan(1e-4);
  }
  expect(said).toBeLessThan(5);
});

it("places measured off from a post are right to 0.1 mm", () => {
  const random = seeded(11);
  for (let draw = 0; draw < 1000; draw++) {
    const from = { latitudeDeg: 170 * random() - 85, longitudeDeg: 360 * random() - 180 };
    const [bearing, metres] = [360 * random(), 10 ** (1 + 4 * random())];
    const theirs = EARTH.Direct(from.latitudeDeg, from.longitudeDeg, bearing, metres);
    const ours = reached(placeAt(from, bearing, metres));
    const apart = EARTH.Inverse(
      ours.latitudeDeg,
      ours.longitudeDeg,
      known(theirs.lat2),
      known(theirs.lon2),
    ).s12;
    expect(known(apart)).toBeLessThan(1e-4);
  }
});

it("short ways up to 10 km are right to 15 cm, up to 1 km to 0.2 mm, below 85°", () => {
  const random = seeded(12);
  for (let draw = 0; draw < 2000; draw++) {
    const from = { latitudeDeg: 168 * random() - 84, longitudeDeg: 360 * random() - 180 };
    const metres = 9990 * random() + 1;
    const there = EARTH.Direct(from.latitudeDeg, from.longitudeDeg, 360 * random(), metres);
    const to = { latitudeDeg: known(there.lat2), longitudeDeg: known(there.lon2) };
    expect(Math.abs(reached(distanceM(from, to)) - metres)).toBeLessThan(metres > 1000 ? 0.15 : 2e-4);
  }
});

it("fields of five corners are right to 2 parts in 10 million, with their way round to 1 mm", () => {
  const random = seeded(13);
  for (let draw = 0; draw < 300; draw++) {
    const middle = { latitudeDeg: 160 * random() - 80, longitudeDeg: 360 * random() - 180 };
    const places = Array.from({ length: 5 }, (_, corner) =>
      reached(placeAt(middle, 72 * corner + 30 * random(), 100 + 500 * random())),
    );
    const ring = EARTH.Polygon(false);
    for (const { latitudeDeg, longitudeDeg } of places) ring.AddPoint(latitudeDeg, longitudeDeg);
    const theirs = ring.Compute(false, true);
    const ours = reached(fieldSize(reached(boundaryOf(places))));
    expect(Math.abs(ours.areaM2 / Math.abs(known(theirs.area)) - 1)).toBeLessThan(2e-7);
    expect(Math.abs(ours.perimeterM - theirs.perimeter)).toBeLessThan(1e-3);
  }
});

const place = (latitudeDeg: number, longitudeDeg: number) => ({ latitudeDeg, longitudeDeg });

it.each([
  [51.9, 4.9, 52.6, 6.3, 123_319.681_25, 50.280_228_472],
  [
    -37.951_033_416_666_67, 144.424_867_888_888_88, -37.652_821_138_888_89, 143.926_495_527_777_77,
    54_972.271_139, 306.868_159_203,
  ],
  [40.6, -73.8, 51.6, -0.5, 5_551_759.400_319, 51.198_882_846],
  [-17, 179.9, -17.1, -179.8, 33_800.391_832, 109.156_288_077],
  [0, 0, 0.5, 179.5, 19_936_288.578_965, 25.671_872_868],
  [0, 0, 0, 90, 10_018_754.171_395, 90],
  [0, 0, 90, 0, 10_001_965.729_313, 0],
  [70, 20, 69.5, 25, 201_042.824_434, 103.747_298_096],
  [-34, 18, -34.5, 19.2, 123_669.140_828, 116.982_843_865],
  [0, 0, 0, 1, 111_319.490_793, 90],
  [52, 5, 52.001, 5.001, 130.755_461_9, 31.683_622_218],
])("geodesic %d %d to %d %d", (lat1, lon1, lat2, lon2, metres, bearing) => {
  const way = reached(geodesicBetween(place(lat1, lon1), place(lat2, lon2)));
  expect(Math.abs(way.distanceM - metres)).toBeLessThan(0.000_1);
  // The bearing of a short way is no better than its ends: a micrometre over 130 m.
  expect(Math.abs((way.initialBearingDeg ?? Number.NaN) - bearing)).toBeLessThan(0.000_001);
});

it("says so when it does not converge, where the library still has 19 944 127.421 m", () => {
  expect(reasonOf(geodesicBetween(place(0, 0), place(0.5, 179.7)))).toBe("science/nearly-opposite");
});

it.each([
  [52, 5, 30, 25, 52.000_194_581_954_6, 5.000_182_009_541_2],
  [52, 5, 120, 50_000, 51.773_634_405_761_4, 5.627_343_643_656_7],
  [-17, 179.99, 80, 3000, -16.995_290_889_416_7, -179.982_255_937_971],
  [40.64, -73.78, 45, 10_000_000, 32.621_100_463_726, 49.052_487_092_96],
])("from %d %d towards %d° by %d m", (lat, lon, bearing, metres, latitudeDeg, longitudeDeg) => {
  const there = reached(placeAt(place(lat, lon), bearing, metres));
  expect(there.latitudeDeg).toBeCloseTo(latitudeDeg, 9);
  expect(there.longitudeDeg).toBeCloseTo(longitudeDeg, 9);
});

describe("areas within geodesics", () => {
  // The last column: how far the equal-area map may differ, as a share; it grows with the size of the field.
  it.each([
    [
      "a field of 20 ha at 52°",
      [
        [52, 5],
        [52, 5.006],
        [52.004, 5.0065],
        [52.0045, 5.0005],
      ],
      195_807.416_725,
      1776.107_617,
      2e-7,
    ],
    [
      "an L at 60°",
      [
        [60, 10],
        [60, 10.02],
        [60.004, 10.02],
        [60.004, 10.01],
        [60.009, 10.01],
        [60.009, 10],
      ],
      808_070.684_745,
      4237.203_681,
      2e-7,
    ],
    [
      "a kilometre at the equator",
      [
        [0, 0],
        [0, 0.01],
        [0.01, 0.01],
        [0.01, 0],
      ],
      1_230_907.204_993,
      4437.875_316,
      2e-7,
    ],
    [
      "in the tropics",
      [
        [2, 100],
        [2, 100.01],
        [2.01, 100.01],
        [2.01, 100],
      ],
      1_230_173.781_611,
      4436.548_578,
      2e-7,
    ],
    [
      "across the date line",
      [
        [-17, 179.995],
        [-17, -179.995],
        [-16.99, -179.995],
        [-16.99, 179.995],
      ],
      1_178_501.443_808,
      4343.157_125,
      2e-7,
    ],
    [
      "clockwise, in the south",
      [
        [-33.5, 148.1],
        [-33.49, 148.13],
        [-33.51, 148.12],
      ],
      2_576_523.442_222,
      7569.566_416,
      2e-7,
    ],
    [
      "far north",
      [
        [80, 10],
        [80, 10.05],
        [80.01, 10.05],
        [80.01, 10],
      ],
      1_082_202.157_036,
      4171.588_347,
      2e-7,
    ],
    [
      "10 km at 60°",
      [
        [60, 10],
        [60, 10.18],
        [60.09, 10.18],
        [60.09, 10],
      ],
      100_576_024.981_628,
      40_115.050_411,
      2e-6,
    ],
    [
      "40 km at 45°",
      [
        [45, 10],
        [45, 10.5],
        [45.36, 10.5],
        [45.36, 10],
      ],
      1_572_325_851.481_537,
      158_616.467_541,
      2e-5,
    ],
  ])("%s", (_, corners, areaM2, perimeterM, share) => {
    const size = reached(fieldSize(reached(boundaryOf(placesOf(corners)))));
    expect(Math.abs(size.areaM2 / areaM2 - 1)).toBeLessThan(share);
    expect(Math.abs(size.perimeterM - perimeterM)).toBeLessThan(0.000_1);
  });
});

it.each([0, 30, 52, 70])(
  "lengths on the map are right to 1 part in 50 000 within 10 km, at %d°",
  (latitude) => {
    const middle = place(latitude, 8);
    const plane = reached(planeAbout(middle));
    for (let bearing = 0; bearing < 360; bearing += 15)
      for (const metres of [100, 1000, 9900]) {
        const { eastM, northM } = plane.toPlane(reached(placeAt(middle, bearing, metres)));
        expect(Math.abs(Math.hypot(eastM, northM) / metres - 1)).toBeLessThan(1 / 50_000);
      }
  },
);

it("agrees with the short-distance formula where both hold", () => {
  const from = place(52, 5);
  for (const to of [place(52.05, 5.08), place(51.99, 4.95), place(52.000_01, 5)]) {
    const short = reached(distanceM(from, to));
    expect(Math.abs(short - reached(geodesicBetween(from, to)).distanceM)).toBeLessThan(0.004);
  }
});
