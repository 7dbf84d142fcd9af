/**
 * Source: Bliss & Fisher 1953, Biometrics 9: 176-200: European red mites on 150 apple leaves.
 * Mark: from memory (counts k = 1.02459 and 69.5 leaves without a mite expected); computed here (mean, variance and test).
 */
import { expect, it } from "vitest";
import {
  dispersionOf,
  emptyShare,
  negativeBinomialK,
} from "../../src/science/statistics/negative-binomial.ts";
import { reached } from "../unit/science/counts.ts";

const LEAVES_WITH = [70, 38, 17, 10, 9, 3, 2, 1, 0];
const mites = LEAVES_WITH.flatMap((leaves, count) => Array.from({ length: leaves }, () => count));

it("mean 1.146667, variance 2.273647, variance to mean 1.98283, test 295.442 on 149 df", () => {
  const seen = reached(dispersionOf(mites));
  expect(mites).toHaveLength(150);
  expect(seen.mean).toBeCloseTo(1.146667, 6);
  expect(seen.variance).toBeCloseTo(2.273647, 6);
  expect(seen.varianceToMean).toBeCloseTo(1.98283, 5);
  expect(seen.chiSquare).toBeCloseTo(295.442, 3);
  expect(seen.degreesOfFreedom).toBe(149);
});

it("k by maximum likelihood 1.02459", () => {
  expect(reached(negativeBinomialK(mites))).toBeCloseTo(1.02459, 5);
});

it("the fitted spread leaves 69.5 of 150 leaves empty, and 70 were", () => {
  const { mean } = reached(dispersionOf(mites));
  const k = reached(negativeBinomialK(mites));
  expect(150 * reached(emptyShare(mean, k))).toBeCloseTo(69.5, 1);
});
