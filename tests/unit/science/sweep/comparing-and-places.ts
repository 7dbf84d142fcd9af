/** Examples of statistics, comparisons, years, positions and plans. */

import * as methodOf from "../../../../src/science/method.ts";
import * as coverMethods from "../../../../src/science/methods/behind/ground-cover.ts";
import * as methodsOf from "../../../../src/science/methods.ts";
import * as trend from "../../../../src/science/over-years/trend.ts";
import * as visits from "../../../../src/science/over-years/visits.ts";
import * as day from "../../../../src/science/plan/day.ts";
import * as dayShows from "../../../../src/science/plan/day-shows.ts";
import * as distances from "../../../../src/science/plan/distances.ts";
import * as exactOrder from "../../../../src/science/plan/exact-order.ts";
import * as frame from "../../../../src/science/plan/frame.ts";
import * as improvedOrder from "../../../../src/science/plan/improved-order.ts";
import * as edgePairs from "../../../../src/science/plan/pairs-along-edge.ts";
import * as randomPoints from "../../../../src/science/plan/random-points.ts";
import * as shortestOrder from "../../../../src/science/plan/shortest-order.ts";
import * as wWalk from "../../../../src/science/plan/w-walk.ts";
import * as walkingOrder from "../../../../src/science/plan/walking-order.ts";
import * as wanted from "../../../../src/science/plan/wanted.ts";
import * as bearing from "../../../../src/science/position/bearing.ts";
import * as boundary from "../../../../src/science/position/boundary.ts";
import * as deepest from "../../../../src/science/position/deepest.ts";
import * as distance from "../../../../src/science/position/distance.ts";
import * as fieldSize from "../../../../src/science/position/field-size.ts";
import * as fieldsNear from "../../../../src/science/position/fields-near.ts";
import * as geodesic from "../../../../src/science/position/geodesic.ts";
import * as inField from "../../../../src/science/position/in-field.ts";
import * as plane from "../../../../src/science/position/plane.ts";
import * as geometry from "../../../../src/science/position/plane-geometry.ts";
import * as selfCrossing from "../../../../src/science/position/self-crossing.ts";
import * as standingStill from "../../../../src/science/position/standing-still.ts";
import * as sideBlocks from "../../../../src/science/side-by-side/blocks.ts";
import * as comparison from "../../../../src/science/side-by-side/comparison.ts";
import * as counts from "../../../../src/science/side-by-side/counts.ts";
import * as sideGroups from "../../../../src/science/side-by-side/groups.ts";
import * as likeWithLike from "../../../../src/science/side-by-side/like-with-like.ts";
import * as pairs from "../../../../src/science/side-by-side/pairs.ts";
import * as plan from "../../../../src/science/side-by-side/plan.ts";
import * as scale from "../../../../src/science/side-by-side/scale.ts";
import * as stripMeans from "../../../../src/science/side-by-side/strip-means.ts";
import * as words from "../../../../src/science/side-by-side/words.ts";
import * as beyondChance from "../../../../src/science/statistics/beyond-chance.ts";
import * as blocks from "../../../../src/science/statistics/blocks.ts";
import * as bootstrap from "../../../../src/science/statistics/bootstrap.ts";
import * as clusterRatio from "../../../../src/science/statistics/cluster-ratio.ts";
import * as distributions from "../../../../src/science/statistics/distributions.ts";
import * as intraclass from "../../../../src/science/statistics/intraclass.ts";
import * as kendall from "../../../../src/science/statistics/kendall.ts";
import * as kendallGroups from "../../../../src/science/statistics/kendall-groups.ts";
import * as mean from "../../../../src/science/statistics/mean.ts";
import * as negativeBinomial from "../../../../src/science/statistics/negative-binomial.ts";
import * as permutation from "../../../../src/science/statistics/permutation.ts";
import * as poisson from "../../../../src/science/statistics/poisson.ts";
import * as power from "../../../../src/science/statistics/power.ts";
import * as proportion from "../../../../src/science/statistics/proportion.ts";
import * as quantile from "../../../../src/science/statistics/quantile.ts";
import * as rankSum from "../../../../src/science/statistics/rank-sum.ts";
import * as ranks from "../../../../src/science/statistics/ranks.ts";
import * as rateRatio from "../../../../src/science/statistics/rate-ratio.ts";
import * as sample from "../../../../src/science/statistics/sample.ts";
import * as seeded from "../../../../src/science/statistics/seeded.ts";
import * as signFlip from "../../../../src/science/statistics/sign-flip.ts";
import * as signedRank from "../../../../src/science/statistics/signed-rank.ts";
import * as studentRange from "../../../../src/science/statistics/student-range.ts";
import * as theilSen from "../../../../src/science/statistics/theil-sen.ts";
import * as twoMeans from "../../../../src/science/statistics/two-means.ts";
import * as weightedMedian from "../../../../src/science/statistics/weighted-median.ts";
import { reached } from "../counts.ts";
import { nearEquator, placesOf } from "../position/places.ts";
import { swept } from "./sweep.ts";

