/**
 * Source: SciPy 1.17.1, asked the same questions on data written out here.
 * Mark: computed here with it.
 *
 * `scipy.stats` for tests and ranges, and `scipy.optimize.curve_fit` (Levenberg–Marquardt, start values near the
 * answer) for curves and their standard errors, which nothing in this product has in common with. The infiltration
 * test is the worked example of Subramanya, Engineering Hydrology; the counts are sprays C and D of R
 * datasets::InsectSprays.
 */
import { describe, expect, it } from "vitest";
import { fitGreenAmpt } from "../../src/science/infiltration/models/green-ampt.ts";
import { fitHorton } from "../../src/science/infiltration/models/horton.ts";
import { fitKostiakov } from "../../src/science/infiltration/models/kostiakov.ts";
import { fitPhilip } from "../../src/science/infiltration/models/philip.ts";
import { bcaRange, percentileRange, resample } from "../../src/science/statistics/bootstrap.ts";
import {
  betaProbability,
  fBeyond,
  noncentralStudentProbability,
  studentQuantile,
} from "../../src/science/statistics/distributions.ts";
import { mannKendall } from "../../src/science/statistics/kendall.ts";
import { negativeBinomialK } from "../../src/science/statistics/negative-binomial.ts";
import { powerOf } from "../../src/science/statistics/power.ts";
import { exactInterval, wilsonInterval } from "../../src/science/statistics/proportion.ts";
import { quantileOf } from "../../src/science/statistics/quantile.ts";
import { normalRankSum, rankSum } from "../../src/science/statistics/rank-sum.ts";
import { skewnessOf, sumOf } from "../../src/science/statistics/sample.ts";
import { signFlip } from "../../src/science/statistics/sign-flip.ts";
import { signedRank } from "../../src/science/statistics/signed-rank.ts";
import { studentRange } from "../../src/science/statistics/student-range.ts";
import { theilSen } from "../../src/science/statistics/theil-sen.ts";
import { pairedStudent, welch } from "../../src/science/statistics/two-means.ts";
import { reached } from "../unit/science/counts.ts";
import { EXAMPLE } from "../unit/science/infiltration/published-tests.ts";

const C = [0, 1, 7, 2, 3, 1, 2, 1, 3, 0, 1, 4];
const D = [3, 5, 12, 6, 4, 3, 5, 5, 5, 5, 2, 4];
const DIFFERENCES = [3.2, -1.1, 4.5, 2.2, 0.7, 5.1, -0.4];
const YEARS = [3.1, 2.4, 3.9, 4.4, 3.6, 5.2, 4.9, 6.1, 5.5];

it("skewness of 2, 8, 0, 4, 1, 9, 9, 0: 0.2650554122698573, the example of scipy.stats.skew", () => {
  expect(reached(skewnessOf([2, 8, 0, 4, 1, 9, 9, 0]))).toBeCloseTo(0.2650554122698573, 12);
  expect(reached(skewnessOf([1, 2, 3, 4, 5]))).toBeCloseTo(0, 12);
  expect(reached(skewnessOf([7, 7, 7]))).toBe(0);
});

describe("two groups and pairs", () => {
  it("ttest_ind(equal_var=False) and its confidence_interval", () => {
    const test = reached(welch(C, D));
    expect(test.t).toBeCloseTo(-3.078_215_365_445_631, 9);
    expect(test.degreesOfFreedom).toBeCloseTo(20.871_854_303_938_03, 9);
    expect(test.chance).toBeCloseTo(0.005_729_734_577_249_994_5, 9);
    const range = reached(studentRange(test.difference, test.standardError, test.degreesOfFreedom, 0.95));
    expect(range.lower).toBeCloseTo(-4.748_222_991_487_031, 6);
    expect(range.upper).toBeCloseTo(-0.918_443_675_179_636_1, 6);
  });

  it("ttest_rel, mannwhitneyu with ties, exact mannwhitneyu, exact wilcoxon, all sign flips", () => {
    const paired = reached(pairedStudent(C.map((value, at) => value - (D[at] ?? 0))));
    expect(paired.t).toBeCloseTo(-5.976_545_919_140_547, 9);
    expect(paired.chance / 9.232_256_052_513_033e-5).toBeCloseTo(1, 6);
    expect(reached(rankSum(C, D)).wins).toBe(20);
    expect(reached(normalRankSum(C, D))).toBeCloseTo(0.002_651_081_559_986_157_3, 8);
    const exact = reached(rankSum([12, 15, 9, 14], [8, 7, 11, 10, 6]));
    expect(exact.wins).toBe(18);
    expect(exact.chance).toBeCloseTo(0.063_492_063_492_063_49, 12);
    expect(reached(signedRank(DIFFERENCES)).chance).toBeCloseTo(0.109_375, 12);
    expect(reached(signFlip(DIFFERENCES, 1)).chance).toBeCloseTo(0.093_75, 12);
  });
});

