import { expect, it } from "vitest";
import { isUnderMoved, isWetGlass, type KeyTouch, MOVED_MS } from "../../../src/device/glass.ts";

const touch = (key: string, atMs: number): KeyTouch => ({ key, atMs });

it("the first touch counts", () => {
  expect(isWetGlass(null, touch("residue", 0))).toBe(false);
});

it("another key within 250 ms does not count", () => {
  expect(isWetGlass(touch("residue", 1000), touch("bare", 1000))).toBe(true);
  expect(isWetGlass(touch("residue", 1000), touch("bare", 1250))).toBe(true);
  expect(isWetGlass(touch("residue", 1000), touch("bare", 1251))).toBe(false);
});

it("the same key counts however fast", () => {
  expect(isWetGlass(touch("residue", 1000), touch("residue", 1010))).toBe(false);
});

it("clocks mixed up lock nothing", () => {
  expect(isWetGlass(touch("residue", 90_000), touch("bare", 10))).toBe(false);
});

it("rain that touches a key every 100 ms still lets one touch through each time", () => {
  let last: KeyTouch | null = null;
  let counted = 0;
  for (let drop = 0; drop < 30; drop++) {
    const next = touch(drop % 2 === 0 ? "residue" : "bare", drop * 100);
    if (isWetGlass(last, next)) continue;
    last = next;
    counted++;
  }
  expect(counted).toBeGreaterThan(10);
});

it("ignores a touch on what has only just come under the finger", () => {
  expect(isUnderMoved(null, 0)).toBe(false);
  expect(isUnderMoved(1000, 1000)).toBe(true);
  expect(isUnderMoved(1000, 1000 + MOVED_MS)).toBe(true);
  expect(isUnderMoved(1000, 1001 + MOVED_MS)).toBe(false);
  // From before the change, told after it: what it hit was looked up when it was told.
  expect(isUnderMoved(1000, 985)).toBe(true);
  // Two clocks mixed up must not lock the keys.
  expect(isUnderMoved(1000, 999 - MOVED_MS)).toBe(false);
});
