/**
 * Source: lib-r-math.js 2.0.3 (npm), a port of nmath, the mathematical library of R.
 * Mark: computed here with it, in the test.
 *
 * Nothing in it is shared with the library that the product uses (jstat 1.9.6). Distributions over the arguments that
 * the product lets through, and the exact counts of ranks, which R tabulates by another recursion. Its `pbeta` is not
 * asked: it gives 0.50056 for I(0.5; 2, 2), which is a half. Beta and F stand in scipy.test.ts.
 */

import * as R from "lib-r-math.js";
import { describe, expect, it } from "vitest";
import { wormsPerHole } from "../../src/science/earthworms/field.ts";
import * as ours from "../../src/science/statistics/distributions.ts";
import { negativeBinomialK } from "../../src/science/statistics/negative-binomial.ts";
import { exactInterval, largestShareUnseen } from "../../src/science/statistics/proportion.ts";
import { rankSum } from "../../src/science/statistics/rank-sum.ts";
import { BY_CHANCE, rateRatioChance } from "../../src/science/statistics/rate-ratio.ts";
import { signedRank } from "../../src/science/statistics/signed-rank.ts";
import { reached } from "../unit/science/counts.ts";
import { holes } from "../unit/science/earthworms/holes.ts";

const FREEDOMS = [1, 2, 3, 4, 5, 7.5, 10, 30, 120, 1000];
const SHARES = [0.005, 0.025, 0.1, 0.25, 0.5, 0.75, 0.9, 0.975, 0.995];

/** The largest part by which our numbers and theirs differ. */
const apart = (pairs: readonly (readonly [number, number])[]): number =>
  Math.max(...pairs.map(([a, b]) => (b === 0 ? Math.abs(a) : Math.abs(a / b - 1))));
const gap = (pairs: readonly (readonly [number, number])[]): number =>
  Math.max(...pairs.map(([a, b]) => Math.abs(a - b)));
const every = <A, B>(as: readonly A[], bs: readonly B[]): readonly (readonly [A, B])[] =>
  as.flatMap((a) => bs.map((b) => [a, b] as const));

describe("quantiles to 1 part in 10⁶", () => {
  it("Student's t", () => {
    const pairs = every(
      SHARES.filter((share) => share !== 0.5),
      FREEDOMS,
    ).map(
      ([share, freedom]) => [reached(ours.studentQuantile(share, freedom)), R.qt(share, freedom)] as const,
    );
    expect(apart(pairs)).toBeLessThan(1e-6);
  });

  it("normal, chi-square (also with 10⁶ and 10⁹ degrees of freedom)", () => {
    expect(
      gap(SHARES.map((share) => [reached(ours.normalQuantile(share)), R.qnorm(share)] as const)),
    ).toBeLessThan(1e-7);
    const pairs = every(SHARES, [...FREEDOMS, 99_999, 100_001, 1e6, 1e9]).map(
      ([share, freedom]) =>
        [reached(ours.chiSquareQuantile(share, freedom)), R.qchisq(share, freedom)] as const,
    );
    expect(apart(pairs)).toBeLessThan(1e-6);
  });

  it("beta", () => {
    const shapes = every([0.5, 1, 3, 10, 50, 300], [0.5, 1, 3, 10, 50, 300]);
    const pairs = every([0.005, 0.025, 0.1, 0.5, 0.9, 0.975], shapes).map(
      ([share, [a, b]]) => [reached(ours.betaQuantile(share, a, b)), R.qbeta(share, a, b)] as const,
    );
    expect(apart(pairs)).toBeLessThan(1e-6);
  });
});