it("kendalltau(method='exact') and theilslopes", () => {
  const timed = YEARS.map((value, time) => ({ time, value }));
  const test = reached(mannKendall(timed));
  expect(test.exact).toBe(true);
  expect(test.tau).toBeCloseTo(0.722_222_222_222_222_2, 12);
  expect(test.chance).toBeCloseTo(0.005_886_243_386_243_386_4, 12);
  const line = reached(theilSen(timed));
  expect(line.slope).toBeCloseTo(0.4225, 12);
  expect(line.intercept).toBeCloseTo(2.71, 12);
});

it("binomtest.proportion_ci('exact') and ('wilson'), quantile", () => {
  const exact = reached(exactInterval(7, 40, 0.95));
  expect(exact.lower).toBeCloseTo(0.073_382_729_352_084_98, 7);
  expect(exact.upper).toBeCloseTo(0.327_790_133_361_594_46, 7);
  const wilson = reached(wilsonInterval(7, 40, 0.95));
  expect(wilson.lower).toBeCloseTo(0.087_454_137_460_359_18, 9);
  expect(wilson.upper).toBeCloseTo(0.319_499_903_317_877_1, 9);
  for (const [share, value] of [
    [0.1, 2.96],
    [0.25, 3.6],
    [0.9, 5.62],
  ] as const)
    expect(reached(quantileOf(YEARS, share))).toBeCloseTo(value, 12);
});

it("nbinom.logpmf maximised over k", () => {
  const worms = [4, 7, 2, 5, 6, 2, 3, 4, 9, 7, 8, 1, 2, 0, 6, 8, 4, 5, 1, 3, 0, 0, 14];
  expect(reached(negativeBinomialK(worms)) / 2.223_071_508_085_047).toBeCloseTo(1, 6);
});

it("f.sf and beta.cdf to 1 part in 10⁶", () => {
  for (const [f, above, below, chance] of [
    [0.4, 1, 4, 0.5614380442505258],
    [0.4, 2, 12, 0.6789341568946838],
    [0.4, 5, 60, 0.846930467001547],
    [0.4, 20, 4, 0.9248533703647253],
    [1, 1, 4, 0.37390096630005887],
    [1, 2, 12, 0.39656945660396603],
    [1, 5, 60, 0.4256362490456187],
    [1, 20, 4, 0.5693184456270783],
    [3.3, 1, 4, 0.14344426283494344],
    [3.3, 2, 12, 0.0721123769626371],
    [3.3, 5, 60, 0.01066407390544599],
    [3.3, 20, 4, 0.12752377668020268],
    [12, 1, 4, 0.025721420742506513],
    [12, 2, 12, 0.0013717421124828527],
    [12, 5, 60, 4.53930565509308e-8],
    [12, 20, 4, 0.013396464474681978],
  ] as const)
    expect(reached(fBeyond(f, above, below)) / chance).toBeCloseTo(1, 6);
  for (const [x, alpha, beta, share] of [
    [0.01, 0.5, 0.5, 0.06376856085851985],
    [0.01, 2, 2, 0.00029800000000000003],
    [0.01, 2, 30, 0.03838951459523544],
    [0.01, 30, 2, 3.0700000000000017e-59],
    [0.01, 0.5, 30, 0.560665631094749],
    [0.2, 0.5, 0.5, 0.2951672353008665],
    [0.2, 2, 2, 0.10400000000000005],
    [0.2, 2, 30, 0.9913344197250024],
    [0.2, 30, 2, 2.6843545600000044e-20],
    [0.2, 0.5, 30, 0.9997316878523693],
    [0.5, 0.5, 0.5, 0.5000000000000001],
    [0.5, 2, 2, 0.5],
    [0.5, 2, 30, 0.9999999850988388],
    [0.5, 30, 2, 1.4901161193847656e-8],
    [0.5, 0.5, 30, 0.9999999998669794],
    [0.9, 0.5, 0.5, 0.7951672353008665],
    [0.9, 2, 2, 0.972],
    [0.9, 2, 30, 1.0],
    [0.9, 30, 2, 0.1695646331008649],
    [0.9, 0.5, 30, 1.0],
  ] as const)
    expect(reached(betaProbability(x, alpha, beta)) / share).toBeCloseTo(1, 6);
});

