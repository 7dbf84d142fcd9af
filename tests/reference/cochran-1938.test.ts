/**
 * Cochran 1938, in Snedecor & Cochran 1980, Statistical Methods, p. 288: wireworms in a 5 × 5 square. The
 * counts are published; mean, variance and k recomputed.
 */
import { expect, it } from "vitest";
import { dispersionOf, negativeBinomialK } from "../../src/science/statistics/negative-binomial.ts";
import { reached } from "../unit/science/counts.ts";

const WIREWORMS = [4, 0, 1, 1, 0, 6, 9, 8, 4, 4, 17, 4, 5, 4, 5, 4, 2, 6, 9, 8, 3, 8, 2, 6, 4];

it("mean 4.96, variance 13.2067, variance to mean 2.6626, k 3.1916", () => {
  const seen = reached(dispersionOf(WIREWORMS));
  expect(WIREWORMS.reduce((sum, count) => sum + count, 0)).toBe(124);
  expect(seen.mean).toBeCloseTo(4.96, 12);
  expect(seen.variance).toBeCloseTo(13.2067, 4);
  expect(seen.varianceToMean).toBeCloseTo(2.6626, 4);
  expect(reached(negativeBinomialK(WIREWORMS))).toBeCloseTo(3.1916, 3);
});
