/** Looks at the limits of cautions on comparisons and years. */
import { trendOfField, trendOfSpot } from "../../../src/science/over-years/trend.ts";
import { compareBlocks } from "../../../src/science/side-by-side/blocks.ts";
import { compareCounts } from "../../../src/science/side-by-side/counts.ts";
import { compareGroups } from "../../../src/science/side-by-side/groups.ts";
import { type Conditions, unlikenesses } from "../../../src/science/side-by-side/like-with-like.ts";
import { comparePairs } from "../../../src/science/side-by-side/pairs.ts";
import {
  bcaRange,
  differenceOfMeans,
  percentileRange,
  resample,
} from "../../../src/science/statistics/bootstrap.ts";
import { reached } from "./counts.ts";
import { beyond, half, type Look, type Looks, lopsided, some } from "./limit-looks.ts";

const asSeen = (values: readonly number[]) => values.map((value) => ({ value, least: null }));
const asked = { scale: "difference", unit: "mm", worthwhile: 5, seed: 1 } as const;
const ofCounts = (a: readonly number[], b: readonly number[]) =>
  reached(compareCounts({ counts: a, effortEach: 1 }, { counts: b, effortEach: 1 }, 1)).cautions;
const ofGroups = (a: readonly number[], b: readonly number[]) =>
  reached(compareGroups(asSeen(a), asSeen(b), "strips", asked)).cautions;
const ofBlocks = (...rowsOf: readonly (readonly number[])[]) =>
  reached(
    compareBlocks(
      rowsOf.map((row, at) => ({ label: `${at}`, blocks: asSeen(row) })),
      asked,
    ),
  ).cautions;
const ofPairs = (differences: readonly number[]) =>
  reached(
    comparePairs(
      differences.map((value, at) => ({
        label: `${at}`,
        a: { value, least: null },
        b: { value: 0, least: null },
      })),
      "blocks",
      asked,
    ),
  ).cautions;
const holesAsRatio = (n: number) =>
  reached(compareGroups(asSeen(half(n, 2, 5)), asSeen(half(n, 3, 7)), "holes", { ...asked, scale: "ratio" }))
    .cautions;
const years = (n: number, spots: readonly string[]) =>
  spots.flatMap((spot) =>
    some(n, (at) => ({
      spot,
      season: "s",
      harvestYear: 2000 + at,
      value: at + 3 * (at % 2),
      fromPaper: false,
    })),
  );
const ofSpot = (n: number) => reached(trendOfSpot(years(n, ["1"]), { unit: "1" })).cautions;
const ofField = (n: number) => reached(trendOfField(years(n, ["1", "2"]), { unit: "1", seed: 1 })).cautions;
const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));
const NOTHING: Conditions = {
  places: null,
  mulchInRing: null,
  pours: null,
  wetness: null,
  ways: null,
  sizesM: null,
  depthsM: null,
  personMinutes: null,
  seasons: null,
  harvestYears: null,
};
const unlike = (a: Partial<Conditions>, b: Partial<Conditions>) =>
  unlikenesses({ ...NOTHING, ...a }, { ...NOTHING, ...b }).cautions;
const rows = (inRow: number) => some(10, (at) => (at < inRow ? "in-row" : "wheel-track"));
const drawn = (n: number) =>
  reached(resample([half(n, 3, 5), half(n, 4, 7)], differenceOfMeans, { draws: 100, seed: 1 }));
const fewToCount = (clumped: boolean) => ({
  "few-worms-wide-range worms": [9, 10].map((worms): Look => {
    const few = [worms - 4, 0, 4, ...some(7, () => 0)];
    return [
      worms,
      ofCounts(
        clumped ? few : some(10, (at) => (at < worms ? 1 : 0)),
        some(10, () => 5),
      ),
    ];
  }),
  "few-holes-may-miss-patches holes": [29, 30].map((n): Look => {
    const all = clumped ? half(n, 2, 12) : half(n, 5, 6);
    return [n, ofCounts(all, all)];
  }),
});

/** By method. */
export const COMPARED_LOOKS: Looks = {
  "welch-t": lopsided((values) => ofGroups(values, half(values.length, 1, 2))),
  "welch-ratio-t": {
    "few-holes-may-miss-patches holes": [29, 30].map((n) => [n, holesAsRatio(n)]),
  },
  "paired-t": lopsided(ofPairs),
  // Two treatments are each as far from the mean of their block as the other, on the other side.
  "blocks-t": lopsided((values) =>
    ofBlocks(
      values,
      some(values.length, () => 0),
    ),
  ),
  "rate-ratio-exact": fewToCount(false),
  "rate-ratio-scaled": {
    ...fewToCount(true),
    "range-if-lopsided holes": [9, 10].map((n) => [n, ofCounts(half(n, 8, 32), half(n, 9, 11))]),
    "range-if-lopsided spread-beyond-chance": [half(10, 12, 28), half(10, 11, 29)].map((all) => [
      beyond(all),
      ofCounts(all, half(10, 9, 11)),
    ]),
    "range-if-lopsided other-spread-share": [half(10, 12, 28), half(10, 15, 25)].map((other) => {
      const all = half(10, 8, 32);
      return [beyond(other) / beyond(all), ofCounts(all, other)];
    }),
  },
  "sign-flip": {
    "too-few-pairs-for-five-percent chance": [5, 6].map((n) => [
      2 ** (1 - n),
      ofPairs(some(n, (at) => 3 + at)),
    ]),
  },
  "two-group-permutation": {
    "too-few-strips-for-five-percent chance": [3, 4].map((n) => [
      (2 * factorial(n) ** 2) / factorial(2 * n),
      ofGroups(
        some(n, (at) => 9 + at),
        some(n, (at) => at),
      ),
    ]),
  },
  "mann-kendall-exact": {
    "too-few-years-for-five-percent chance": [4, 5].map((n) => [2 / factorial(n), ofSpot(n)]),
  },
  "theil-sen": { "years-may-run-together years": [6, 7, 12].map((n) => [n, ofSpot(n)]) },
  "counted-range": { "few-years-wide-range years": [5, 6, 7].map((n) => [n, ofSpot(n)]) },
  "whole-years": {
    "too-few-years-for-five-percent chance": [4, 5].map((n) => [2 / factorial(n), ofField(n)]),
    "years-may-run-together years": [4, 5, 6].map((n) => [n, ofField(n)]),
  },
  "like-with-like": {
    "unlike-places share-apart": [8, 7].map((n) => [
      (n - 6) / 10,
      unlike({ places: rows(n) }, { places: rows(6) }),
    ]),
    "unlike-efforts efforts-apart": [15, 15.1].map((most) => [
      most / 10,
      unlike({ personMinutes: [10] }, { personMinutes: [most] }),
    ]),
    "unlike-sizes sizes-apart": [0.27, 0.269].map((least) => [
      1 - Math.round((1e4 * least) / 0.3) / 1e4,
      unlike({ sizesM: [0.3] }, { sizesM: [least] }),
    ]),
    "unlike-depths sizes-apart": [0.27, 0.269].map((least) => [
      1 - Math.round((1e4 * least) / 0.3) / 1e4,
      unlike({ depthsM: [0.3] }, { depthsM: [least] }),
    ]),
  },
  "bootstrap-percentile": {
    "resampled-range-too-narrow values": [49, 50].map((n) => [
      n,
      reached(percentileRange(drawn(n), 0.95)).cautions,
    ]),
  },
  "bootstrap-bca": {
    "resampled-range-too-narrow values": [49, 50].map((n) => [n, reached(bcaRange(drawn(n), 0.95)).cautions]),
  },
};
