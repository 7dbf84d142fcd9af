/**
 * Source: Hollander & Wolfe 1973, Nonparametric Statistical Methods, as in the R documentation of wilcox.test.
 * Mark: from memory (depression scores of nine people, p. 29, V 40, one-sided 0.01953; permeability of membranes at
 * term and before, p. 69, W 35, one-sided 0.1272).
 */
import { expect, it } from "vitest";
import { normalRankSum, rankSum } from "../../src/science/statistics/rank-sum.ts";
import { signedRank } from "../../src/science/statistics/signed-rank.ts";
import { reached } from "../unit/science/counts.ts";

it("depression: 40, exact 0.0390625 on both sides", () => {
  const first = [1.83, 0.5, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.3];
  const second = [0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29];
  const seen = reached(signedRank(first.map((one, at) => one - (second[at] ?? 0))));
  expect(seen.positive).toBe(40);
  expect(seen.chance / 2).toBeCloseTo(0.01953, 5);
});

it("permeability: 35 wins of 50, exact 0.1272 on one side", () => {
  const term = [0.8, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46];
  const early = [1.15, 0.88, 0.9, 0.74, 1.21];
  const seen = reached(rankSum(term, early));
  expect(seen.wins).toBe(35);
  expect(seen.winShare).toBe(0.7);
  expect(seen.chance / 2).toBeCloseTo(0.1272, 4);
  // Normal curve with continuity, computed independently (SciPy).
  expect(reached(normalRankSum(term, early))).toBeCloseTo(0.2446236, 6);
});
