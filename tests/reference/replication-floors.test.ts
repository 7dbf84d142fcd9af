/**
 * How few samples can show what. Smallest two-sided chances by flipping signs, signed ranks and dealing out anew
 * (computed independently). Power for a true difference of 10 % at a coefficient of variation of 5 % with 4, 5, 6
 * replicates: unpaired 0.657, 0.791, 0.876, blocked with n-1 degrees of freedom 0.490, 0.663, 0.789 (computed
 * independently; Ohio State University Extension: five to six have "a reasonable chance").
 */
import { expect, it } from "vitest";
import {
  fBeyond,
  noncentralStudentProbability,
  studentQuantile,
} from "../../src/science/statistics/distributions.ts";
import { permutationOfTwo } from "../../src/science/statistics/permutation.ts";
import { powerOf } from "../../src/science/statistics/power.ts";
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

it.each([
  [4, 0.657],
  [5, 0.791],
  [6, 0.876],
])("%d replicates unpaired: power %d", (n, power) => {
  expect(reached(powerOf(2, 1, n, { design: "two-groups", level: 0.95, power: 0.8 }))).toBeCloseTo(power, 3);
});

it.each([
  [4, 0.49],
  [5, 0.663],
  [6, 0.789],
])("%d blocks: power %d", (n, power) => {
  // Two plots of spread 1 in a block differ with a spread of √2.
  expect(reached(powerOf(2, Math.SQRT2, n, { design: "pairs", level: 0.95, power: 0.8 }))).toBeCloseTo(
    power,
    3,
  );
});

it.each([
  [2, 0.5, 0.94915838857685],
  [10, 3, 0.2285997814056711],
  [60, 3, 0.16067407076101686],
])("noncentral t with %d degrees of freedom and %d (SciPy)", (freedom, shift, below) => {
  const t = reached(studentQuantile(0.975, freedom));
  expect(reached(noncentralStudentProbability(t, freedom, shift))).toBeCloseTo(below, 6);
});

it("F of 4.4092 on 4 and 12: 0.02014 (Cochran 1938, computed independently)", () => {
  expect(reached(fBeyond(4.4092, 4, 12))).toBeCloseTo(0.02014, 5);
});
