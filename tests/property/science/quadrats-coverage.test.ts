/**
 * How often a 95 % range of quadrats holds the truth, by simulation with fixed seeds. The figures stand in the
 * docstrings of `coverCropMass` and `plantsPerM2`; a fresh simulation may differ by a point.
 */
import { describe, expect, it } from "vitest";
import type { Result } from "../../../src/record/result.ts";
import { coverCropMass, plantsPerM2, type Quadrat } from "../../../src/science/cover-crop/quadrats.ts";
import type { Estimate } from "../../../src/science/estimate.ts";
import { reached } from "../../unit/science/counts.ts";
import { chanceCount, clumpedCount, normal, seeded } from "./seeded.ts";

const STRIPS = 4000;
const FRAME = { widthM: 0.5, rowSpacingM: null };
const SIZES = [3, 4, 8] as const;

const held = (
  truth: number,
  n: number,
  one: () => Quadrat,
  estimate: (quadrats: readonly Quadrat[]) => Result<Estimate>,
): number => {
  let inside = 0;
  for (let strip = 0; strip < STRIPS; strip++) {
    const { lower, upper } = reached(reached(estimate(Array.from({ length: n }, one))).range);
    if (lower <= truth && truth <= upper) inside++;
  }
  return (100 * inside) / STRIPS;
};

describe.each([
  [0.3, [94.6, 94.7, 94.2]],
  [0.6, [94.2, 94.5, 93.1]],
])("log-normal masses that differ by %d", (differ, figures) => {
  const spread = Math.sqrt(Math.log(1 + differ ** 2));

  it.each(SIZES.map((n, at) => [n, figures[at] ?? 0] as const))("%i quadrats: %d of 100", (n, figure) => {
    const random = seeded(1000 * n + 100 * differ);
    const one = () => ({
      areaM2: 0.5,
      amount: 200 * Math.exp(spread * normal(random) - spread ** 2 / 2),
    });
    expect(Math.abs(held(4000, n, one, (quadrats) => coverCropMass(quadrats, FRAME)) - figure)).toBeLessThan(
      1,
    );
  });
});

describe.each([
  [6, Number.POSITIVE_INFINITY, [96.8, 96.2, 94.7]],
  [6, 2, [96, 95.4, 94]],
  [1, Number.POSITIVE_INFINITY, [92.9, 95.6, 96.8]],
  [1, 2, [89.5, 93.7, 97.1]],
])("%d plants in the mean, k %d", (mean, k, figures) => {
  it.each(SIZES.map((n, at) => [n, figures[at] ?? 0] as const))("%i quadrats: %d of 100", (n, figure) => {
    const random = seeded(1000 * n + 10 * mean + Math.min(k, 9));
    const one = () => ({
      areaM2: 0.25,
      amount: Number.isFinite(k) ? clumpedCount(mean, k, random) : chanceCount(mean, random),
    });
    expect(
      Math.abs(held(4 * mean, n, one, (quadrats) => plantsPerM2(quadrats, FRAME)) - figure),
    ).toBeLessThan(1);
  });
});
