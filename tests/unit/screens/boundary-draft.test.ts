import { describe, expect, it } from "vitest";
import {
  type BoundaryDraft,
  type Corner,
  closedEdge,
  coarseCorners,
  cornersOf,
  crossingSides,
  draftKey,
  isRound,
  movedCorner,
  newDraft,
  redone,
  undone,
  unseenPieces,
  walked,
  withCorner,
  withoutCorner,
} from "../../../src/screens/fields/boundary-draft.ts";

// One degree of longitude on the equator is 111 319.49 m (NIMA TR8350.2: 6 378 137 m · π/180).
const M = 1 / 111_319.49;
const at = (eastM: number, northM: number, atS: number | null = null, accuracyM = 4): Corner => ({
  latitudeDeg: northM * M,
  longitudeDeg: eastM * M,
  accuracyM: atS === null ? null : accuracyM,
  atMs: atS === null ? null : atS * 1000,
});
const drawn = (...corners: readonly Corner[]): BoundaryDraft =>
  corners.reduce((draft, corner) => withCorner(draft, corner), newDraft("touch", []));
const square = [at(0, 0), at(100, 0), at(100, 100), at(0, 100)];

describe("steps", () => {
  it("can all be taken back, as far as the first, and brought again", () => {
    let draft = drawn(...square);
    draft = movedCorner(draft, 1, at(120, 0));
    draft = withoutCorner(draft, 3);
    draft = withCorner(draft, at(50, 50), 0);
    const whole = cornersOf(draft);
    expect(whole).toEqual([at(50, 50), at(0, 0), at(120, 0), at(100, 100)]);
    for (let step = 0; step < 9; step++) draft = undone(draft);
    expect(cornersOf(draft)).toEqual([]);
    for (let step = 0; step < 9; step++) draft = redone(draft);
    expect(cornersOf(draft)).toEqual(whole);
  });

  it("forget what was taken back once another corner is set", () => {
    const draft = withCorner(undone(drawn(...square)), at(7, 7));
    expect(cornersOf(draft).at(-1)).toEqual(at(7, 7));
    expect(redone(draft)).toEqual(draft);
  });

  it("leave the corners alone that they do not name", () => {
    const draft = drawn(...square);
    expect(movedCorner(draft, 4, at(0, 0))).toBe(draft);
    expect(withoutCorner(draft, 4)).toBe(draft);
  });

  it("begin with the boundary that stands there, and cannot be taken back beyond it", () => {
    const draft = withCorner(newDraft("touch", square), at(0, 50));
    expect(cornersOf(undone(undone(draft)))).toHaveLength(4);
  });

  it("come back from the store as they were, and nothing else is taken for them", () => {
    const key = draftKey(`field-${"0".repeat(32)}`);
    const draft = drawn(...square);
    expect(key.durability).toBe("strict");
    expect(key.read(JSON.parse(JSON.stringify(draft)))).toEqual(draft);
    for (const other of [null, 3, "x", [], {}, { base: [] }]) expect(key.read(other)).toBeUndefined();
  });
});

describe("a walk", () => {
  const fix = (eastM: number, accuracyM: number) => ({ ...at(eastM, 0, 0), accuracyM });

  it("takes the first good position, leaves coarse ones, and adds none while one stands", () => {
    expect(walked(null, fix(0, 4))).toBe("taken");
    expect(walked(null, fix(0, 200))).toBe("coarse");
    expect(walked(at(0, 0, 0), fix(3.5, 3))).toBe("standing");
    expect(walked(at(0, 0, 0), fix(4.5, 3))).toBe("taken");
    // The worse the position, the farther one has to go, up to 10 m.
    expect(walked(at(0, 0, 0), fix(7, 8))).toBe("standing");
    expect(walked(at(0, 0, 0), fix(11, 25))).toBe("taken");
  });

  it("says when it is round, not when it has just begun", () => {
    const round = [at(0, 0, 0), at(50, 0, 1), at(100, 0, 2), at(100, 100, 3), at(50, 100, 4), at(0, 100, 5)];
    expect(isRound(round, at(0, 12))).toBe(true);
    expect(isRound(round, at(0, 40))).toBe(false);
    expect(isRound(round.slice(0, 2), at(1, 1))).toBe(false);
    expect(isRound([], at(0, 0))).toBe(false);
  });

  it("names pieces that nobody saw and corners that are rough", () => {
    const corners = [at(0, 0, 0), at(5, 0, 4), at(90, 0, 300), at(90, 5, 304, 80)];
    expect(unseenPieces(corners)).toEqual([[2, 3]]);
    expect(coarseCorners(corners)).toEqual([corners[3]]);
    // Somebody who rested at a corner missed nothing.
    expect(unseenPieces([at(0, 0, 0), at(5, 0, 900)])).toEqual([]);
  });
});

describe("closing", () => {
  it("leaves out what was walked past the first corner", () => {
    const past = [at(0, 0, 0), at(100, 0, 1), at(100, 100, 2), at(0, 100, 3), at(-2, 8, 4), at(6, -6, 5)];
    const closed = closedEdge(past);
    expect(closed.boundary.ok).toBe(true);
    expect(closed.leftOut).toBe(1);
    expect(closed.corners).toEqual(past.slice(0, 5));
  });

  it("leaves out nothing that was touched, or that lies far from the first corner", () => {
    const bow = [at(0, 0), at(100, 100), at(100, 0), at(0, 100), at(-50, 100)];
    expect(closedEdge(bow)).toMatchObject({ leftOut: 0, boundary: { ok: false } });
    const walkedBow = bow.map((corner, second) => ({ ...corner, accuracyM: 4, atMs: second * 1000 }));
    expect(closedEdge(walkedBow)).toMatchObject({ leftOut: 0, boundary: { ok: false } });
  });

  it("names the two sides that cross", () => {
    const { boundary } = closedEdge([at(0, 0), at(100, 100), at(100, 0), at(0, 100)]);
    expect(crossingSides(boundary)).toEqual([1, 3]);
    expect(crossingSides(closedEdge(square).boundary)).toEqual([]);
    expect(crossingSides(closedEdge(square.slice(0, 2)).boundary)).toEqual([]);
  });
});
