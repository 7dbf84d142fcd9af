/**
 * The 24-hour rainfall distributions of the Soil Conservation Service: ordinates as tabulated in Chow, Maidment &
 * Mays (1988), p. 461 (published, read in a course copy), finer ordinates of type III from the drainage manual of
 * the City of Austin, section 2.5.1 (published). Copies with other values are about: those are guarded against.
 */
import { describe, expect, it } from "vitest";
import { STORM_SHAPES, type StormShape } from "../../src/science/storm/shapes.ts";

const at = (shape: StormShape, hour: number): number => {
  const points = STORM_SHAPES[shape];
  const next = points.findIndex(([h]) => h >= hour - 1e-9);
  const [h2, s2] = points[next] ?? [0, 0];
  const [h1, s1] = points[next - 1] ?? [h2 - 1, s2];
  return s1 + ((s2 - s1) * (hour - h1)) / (h2 - h1);
};

describe("values that wrong copies do not have", () => {
  it.each([
    ["II", 12, 0.663],
    ["II", 11, 0.235],
    ["II", 10, 0.181],
    ["III", 12, 0.5],
    ["III", 12.5, 0.702],
    ["I", 10, 0.515],
    ["I", 12, 0.682],
    ["IA", 8, 0.425],
    ["IA", 12, 0.664],
    ["IA", 10, 0.577],
    ["III", 10, 0.189],
  ] as const)("type %s at %d h", (shape, hour, share) => {
    expect(at(shape, hour)).toBeCloseTo(share, 3);
  });
});

it("type II in steps of 0.1 h agrees with the coarse table at every hour they share", () => {
  const coarse = [
    [2, 0.022],
    [4, 0.048],
    [6, 0.08],
    [8, 0.12],
    [8.5, 0.133],
    [9, 0.147],
    [9.5, 0.163],
    [10, 0.181],
    [10.5, 0.204],
    [11, 0.235],
    [11.5, 0.283],
    [12, 0.663],
    [12.5, 0.735],
    [13, 0.772],
    [13.5, 0.799],
    [14, 0.82],
    [16, 0.88],
    [20, 0.952],
    [24, 1],
  ] as const;
  for (const [hour, share] of coarse) expect(Math.abs(at("II", hour) - share)).toBeLessThan(0.001);
  // Two listings differ by 0.001 at 7 h; the quarter hour before the peak is straight here and bent there.
  expect(Math.abs(at("II", 7) - 0.098)).toBeLessThan(0.0011);
});

it("type III lies within 0.003 of the finer ordinates of a drainage manual, but for one on a straight of four hours", () => {
  for (const [hour, share] of [
    [1, 0.01],
    [8 + 5 / 60, 0.1163],
    [9, 0.1458],
    [16 + 10 / 60, 0.8903],
  ] as const)
    expect(Math.abs(at("III", hour) - share)).toBeLessThan(0.003);
  // Straight from 0.886 at 16 h to 0.957 at 20 h: 0.90375 at 17 h by hand, where the manual has 0.9095.
  expect(at("III", 17)).toBeCloseTo(0.90375, 9);
  expect(Math.abs(at("III", 17) - 0.9095)).toBeLessThan(0.006);
});

it("type II reads 0.393 at 11.75 h, halfway between its 0.35436 and 0.43079; the coarse table prints 0.357", () => {
  expect(at("II", 11.75)).toBeCloseTo((0.35436 + 0.43079) / 2, 9);
});

it("every shape rises from 0 to 1 over 24 hours", () => {
  for (const points of Object.values(STORM_SHAPES)) {
    expect(points[0]).toEqual([0, 0]);
    expect(points.at(-1)).toEqual([24, 1]);
    for (const [step, [hour, share]] of points.entries()) {
      const before = points[step - 1];
      if (before === undefined) continue;
      expect(hour).toBeGreaterThan(before[0]);
      expect(share).toBeGreaterThan(before[1]);
    }
  }
});

it("the most of type II that falls in 0.1, 0.5, 1, 2, 3 and 6 hours", () => {
  const shares = STORM_SHAPES.II.map(([, share]) => share);
  const most = (steps: number): number =>
    Math.max(...shares.slice(steps).map((share, from) => share - (shares[from] ?? 0)));
  const expected = [0.13707, 0.38, 0.45368, 0.53764, 0.59524, 0.70662];
  for (const [index, steps] of [1, 5, 10, 20, 30, 60].entries())
    expect(most(steps)).toBeCloseTo(expected[index] ?? 0, 4);
  // The wettest hour agrees with the hourly ratio of region B of NOAA Atlas 14 (NEH 630, figure 4-72): 0.453.
  expect(most(10)).toBeCloseTo(0.453, 2);
});

it.each([
  [
    "I",
    [
      [2, 0.035],
      [6, 0.125],
      [8, 0.194],
      [9, 0.254],
      [9.5, 0.303],
      [9.75, 0.362],
      [10.5, 0.583],
      [11, 0.624],
      [13, 0.727],
      [16, 0.83],
      [20, 0.926],
    ],
  ],
  [
    "IA",
    [
      [2, 0.05],
      [4, 0.116],
      [6, 0.206],
      [7, 0.268],
      [8.5, 0.48],
      [9, 0.52],
      [10.5, 0.601],
      [11, 0.624],
      [14, 0.736],
      [20, 0.906],
    ],
  ],
  [
    "III",
    [
      [2, 0.02],
      [6, 0.072],
      [8, 0.115],
      [9.5, 0.167],
      [11, 0.25],
      [11.5, 0.298],
      [11.75, 0.339],
      [13, 0.751],
      [14, 0.811],
      [16, 0.886],
      [20, 0.957],
    ],
  ],
] as const)("further ordinates of type %s", (shape, points) => {
  for (const [hour, share] of points) expect(at(shape, hour)).toBeCloseTo(share, 9);
});

it("the wettest hour of type I, from half past nine, holds 0.280", () => {
  expect(at("I", 10.5) - at("I", 9.5)).toBeCloseTo(0.28, 9);
});
