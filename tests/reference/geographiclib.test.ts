/**
 * geographiclib-geodesic 2.2.0 (npm), the library of Karney 2013 (J. Geodesy 87: 43-55), asked here and now about
 * fields and ways drawn by a seed over the whole earth: an outside check that no chosen example can miss.
 */
import { Geodesic } from "geographiclib-geodesic";
import { expect, it } from "vitest";
import { boundaryOf } from "../../src/science/position/boundary.ts";
import { distanceM } from "../../src/science/position/distance.ts";
import { fieldSize } from "../../src/science/position/field-size.ts";
import { geodesicBetween, placeAt } from "../../src/science/position/geodesic.ts";
import { seeded } from "../property/science/seeded.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";

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
