/** Looks at the limits of cautions on holes, lines, rings and quadrats. */
import { coverCropMass, plantsPerM2 } from "../../../src/science/cover-crop/quadrats.ts";
import { conditionCautions, unlikeCautions } from "../../../src/science/earthworms/conditions.ts";
import { wormsPerHole } from "../../../src/science/earthworms/field.ts";
import { shareOfHoles } from "../../../src/science/earthworms/spread.ts";
import { coverOfStrip } from "../../../src/science/ground-cover/strip.ts";
import { steadyBeerkanKfs, transientBeerkanKfs } from "../../../src/science/infiltration/kfs/beerkan.ts";
import type { Conductivity } from "../../../src/science/infiltration/kfs/conductivity.ts";
import { steadyRingKfs, twoHeadKfs } from "../../../src/science/infiltration/kfs/steady-ring.ts";
import { meanOfRings } from "../../../src/science/infiltration/replicates.ts";
import { lossByWind } from "../../../src/science/residue/erosion.ts";
import { meanOfReadings, meanOverLines } from "../../../src/science/statistics/mean.ts";
import { line, PLAIN, reached } from "./counts.ts";
import { hole, holes } from "./earthworms/holes.ts";
import { beyond, half, type Look, type Looks, lopsided, meanOf, some, varianceOf } from "./limit-looks.ts";
import { share } from "./straw/figures.ts";

const ofHoles = (counts: readonly number[]) => reached(wormsPerHole(holes(...counts))).cautions;
const quadrats = (amounts: readonly number[]) => amounts.map((amount) => ({ areaM2: 0.25, amount }));
const frame = { widthM: 0.5, rowSpacingM: null };
const place = (metres: number) => ({ latitudeDeg: 52, longitudeDeg: metres / 68_500 });
const rings = (n: number) =>
  some(n, (at) => ({ id: `${at}`, value: 10 + at, burrow: false, crack: false, censored: false, least: 1 }));

/** A ring that just stands in the ground, in mm. */
const DEEP = 20;
const RUN = [2, 5, 9, 14, 20].map((atMin, at) => ({ atMin, mm: 10 * (at + 1) }));
const inSteadyRange = (kfs: (headMm: number, insertionMm: number) => Conductivity) => ({
  "kfs-outside-steady-range head": [-1, 0].map((off): Look => {
    const headMm = 50 + off;
    return [headMm, kfs(headMm, 100).cautions];
  }),
  "kfs-outside-steady-range ring-depth": [-1, 0].map((off): Look => {
    const insertionMm = 30 + off;
    return [insertionMm, kfs(100, insertionMm).cautions];
  }),
});

/** By method. */
export const MEASURED_LOOKS: Looks = {
  "kfs-steady-ring": inSteadyRange((headMm, insertionMm) =>
    reached(steadyRingKfs({ mmPerH: 100, headMm }, { radiusMm: 100, insertionMm }, 0.012, null)),
  ),
  "kfs-two-heads": inSteadyRange((headMm, insertionMm) => {
    const rates = [
      { mmPerH: 100, headMm },
      { mmPerH: 110, headMm: headMm + 50 },
    ] as const;
    return reached(twoHeadKfs(rates, { radiusMm: 100, insertionMm }, null)).kfs;
  }),
  "kfs-beerkan-steady": {
    "kfs-ring-too-deep ring-depth": [DEEP, DEEP + 1].map((mm) => [
      mm,
      reached(steadyBeerkanKfs(100, { radiusMm: 75, insertionMm: mm }, 0.012, null)).cautions,
    ]),
  },
  "kfs-beerkan-transient": {
    "kfs-ring-too-deep ring-depth": [DEEP, DEEP + 1].map((mm) => [
      mm,
      reached(transientBeerkanKfs(RUN, { radiusMm: 75, insertionMm: mm }, 0.012, null)).cautions,
    ]),
  },
  "wind-erosion": {
    "outside-published-range cover below": [0.07, 0.08].map((cover) => [
      cover,
      reached(lossByWind(share(cover))).cautions,
    ]),
    "outside-published-range cover above": [0.8, 0.81].map((cover) => [
      cover,
      reached(lossByWind(share(cover))).cautions,
    ]),
  },
  "holes-mean-log-t": {
    "few-holes-may-miss-patches holes": [29, 30].map((n) => [n, ofHoles(half(n, 8, 12))]),
    "range-if-lopsided holes": [9, 10].map((n) => [n, ofHoles(half(n, 1, 5))]),
    "range-if-lopsided spread": [half(10, 2, 4), half(10, 1, 5)].map((all) => [
      Math.sqrt(varianceOf(all)) / meanOf(all),
      ofHoles(all),
    ]),
    "range-if-lopsided spread-beyond-chance": [half(10, 10, 30), half(10, 9, 31)].map((all) => [
      beyond(all),
      ofHoles(all),
    ]),
  },
  "share-of-holes": {
    "exact-share-wide holes": [14, 15].map((n) => [n, reached(shareOfHoles(3, n)).cautions]),
  },
  "hole-conditions": {
    "soil-cold soil-temperature": [7.9, 8].map((t) => [
      t,
      conditionCautions([hole(0, { soilTemperatureC: t })]),
    ]),
    "worked-recently days-since-worked": [28, 29].map((d) => [
      d,
      conditionCautions([hole(9, { workedDaysAgo: d })]),
    ]),
    "efforts-differ efforts-apart": [15, 15.1].map((most) => [
      most / 10,
      unlikeCautions([hole(9, { personMinutes: 10 }), hole(9, { personMinutes: most })]),
    ]),
    "holes-close-together metres-apart": [29, 31].map((m) => [
      m,
      unlikeCautions([hole(9, { place: place(0) }), hole(9, { place: place(m) })]),
    ]),
  },
  "mean-t": lopsided((values) => reached(meanOfReadings(values, "mm")).cautions),
  "line-mean-t": lopsided(
    (values) =>
      reached(
        meanOverLines(
          values.map((value) => [value, value]),
          "mm",
        ),
      ).cautions,
  ),
  "logit-t": {
    "few-hits hits": [9, 10].map((hits) => [
      hits,
      reached(coverOfStrip([line(3), line(1), line(hits - 4)], "residue", PLAIN)).cautions,
    ]),
    "few-misses misses": [9, 10].map((misses) => [
      misses,
      reached(coverOfStrip([line(97), line(99), line(104 - misses)], "residue", PLAIN)).cautions,
    ]),
  },
  "rings-log-t": {
    "few-rings-may-miss-burrows rings": [9, 10].map((n) => [
      n,
      reached(meanOfRings(rings(n), "mm")).cautions,
    ]),
  },
  "quadrat-mass": {
    "few-quadrats quadrats": [3, 4].map((n) => [
      n,
      reached(coverCropMass(quadrats(some(n, (at) => 90 + at)), frame)).cautions,
    ]),
  },
  "quadrat-counts": {
    "few-quadrats quadrats": [3, 4].map((n) => [
      n,
      reached(plantsPerM2(quadrats(some(n, (at) => 5 + at)), frame)).cautions,
    ]),
    "few-plants plants": [9, 10].map((n) => [
      n,
      reached(plantsPerM2(quadrats([2, 1, 3, n - 6]), frame)).cautions,
    ]),
  },
};
