import fc from "fast-check";
import { expect, it } from "vitest";
import { ACCURACY_MEANS } from "../../../src/record/shapes.ts";
import { distanceM } from "../../../src/science/position/distance.ts";
import { standingStill } from "../../../src/science/position/standing-still.ts";

const fix = fc.record({
  latitudeDeg: fc.double({ min: 51.999, max: 52.001, noNaN: true }),
  longitudeDeg: fc
    .double({ min: 179.999, max: 180, noNaN: true })
    .map((deg) => (deg > 179.9995 ? deg - 359.999 : deg)),
  accuracyM: fc.option(fc.double({ min: 0, max: 100, noNaN: true })),
  accuracyMeans: fc.constantFrom(...ACCURACY_MEANS, null),
  atMs: fc.nat(20_000),
});

it("does not depend on the order in which fixes come in, and stays among them", () => {
  fc.assert(
    fc.property(fc.array(fix, { minLength: 1, maxLength: 15 }), (fixes) => {
      const position = standingStill(fixes);
      expect(standingStill([...fixes].reverse())).toEqual(position);
      if (!position.ok) throw new Error(position.problem.code);
      expect(Number.isFinite(position.value.latitudeDeg + position.value.longitudeDeg)).toBe(true);
      const farthest = Math.max(
        ...fixes.map((one) => {
          const metres = distanceM(one, position.value);
          return metres.ok ? metres.value : Number.POSITIVE_INFINITY;
        }),
      );
      expect(farthest).toBeLessThan(400);
    }),
    { numRuns: 2000 },
  );
});

it("measures the same way there and back", () => {
  const place = fc.record({
    latitudeDeg: fc.double({ min: -85, max: 85, noNaN: true }),
    longitudeDeg: fc.double({ min: -180, max: 180, noNaN: true }),
  });
  fc.assert(
    fc.property(place, fc.double({ min: -0.01, max: 0.01, noNaN: true }), (from, step) => {
      const to = { latitudeDeg: from.latitudeDeg + step, longitudeDeg: from.longitudeDeg };
      const there = distanceM(from, to);
      const back = distanceM(to, from);
      expect(there.ok && back.ok && Math.abs(there.value - back.value) < 1e-9).toBe(true);
    }),
  );
});
