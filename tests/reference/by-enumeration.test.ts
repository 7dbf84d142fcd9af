/**
 * Source: counting out every pattern: signs of n differences, and ways of dealing out two groups.
 * Mark: computed here (smallest two-sided chances).
 */
import { expect, it } from "vitest";
import { permutationOfTwo } from "../../src/science/statistics/permutation.ts";
import { rankSum } from "../../src/science/statistics/rank-sum.ts";
import { signFlip } from "../../src/science/statistics/sign-flip.ts";
import { signedRank } from "../../src/science/statistics/signed-rank.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [3, 0.25],
  [4, 0.125],
  [5, 0.0625],
  [6, 0.03125],
  [8, 0.0078125],
])("%d pairs: %d", (n, floor) => {
  const differences = Array.from({ length: n }, (_, at) => 10 + at);
  expect(reached(signFlip(differences, 1))).toMatchObject({ chance: floor, smallest: floor });
  expect(reached(signedRank(differences))).toMatchObject({ chance: floor, smallest: floor });
});

it.each([
  [3, 0.1],
  [4, 0.0286],
  [5, 0.0079],
])("%d against %d: %d", (n, floor) => {
  const [low, high] = [
    Array.from({ length: n }, (_, at) => at),
    Array.from({ length: n }, (_, at) => 100 + at),
  ];
  expect(reached(permutationOfTwo(low, high, 1)).chance).toBeCloseTo(floor, 4);
  expect(reached(rankSum(low, high)).chance).toBeCloseTo(floor, 4);
});
