import { describe, expect, it } from "vitest";
import type { LatitudeLongitude } from "../../../../src/science/position/distance.ts";
import {
  type Belt,
  beltNet,
  gainOf,
  SHELTERED_CROPS,
  usualLoss,
  usualZones,
} from "../../../../src/science/shelter/net.ts";
import { windReduction } from "../../../../src/science/shelter/wind-reduction.ts";
import { sheltered, type TreeRow } from "../../../../src/science/shelter/zones.ts";
import { reached, reasonOf } from "../counts.ts";
import { codesOf, figure, numbersIn, UNUSABLE } from "../figures.ts";

const at = (latitudeDeg: number, longitudeDeg: number): LatitudeLongitude => ({ latitudeDeg, longitudeDeg });
/** A row that runs north, about 111 m long. */
const NORTH: TreeRow = { line: [at(52, 10), at(52.001, 10)], heightM: 12 };
const ZONES = { competition: 1, shelter: 12 };
const pieces = (row: TreeRow, wind: number) => reached(sheltered([row], wind, ZONES)).pieces;

describe("zones", () => {
  it("lie on the lee side: a west wind shelters the ground to the east", () => {
    const [competition, shelter] = pieces(NORTH, 270);
    expect(competition?.zone).toBe("competition");
    for (const corner of shelter?.corners ?? []) expect(corner.longitudeDeg).toBeGreaterThan(10);
    const [, east] = pieces(NORTH, 90);
    for (const corner of east?.corners ?? []) expect(corner.longitudeDeg).toBeLessThan(10);
    // An east-west row under a north wind shelters the south.
    const [, south] = pieces({ line: [at(52, 10), at(52, 10.001)], heightM: 12 }, 0);
    for (const corner of south?.corners ?? []) expect(corner.latitudeDeg).toBeLessThan(52);
  });

  it("reach so many tree heights square to the row, and less at a slant", () => {
    const [competition, shelter] = pieces(NORTH, 270);
    const length = 111.27;
    expect(competition?.areaM2).toBeCloseTo(length * 12, -1.5);
    expect(shelter?.areaM2).toBeCloseTo(length * 12 * 11, -2.5);
    const slant = reached(sheltered([NORTH], 210, ZONES));
    expect((slant.pieces[1]?.areaM2 ?? 0) / (shelter?.areaM2 ?? 1)).toBeCloseTo(0.5, 3);
    expect(codesOf(slant.cautions)).toContain("science/wind-slanting");
    expect(codesOf(reached(sheltered([NORTH], 270, ZONES)).cautions)).not.toContain("science/wind-slanting");
  });

  it("do not depend on which end a row was drawn from, nor on a full turn of the wind", () => {
    const back: TreeRow = { ...NORTH, line: [...NORTH.line].reverse() };
    for (const wind of [200, 250, 270, 300])
      expect(pieces(back, wind)[1]?.areaM2).toBeCloseTo(pieces(NORTH, wind)[1]?.areaM2 ?? 0, 6);
    const across: TreeRow = { line: [at(52, 10), at(52, 10.001)], heightM: 12 };
    expect(pieces(across, 360)[1]?.areaM2).toBeCloseTo(pieces(across, 0)[1]?.areaM2 ?? 0, 6);
  });

  it("are none along the wind, and none without a row", () => {
    expect(reasonOf(sheltered([NORTH], 0, ZONES))).toBe("science/wind-along-row");
    expect(reasonOf(sheltered([NORTH], 170, ZONES))).toBe("science/wind-along-row");
    expect(reasonOf(sheltered([], 270, ZONES))).toBe("science/no-row");
    expect(reasonOf(sheltered([{ line: [at(52, 10)], heightM: 9 }], 270, ZONES))).toBe("science/no-row");
    expect(reasonOf(sheltered([{ line: [at(52, 10), at(52, 10)], heightM: 9 }], 270, ZONES))).toBe(
      "science/no-row",
    );
    // A bent row keeps the stretch that the wind meets.
    const bent: TreeRow = { line: [at(52, 10), at(52.001, 10), at(52.001, 10.001)], heightM: 10 };
    expect(pieces(bent, 270)).toHaveLength(2);
  });

  it("lie over the date line without going round the earth", () => {
    const row: TreeRow = { line: [at(-17, 179.9999), at(-16.999, 179.9999)], heightM: 12 };
    for (const piece of pieces(row, 270))
      for (const { longitudeDeg } of piece.corners) expect(Math.abs(longitudeDeg)).toBeGreaterThan(179.9);
  });

  it("say what cannot be", () => {
    for (const bad of [...UNUSABLE, -1, 361])
      expect(reasonOf(sheltered([NORTH], bad, ZONES))).toBe("science/out-of-bounds");
    for (const heightM of [...UNUSABLE, 0, -3, 200])
      expect(reasonOf(sheltered([{ ...NORTH, heightM }], 270, ZONES))).toBe("science/out-of-bounds");
    expect(reasonOf(sheltered([NORTH], 270, { competition: 3, shelter: 3 }))).toBe("science/out-of-bounds");
    for (const latitude of [Number.NaN, 91, 89])
      expect(reasonOf(sheltered([{ ...NORTH, line: [at(latitude, 1), at(52, 1)] }], 270, ZONES))).toBe(
        "science/not-a-place",
      );
    for (const bad of [...UNUSABLE, 4.9, 31])
      expect(reasonOf(windReduction(bad))).toBe("science/beyond-shelter-table");
  });
});

