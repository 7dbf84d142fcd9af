/**
 * Garwood 1936, Biometrika 28: 437-442: exact limits for counts that fall by chance (from memory; the bound for
 * none also from its definition, constructed).
 */
import { expect, it } from "vitest";
import { wormsPerHole, wormsPerM2 } from "../../src/science/earthworms/field.ts";
import { chiSquareQuantile } from "../../src/science/statistics/distributions.ts";
import { reached } from "../unit/science/counts.ts";
import { holes } from "../unit/science/earthworms/holes.ts";

it.each([3, 5, 10])("none in %i holes: 2.9957 worms over all of them", (n) => {
  const empty = holes(...Array.from({ length: n }, () => 0));
  const upper = reached(reached(wormsPerHole(empty)).range).upper;
  expect(upper * n).toBeCloseTo(2.9957, 4);
  // By definition: so many worms by chance give none in 5 of 100 times; and half of chi-square, 2 df.
  expect(Math.exp(-upper * n)).toBeCloseTo(0.05, 10);
  expect(reached(chiSquareQuantile(0.95, 2)) / 2).toBeCloseTo(upper * n, 6);
  expect(reached(reached(wormsPerM2(empty)).range).upper).toBeCloseTo(25 * upper, 9);
});
