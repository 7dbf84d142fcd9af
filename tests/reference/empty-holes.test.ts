/**
 * Share of empty samples. Arithmetic on `(1 + m/k)^(−k)` and `exp(−m)`; and two published tables of counts: mites on
 * apple leaves (Bliss & Fisher 1953, from memory), of which the fitted distribution leaves 69.5 of 150 leaves empty, as
 * they print it (from memory), and 70 were; beet webworms without spray (Beall 1940, table 6).
 */
import { expect, it } from "vitest";
import { spreadOfHoles } from "../../src/science/earthworms/spread.ts";
import { emptyShare, negativeBinomialK } from "../../src/science/statistics/negative-binomial.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";
import { holes } from "../unit/science/earthworms/holes.ts";

it.each([
  [9, 2, 0.03306],
  [3, 2, 0.16],
  [1, 1, 0.5],
])("mean %d, k %d: %f", (mean, k, share) => {
  expect(reached(emptyShare(mean, k))).toBeCloseTo(share, 5);
});

it("by chance a mean of 9 leaves one hole in 8103 empty, and strong clumps hardly differ from it never", () => {
  expect(reached(emptyShare(9, null))).toBeCloseTo(0.0001234, 7);
  expect(reached(emptyShare(9, 1e6))).toBeCloseTo(0.0001234, 7);
});

const counts = (frequencies: readonly number[]): readonly number[] =>
  frequencies.flatMap((times, count) => Array.from({ length: times }, () => count));

it("mites: 69.5 of 150 leaves expected, 70 seen", () => {
  const leaves = counts([70, 38, 17, 10, 9, 3, 2, 1]);
  const mean = leaves.reduce((sum, count) => sum + count, 0) / leaves.length;
  const k = reached(negativeBinomialK(leaves));
  expect(150 * reached(emptyShare(mean, k))).toBeCloseTo(69.5, 1);
});

it("webworms: 117 of 325 plots were empty; clumps account for it, chance for fewer than 81", () => {
  const plots = counts([117, 87, 50, 38, 21, 7, 2, 2, 0, 1]);
  const { empty, methods } = reached(spreadOfHoles(holes(...plots)));
  expect(methods).toContain("empty-share");
  expect(325 * empty.seen.value).toBeCloseTo(117, 9);
  // exp(−1.4) · 325 by hand.
  expect(325 * reached(empty.byChance)).toBeCloseTo(80.14, 2);
  expect(Math.abs(325 * reached(empty.inClumps) - 117)).toBeLessThan(6);
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
