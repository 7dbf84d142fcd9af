/** Rows, spots and the scale: small sums behind the page of a field. */
import { describe, expect, it } from "vitest";
import type { Position } from "../../../src/record/shapes.ts";
import { rowsBetween, rowsOf, windOfRows } from "../../../src/screens/fields/row-direction.ts";
import { measuredOf, placedByHand } from "../../../src/screens/fields/spot-place.ts";
import { BOUNDARY_WORDS } from "../../../src/screens/fields/words.boundary.ts";
import { placesOf } from "../../../src/screens/parts/map/drawing.ts";
import { scaleBar } from "../../../src/screens/parts/map/scale.ts";
import { wayBetween, windOf } from "../../../src/screens/parts/map/way.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";

const measured = (longitudeDeg: number, latitudeDeg: number, accuracyM: number | null = 4): Position => ({
  latitudeDeg,
  longitudeDeg,
  accuracyM,
  accuracyMeans: accuracyM === null ? null : "68-percent",
  spreadM: null,
  fixes: 5,
  how: "standing-still",
  atMs: 1000,
});

describe("rows", () => {
  it("run both ways", () => {
    expect([0, 180, 360, 200, 359.9, -10].map(rowsOf)).toEqual([0, 0, 0, 20, expect.closeTo(179.9, 9), 170]);
  });

  it("have the name that lies nearest", () => {
    expect([0, 11, 12, 90, 130, 179].map(windOfRows)).toEqual([
      "north-south",
      "north-south",
      "nne-ssw",
      "east-west",
      "se-nw",
      "north-south",
    ]);
  });

  it("have the direction between their ends, with the doubt of both positions", () => {
    // Along the equator 0.001° is 111.32 m (NIMA TR8350.2); 8 m to the side of it are 4.1°.
    const rows = rowsBetween(measured(0, 0), measured(0.001, 0));
    expect(rows?.deg).toBeCloseTo(90, 9);
    expect(rows?.lengthM).toBeCloseTo(111.32, 2);
    expect(rows?.offDeg).toBeCloseTo((Math.atan(8 / 111.32) * 180) / Math.PI, 3);
    expect(rowsBetween(measured(0.001, 0), measured(0, 0))?.deg).toBeCloseTo(90, 9);
    expect(rowsBetween(measured(0, 0, null), measured(0.001, 0))?.offDeg).toBeNull();
    expect(rowsBetween(measured(0, 0), measured(0, 0))).toBeNull();
  });
});

describe("a spot", () => {
  it("keeps the place that was measured, however often it is moved", () => {
    const first = measured(5, 52);
    const once = placedByHand(first, { latitudeDeg: 52.001, longitudeDeg: 5 }, 2000);
    const twice = placedByHand(once, { latitudeDeg: 52.002, longitudeDeg: 5 }, 3000);
    expect(twice).toMatchObject({ how: "by-hand", accuracyM: null, fixes: 0, latitudeDeg: 52.002 });
    expect(twice.movedFrom).toEqual(first);
    expect(measuredOf(twice)).toEqual(first);
    expect(measuredOf(first)).toEqual(first);
  });

  it("that nobody measured has nothing to be put back to", () => {
    const put = placedByHand(null, { latitudeDeg: 52, longitudeDeg: 5 }, 1000);
    const again = placedByHand(put, { latitudeDeg: 53, longitudeDeg: 5 }, 2000);
    expect("movedFrom" in again).toBe(false);
    expect(measuredOf(again)).toBeUndefined();
  });
});

describe("the map", () => {
  it("has a bar of a round length that fits", () => {
    for (let metresPerPx = 0.02; metresPerPx < 3000; metresPerPx *= 1.17)
      for (const unit of ["m", "ft"] as const) {
        const bar = scaleBar(metresPerPx, unit, 120);
        expect(bar?.px).toBeLessThanOrEqual(120);
        // No bar is shorter than the next step down: 2 of 5.
        expect(bar?.px).toBeGreaterThanOrEqual(47);
        expect([1, 2, 5]).toContain(Number((bar?.length ?? 0).toExponential().split("e")[0]));
        const metres = (bar?.length ?? 0) * (unit === "m" ? 1 : 0.3048);
        expect(metres / metresPerPx).toBeCloseTo(bar?.px ?? 0, -0.4);
      }
    expect(scaleBar(Number.NaN, "m", 120)).toBeNull();
    expect(scaleBar(0, "m", 120)).toBeNull();
  });

  it("names directions by the nearest of eight winds", () => {
    expect([0, 22, 23, 90, 180, 337, 338, 359.9].map(windOf)).toEqual([
      "north",
      "north",
      "north-east",
      "east",
      "south",
      "north-west",
      "north",
      "north",
    ]);
    const here = { latitudeDeg: 0, longitudeDeg: 179.9995 };
    expect(wayBetween(here, { latitudeDeg: 0, longitudeDeg: -179.9995 })).toMatchObject({
      wind: "east",
      distanceM: expect.closeTo(111.32, 2),
    });
    expect(wayBetween(here, here)).toEqual({ distanceM: 0, wind: null });
    expect(wayBetween(here, { latitudeDeg: 91, longitudeDeg: 0 })).toBeNull();
  });

  it("is drawn about the ground, and about the person only where there is no ground", () => {
    const here = { at: { latitudeDeg: 1, longitudeDeg: 1 }, accuracyM: 4, old: false };
    const empty = { boundary: null, things: [], labels: [], corners: null, here };
    expect(placesOf(empty)).toEqual([here.at]);
    const boundary = [{ latitudeDeg: 0, longitudeDeg: 0 }];
    expect(placesOf({ ...empty, boundary })).toEqual(boundary);
  });
});

it("has plain words for everything that can be wrong with an edge", () => {
  // What the geometry of a boundary and of its size answers when it cannot.
  const codes = [
    "science/too-few-corners",
    "science/boundary-crosses-itself",
    "science/boundary-without-area",
    "science/field-too-large",
    "science/not-a-place",
    "science/near-a-pole",
    "science/no-number",
  ];
  const { problems } = BOUNDARY_WORDS.en(TRADE_WORDS["uk-ie"]);
  expect(codes.filter((code) => problems[code] === undefined)).toEqual([]);
});
