/**
 * Source: Fay, vignettes of the R packages rateratio.test and exactci.
 * Mark: published (2 per 17,877 and 9 per 16,660: central p 0.0501, range up to 1.0005; 2 per 17,877 and 10 per
 * 20,000: 0.024 to 1.050); computed here with R (further digits).
 */
import { expect, it } from "vitest";
import { BY_CHANCE, rateRatioChance, rateRatioRange } from "../../src/science/statistics/rate-ratio.ts";
import { reached } from "../unit/science/counts.ts";

it("2 per 17,877 against 9 per 16,660: 0.207094, 0.021774 to 1.000549, p = 0.0501065", () => {
  const [a, b] = [
    { count: 2, effort: 17_877 },
    { count: 9, effort: 16_660 },
  ];
  expect(2 / 17_877 / (9 / 16_660)).toBeCloseTo(0.207094, 5);
  const range = reached(rateRatioRange(a, b, BY_CHANCE, 0.95));
  expect(range.lower).toBeCloseTo(0.021774, 4);
  expect(range.upper).toBeCloseTo(1.000549, 4);
  expect(reached(rateRatioChance(a, b, BY_CHANCE))).toBeCloseTo(0.0501065, 5);
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
