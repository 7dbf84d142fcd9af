import { describe, expect, it } from "vitest";
import { pairsAlongEdge } from "../../../../src/science/plan/pairs-along-edge.ts";
import { type PointsWanted, stratifiedPoints } from "../../../../src/science/plan/random-points.ts";
import { wWalk } from "../../../../src/science/plan/w-walk.ts";
import { boundaryOf } from "../../../../src/science/position/boundary.ts";
import { geodesicBetween } from "../../../../src/science/position/geodesic.ts";
import { inField } from "../../../../src/science/position/in-field.ts";
import { reached, reasonOf } from "../counts.ts";
import { nearEquator } from "../position/places.ts";

const field = (rows: readonly (readonly number[])[], atDeg = 0) =>
  reached(boundaryOf(nearEquator(rows, atDeg)));
const RECTANGLE = [
  [0, 0],
  [400, 0],
  [400, 100],
  [0, 100],
];
/** 24 m wide, 500 m long, running north-east. */
const NARROW = [
  [0, 0],
  [300, 400],
  [280.8, 414.4],
  [-19.2, 14.4],
];
const U_SHAPE = [
  [0, 0],
  [300, 0],
  [300, 300],
  [200, 300],
  [200, 100],
  [100, 100],
  [100, 300],
  [0, 300],
];
const WANTED: PointsWanted = { perStrip: 6, headlandM: 8, apartM: 20, seed: 11 };

describe("stratified random points", () => {
  const strips = [
    { id: "north", boundary: field(NARROW) },
    { id: "wide", boundary: field(RECTANGLE) },
    { id: "date line", boundary: field(U_SHAPE, 179.999) },
  ];

  it("lie clear of the headland and apart, as many in every strip", () => {
    for (const [at, { points }] of stratifiedPoints(strips, WANTED).entries()) {
      const { places, n } = reached(points);
      expect(n).toBe(6);
      expect(places).toHaveLength(6);
      for (const [k, place] of places.entries()) {
        const boundary = strips[at]?.boundary;
        if (boundary === undefined) throw new Error("no strip");
        const where = reached(inField(boundary, place));
        expect(where.inside).toBe(true);
        expect(where.toEdgeM).toBeGreaterThan(8 - 0.001);
        for (const other of places.slice(k + 1))
          expect(reached(geodesicBetween(place, other)).distanceM).toBeGreaterThan(20 - 0.001);
      }
    }
  });

  it("are the same for the same seed, whatever strips stand beside", () => {
    const all = stratifiedPoints(strips, WANTED);
    expect(stratifiedPoints(strips, WANTED)).toEqual(all);
    expect(stratifiedPoints(strips.slice(1, 2), WANTED)[0]).toEqual(all[1]);
    expect(stratifiedPoints(strips, { ...WANTED, seed: 12 })).not.toEqual(all);
    // Two strips of one shape get points of their own.
    const [one, other] = ["a", "b"].map((id) => ({ id, boundary: field(RECTANGLE) }));
    if (one === undefined || other === undefined) throw new Error("no strip");
    const [first, second] = stratifiedPoints([one, other], WANTED);
    expect(first?.points).not.toEqual(second?.points);
  });

  it("falls on every part of a strip alike", () => {
    const boundary = field(U_SHAPE);
    const { places } = reached(
      stratifiedPoints([{ id: "u", boundary }], { perStrip: 200, headlandM: 0, apartM: 0, seed: 5 })[0]
        ?.points ?? {
        ok: false,
        problem: { code: "test/none", facts: {} },
      },
    );
    // The foot of the U is 3 of 7 hectares: 85.7 of 200, spread √(200·3/7·4/7) = 7.0; four of them is far out.
    const foot = places.filter(({ latitudeDeg }) => latitudeDeg < 100 / 110_574.3).length;
    expect(Math.abs(foot - 85.7)).toBeLessThan(28);
  });

  it("says what does not fit, and how much would", () => {
    const points = (wanted: Partial<PointsWanted>) =>
      stratifiedPoints([{ id: "n", boundary: field(NARROW) }], { ...WANTED, ...wanted })[0]?.points ?? null;
    const only = (wanted: Partial<PointsWanted>) => {
      const result = points(wanted);
      if (result === null) throw new Error("no strip");
      return result;
    };
    expect(only({ headlandM: 12.2 })).toMatchObject({
      problem: { code: "science/headland-too-wide", facts: { mostM: expect.closeTo(12, 0) } },
    });
    // Clear of 8 m the strip is 484 m long: at 100 m apart six would need 500 m.
    const crowded = only({ apartM: 100 });
    expect(reasonOf(crowded)).toBe("science/points-do-not-fit");
    if (!crowded.ok) {
      expect(crowded.problem.facts["asked"]).toBe(6);
      expect(Number(crowded.problem.facts["fit"])).toBeGreaterThanOrEqual(3);
      expect(Number(crowded.problem.facts["fit"])).toBeLessThan(6);
    }
    for (const perStrip of [0, -1, 2.5, Number.NaN])
      expect(reasonOf(only({ perStrip }))).toBe("science/not-a-count");
    expect(reasonOf(only({ perStrip: 201 }))).toBe("science/too-many-points");
    expect(reasonOf(only({ headlandM: -1 }))).toBe("science/not-a-length");
    expect(reasonOf(only({ apartM: Number.NaN }))).toBe("science/not-a-length");
    expect(reasonOf(only({ seed: Number.NaN }))).toBe("science/no-number");
    expect(stratifiedPoints([], WANTED)).toEqual([]);
  });
});

