/**
 * Source: Reinelt 1991, TSPLIB, ORSA Journal on Computing 3: 376-384.
 * Mark: published (shortest rounds: burma14 3323, ulysses16 6859, berlin52 7542).
 *
 * Distances as its documentation defines them: GEO from degrees and minutes on a sphere of 6378.388 km cut to whole
 * kilometres, EUC_2D rounded to whole units.
 */
import { describe, expect, it } from "vitest";
import { shortestOrder } from "../../src/science/plan/shortest-order.ts";

const BURMA14 = [
  16.47, 96.1, 16.47, 94.44, 20.09, 92.54, 22.39, 93.37, 25.23, 97.24, 22, 96.05, 20.47, 97.02, 17.2, 96.29,
  16.3, 97.38, 14.05, 98.12, 16.53, 97.38, 21.52, 95.59, 19.41, 97.13, 20.09, 94.55,
];
const ULYSSES16 = [
  38.24, 20.42, 39.57, 26.15, 40.56, 25.32, 36.26, 23.12, 33.48, 10.54, 37.56, 12.19, 38.42, 13.11, 37.52,
  20.44, 41.23, 9.1, 41.17, 13.05, 36.08, -5.21, 38.47, 15.13, 38.15, 15.35, 37.51, 15.17, 35.49, 14.32,
  39.36, 19.56,
];
const BERLIN52 = [
  565, 575, 25, 185, 345, 750, 945, 685, 845, 655, 880, 660, 25, 230, 525, 1000, 580, 1175, 650, 1130, 1605,
  620, 1220, 580, 1465, 200, 1530, 5, 845, 680, 725, 370, 145, 665, 415, 635, 510, 875, 560, 365, 300, 465,
  520, 585, 480, 415, 835, 625, 975, 580, 1215, 245, 1320, 315, 1250, 400, 660, 180, 410, 250, 420, 555, 575,
  665, 1150, 1160, 700, 580, 685, 595, 685, 610, 770, 610, 795, 645, 720, 635, 760, 650, 475, 960, 95, 260,
  875, 920, 700, 500, 555, 815, 830, 485, 1170, 65, 830, 610, 605, 625, 595, 360, 1340, 725, 1740, 245,
];

type Point = readonly [number, number];
const pairsOf = (flat: readonly number[]): readonly Point[] =>
  flat.flatMap((x, index): readonly Point[] => (index % 2 === 0 ? [[x, flat[index + 1] ?? 0]] : []));
const distances = (points: readonly Point[], between: (a: Point, b: Point) => number) =>
  points.map((a, i) => points.map((b, j) => (i === j ? 0 : between(a, b))));

/** Whole degrees and minutes behind the mark; the documentation's π of six decimals gives the same kilometres. */
const radians = (degreesMinutes: number): number => {
  const degrees = Math.trunc(degreesMinutes);
  return (Math.PI * (degrees + (5 * (degreesMinutes - degrees)) / 3)) / 180;
};
const geo = ([lat1, lon1]: Point, [lat2, lon2]: Point): number => {
  const q1 = Math.cos(radians(lon1) - radians(lon2));
  const q2 = Math.cos(radians(lat1) - radians(lat2));
  const q3 = Math.cos(radians(lat1) + radians(lat2));
  return Math.trunc(6378.388 * Math.acos(0.5 * ((1 + q1) * q2 - (1 - q1) * q3)) + 1);
};
const flat = ([x1, y1]: Point, [x2, y2]: Point): number => Math.round(Math.hypot(x1 - x2, y1 - y2));

describe("rounds", () => {
  it("burma14 is exact", () => {
    const table = distances(pairsOf(BURMA14), geo);
    // First row as printed with the set.
    expect(table[0]?.slice(1, 6)).toEqual([153, 510, 706, 966, 581]);
    const round = shortestOrder(table, true);
    expect(round).toMatchObject({ lengthM: 3323, exact: true });
    expect([...round.order].sort((a, b) => a - b)).toEqual(Array.from({ length: 13 }, (_, k) => k + 1));
    // A way that need not come back cannot be longer.
    expect(shortestOrder(table, false).lengthM).toBeLessThan(3323);
  });

  it.each([
    { name: "ulysses16", table: distances(pairsOf(ULYSSES16), geo), best: 6859 },
    { name: "berlin52", table: distances(pairsOf(BERLIN52), flat), best: 7542 },
  ])("$name comes within 3 % of the shortest", ({ table, best }) => {
    const { lengthM, order, exact } = shortestOrder(table, true);
    expect(exact).toBe(false);
    expect(new Set(order).size).toBe(table.length - 1);
    expect(lengthM).toBeGreaterThanOrEqual(best);
    expect(lengthM / best).toBeLessThan(1.03);
  });
});