it.each([
  [2, 0.5, 0.94915838857685],
  [10, 3, 0.2285997814056711],
  [60, 3, 0.16067407076101686],
])("nct.cdf with %d degrees of freedom and %d", (freedom, shift, below) => {
  const t = reached(studentQuantile(0.975, freedom));
  expect(reached(noncentralStudentProbability(t, freedom, shift))).toBeCloseTo(below, 6);
});

it("power from nct", () => {
  const pairs = { design: "pairs", level: 0.95, power: 0.8 } as const;
  const groups = { ...pairs, design: "two-groups" } as const;
  for (const [n, share] of [
    [4, 0.288_752_416_401_715_1],
    [8, 0.680_833_958_206_266_4],
    [12, 0.882_891_637_729_132_5],
  ] as const)
    expect(reached(powerOf(1, 1, n, pairs))).toBeCloseTo(share, 7);
  for (const [n, share] of [
    [4, 0.223_188_030_697_541_78],
    [8, 0.461_238_849_503_845_64],
    [17, 0.807_036_715_147_219_8],
  ] as const)
    expect(reached(powerOf(1, 1, n, groups))).toBeCloseTo(share, 7);
});

it("bootstrap, 200,000 draws, BCa and percentile", () => {
  // Drawn there with another generator: ends of a mean of ten whole numbers come in steps of 0.1.
  const mean = ([only]: readonly Float64Array[]): number => sumOf([...(only ?? [])]) / (only?.length ?? 1);
  const drawn = reached(resample([[3, 9, 12, 6, 10, 4, 7, 15, 2, 8]], mean, { draws: 40_000, seed: 1 }));
  expect(drawn.standardError).toBeCloseTo(1.225, 1);
  const [bca, percentile] = [reached(bcaRange(drawn, 0.95)), reached(percentileRange(drawn, 0.95))];
  expect(Math.abs(bca.lower - 5.4)).toBeLessThan(0.11);
  expect(Math.abs(bca.upper - 10.2)).toBeLessThan(0.11);
  expect(Math.abs(percentile.lower - 5.3)).toBeLessThan(0.11);
  expect(Math.abs(percentile.upper - 10)).toBeLessThan(0.11);
});

// Parameter, value, standard error as curve_fit gives it with its own s².
describe("curve_fit on the worked example", () => {
  it.each([
    [
      "Kostiakov",
      fitKostiakov,
      38.962_770_570_71,
      [
        ["a", 82.375_355, 0.778_707],
        ["b", 0.532_646_8, 0.014_453_8],
      ],
    ],
    [
      "Philip",
      fitPhilip,
      48.162_069_783,
      [
        ["S", 77.395_727_5, 3.408_600_5],
        ["A", 4.808_626_8, 2.825_806_4],
      ],
    ],
    [
      "Horton",
      fitHorton,
      2.400_901_607_99,
      [
        ["fc", 34.132_167_4, 0.628_310_7],
        ["f0", 232.053_648, 4.380_906_4],
        ["k", 3.944_008_66, 0.138_840_58],
      ],
    ],
    [
      "Green and Ampt",
      fitGreenAmpt,
      48.327_138_046,
      [
        ["K", 6.942_495_7, 4.007_041],
        ["M", 432.680_185, 286.121_478],
      ],
    ],
  ] as const)("%s", (_, lay, sse, unknowns) => {
    const found = reached(lay(EXAMPLE));
    expect(found.sseMm2).toBeLessThan(sse * (1 + 1e-6));
    for (const [symbol, value, error] of unknowns) {
      const parameter = found.parameters.find((one) => one.symbol === symbol);
      if (parameter === undefined) throw new Error(`${symbol} is missing`);
      expect(parameter.value / value).toBeCloseTo(1, 4);
      expect(reached(parameter.standardError) / error).toBeCloseTo(1, 3);
    }
  });
});