const BELT: Belt = {
  height: figure("tree-height", [10, 12, 14], "m"),
  width: figure("belt-width", 10, "m"),
  field: figure("field-width", 300, "m"),
  ...usualZones(),
  loss: usualLoss(),
  gain: gainOf("winter-wheat"),
};

describe("net", () => {
  it("is a range for every crop, with the land taken in it", () => {
    for (const crop of SHELTERED_CROPS) {
      const answer = reached(beltNet({ ...BELT, gain: gainOf(crop) }));
      expect(answer.net.low).toBeLessThan(-10 / 300);
      expect(answer.net.low).toBeLessThan(answer.net.high);
      expect(numbersIn(answer).every(Number.isFinite)).toBe(true);
      expect(codesOf(answer.net.cautions)).toContain("science/local-advice-first");
    }
  });

  it("comes to nothing at the gain at which it breaks even", () => {
    const sure = {
      ...BELT,
      height: figure("tree-height", 12, "m"),
      competition: figure("competition-zone", 1),
      shelter: figure("shelter-zone", 12),
      loss: figure("shelter-loss", 0.5),
    };
    const gain = reached(reached(beltNet(sure)).breakEven).middle;
    expect(reached(beltNet({ ...sure, gain: figure("shelter-gain", gain) })).net.middle).toBeCloseTo(0, 12);
  });

  it("is cut off where the field ends, and has no break-even where trees compete all over", () => {
    const narrow = { ...BELT, field: figure("field-width", 18, "m") };
    const answer = reached(beltNet(narrow));
    expect(reasonOf(answer.breakEven)).toBe("science/no-sheltered-zone");
    expect(Number.isFinite(answer.net.low)).toBe(true);
    expect(reasonOf(beltNet({ ...BELT, field: figure("field-width", 10, "m") }))).toBe(
      "science/belt-wider-than-field",
    );
  });

  it("says what cannot be", () => {
    for (const bad of [...UNUSABLE, -1]) {
      expect(reasonOf(beltNet({ ...BELT, height: figure("tree-height", bad, "m") }))).toBe(
        "science/not-a-range",
      );
      expect(reasonOf(beltNet({ ...BELT, loss: figure("shelter-loss", bad) }))).toBe("science/not-a-range");
    }
    expect(reasonOf(beltNet({ ...BELT, gain: figure("shelter-gain", [0.2, 0.1, 0.3]) }))).toBe(
      "science/not-a-range",
    );
  });
});