describe("a W walk", () => {
  it("turns five times against the headland of a rectangle", () => {
    const walk = reached(wWalk(field(RECTANGLE), { stops: 8, headlandM: 10 }));
    expect(walk.turns).toHaveLength(5);
    expect(walk.stops).toHaveLength(8);
    expect(walk.cautions).toEqual([]);
    // Four legs of 95 m along (380/4) and 80 m across: 4·√(95² + 80²) = 496.8 m; a step of the grid (5 m, 1.7 m) may
    // be lost at each end: 480 m.
    expect(Math.abs(walk.lengthM - 488)).toBeLessThan(9);
    const north = walk.turns.map(({ latitudeDeg }) => latitudeDeg * 110_574.3);
    for (const [k, each] of north.entries()) {
      // Along the long side up and down in turn, whichever side comes first.
      if (k > 0) expect(Math.abs(each - (north[k - 1] ?? 0))).toBeGreaterThan(75);
      expect(each).toBeGreaterThan(9.9);
      expect(each).toBeLessThan(90.1);
    }
  });

  it.each([
    [
      "a triangle",
      [
        [0, 0],
        [300, 50],
        [120, 260],
      ],
    ],
    ["a U", U_SHAPE],
    ["a narrow strip", NARROW],
  ])("keeps every stop in %s and clear of the headland", (_, rows) => {
    const boundary = field(rows);
    const { stops } = reached(wWalk(boundary, { stops: 12, headlandM: 9 }));
    expect(stops).toHaveLength(12);
    for (const stop of stops) {
      const where = reached(inField(boundary, stop));
      expect(where.inside).toBe(true);
      expect(where.toEdgeM).toBeGreaterThan(9 - 0.001);
    }
  });

  it("says when a leg leaves the field, and stops in both arms of a C", () => {
    const boundary = field([
      [0, 0],
      [600, 0],
      [600, 100],
      [100, 100],
      [100, 200],
      [600, 200],
      [600, 300],
      [0, 300],
    ]);
    const { stops, cautions } = reached(wWalk(boundary, { stops: 10, headlandM: 5 }));
    expect(cautions).toEqual([{ code: "science/walk-leaves-field", facts: {} }]);
    for (const stop of stops) expect(reached(inField(boundary, stop)).inside).toBe(true);
    const north = stops.map(({ latitudeDeg }) => latitudeDeg * 110_574.3);
    expect(Math.min(...north)).toBeLessThan(100);
    expect(Math.max(...north)).toBeGreaterThan(200);
  });

  it("has reasons", () => {
    const boundary = field(NARROW);
    expect(reasonOf(wWalk(boundary, { stops: 5, headlandM: 13 }))).toBe("science/headland-too-wide");
    expect(reasonOf(wWalk(boundary, { stops: 0, headlandM: 1 }))).toBe("science/not-a-count");
    expect(reasonOf(wWalk(boundary, { stops: 5, headlandM: Number.NaN }))).toBe("science/not-a-length");
    expect(reached(wWalk(boundary, { stops: 1, headlandM: 1 })).stops).toHaveLength(1);
  });
});

