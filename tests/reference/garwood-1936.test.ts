/**
 * Source: Garwood 1936, Biometrika 28: 437-442: exact limits for counts that fall by chance.
 * Mark: from memory; computed here (the bound for none from its definition).
 */
import { expect, it } from "vitest";
import { densityByChance } from "../../src/science/earthworms/by-chance.ts";
import { wormsPerHole, wormsPerM2 } from "../../src/science/earthworms/field.ts";
import { chiSquareQuantile } from "../../src/science/statistics/distributions.ts";
import { countRange } from "../../src/science/statistics/poisson.ts";
import { reached, reasonOf } from "../unit/science/counts.ts";
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

// Two-sided 95 % limits as tables of Poisson limits print them (from memory).
it.each([
  [0, 0, 3.6889],
  [1, 0.02532, 5.57164],
  [3, 0.61867, 8.76727],
  [5, 1.62349, 11.66833],
  [10, 4.79539, 18.39036],
  [20, 12.21652, 30.88838],
  [90, 72.37063, 110.62528],
])("a count of %i: %f to %f", (count, lower, upper) => {
  const range = reached(countRange(count, 0.95));
  expect(range.lower).toBeCloseTo(lower, 4);
  expect(range.upper).toBeCloseTo(upper, 4);
});

it("by definition: as many or more, and as few or fewer, come by chance 2.5 times of 100", () => {
  const { lower, upper } = reached(countRange(5, 0.95));
  const upTo = (mean: number, most: number): number => {
    let [term, sum] = [Math.exp(-mean), 0];
    for (let count = 0; count <= most; count++) {
      sum += term;
      term *= mean / (count + 1);
    }
    return sum;
  };
  expect(1 - upTo(lower, 4)).toBeCloseTo(0.025, 9);
  expect(upTo(upper, 5)).toBeCloseTo(0.025, 9);
});

it("90 worms in ten holes of 20 × 20 cm: 225 per m², 180.9 to 276.6 (constructed)", () => {
  const density = reached(densityByChance(holes(9, 9, 9, 9, 9, 9, 9, 9, 9, 9)));
  expect(density).toMatchObject({ unit: "/m2", n: 10, sampledBy: "holes" });
  expect(density.value).toBeCloseTo(225, 9);
  expect(reached(density.range).lower).toBeCloseTo(180.9, 1);
  expect(reached(density.range).upper).toBeCloseTo(276.6, 1);
  expect(reached(density.range).method).toBe("count-range-exact");
});

it("gives no such range for clumps, for two holes, or for holes of two sizes", () => {
  expect(reasonOf(reached(densityByChance(holes(0, 27, 2, 7))).range)).toBe("science/counts-in-clumps");
  expect(reasonOf(reached(densityByChance(holes(3, 4))).range)).toBe("science/too-few-holes");
  const [one, two] = [holes(3, 4), holes(5)];
  const mixed = [...one, ...two.map((hole) => ({ ...hole, sidesM: [0.3, 0.3] as const }))];
  expect(reasonOf(densityByChance(mixed))).toBe("science/hole-sizes-differ");
  expect(reached(reached(densityByChance(holes(0, 0, 0))).range)).toMatchObject({
    lower: 0,
    sides: "upper-only",
  });
});
