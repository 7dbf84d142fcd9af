import fc from "fast-check";
import { expect, it } from "vitest";
import { type NameToPlace, placeNames, SIGN_PX } from "../../../src/screens/parts/map/place-names.ts";

const SIGHT = { x: 0, y: 0, width: 2000, height: 2000 };

const name = (x: number, y: number, beside = false): NameToPlace => ({
  x,
  y,
  width: 100,
  height: 20,
  beside,
});

it("leaves a name at its place where nothing else is", () => {
  expect(placeNames([name(50, 50)], [], SIGHT)).toEqual([[0, 0]]);
});

it("moves a name off a sign, no farther than it must", () => {
  const [shift] = placeNames([name(50, 50)], [{ x: 50, y: 50 }], SIGHT);
  expect(shift?.[0]).toBe(0);
  // Half of the sign and half of the name: less would touch.
  expect(Math.abs(shift?.[1] ?? 0)).toBeGreaterThanOrEqual((SIGN_PX + 20) / 2);
});

it("writes the name of a sign below it, or above it where another sign is in the way", () => {
  const spot = { x: 0, y: 0 };
  const [below] = placeNames([name(0, 0, true)], [spot], SIGHT);
  expect(below?.[1]).toBeGreaterThan(0);
  const [above] = placeNames([name(0, 0, true)], [spot, { x: 0, y: 30 }], SIGHT);
  expect(above?.[1]).toBeLessThan(0);
});

it("leaves a name out where it would stand too far from its ground", () => {
  const crowd = Array.from({ length: 21 * 21 }, (_, at) => ({
    x: ((at % 21) - 10) * 20,
    y: (Math.floor(at / 21) - 10) * 20,
  }));
  expect(placeNames([name(0, 0), name(0, 0, true)], crowd, SIGHT)).toEqual([null, null]);
});

it("keeps a name in sight as a whole when its place is in sight, and leaves others where they are", () => {
  const sight = { x: 195, y: 160, width: 390, height: 320 };
  const [inside, outside] = placeNames([name(380, 100), name(500, 100)], [], sight);
  expect(380 + (inside?.[0] ?? 0) + 50).toBeLessThanOrEqual(390);
  expect(outside).toEqual([0, 0]);
});

it("never lets a name lie on another or on a sign", () => {
  const number = fc.integer({ min: 0, max: 390 });
  const names = fc.array(
    fc.record({
      x: number,
      y: number,
      width: fc.integer({ min: 20, max: 220 }),
      height: fc.constantFrom(18, 24),
      beside: fc.boolean(),
    }),
    { maxLength: 12 },
  );
  fc.assert(
    fc.property(names, fc.array(fc.record({ x: number, y: number }), { maxLength: 20 }), (all, signs) => {
      const written = placeNames(all, signs, SIGHT).flatMap((shift, at) => {
        const one = all[at];
        return shift === null || one === undefined
          ? []
          : [{ ...one, x: one.x + shift[0], y: one.y + shift[1] }];
      });
      const apart = (a: Omit<NameToPlace, "beside">, b: Omit<NameToPlace, "beside">): boolean =>
        Math.abs(a.x - b.x) >= (a.width + b.width) / 2 || Math.abs(a.y - b.y) >= (a.height + b.height) / 2;
      const boxes = signs.map((sign) => ({ ...sign, width: SIGN_PX, height: SIGN_PX }));
      return written.every((one, at) =>
        [...written.slice(0, at), ...boxes].every((other) => apart(one, other)),
      );
    }),
  );
});
