/**
 * Exact ratios of two rates. R documentation of poisson.test: 11 per 800 and 21 per 3011 (published). Fay, vignettes of
 * the R packages rateratio.test and exactci: 2 per 17,877 and 9 per 16,660, central p 0.0501 and range up to 1.0005;
 * 2 per 17,877 and 10 per 20,000, range 0.024 to 1.050 (published). Others computed independently (R).
 *
 * Scaled by the dispersion: with a known variance of twice the mean, twice the counts over twice the effort must give
 * the published ranges again. Wald ranges on logs, `exp(ln R ± q·√(φ(1/x + 1/y)))`, and exact ranges of counts divided
 * by φ(t/z)² computed independently (SciPy).
 */
import { describe, expect, it } from "vitest";
import { compareCounts } from "../../src/science/side-by-side/counts.ts";
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

describe("clumps seen in few holes", () => {
  it.each([
    [
      "Crawley's worms, damp fields against others",
      [5, 7, 6, 8, 4, 3],
      [4, 7, 2, 6, 2, 3, 4, 9, 8, 1, 2, 0, 5, 1],
      { ratio: 1.425926, phi: 1.641788, exact: [0.73941, 2.67472], withT: [0.786641, 2.584743] },
    ],
    [
      "insects on sprays A and C",
      [10, 7, 20, 14, 14, 12, 10, 23, 17, 20, 14, 13],
      [0, 1, 7, 2, 3, 1, 2, 1, 3, 0, 1, 4],
      { ratio: 6.96, phi: 1.704389, exact: [3.881012, 13.532997], withT: [3.900428, 12.419559] },
    ],
  ] as const)("%s", (_, a, b, { ratio, phi, exact, withT }) => {
    const result = reached(compareCounts({ counts: a, effortEach: 1 }, { counts: b, effortEach: 1 }, 2));
    expect(result.value).toBeCloseTo(ratio, 5);
    expect(result.unevenness.varianceToMean).toBeCloseTo(phi, 5);
    const range = reached(result.range);
    expect(range.method).toBe("rate-ratio-scaled");
    expect(range.lower).toBeCloseTo(exact[0], 4);
    expect(range.upper).toBeCloseTo(exact[1], 4);
    // The Wald range by t·√φ lies inside.
    expect(range.lower).toBeLessThan(withT[0]);
    expect(range.upper).toBeGreaterThan(withT[1]);
  });

  it("the chance is where the range touches 1: 0.28636 for Crawley's worms", () => {
    const damp = { counts: [5, 7, 6, 8, 4, 3], effortEach: 1 };
    const others = { counts: [4, 7, 2, 6, 2, 3, 4, 9, 8, 1, 2, 0, 5, 1], effortEach: 1 };
    expect(reached(reached(compareCounts(damp, others, 2)).chance)).toBeCloseTo(0.286357, 5);
  });
});
