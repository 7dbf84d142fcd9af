import { describe, expect, it } from "vitest";
import { fieldsNear } from "../../../../src/science/position/fields-near.ts";
import { geodesicBetween, placeAt } from "../../../../src/science/position/geodesic.ts";
import { planeAbout } from "../../../../src/science/position/plane.ts";
import { reached, reasonOf } from "../counts.ts";
import { nearEquator } from "./places.ts";

const here = { latitudeDeg: 0, longitudeDeg: 0 };
const square = (east: number, north: number) =>
  nearEquator([
    [east, north],
    [east + 100, north],
    [east + 100, north + 100],
    [east, north + 100],
  ]);

describe("fields near a gateway", () => {
  const fields = [
    { id: "over the road", boundary: square(-112, -50), measuredAt: [] },
    { id: "this one", boundary: square(-2, -50), measuredAt: [] },
    { id: "next", boundary: square(0, 60), measuredAt: nearEquator([[50, 110]]) },
    {
      id: "no boundary",
      boundary: null,
      measuredAt: nearEquator([
        [0, 40],
        [500, 500],
      ]),
    },
    { id: "far", boundary: square(3000, 0), measuredAt: [] },
    { id: "never seen", boundary: null, measuredAt: [] },
  ];

  it("offers the nearest by boundary or by earlier measurements", () => {
    const found = reached(fieldsNear(here, fields, 10)).fields;
    expect(found.map(({ id, by }) => [id, by])).toEqual([
      ["this one", "boundary"],
      ["over the road", "boundary"],
      ["no boundary", "measurements"],
      ["next", "boundary"],
    ]);
    expect(found.map(({ distanceM }) => Math.round(distanceM))).toEqual([0, 12, 40, 60]);
    expect(reached(fieldsNear(here, fields, 2)).fields).toHaveLength(2);
  });

  it("does not depend on the order, and breaks ties by id", () => {
    expect(fieldsNear(here, [...fields].reverse(), 3)).toEqual(fieldsNear(here, fields, 3));
    const same = ["b", "a"].map((id) => ({ id, boundary: square(-50, -50), measuredAt: [] }));
    expect(reached(fieldsNear(here, same, 3)).fields.map(({ id }) => id)).toEqual(["a", "b"]);
  });

  it("falls back on measurements where a boundary crosses itself, and says so", () => {
    const bow = nearEquator([
      [0, 0],
      [100, 100],
      [100, 0],
      [0, 100],
    ]);
    expect(
      reached(fieldsNear(here, [{ id: "bow", boundary: bow, measuredAt: nearEquator([[0, 30]]) }], 3)).fields,
    ).toMatchObject([{ by: "measurements", cautions: [{ code: "science/boundary-crosses-itself" }] }]);
  });

  it("has reasons", () => {
    expect(reasonOf(fieldsNear({ latitudeDeg: 91, longitudeDeg: 0 }, fields, 3))).toBe("science/not-a-place");
    expect(reasonOf(fieldsNear(here, fields, 0))).toBe("science/not-a-count");
    expect(reached(fieldsNear(here, [], 3)).fields).toEqual([]);
  });
});

describe("geodesics", () => {
  it("are 0 for one place, without a bearing", () => {
    const post = { latitudeDeg: 52.123, longitudeDeg: -180 };
    expect(reached(geodesicBetween(post, post))).toEqual({ distanceM: 0, initialBearingDeg: null });
    expect(reached(geodesicBetween(post, { ...post, longitudeDeg: 180 })).distanceM).toBeLessThan(1e-6);
  });

  it("point the way they should", () => {
    const from = { latitudeDeg: 10, longitudeDeg: 179.999 };
    const bearing = (latitudeDeg: number, longitudeDeg: number) =>
      reached(geodesicBetween(from, { latitudeDeg, longitudeDeg })).initialBearingDeg;
    expect(bearing(10.001, 179.999)).toBeCloseTo(0, 6);
    expect(bearing(9.999, 179.999)).toBeCloseTo(180, 6);
    expect(bearing(10, -179.999)).toBeCloseTo(90, 2);
    expect(bearing(10, 179.998)).toBeCloseTo(270, 2);
  });

  it("have reasons", () => {
    const bad = { latitudeDeg: Number.POSITIVE_INFINITY, longitudeDeg: 0 };
    expect(reasonOf(geodesicBetween(here, bad))).toBe("science/not-a-place");
    expect(reasonOf(geodesicBetween(here, { latitudeDeg: 0, longitudeDeg: 180 }))).toBe(
      "science/nearly-opposite",
    );
    expect(reasonOf(placeAt(bad, 0, 1))).toBe("science/not-a-place");
    expect(reasonOf(placeAt(here, Number.NaN, 1))).toBe("science/not-a-bearing");
    for (const metres of [-1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(reasonOf(placeAt(here, 0, metres))).toBe("science/not-a-length");
    expect(reached(placeAt(here, 77, 0))).toEqual(here);
    expect(reasonOf(planeAbout(bad))).toBe("science/not-a-place");
    expect(reasonOf(planeAbout({ latitudeDeg: -90, longitudeDeg: 0 }))).toBe("science/near-a-pole");
  });
});
