import { describe, expect, it } from "vitest";
import type { Position } from "../../../src/record/shapes.ts";
import { position as schema } from "../../../src/record/shapes.ts";
import * as z from "../../../src/record/zod.ts";
import { distanceM } from "../../../src/science/position/distance.ts";
import {
  measuredOf,
  movedByM,
  movedTo,
  oneStep,
  WAYS_TO_GO,
} from "../../../src/screens/parts/move-position-model.ts";

const measured: Position = {
  latitudeDeg: 52,
  longitudeDeg: -1,
  accuracyM: 4,
  accuracyMeans: "68-percent",
  spreadM: 1,
  fixes: 9,
  how: "standing-still",
  atMs: 5,
};

describe("one step", () => {
  it("is as long as it says, in all directions", () => {
    for (const latitudeDeg of [0, -35, 52, 70])
      for (const way of WAYS_TO_GO)
        for (const metres of [0.9144, 1, 10]) {
          const from = { latitudeDeg, longitudeDeg: 10 };
          const walked = distanceM(from, oneStep(from, way, metres));
          expect(walked.ok ? walked.value : null).toBeCloseTo(metres, 3);
        }
  });

  it("goes where it says: a degree of latitude at 45° is 111.132 km (WGS 84, from memory)", () => {
    const from = { latitudeDeg: 45, longitudeDeg: 10 };
    expect(oneStep(from, "north", 1000).latitudeDeg - 45).toBeCloseTo(1 / 111.132, 6);
    expect(oneStep(from, "south", 10).latitudeDeg).toBeLessThan(45);
    expect(oneStep(from, "east", 10).longitudeDeg).toBeGreaterThan(10);
    expect(oneStep(from, "west", 10)).toMatchObject({ latitudeDeg: 45 });
  });

  it("crosses the date line and stays on earth", () => {
    const east = oneStep({ latitudeDeg: -17, longitudeDeg: 179.99999 }, "east", 10);
    expect(east.longitudeDeg).toBeLessThan(-179.99);
    const pole = { latitudeDeg: 90, longitudeDeg: 0 };
    for (const way of WAYS_TO_GO) expect(oneStep(pole, way, 10)).toEqual(pole);
  });
});

describe("a position moved by hand", () => {
  it("keeps the measured one, however often it is moved", () => {
    const once = movedTo(measured, { latitudeDeg: 52.001, longitudeDeg: -1 }, 6);
    const twice = movedTo(once, { latitudeDeg: 52.002, longitudeDeg: -1 }, 7);
    expect(twice).toEqual({
      latitudeDeg: 52.002,
      longitudeDeg: -1,
      accuracyM: null,
      accuracyMeans: null,
      spreadM: null,
      fixes: 0,
      how: "by-hand",
      atMs: 7,
      movedFrom: measured,
    });
    expect(z.safeParse(schema, twice).success).toBe(true);
    expect(measuredOf(twice)).toEqual(measured);
    // 0.002° of 111.26 km at 52° (WGS 84, from memory).
    expect(movedByM(twice)).toBeCloseTo(222.5, 0);
  });

  it("has nothing to keep when it was put there by hand from the beginning", () => {
    const put = movedTo(null, { latitudeDeg: 1, longitudeDeg: 2 }, 6);
    expect("movedFrom" in put).toBe(false);
    expect("movedFrom" in movedTo(put, { latitudeDeg: 1, longitudeDeg: 3 }, 7)).toBe(false);
    expect([measuredOf(put), measuredOf(null), movedByM(put), movedByM(measured)]).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });
});
