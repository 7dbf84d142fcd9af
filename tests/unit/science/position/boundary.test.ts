import { describe, expect, it } from "vitest";
import { boundaryOf } from "../../../../src/science/position/boundary.ts";
import { deepest } from "../../../../src/science/position/deepest.ts";
import { fieldSize } from "../../../../src/science/position/field-size.ts";
import { clearOfHeadland, inField } from "../../../../src/science/position/in-field.ts";
import { selfCrossing } from "../../../../src/science/position/self-crossing.ts";
import { reached, reasonOf } from "../counts.ts";
import { nearEquator, placesOf } from "./places.ts";

const SQUARE = [
  [0, 0],
  [100, 0],
  [100, 100],
  [0, 100],
];
const L_SHAPE = [
  [0, 0],
  [200, 0],
  [200, 100],
  [100, 100],
  [100, 300],
  [0, 300],
];
const plane = (rows: readonly (readonly number[])[]) =>
  rows.map(([eastM, northM]) => ({ eastM: eastM ?? Number.NaN, northM: northM ?? Number.NaN }));
const field = (rows: readonly (readonly number[])[], atDeg = 0) =>
  reached(boundaryOf(nearEquator(rows, atDeg)));
const spot = (east: number, north: number, atDeg = 0) => {
  const [place] = nearEquator([[east, north]], atDeg);
  return place ?? { latitudeDeg: Number.NaN, longitudeDeg: Number.NaN };
};

describe("a boundary", () => {
  it("is the same whichever way round, closed or not, and wherever it begins", () => {
    const turned = [...SQUARE.slice(2), ...SQUARE.slice(0, 2)];
    const closed = [...SQUARE, [0, 0]];
    const backwards = [...SQUARE].reverse();
    for (const rows of [SQUARE, turned, closed, backwards, [...closed].reverse()])
      expect(reached(fieldSize(field(rows))).areaM2).toBeCloseTo(10_000, -1);
    expect(field(SQUARE).winding).toBe("counter-clockwise");
    expect(field(backwards).winding).toBe("clockwise");
    expect(field(backwards).ring).toHaveLength(4);
    expect(field(closed).places).toHaveLength(4);
    // RFC 7946's own example of a ring: exterior counter-clockwise.
    expect(
      reached(
        boundaryOf(
          placesOf([
            [0, 0],
            [0, 0.1],
            [0.1, 0.1],
            [0.1, 0],
            [0, 0],
          ]),
        ),
      ).winding,
    ).toBe("counter-clockwise");
  });

  it("counts repeated corners once", () => {
    expect(
      field([
        [0, 0],
        [0, 0],
        [100, 0],
        [100, 100],
        [100, 100],
        [100, 100],
        [0, 100],
      ]).ring,
    ).toHaveLength(4);
    expect(
      reasonOf(
        boundaryOf(
          nearEquator([
            [0, 0],
            [100, 0],
            [100, 0],
            [0, 0],
          ]),
        ),
      ),
    ).toBe("science/too-few-corners");
  });

  it("has a reason where it has no area", () => {
    expect(reasonOf(boundaryOf([]))).toBe("science/too-few-corners");
    expect(
      reasonOf(
        boundaryOf(
          nearEquator([
            [0, 0],
            [1, 1],
          ]),
        ),
      ),
    ).toBe("science/too-few-corners");
    expect(
      reasonOf(
        boundaryOf(
          nearEquator([
            [0, 0],
            [50, 50],
            [100, 100],
            [20, 20],
          ]),
        ),
      ),
    ).toBe("science/boundary-without-area");
    expect(
      reasonOf(
        boundaryOf(
          placesOf([
            [0, 0],
            [Number.NaN, 1],
            [1, 1],
          ]),
        ),
      ),
    ).toBe("science/not-a-place");
    expect(
      reasonOf(
        boundaryOf(
          placesOf([
            [0, 0],
            [0, 181],
            [1, 1],
          ]),
        ),
      ),
    ).toBe("science/not-a-place");
    expect(
      reasonOf(
        boundaryOf(
          placesOf([
            [89.5, 0],
            [89.5, 90],
            [89.5, 180],
          ]),
        ),
      ),
    ).toBe("science/near-a-pole");
    expect(
      reasonOf(
        boundaryOf(
          placesOf([
            [0, 0],
            [0, 2],
            [2, 2],
          ]),
        ),
      ),
    ).toBe("science/field-too-large");
  });

  it("says where it crosses itself, numbered as given", () => {
    const bow = boundaryOf(
      nearEquator([
        [0, 0],
        [100, 100],
        [100, 0],
        [0, 100],
      ]),
    );
    expect(bow).toMatchObject({
      problem: { code: "science/boundary-crosses-itself", facts: { first: 2, second: 4 } },
    });
    // A repeat before the crossing does not shift the numbers.
    expect(
      boundaryOf(
        nearEquator([
          [0, 0],
          [0, 0],
          [100, 100],
          [100, 0],
          [0, 100],
        ]),
      ),
    ).toMatchObject({
      problem: { facts: { first: 3, second: 5 } },
    });
  });

  it.each([
    [
      "walked past the start",
      [
        [0, 0],
        [100, 0],
        [100, 100],
        [0, 100],
        [10, -20],
      ],
    ],
    [
      "a spike",
      [
        [0, 0],
        [50, 0],
        [50, -40],
        [50, 0.0001],
        [100, 0],
        [100, 100],
        [0, 100],
      ],
    ],
    [
      "a figure of eight that meets in a corner",
      [
        [0, 0],
        [100, 0],
        [50, 50],
        [100, 100],
        [0, 100],
        [50, 50],
      ],
    ],
    ["walked twice", [...SQUARE, ...SQUARE]],
    [
      "a corner on another edge",
      [
        [0, 0],
        [100, 0],
        [100, 100],
        [50, 0],
        [0, 100],
      ],
    ],
  ])("refuses %s", (_, rows) => {
    expect(reasonOf(boundaryOf(nearEquator(rows)))).toBe("science/boundary-crosses-itself");
  });

  it("takes corners along a straight edge and right angles as they are", () => {
    expect(
      selfCrossing(
        plane([
          [0, 0],
          [50, 0],
          [100, 0],
          [100, 100],
          [0, 100],
          [0, 50],
        ]),
      ),
    ).toBeNull();
    expect(selfCrossing(plane(L_SHAPE))).toBeNull();
  });

  it("looks 20 000 corners over in well under a second", () => {
    const round = Array.from({ length: 20_000 }, (_, k) => {
      const angle = (2 * Math.PI * k) / 20_000;
      const radius = 500 + 40 * Math.sin(7 * angle);
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    });
    // ∫½r²dφ = π·(500² + 40²/2).
    expect(reached(fieldSize(field(round))).areaM2 / (Math.PI * 250_800)).toBeCloseTo(1, 4);
  });
});

