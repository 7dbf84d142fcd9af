/**
 * Source: Beall 1940, Ecology 21: 460-474, table 6: beet webworms on 325 units of each of four treatments.
 * Mark: published (frequencies); computed here (mean, variance and k by maximum likelihood).
 */
import { expect, it } from "vitest";
import { spreadOfHoles } from "../../src/science/earthworms/spread.ts";
import { dispersionOf, negativeBinomialK } from "../../src/science/statistics/negative-binomial.ts";
import { reached } from "../unit/science/counts.ts";
import { holes } from "../unit/science/earthworms/holes.ts";

const expand = (frequencies: readonly number[]): number[] =>
  frequencies.flatMap((units, count) => Array.from({ length: units }, () => count));

it.each([
  ["no treatment", [117, 87, 50, 38, 21, 7, 2, 2, 0, 1], 1.4, 1.9113],
  ["contact spray", [205, 84, 30, 4, 2], 0.50462, 3.022],
  ["lead arsenate", [162, 88, 45, 23, 5, 2], 0.85231, 2.1577],
  ["both", [227, 70, 21, 6, 1], 0.41231, 1.4234],
] as const)("%s", (_, frequencies, mean, k) => {
  const counts = expand(frequencies);
  expect(counts).toHaveLength(325);
  expect(reached(dispersionOf(counts)).mean).toBeCloseTo(mean, 5);
  expect(reached(negativeBinomialK(counts))).toBeCloseTo(k, 3);
});

it("variance 2.32716 and variance to mean 1.66226 without treatment; variance 0.5841 with contact spray", () => {
  const none = reached(dispersionOf(expand([117, 87, 50, 38, 21, 7, 2, 2, 0, 1])));
  expect(none.variance).toBeCloseTo(2.32716, 5);
  expect(none.varianceToMean).toBeCloseTo(1.66226, 5);
  expect(reached(dispersionOf(expand([205, 84, 30, 4, 2]))).variance).toBeCloseTo(0.5841, 4);
});

it("117 of 325 units without treatment were empty; clumps account for it, chance for fewer than 81", () => {
  const plots = expand([117, 87, 50, 38, 21, 7, 2, 2, 0, 1]);
  const { empty, methods } = reached(spreadOfHoles(holes(...plots)));
  expect(methods).toContain("empty-share");
  expect(325 * empty.seen.value).toBeCloseTo(117, 9);
  // exp(−1.4) · 325 by hand.
  expect(325 * reached(empty.byChance)).toBeCloseTo(80.14, 2);
  expect(Math.abs(325 * reached(empty.inClumps) - 117)).toBeLessThan(6);
});
