/**
 * Source: simple-statistics 7.12.1 (npm), a general library of plain formulas.
 * Mark: computed here with it, in the test, on samples drawn by a seed.
 *
 * Mean, variance, skewness, median, the t of one sample and of two, U and the mean of clusters of one.
 */

import * as simple from "simple-statistics";
import { expect, it } from "vitest";
import { clusterRatio } from "../../src/science/statistics/cluster-ratio.ts";
import { medianOf } from "../../src/science/statistics/quantile.ts";
import { rankSum } from "../../src/science/statistics/rank-sum.ts";
import { sampleOf, skewnessOf } from "../../src/science/statistics/sample.ts";
import { pairedStudent, welch } from "../../src/science/statistics/two-means.ts";
import { seeded } from "../property/science/seeded.ts";
import { reached } from "../unit/science/counts.ts";

it("agrees on two hundred samples", () => {
  const random = seeded(77);
  for (let draw = 0; draw < 200; draw++) {
    const n = 3 + Math.floor(20 * random());
    const values = Array.from({ length: n }, () => 100 * random() - 30);
    const others = Array.from({ length: n - 1 }, () => 100 * random() - 20);
    const sample = reached(sampleOf(values));
    expect(sample.mean).toBeCloseTo(simple.mean(values), 9);
    expect(sample.variance / simple.sampleVariance(values)).toBeCloseTo(1, 9);
    // Theirs is put right for the size of the sample: √(n(n−1))/(n−2) times the coefficient.
    const skewness = simple.sampleSkewness(values) * ((n - 2) / Math.sqrt(n * (n - 1)));
    expect(reached(skewnessOf(values))).toBeCloseTo(skewness, 9);
    expect(reached(medianOf(values))).toBeCloseTo(simple.median(values), 9);
    // Their t of one sample divides by the spread with n; ours by that with n−1.
    const t = simple.tTest(values, 0) * Math.sqrt((n - 1) / n);
    expect(reached(pairedStudent(values)).t / t).toBeCloseTo(1, 9);
    // With groups as large, Welch's t is the pooled one.
    const [first, second] = [values.slice(0, n - 1), others];
    const pooled = simple.tTestTwoSample(first, second, 0);
    expect(reached(welch(first, second)).t / (pooled ?? Number.NaN)).toBeCloseTo(1, 9);
    const ranks = simple.wilcoxonRankSum(values, others);
    expect(reached(rankSum(values, others)).wins).toBeCloseTo(ranks - (n * (n + 1)) / 2, 9);
    // Clusters of one element are a simple sample: the ratio estimator is its mean and standard error.
    const clusters = reached(clusterRatio(values.map((total) => ({ total, size: 1 }))));
    expect(clusters.ratio).toBeCloseTo(simple.mean(values), 9);
    expect(
      (clusters.standardError ?? 0) / (simple.sampleStandardDeviation(values) / Math.sqrt(n)),
    ).toBeCloseTo(1, 9);
  }
});