describe("inside or outside", () => {
  it.each([0, 10, 179.9995, -180])("an L at %d°, across the date line too", (atDeg) => {
    const boundary = field(L_SHAPE, atDeg);
    const where = (east: number, north: number) => reached(inField(boundary, spot(east, north, atDeg)));
    expect(where(50, 250)).toMatchObject({ inside: true, toEdgeM: expect.closeTo(50, 1) });
    expect(where(150, 150)).toMatchObject({ inside: false, toEdgeM: expect.closeTo(50, 1) });
    // The nearest edge is a corner: √(30² + 40²).
    expect(where(230, -40)).toMatchObject({ inside: false, toEdgeM: expect.closeTo(50, 1) });
    // Level with corners, where a careless ray counts twice or not at all.
    expect(where(50, 100).inside).toBe(true);
    expect(where(-10, 100).inside).toBe(false);
    expect(where(250, 100).inside).toBe(false);
    expect(where(-10, 300).inside).toBe(false);
  });

  it("counts the edge as inside", () => {
    const [corner] = field(SQUARE).places;
    if (corner === undefined) throw new Error("no corner");
    expect(reached(inField(field(SQUARE), corner))).toMatchObject({
      inside: true,
      toEdgeM: expect.closeTo(0, 3),
    });
  });

  it("has reasons", () => {
    const boundary = field(SQUARE);
    expect(reasonOf(inField(boundary, { latitudeDeg: 2, longitudeDeg: 0 }))).toBe(
      "science/too-far-from-field",
    );
    expect(reasonOf(inField(boundary, { latitudeDeg: 0, longitudeDeg: 180 }))).toBe(
      "science/too-far-from-field",
    );
    expect(reasonOf(inField(boundary, { latitudeDeg: Number.NaN, longitudeDeg: 0 }))).toBe(
      "science/not-a-place",
    );
  });
});

describe("the headland", () => {
  it("is left out by distance to every edge, round inner corners too", () => {
    const boundary = field(L_SHAPE);
    const clear = (east: number, north: number, width: number) =>
      reached(clearOfHeadland(boundary, spot(east, north), width));
    expect(clear(50, 50, 49)).toBe(true);
    expect(clear(50, 50, 51)).toBe(false);
    // 20 m west and 20 m south of the inner corner: 28.3 m from it.
    expect(clear(80, 80, 28)).toBe(true);
    expect(clear(80, 80, 29)).toBe(false);
    expect(clear(150, 150, 0)).toBe(false);
    expect(reasonOf(clearOfHeadland(boundary, spot(50, 50), -1))).toBe("science/not-a-length");
    expect(reasonOf(clearOfHeadland(boundary, spot(50, 50), Number.NaN))).toBe("science/not-a-length");
  });

  it("knows the widest that leaves anything over", () => {
    expect(deepest(plane(SQUARE)).depthM).toBeCloseTo(50, 0);
    // Right triangle 3-4-5: the inscribed circle has radius (3 + 4 − 5)/2.
    expect(
      Math.abs(
        deepest(
          plane([
            [0, 0],
            [400, 0],
            [0, 300],
          ]),
        ).depthM - 100,
      ),
    ).toBeLessThan(1);
    expect(
      deepest(
        plane([
          [0, 0],
          [300, 400],
          [292, 406],
          [-8, 6],
        ]),
      ).depthM,
    ).toBeCloseTo(5, 0);
    // Where the arms of an L meet: the circle touches two outer edges and the inner corner, r = 100·(2 − √2).
    expect(Math.abs(deepest(plane(L_SHAPE)).depthM - 100 * (2 - Math.SQRT2))).toBeLessThan(0.6);
  });
});
