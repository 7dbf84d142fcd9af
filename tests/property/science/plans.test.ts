import fc from "fast-check";
import { expect, it } from "vitest";
import { stratifiedPoints } from "../../../src/science/plan/random-points.ts";
import { shortestOrder } from "../../../src/science/plan/shortest-order.ts";
import { magneticFromTrue, trueFromMagnetic } from "../../../src/science/position/bearing.ts";
import { boundaryOf } from "../../../src/science/position/boundary.ts";
import { fieldSize } from "../../../src/science/position/field-size.ts";
import { geodesicBetween, placeAt } from "../../../src/science/position/geodesic.ts";
import { inField } from "../../../src/science/position/in-field.ts";
import { reached } from "../../unit/science/counts.ts";

/** Corners round a middle, by bearing and distance: never crossing themselves. */
const star = fc.record({
  latitudeDeg: fc.double({ min: -75, max: 75, noNaN: true }),
  longitudeDeg: fc.double({ min: -180, max: 180, noNaN: true }),
  radiiM: fc.array(fc.double({ min: 60, max: 600, noNaN: true }), { minLength: 5, maxLength: 12 }),
});
const cornersOf = ({
  latitudeDeg,
  longitudeDeg,
  radiiM,
}: {
  latitudeDeg: number;
  longitudeDeg: number;
  radiiM: number[];
}) =>
  radiiM.map((metres, k) =>
    reached(placeAt({ latitudeDeg, longitudeDeg }, (-360 * k) / radiiM.length, metres)),
  );

it("area and perimeter do not depend on winding, beginning, closing or longitude", () => {
  fc.assert(
    fc.property(
      star,
      fc.nat(11),
      fc.double({ min: -180, max: 180, noNaN: true }),
      (shape, cut, elsewhere) => {
        const corners = cornersOf(shape);
        const size = reached(fieldSize(reached(boundaryOf(corners))));
        const at = cut % corners.length;
        const [first] = corners;
        const others = [
          [...corners].reverse(),
          [...corners.slice(at), ...corners.slice(0, at)],
          first === undefined ? corners : [...corners, first],
          cornersOf({ ...shape, longitudeDeg: elsewhere }),
        ];
        for (const other of others) {
          const same = reached(fieldSize(reached(boundaryOf(other))));
          expect(Math.abs(same.areaM2 / size.areaM2 - 1)).toBeLessThan(1e-8);
          expect(Math.abs(same.perimeterM - size.perimeterM)).toBeLessThan(1e-5);
        }
      },
    ),
    { numRuns: 200 },
  );
});

it("the middle of a star lies inside, and what lies beyond its farthest corner outside", () => {
  fc.assert(
    fc.property(star, fc.double({ min: 0, max: 360, noNaN: true }), (shape, bearing) => {
      const boundary = reached(boundaryOf(cornersOf(shape)));
      const middle = { latitudeDeg: shape.latitudeDeg, longitudeDeg: shape.longitudeDeg };
      expect(reached(inField(boundary, middle)).inside).toBe(true);
      const beyond = reached(placeAt(middle, bearing, 601));
      const where = reached(inField(boundary, beyond));
      expect(where.inside).toBe(false);
      // No nearer than to the circle that holds all corners.
      expect(where.toEdgeM).toBeGreaterThan(601 - Math.max(...shape.radiiM) - 0.01);
    }),
    { numRuns: 300 },
  );
});

it("random points keep their distances wherever the field lies, or say why not", () => {
  fc.assert(
    fc.property(star, fc.integer(), (shape, seed) => {
      const boundary = reached(boundaryOf(cornersOf(shape)));
      const wanted = { perStrip: 5, headlandM: 15, apartM: 10, seed };
      const [strip] = stratifiedPoints([{ id: "s", boundary }], wanted);
      if (strip === undefined) throw new Error("no strip");
      if (!strip.points.ok) {
        expect(["science/points-do-not-fit", "science/headland-too-wide"]).toContain(
          strip.points.problem.code,
        );
        return;
      }
      const { places } = strip.points.value;
      for (const [k, place] of places.entries()) {
        expect(reached(inField(boundary, place))).toMatchObject({ inside: true });
        expect(reached(inField(boundary, place)).toEdgeM).toBeGreaterThan(15 - 1e-4);
        for (const other of places.slice(k + 1))
          expect(reached(geodesicBetween(place, other)).distanceM).toBeGreaterThan(10 - 1e-3);
      }
    }),
    { numRuns: 100 },
  );
});

it("a way set off and measured back agree, at any place and distance of a day's drive", () => {
  const place = fc.record({
    latitudeDeg: fc.double({ min: -85, max: 85, noNaN: true }),
    longitudeDeg: fc.double({ min: -180, max: 180, noNaN: true }),
  });
  fc.assert(
    fc.property(
      place,
      fc.double({ min: 0, max: 359.999, noNaN: true }),
      fc.double({ min: 1, max: 400_000, noNaN: true }),
      (from, bearing, metres) => {
        const to = reached(placeAt(from, bearing, metres));
        const way = reached(geodesicBetween(from, to));
        expect(Math.abs(way.distanceM - metres)).toBeLessThan(1e-4);
        const off = Math.abs((way.initialBearingDeg ?? 0) - bearing);
        expect(Math.min(off, 360 - off) * metres).toBeLessThan(0.01);
        expect(Math.abs(reached(geodesicBetween(to, from)).distanceM - way.distanceM)).toBeLessThan(1e-6);
      },
    ),
    { numRuns: 500 },
  );
});

it("declination goes on and off, and never leaves a bearing outside 0 to 360", () => {
  const angle = fc.double({ min: -720, max: 720, noNaN: true });
  fc.assert(
    fc.property(angle, fc.double({ min: -180, max: 180, noNaN: true }), (bearing, declination) => {
      const truth = reached(trueFromMagnetic(bearing, declination)).value;
      expect(truth).toBeGreaterThanOrEqual(0);
      expect(truth).toBeLessThan(360);
      const turned = Math.abs(reached(magneticFromTrue(truth, declination)).value - bearing) % 360;
      expect(Math.min(turned, 360 - turned)).toBeLessThan(1e-9);
    }),
  );
});

it("visits every place once, with the length it states; an exact order is never longer than as they came", () => {
  const point = fc.tuple(fc.integer({ min: 0, max: 500 }), fc.integer({ min: 0, max: 500 }));
  fc.assert(
    fc.property(fc.array(point, { minLength: 2, maxLength: 24 }), fc.boolean(), (points, back) => {
      const table = points.map(([x, y]) => points.map(([u, v]) => Math.hypot(x - u, y - v)));
      const found = shortestOrder(table, back);
      expect([...found.order].sort((a, b) => a - b)).toEqual(points.slice(1).map((_, k) => k + 1));
      const length = (order: readonly number[]) => {
        const way = [0, ...order, ...(back ? [0] : [])];
        return way.slice(1).reduce((sum, to, k) => sum + (table[way[k] ?? 0]?.[to] ?? 0), 0);
      };
      expect(found.lengthM).toBeCloseTo(length(found.order), 6);
      if (found.exact)
        expect(found.lengthM).toBeLessThanOrEqual(length(points.slice(1).map((_, k) => k + 1)) + 1e-9);
    }),
    { numRuns: 150 },
  );
});