describe("probabilities to 1 in 10⁷", () => {
  it("Student's t, normal, chi-square, noncentral t", () => {
    const xs = [-6, -2.5, -0.7, 0, 0.3, 1.96, 4];
    const pairs = [
      ...every(xs, FREEDOMS).map(([x, n]) => [reached(ours.studentProbability(x, n)), R.pt(x, n)] as const),
      ...every(xs, FREEDOMS).map(
        ([x, n]) => [reached(ours.studentBeyond(x, n)), 2 * R.pt(-Math.abs(x), n)] as const,
      ),
      ...xs.map((x) => [reached(ours.normalProbability(x)), R.pnorm(x)] as const),
      ...xs.map((x) => [reached(ours.normalBeyond(x)), 2 * R.pnorm(-Math.abs(x))] as const),
      ...every([0, 0.5, 3, 11, 40], FREEDOMS).map(
        ([x, n]) => [reached(ours.chiSquareProbability(x, n)), R.pchisq(x, n)] as const,
      ),
      ...[0.9, 1, 1.1].map(
        (share) =>
          [reached(ours.chiSquareProbability(share * 1e6, 1e6)), R.pchisq(share * 1e6, 1e6)] as const,
      ),
      ...every([-2, 0.5, 2.2, 4], every([2, 4, 10, 38], [0, 0.5, 2, 5])).map(
        ([x, [n, shift]]) =>
          [reached(ours.noncentralStudentProbability(x, n, shift)), R.pt(x, n, shift)] as const,
      ),
    ];
    expect(pairs.length).toBeGreaterThan(250);
    expect(gap(pairs)).toBeLessThan(1e-7);
  });

  it("small chances keep their digits", () => {
    for (const [t, n] of [
      [12, 9],
      [25, 30],
      [6, 100],
    ] as const)
      expect(reached(ours.studentBeyond(t, n)) / (2 * R.pt(-t, n))).toBeCloseTo(1, 5);
  });
});

describe("exact tests", () => {
  it("the exact range of a share leaves 2.5 % of the binomial beyond each end", () => {
    for (const [hits, trials] of [
      [1, 10],
      [3, 10],
      [7, 40],
      [90, 100],
    ] as const) {
      const { lower, upper } = reached(exactInterval(hits, trials, 0.95));
      expect(1 - R.pbinom(hits - 1, trials, lower)).toBeCloseTo(0.025, 6);
      expect(R.pbinom(hits, trials, upper)).toBeCloseTo(0.025, 6);
    }
    expect(R.pbinom(0, 12, reached(largestShareUnseen(12, 0.95)))).toBeCloseTo(0.05, 9);
  });

  it("the chance of a ratio of two counts is twice the smaller tail of the binomial", () => {
    for (const [x, y, a, b] of [
      [11, 21, 800, 3011],
      [90, 60, 10, 10],
      [2, 9, 17_877, 16_660],
    ] as const) {
      const share = a / (a + b);
      const tails = [1 - R.pbinom(x - 1, x + y, share), R.pbinom(x, x + y, share)];
      const chance = reached(rateRatioChance({ count: x, effort: a }, { count: y, effort: b }, BY_CHANCE));
      expect(chance).toBeCloseTo(2 * Math.min(...tails), 7);
    }
  });

  it("ranks without ties: psignrank and pwilcox", () => {
    const signed = [3, -1, 4, -2, 5, 6, 7.5, -8, 9];
    const found = reached(signedRank(signed));
    expect(found.chance).toBeCloseTo(
      2 * R.psignrank(Math.min(found.positive, found.negative), signed.length),
      12,
    );
    for (const [a, b] of [
      [
        [1, 5, 8, 12],
        [2, 3, 9, 14, 15, 20],
      ],
      [
        [10, 11, 12],
        [1, 2, 3, 4],
      ],
    ] as const) {
      const { wins, chance } = reached(rankSum(a, b));
      const fewer = Math.min(wins, a.length * b.length - wins);
      expect(chance).toBeCloseTo(2 * R.pwilcox(fewer, a.length, b.length), 12);
    }
  });
});

describe("counts", () => {
  it("the exponent k of counts in clumps is the one that dnbinom finds likeliest", () => {
    for (const counts of [
      [4, 7, 2, 5, 6, 2, 3, 4, 9, 7, 8, 1, 2, 0, 6, 8, 4, 5, 1, 3],
      [0, 1, 7, 2, 3, 1, 2, 1, 3, 0, 1, 4],
      [0, 0, 14, 3, 1, 0, 6, 0, 2, 9],
    ]) {
      const mean = counts.reduce((sum, count) => sum + count, 0) / counts.length;
      const logLikelihood = (k: number): number =>
        counts.reduce((sum, count) => sum + Math.log(R.dnbinom(count, k, undefined, mean)), 0);
      const k = reached(negativeBinomialK(counts));
      for (const step of [0.99, 1.01]) expect(logLikelihood(k)).toBeGreaterThan(logLikelihood(k * step));
      expect(logLikelihood(k)).toBeGreaterThan(logLikelihood(k * 1.0001) - 1e-7);
    }
  });

  it("where no worm was found the upper end leaves 5 % of ppois at none", () => {
    for (const n of [3, 5, 10]) {
      const { upper } = reached(reached(wormsPerHole(holes(...new Array<number>(n).fill(0)))).range);
      expect(R.ppois(0, upper * n)).toBeCloseTo(0.05, 9);
    }
  });
});
