/**
 * Source: Cochran 1938, in Snedecor & Cochran, Statistical Methods, p. 288: wireworms in a 5 × 5 square.
 * Mark: published (counts); computed here with R (mean, variance, k, F).
 */
import { expect, it } from "vitest";
import { fBeyond } from "../../src/science/statistics/distributions.ts";
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

it("F of 4.4092 on 4 and 12 degrees of freedom: 0.02014", () => {
  expect(reached(fBeyond(4.4092, 4, 12))).toBeCloseTo(0.02014, 5);
});