const TIMED = [10, 15, 14, 20, 19].map((value, time) => ({ time, value }));
const VALUES = [3, 9, 12, 6, 10];
const OTHERS = [4, 4, 7, 2];
const SEEN = VALUES.map((value) => ({ value, least: 1 }));
const SIDES = [
  [12, 8],
  [9, 12],
  [15, 7],
].map(([a, b], at) => ({
  label: `block ${at}`,
  a: { value: a ?? 0, least: 1 },
  b: { value: b ?? 0, least: null },
}));
const ASKED = { scale: "difference", unit: "/{hole}", worthwhile: 3, seed: 1 } as const;
const RATIO = { ...ASKED, scale: "ratio", worthwhile: 1.5 } as const;
const WANTED = { design: "pairs", level: 0.95, power: 0.8 } as const;
const CONDITIONS: likeWithLike.Conditions = {
  places: ["in-row"],
  mulchInRing: null,
  pours: null,
  wetness: ["moist"],
  ways: ["hand-sorted"],
  sizesM: [0.2],
  depthsM: [0.2, 0.22],
  personMinutes: [10, 12],
  seasons: ["spring"],
  harvestYears: [2026],
};
const yearsOf = (values: readonly number[]) =>
  values.map((value, at) => ({
    spot: "1",
    season: "spring",
    harvestYear: 2020 + at,
    value,
    fromPaper: at === 0,
  }));
const YEARS = yearsOf([1, 2, 4, 7, 11]);
// Beyond ten the order is no longer counted out.
const TWELVE_YEARS = yearsOf([1, 2, 4, 7, 11, 9, 12, 15, 13, 16, 18, 17]);
const CORNERS = nearEquator([
  [0, 0],
  [300, 0],
  [300, 200],
  [0, 200],
]);
const FIELD = reached(boundary.boundaryOf(CORNERS));
const [FROM, TO] = placesOf([
  [52, 5],
  [52.001, 5.001],
]) as [distance.LatitudeLongitude, distance.LatitudeLongitude];
const RING = FIELD.ring;
const [A, B, C] = RING as unknown as [plane.PlanePoint, plane.PlanePoint, plane.PlanePoint];
const METRES = [
  [0, 3, 4],
  [3, 0, 5],
  [4, 5, 0],
];
const FIXES = [4, 5, 6, 9].map((seconds) => ({
  latitudeDeg: 52 + seconds * 1e-6,
  longitudeDeg: 5,
  accuracyM: 4,
  accuracyMeans: "68-percent" as const,
  atMs: 1000 * seconds,
}));
const RESAMPLED = reached(
  bootstrap.resample([[5, 7, 6, 8]], ([only]) => sample.sumOf([...(only ?? [])]), { draws: 200, seed: 1 }),
);
const INNER = "its callers in this room let only finite numbers through";
const POINTS = { perStrip: 3, headlandM: 10, apartM: 20, seed: 1 };
const WALK = { stops: 10, headlandM: 10 };

/** Arguments out of a field with bent corners, and something else that is bent with it. */
const inside = <W, R extends readonly unknown[]>(
  rest: (field: boundary.Boundary, wanted: W) => R,
  wanted: W,
) => ({
  raw: [CORNERS, wanted],
  make: (corners: typeof CORNERS, bentWanted: W) => {
    const found = boundary.boundaryOf(corners);
    return found.ok ? rest(found.value, bentWanted) : null;
  },
});

const RESAMPLED_ONLY = "takes what `resample` gave, with as many values as were drawn";
const COSTS = { ...day.USUAL_MINUTES, litresPerRing: 2, marksPerLine: 100, holeAreaM2: 0.04 };

