import { describe, expect, it } from "vitest";
import { inStep, type PositionFix } from "../../../src/device/position.ts";
import { positionOf } from "../../../src/screens/parts/standing.tsx";

const METRES_PER_DEGREE = 111_000;

/** A fix a second, so many metres north of 52° N. */
const fix = (second: number, northM: number, more: Partial<PositionFix> = {}): PositionFix => ({
  latitudeDeg: 52 + northM / METRES_PER_DEGREE,
  longitudeDeg: 0,
  accuracyM: 4,
  accuracyMeans: "68-percent",
  altitudeM: null,
  atMs: second * 1000,
  receivedAtMs: second * 1000,
  stale: false,
  ...more,
});
const northOf = (fixes: readonly PositionFix[]): number =>
  ((positionOf(fixes)?.position.latitudeDeg ?? Number.NaN) - 52) * METRES_PER_DEGREE;

describe("the position of a stand", () => {
  it("is none before the first fresh fix", () => {
    expect(positionOf([])).toBeNull();
    expect(positionOf([fix(0, 0, { stale: true })])).toBeNull();
  });

  it("rests on all fixes of somebody who stands still", () => {
    const still = positionOf(Array.from({ length: 30 }, (_, second) => fix(second, second % 2)));
    expect(still?.moving).toBe(false);
    expect(still?.position.fixes).toBe(30);
  });

  it("leaves out the walk to the place", () => {
    const walk = Array.from({ length: 60 }, (_, second) => fix(second, -90 + second * 1.5));
    const stand = Array.from({ length: 10 }, (_, second) => fix(60 + second, 0));
    expect(positionOf(walk)?.moving).toBe(true);
    expect(positionOf([...walk, ...stand])?.moving).toBe(false);
    expect(Math.abs(northOf([...walk, ...stand]))).toBeLessThan(4);
  });

  it("is where somebody is now, and says that it wanders, while the walk goes on", () => {
    const walk = Array.from({ length: 60 }, (_, second) => fix(second, second * 10));
    expect(positionOf(walk)?.moving).toBe(true);
    expect(northOf(walk)).toBeGreaterThan(550);
  });
});

describe("fixes whose own clock is off", () => {
  it("are live when they come as time goes by", () => {
    const live = inStep();
    expect([0, 1000, 2000, 3000].map((monoMs) => live(monoMs - 60_000, monoMs))).toEqual([
      false,
      false,
      false,
      true,
    ]);
  });

  it("are old when they all come at once, or when one is handed out again", () => {
    const live = inStep();
    expect([0, 1000, 2000, 3000, 4000].map((atMs) => live(atMs, 10)).some(Boolean)).toBe(false);
    expect(live(4000, 8000)).toBe(false);
  });
});