describe("pairs along an edge", () => {
  const wanted = { pairs: 6, offEdgeM: 10, fromEndsM: 30, seed: 2 };
  const straight = nearEquator([
    [0, 0],
    [0, 300],
  ]);
  const metres = (place: { latitudeDeg: number; longitudeDeg: number }) => [
    place.longitudeDeg * 111_319.5,
    place.latitudeDeg * 110_574.3,
  ];

  it("stand opposite each other at equal steps", () => {
    const { pairs, stepM } = reached(pairsAlongEdge(straight, wanted));
    expect(stepM).toBeCloseTo(40, 1);
    for (const [k, { left, right, atEdge, alongM }] of pairs.entries()) {
      // Walking north, west is left.
      expect(metres(left)[0]).toBeCloseTo(-10, 2);
      expect(metres(right)[0]).toBeCloseTo(10, 2);
      for (const place of [left, right, atEdge])
        expect(Math.abs((metres(place)[1] ?? 0) - alongM)).toBeLessThan(0.05);
      expect(alongM).toBeGreaterThanOrEqual(30);
      expect(alongM).toBeLessThanOrEqual(270.1);
      if (k > 0) expect(alongM - (pairs[k - 1]?.alongM ?? 0)).toBeCloseTo(stepM, 6);
    }
  });

  it("take their start from the seed", () => {
    const along = (seed: number) => reached(pairsAlongEdge(straight, { ...wanted, seed })).pairs[0]?.alongM;
    expect(along(2)).toBe(along(2));
    expect(along(2)).not.toBe(along(3));
  });

  it("keep the same distance to both sides round a bend", () => {
    const bent = nearEquator([
      [0, 0],
      [0, 150],
      [130, 225],
    ]);
    const { pairs } = reached(pairsAlongEdge(bent, { ...wanted, pairs: 12 }));
    const edge = (spot: { latitudeDeg: number; longitudeDeg: number }) => {
      const [x, y] = metres(spot);
      const legs = [
        [0, 0, 0, 150],
        [0, 150, 130, 225],
      ];
      return Math.min(
        ...legs.map(([x1 = 0, y1 = 0, x2 = 0, y2 = 0]) => {
          const [dx, dy] = [x2 - x1, y2 - y1];
          const share = Math.min(
            1,
            Math.max(0, (((x ?? 0) - x1) * dx + ((y ?? 0) - y1) * dy) / (dx * dx + dy * dy)),
          );
          return Math.hypot((x ?? 0) - x1 - share * dx, (y ?? 0) - y1 - share * dy);
        }),
      );
    };
    for (const { left, right } of pairs) {
      expect(Math.abs(edge(left) - 10)).toBeLessThan(0.11);
      expect(Math.abs(edge(right) - 10)).toBeLessThan(0.11);
    }
  });

  it("run across the date line", () => {
    const edge = nearEquator(
      [
        [0, 0],
        [400, 0],
      ],
      179.999,
    );
    const { pairs } = reached(pairsAlongEdge(edge, wanted));
    for (const { left, right } of pairs)
      expect(reached(geodesicBetween(left, right)).distanceM).toBeCloseTo(20, 3);
  });

  it("has reasons", () => {
    const reason = (edge: typeof straight, changed: Partial<typeof wanted> = {}) =>
      reasonOf(pairsAlongEdge(edge, { ...wanted, ...changed }));
    expect(reason([])).toBe("science/edge-too-short");
    expect(reason(straight.slice(0, 1))).toBe("science/edge-too-short");
    expect(
      reason(
        nearEquator([
          [5, 5],
          [5, 5],
        ]),
      ),
    ).toBe("science/edge-too-short");
    expect(reason(straight, { fromEndsM: 150 })).toBe("science/edge-too-short");
    expect(reason(straight, { offEdgeM: 0 })).toBe("science/not-a-length");
    expect(reason(straight, { offEdgeM: -1 })).toBe("science/not-a-length");
    expect(reason(straight, { pairs: 0 })).toBe("science/not-a-count");
    expect(reason(straight, { seed: Number.NaN })).toBe("science/no-number");
    expect(reason([...straight, { latitudeDeg: 95, longitudeDeg: 0 }])).toBe("science/not-a-place");
    // A zigzag of 20 m legs leaves no place with 30 m to both sides.
    const zigzag = nearEquator(Array.from({ length: 20 }, (_, k) => [k % 2 === 0 ? 0 : 14, 14 * k]));
    expect(reason(zigzag, { offEdgeM: 30 })).toBe("science/edge-too-crooked");
  });
});