export const COMPARING_AND_PLACES = [
  ...swept("method.ts", methodOf, {
    table: { args: ["k", 3, "own-rule"], unbent: "lists of methods alone call it, with numbers written out" },
    limit: {
      args: ["science/few-hits", "hits", "below", 10],
      unbent: "lists of methods alone call it, with constants of the room",
    },
  }),
  ...swept("methods.ts", methodsOf, { sourcesOf: [["strip-ratio"]] }),
  ...swept("methods/behind/ground-cover.ts", coverMethods, { sourcesOfCover: [["strip-ratio"]] }),
  ...swept("over-years/trend.ts", trend, {
    trendOfSpot: { args: [YEARS, { unit: "1" }], more: [[TWELVE_YEARS, { unit: "1" }]] },
    trendOfField: [[...YEARS, ...YEARS.map((one) => ({ ...one, spot: "2" }))], { unit: "1", seed: 1 }],
  }),
  ...swept("over-years/visits.ts", visits, {
    seriesOf: [YEARS],
    unlikeOverYears: [[CONDITIONS, CONDITIONS]],
  }),
  ...swept("plan/day-shows.ts", dayShows, {
    linesShow: [5, 100],
    plannedHoleSpread: [0.04],
    holesShow: [5, 0.04],
  }),
  ...swept("plan/day.ts", day, {
    dayPlan: {
      args: [
        { hours: 6, people: 2, litres: 60, strips: 2, ringsAtHand: 4 },
        COSTS,
        ["rings", "lines", "holes"],
      ],
      ofNothing: "a day for which nothing is wanted has nothing in it",
    },
  }),
  ...swept("plan/distances.ts", distances, { legM: { args: [METRES, 0, 1], inner: INNER, endless: INNER } }),
  ...swept("plan/exact-order.ts", exactOrder, { exactOrder: { args: [METRES, true], inner: INNER } }),
  ...swept("plan/frame.ts", frame, {
    frameOf: {
      args: [RING],
      from: inside((field) => [field.ring], null),
      ask: ({ alongM, acrossM, pointAt }: frame.Frame) => [alongM, acrossM, pointAt(0.5, 0.5)],
    },
  }),
  ...swept("plan/improved-order.ts", improvedOrder, {
    improvedOrder: { args: [METRES, false], inner: INNER },
  }),
  ...swept("plan/pairs-along-edge.ts", edgePairs, {
    pairsAlongEdge: [[FROM, TO], { pairs: 3, offEdgeM: 5, fromEndsM: 10, seed: 1 }],
  }),
  ...swept("plan/random-points.ts", randomPoints, {
    stratifiedPoints: {
      args: [[{ id: "a", boundary: FIELD }], { perStrip: 3, headlandM: 10, apartM: 20, seed: 1 }],
      from: inside((field, wanted: typeof POINTS) => [[{ id: "a", boundary: field }], wanted], POINTS),
    },
  }),
  ...swept("plan/shortest-order.ts", shortestOrder, {
    shortestOrder: { args: [METRES, true], inner: INNER, endless: INNER },
  }),
  ...swept("plan/w-walk.ts", wWalk, {
    wWalk: { args: [FIELD, WALK], from: inside((field, wanted: typeof WALK) => [field, wanted], WALK) },
  }),
  ...swept("plan/walking-order.ts", walkingOrder, {
    walkingOrder: {
      args: [FROM, [TO, FROM, TO], true],
      ofNothing: "where there is no spot there is no way to go",
    },
  }),
  ...swept("plan/wanted.ts", wanted, { goodWishes: { args: [3, [1, 2]], ofNothing: "no length is wrong" } }),
  ...swept("position/bearing.ts", bearing, {
    wrapped360: { args: [370], inner: INNER },
    trueFromMagnetic: [45, 10],
    magneticFromTrue: [5, 10],
  }),
  ...swept("position/boundary.ts", boundary, {
    middleOf: { args: [CORNERS], inner: "its callers let only places on earth through" },
    boundaryOf: { args: [CORNERS], ask: ({ value }: { readonly value: boundary.Boundary }) => value.ring },
  }),
  ...swept("position/deepest.ts", deepest, {
    deepest: { args: [RING], from: inside((field) => [field.ring], null) },
  }),
  ...swept("position/distance.ts", distance, {
    turnedDeg: { args: [190], inner: INNER },
    isPlace: [FROM],
    metresPerDegree: { args: [52], inner: INNER },
    roughDistanceM: { args: [FROM, TO], inner: INNER, endless: INNER },
    distanceM: [FROM, TO],
  }),
  ...swept("position/field-size.ts", fieldSize, {
    fieldSize: { args: [FIELD], from: inside((field) => [field], null) },
  }),
  ...swept("position/fields-near.ts", fieldsNear, {
    fieldsNear: {
      args: [FROM, [{ id: "a", boundary: CORNERS, measuredAt: [TO] }], 3],
      ofNothing: "where there is no field none is near",
    },
  }),
  ...swept("position/geodesic.ts", geodesic, { geodesicBetween: [FROM, TO], placeAt: [FROM, 30, 25] }),
  ...swept("position/in-field.ts", inField, {
    inField: { args: [FIELD, TO], from: inside((field, place: typeof TO) => [field, place], TO) },
    clearOfHeadland: {
      args: [FIELD, TO, 10],
      from: inside((field, headlandM: number) => [field, TO, headlandM], 10),
    },
  }),
  ...swept("position/plane-geometry.ts", geometry, {
    edgesOf: { args: [RING], inner: INNER },
    leftOf: { args: [A, B, C], inner: INNER, endless: INNER },
    apartM: { args: [A, B], inner: INNER, endless: INNER },
    signedAreaM2: { args: [RING], inner: INNER, endless: INNER },
    toPieceM: { args: [A, B, C], inner: INNER, endless: INNER },
    depthM: { args: [RING, A], inner: INNER, endless: INNER },
    between: { args: [A, B, 0.5], inner: INNER, endless: INNER },
    extentOf: { args: [[1, 2, 3]], inner: INNER, endless: "of no values the extent is none" },
  }),
  ...swept("position/plane.ts", plane, {
    planeAbout: {
      args: [FROM],
      ask: ({ value }: { readonly value: plane.Plane }) => [
        value.toPlane(TO),
        value.toPlace({ eastM: 10, northM: 0 }),
      ],
    },
  }),
  ...swept("position/self-crossing.ts", selfCrossing, { selfCrossing: { args: [RING], inner: INNER } }),
  ...swept("position/standing-still.ts", standingStill, { standingStill: [FIXES] }),
  ...swept("side-by-side/blocks.ts", sideBlocks, {
    compareBlocks: {
      args: [
        [
          { label: "A", blocks: SEEN },
          { label: "B", blocks: [...SEEN].reverse() },
        ],
        { scale: "ratio", unit: "1", worthwhile: 2 },
      ],
      more: [
        [
          [
            { label: "A", blocks: SEEN },
            { label: "B", blocks: [...SEEN].reverse() },
          ],
          { scale: "difference", unit: "1", worthwhile: 2 },
        ],
      ],
    },
  }),
  ...swept("side-by-side/comparison.ts", comparison, {
    studentParts: { args: [twoMeans.welch(VALUES, OTHERS), 5, "difference", "paired-t"], inner: INNER },
    shownValue: ["ratio", 2],
  }),
  ...swept("side-by-side/counts.ts", counts, {
    equalCounts: [
      [
        { worms: 3, sidesM: [0.2, 0.2] },
        { worms: 5, sidesM: [0.2, 0.2] },
      ],
      "m2",
    ],
    samplesEachSide: [3, 6],
    compareCounts: {
      args: [{ counts: [3, 9, 0, 4], effortEach: 1 }, { counts: [1, 2, 0], effortEach: 1 }, 2],
      more: [[{ counts: [9, 8, 9, 8], effortEach: 1 }, { counts: [4, 5, 4], effortEach: 1 }, 2]],
    },
  }),
  ...swept("side-by-side/groups.ts", sideGroups, {
    compareGroups: {
      args: [SEEN, SEEN.slice(0, 3), "spots", ASKED],
      more: [[SEEN, SEEN.slice(0, 3), "strips", RATIO]],
    },
  }),
  ...swept("side-by-side/like-with-like.ts", likeWithLike, { unlikenesses: [CONDITIONS, CONDITIONS] }),
  ...swept("side-by-side/pairs.ts", pairs, {
    comparePairs: { args: [SIDES, "blocks", ASKED], more: [[SIDES, "farms", RATIO]] },
  }),
  ...swept("side-by-side/plan.ts", plan, {
    planFor: [{ spread: 0.1, degreesOfFreedom: 5, n: 6 }, 0.1, "pairs", "difference"],
  }),
  ...swept("side-by-side/scale.ts", scale, {
    noneOn: ["ratio"],
    meanOnScale: { args: [SEEN, "ratio"], more: [[SEEN, "difference"]] },
    leastOfMean: [SEEN],
    workedWith: [{ value: 3, least: 1 }, "ratio"],
    shownOn: {
      args: ["ratio", 2],
      inner: INNER,
      endless: "a logarithm beyond 709 has no number; `shownValue` says so",
    },
    boundsOn: { args: ["ratio", { ok: true, value: { lower: 0.1, upper: 0.4 } }] },
  }),
  ...swept("side-by-side/strip-means.ts", stripMeans, {
    meansOfStrips: [
      [
        { label: "1", spots: SEEN },
        { label: "2", spots: SEEN.slice(0, 2) },
      ],
      "ratio",
    ],
  }),
  ...swept("side-by-side/words.ts", words, {
    wordFor: [{ ok: true, value: { lower: -1, upper: 9 } }, { ok: true, value: { lower: 1, upper: 7 } }, 0],
  }),
  ...swept("statistics/beyond-chance.ts", beyondChance, {
    beyondChance: { args: [6, 15, 6], inner: INNER, ofNothing: "nothing spreads: no share of it" },
  }),
  ...swept("statistics/blocks.ts", blocks, {
    blockedTable: [
      [
        [4, 5, 6],
        [5, 7, 7],
      ],
    ],
  }),
  ...swept("statistics/bootstrap.ts", bootstrap, {
    differenceOfMeans: {
      args: [[Float64Array.of(4, 6), Float64Array.of(1, 2)]],
      inner: "`resample` gives it groups that hold something",
      fixed: "two groups",
    },
    resample: [
      [
        [5, 7, 6, 8],
        [3, 4],
      ],
      bootstrap.differenceOfMeans,
      { draws: 200, seed: 1 },
    ],
    percentileRange: { args: [RESAMPLED, 0.95], inner: RESAMPLED_ONLY, fixed: RESAMPLED_ONLY },
    bcaConstants: { args: [RESAMPLED], inner: RESAMPLED_ONLY, fixed: RESAMPLED_ONLY },
    bcaRange: { args: [RESAMPLED, 0.95], inner: RESAMPLED_ONLY, fixed: RESAMPLED_ONLY },
  }),
  ...swept("statistics/cluster-ratio.ts", clusterRatio, {
    clusterRatio: [
      [
        { total: 44, size: 100 },
        { total: 36, size: 90 },
        { total: 0, size: 0 },
      ],
    ],
  }),
  ...swept("statistics/distributions.ts", distributions, {
    studentQuantile: [0.975, 2],
    studentProbability: [4.3, 2],
    normalQuantile: [0.975],
    betaQuantile: [0.95, 1, 10],
    chiSquareQuantile: [0.95, 5],
    chiSquareProbability: [11, 5],
    betaProbability: [0.5, 1, 10],
    studentBeyond: [2.8, 4],
    normalBeyond: [1.96],
    normalProbability: [1.6],
    fBeyond: [3.26, 4, 12],
    noncentralStudentProbability: [2.2, 10, 3],
  }),
  ...swept("statistics/intraclass.ts", intraclass, {
    intraclass: [
      [
        [12, 13, 11],
        [9, 8, 10],
      ],
    ],
  }),
  ...swept("statistics/kendall-groups.ts", kendallGroups, {
    kendallOfGroups: [[TIMED, TIMED]],
    chanceByWholeYears: [[TIMED, TIMED], 1],
  }),
  ...swept("statistics/kendall.ts", kendall, {
    kendallSum: [TIMED],
    kendallZ: { args: [54, 332], inner: INNER, endless: INNER },
    kendallNormal: [54, 332],
    exactKendall: { args: [reached(kendall.kendallSum(TIMED))], inner: "takes what `kendallSum` gave" },
    smallestTrendChance: [5],
    fewestTimes: [0.05],
    mannKendall: [TIMED],
  }),
  ...swept("statistics/mean.ts", mean, {
    meanOfReadings: [[30, 42, 36], "mm"],
    meanOverLines: [[[30, 40], [20], [25, 35]], "mm"],
  }),
  ...swept("statistics/negative-binomial.ts", negativeBinomial, {
    dispersionOf: [[2, 9, 0, 5]],
    negativeBinomialK: [[2, 9, 0, 5]],
    emptyShare: { args: [9, 2], more: [[9, null]] },
  }),
  ...swept("statistics/permutation.ts", permutation, {
    waysToChoose: { args: [14, 6], inner: INNER, endless: "beyond all numbers, as its docstring says" },
    smallestPermutationChance: { args: [4, 5], inner: INNER, endless: INNER },
    permutationOfTwo: [VALUES, OTHERS, 1],
  }),
  ...swept("statistics/poisson.ts", poisson, { countRange: [10, 0.95] }),
  ...swept("statistics/power.ts", power, {
    powerOf: [2, 1, 4, { ...WANTED, design: "two-groups" }],
    samplesNeeded: [1, 1, WANTED],
    smallestVisible: [1, 17, WANTED],
  }),
  ...swept("statistics/proportion.ts", proportion, {
    wilsonInterval: [30, 100, 0.95],
    exactInterval: [3, 10, 0.95],
    largestShareUnseen: [10, 0.95],
  }),
  ...swept("statistics/quantile.ts", quantile, {
    atRank: { args: [[1, 2, 3], 2.5], fixed: "ranks lie within the values", inner: INNER, endless: INNER },
    quantileOf: [VALUES, 0.25],
    medianOf: [VALUES],
  }),
  ...swept("statistics/rank-sum.ts", rankSum, { normalRankSum: [VALUES, OTHERS], rankSum: [VALUES, OTHERS] }),
  ...swept("statistics/ranks.ts", ranks, {
    midRanks: { args: [[5, 1, 5, 2]], inner: INNER },
    sumsOfAnyRanks: {
      args: [[1, 2, 3.5]],
      unbent: "ranks are half numbers from 1 up to the number of values",
      ask: ({ atMost, atLeast }: ranks.SumChances) => [atMost(3), atLeast(3)],
    },
    sumsOfChosenRanks: {
      args: [[1, 2, 3.5], 2],
      unbent: "ranks are half numbers from 1 up to the number of values",
      ask: ({ atMost, atLeast }: ranks.SumChances) => [atMost(3), atLeast(3)],
    },
  }),
  ...swept("statistics/rate-ratio.ts", rateRatio, {
    rateRatioRange: [
      { count: 90, effort: 10 },
      { count: 60, effort: 10 },
      { varianceToMean: 2, degreesOfFreedom: 9 },
      0.95,
    ],
    rateRatioChance: [
      { count: 90, effort: 10 },
      { count: 60, effort: 10 },
      { varianceToMean: 2, degreesOfFreedom: 9 },
    ],
    unevennessOf: {
      args: [
        [
          [2, 9, 0, 5],
          [4, 4, 4],
        ],
      ],
      ofNothing: "no group shows any unevenness: 1, known with 0 degrees",
    },
    wider: { args: [{ varianceToMean: 2, degreesOfFreedom: 9 }], inner: INNER },
  }),
  ...swept("statistics/sample.ts", sample, {
    largestOf: { args: [VALUES], inner: INNER, endless: INNER },
    sumOf: { args: [VALUES], inner: INNER, endless: INNER },
    sampleOf: [VALUES],
    skewnessOf: [VALUES],
  }),
  ...swept("statistics/seeded.ts", seeded, {
    seeded: { args: [1], ask: (next: () => number) => [next(), next()] },
  }),
  ...swept("statistics/sign-flip.ts", signFlip, {
    smallestSignFlipChance: { args: [6], inner: INNER },
    signFlip: [VALUES, 1],
  }),
  ...swept("statistics/signed-rank.ts", signedRank, {
    normalSignedRank: [[3, 1, 4, -2]],
    signedRank: [[3, 1, 4, -2]],
  }),
  ...swept("statistics/student-range.ts", studentRange, {
    lopsidedCautions: { args: [[VALUES, OTHERS]], ofNothing: "no values, so no range of them" },
    studentRange: { args: [3, 1, 2, 0.95], inner: INNER, endless: INNER },
  }),
  ...swept("statistics/theil-sen.ts", theilSen, {
    slopesOf: { args: [TIMED], inner: INNER, endless: INNER },
    theilSen: [TIMED],
    gilbertRange: { args: [theilSen.slopesOf(TIMED), 16, 0.95], inner: "takes slopes that `theilSen` gave" },
    countedRange: {
      fixed: "as many slopes as the counted sums say",
      args: [theilSen.slopesOf(TIMED), { lowest: -10, shares: [0.1, 0.2, 0.4, 0.2, 0.1] }, 0.5],
      inner: "takes slopes that `theilSen` gave",
    },
  }),
  ...swept("statistics/two-means.ts", twoMeans, { welch: [VALUES, OTHERS], pairedStudent: [VALUES, 12] }),
  ...swept("statistics/weighted-median.ts", weightedMedian, {
    weightedMedian: [
      [
        { value: 1, weight: 1 },
        { value: 5, weight: 2 },
        { value: 9, weight: 4 },
      ],
    ],
  }),
];
