/**
 * Exact ratios of two rates. R documentation of poisson.test: 11 per 800 and 21 per 3011 (published). Fay, vignettes of
 * the R packages rateratio.test and exactci: 2 per 17,877 and 9 per 16,660, central p 0.0501 and range up to 1.0005;
 * 2 per 17,877 and 10 per 20,000, range 0.024 to 1.050 (published). Others computed independently (R).
 */
import { expect, it } from "vitest";
import { BY_CHANCE, rateRatioChance, rateRatioRange } from "../../src/science/statistics/rate-ratio.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [11, 800, 21, 3011, 1.971488, 0.858426, 4.277266, 0.112017],
  [2, 17_877, 9, 16_660, 0.207094, 0.021774, 1.000549, 0.0501065],
  [90, 10, 60, 10, 1.5, 1.0701, 2.1156, 0.017598],
])("%d per %d against %d per %d", (x, inX, y, inY, ratio, lower, upper, chance) => {
  const [a, b] = [
    { count: x, effort: inX },
    { count: y, effort: inY },
  ];
  expect(x / inX / (y / inY)).toBeCloseTo(ratio, 5);
  const range = reached(rateRatioRange(a, b, BY_CHANCE, 0.95));
  expect(range.lower).toBeCloseTo(lower, 4);
  expect(range.upper).toBeCloseTo(upper, 4);
  expect(reached(rateRatioChance(a, b, BY_CHANCE))).toBeCloseTo(chance, 5);
});

it("2 per 17,877 against 10 per 20,000: 0.02384 to 1.04995", () => {
  const range = reached(
    rateRatioRange({ count: 2, effort: 17_877 }, { count: 10, effort: 20_000 }, BY_CHANCE, 0.95),
  );
  expect(range.lower).toBeCloseTo(0.02384, 4);
  expect(range.upper).toBeCloseTo(1.04995, 4);
});

it("chance and range by one rule: the chance that goes by the likeliest counts, 0.0331, is not given", () => {
  const [a, b] = [
    { count: 2, effort: 17_877 },
    { count: 9, effort: 16_660 },
  ];
  expect(reached(rateRatioRange(a, b, BY_CHANCE, 0.95)).upper).toBeGreaterThan(1);
  expect(reached(rateRatioChance(a, b, BY_CHANCE))).toBeGreaterThan(0.05);
});

it("insects on sprays A and C (Beall 1942, totals 174 and 25): 6.96, 4.5604 to 11.0517", () => {
  const range = reached(
    rateRatioRange({ count: 174, effort: 12 }, { count: 25, effort: 12 }, BY_CHANCE, 0.95),
  );
  expect(range.lower).toBeCloseTo(4.5604, 4);
  expect(range.upper).toBeCloseTo(11.0517, 3);
});
