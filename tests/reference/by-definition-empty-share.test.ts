/**
 * Source: the definition of the share of nothing: `(1 + m/k)^(−k)` in clumps, `exp(−m)` by chance.
 * Mark: computed here (arithmetic).
 */
import { expect, it } from "vitest";
import { spreadOfHoles } from "../../src/science/earthworms/spread.ts";
import { emptyShare } from "../../src/science/statistics/negative-binomial.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";
import { holes } from "../unit/science/earthworms/holes.ts";

it.each([
  [9, 2, 0.03306],
  [3, 2, 0.16],
  [1, 1, 0.5],
])("mean %d, k %d: %f", (mean, k, share) => {
  expect(reached(emptyShare(mean, k))).toBeCloseTo(share, 5);
});

it("by chance a mean of 9 leaves one hole in 8103 empty, and so do clumps too weak to see", () => {
  expect(reached(emptyShare(9, null))).toBeCloseTo(0.0001234, 7);
  expect(reached(emptyShare(9, 1e6))).toBeCloseTo(0.0001234, 7);
});

it("has reasons", () => {
  for (const [mean, k] of [
    [0, 2],
    [9, 0],
    [Number.NaN, 1],
    [Number.POSITIVE_INFINITY, null],
  ] as const)
    expect(reasonOf(emptyShare(mean, k))).toBe("science/no-number");
  const even = reached(spreadOfHoles(holes(4, 4, 4)));
  expect(reasonOf(even.empty.inClumps)).toBe("science/no-over-dispersion-seen");
  expect(reasonOf(reached(spreadOfHoles(holes(0, 0, 0))).empty.byChance)).toBe("science/no-number");
});
