/**
 * Source: the definition of a variance of φ times the mean: φ times the counts over φ times the effort tell as much as
 * one.
 * Mark: computed here with SciPy (Wald ranges on logs, `exp(ln R ± q·√(φ(1/x + 1/y)))`; the ranges for φ 1 are those
 * of poisson.test and rateratio.test).
 */
import { expect, it } from "vitest";
import { rateRatioChance, rateRatioRange } from "../../src/science/statistics/rate-ratio.ts";
import { reached } from "../unit/science/counts.ts";

const TWICE = { varianceToMean: 2, degreesOfFreedom: Number.POSITIVE_INFINITY };

it.each([
  [11, 800, 21, 3011, 0.858426, 4.277266, 0.112017],
  [2, 17_877, 9, 16_660, 0.021774, 1.000549, 0.0501065],
])(
  "a variance of twice the mean makes two of %d per %d worth one",
  (x, inX, y, inY, lower, upper, chance) => {
    const [a, b] = [
      { count: 2 * x, effort: 2 * inX },
      { count: 2 * y, effort: 2 * inY },
    ];
    const range = reached(rateRatioRange(a, b, TWICE, 0.95));
    expect(range.lower).toBeCloseTo(lower, 4);
    expect(range.upper).toBeCloseTo(upper, 4);
    expect(reached(rateRatioChance(a, b, TWICE))).toBeCloseTo(chance, 5);
  },
);

it("holds the Wald range stretched by √φ, 0.950566 to 4.088895, and is at most a seventh wider on logs", () => {
  const range = reached(
    rateRatioRange({ count: 22, effort: 1600 }, { count: 42, effort: 6022 }, TWICE, 0.95),
  );
  const wald = Math.log(4.088895 / 0.950566);
  const own = Math.log((range.upper ?? Number.NaN) / range.lower);
  expect(range.lower).toBeLessThan(0.950566);
  expect(range.upper).toBeGreaterThan(4.088895);
  expect(own / wald).toBeLessThan(8 / 7);
});

it("comes to the Wald range with many counts: 2200 against 4200 at twice the variance", () => {
  const range = reached(rateRatioRange({ count: 2200, effort: 1 }, { count: 4200, effort: 1 }, TWICE, 0.95));
  // exp(ln(22/42) ± 1.959964·√(2(1/2200 + 1/4200))).
  expect(range.lower).toBeCloseTo(0.486959, 3);
  expect(range.upper).toBeCloseTo(0.563449, 3);
});
