/** Examples of ring tests, their curves, conductivity and storms. */
import { readRing } from "../../../../src/record/ring/reading.ts";
import * as depthAfter from "../../../../src/science/infiltration/depth-after.ts";
import * as happenings from "../../../../src/science/infiltration/happenings.ts";
import * as heads from "../../../../src/science/infiltration/heads.ts";
import * as keptLevel from "../../../../src/science/infiltration/kept-level.ts";
import { ALPHA_PER_MM } from "../../../../src/science/infiltration/kfs/alpha.ts";
import * as beerkan from "../../../../src/science/infiltration/kfs/beerkan.ts";
import * as conductivity from "../../../../src/science/infiltration/kfs/conductivity.ts";
import * as fallingHead from "../../../../src/science/infiltration/kfs/falling-head.ts";
import * as kfsOfRing from "../../../../src/science/infiltration/kfs/of-ring.ts";
import * as permeability from "../../../../src/science/infiltration/kfs/permeability-class.ts";
import * as steadyRing from "../../../../src/science/infiltration/kfs/steady-ring.ts";
import * as viscosity from "../../../../src/science/infiltration/kfs/viscosity.ts";
import * as lastStretch from "../../../../src/science/infiltration/last-stretch.ts";
import * as levelling from "../../../../src/science/infiltration/levelling.ts";
import * as measuredPours from "../../../../src/science/infiltration/measured-pours.ts";
import * as boundedSearch from "../../../../src/science/infiltration/models/bounded-search.ts";
import type { Capacity } from "../../../../src/science/infiltration/models/capacity.ts";
import * as fit from "../../../../src/science/infiltration/models/fit.ts";
import * as greenAmpt from "../../../../src/science/infiltration/models/green-ampt.ts";
import * as greenAmptCurve from "../../../../src/science/infiltration/models/green-ampt-curve.ts";
import * as horton from "../../../../src/science/infiltration/models/horton.ts";
import * as hortonCurve from "../../../../src/science/infiltration/models/horton-curve.ts";
import * as kostiakov from "../../../../src/science/infiltration/models/kostiakov.ts";
import * as lineOf from "../../../../src/science/infiltration/models/line.ts";
import * as philip from "../../../../src/science/infiltration/models/philip.ts";
import * as powerCurve from "../../../../src/science/infiltration/models/power-curve.ts";
import * as projection from "../../../../src/science/infiltration/models/projection.ts";
import * as readings from "../../../../src/science/infiltration/models/readings.ts";
import * as ringFits from "../../../../src/science/infiltration/models/ring-fits.ts";
import * as simplerLines from "../../../../src/science/infiltration/models/simpler-lines.ts";
import * as residuals from "../../../../src/science/infiltration/models/spread.ts";
import * as standardErrors from "../../../../src/science/infiltration/models/standard-errors.ts";
import * as stepCurve from "../../../../src/science/infiltration/models/step-curve.ts";
import * as twoTermCurve from "../../../../src/science/infiltration/models/two-term-curve.ts";
import * as pieces from "../../../../src/science/infiltration/pieces.ts";
import * as replicates from "../../../../src/science/infiltration/replicates.ts";
import * as specialist from "../../../../src/science/infiltration/ring-for-specialist.ts";
import * as ringRate from "../../../../src/science/infiltration/ring-rate.ts";
import * as ringSet from "../../../../src/science/infiltration/ring-set.ts";
import * as ruler from "../../../../src/science/infiltration/ruler.ts";
import * as sideFlow from "../../../../src/science/infiltration/side-flow.ts";
import * as smallestRatio from "../../../../src/science/infiltration/smallest-ratio.ts";
import * as soakedOfField from "../../../../src/science/infiltration/soaked-of-field.ts";
import * as soaking from "../../../../src/science/infiltration/soaking.ts";
import * as startGaps from "../../../../src/science/infiltration/start-gaps.ts";
import * as untilLevel from "../../../../src/science/infiltration/until-level.ts";
import * as water from "../../../../src/science/infiltration/water.ts";
import * as curveNumber from "../../../../src/science/storm/curve-number.ts";
import * as greenAmptSoils from "../../../../src/science/storm/green-ampt-soils.ts";
import * as rain from "../../../../src/science/storm/rain.ts";
import * as ringInStorm from "../../../../src/science/storm/ring-in-storm.ts";
import * as stripsInStorm from "../../../../src/science/storm/strips-in-storm.ts";
import * as compression from "../../../../src/science/storm/time-compression.ts";
import { idOf } from "../../record/made-up.ts";
import { gone, happened, level, notebook, pour, start } from "../../record/ring-entries.ts";
import { reached } from "../counts.ts";
import { EXAMPLE, P3_12 } from "../infiltration/published-tests.ts";
import { KEPT, mlOf, POURS, poured, RULER, ruled, topped } from "../infiltration/rings.ts";
import { swept } from "./sweep.ts";

const points = EXAMPLE.slice(1).map(({ atMin, mm }) => [atMin, mm] as const);
const RULED = ruled(points);
const TOPPED = topped(points);
const POURED = poured([4, 9, 12, 13]);
const book = (write: (write: ReturnType<typeof notebook>["write"]) => void) => {
  const own = notebook();
  own.write(0, start);
  write(own.write);
  return readRing(own.entries);
};
const RULER_READING = book((write) => {
  write(0, level(100));
  write(10, level(60));
  write(11, happened("burrow"));
  write(12, level(100, { afterRefill: true }));
  write(30, level(70));
});
const [FIRST_LEVEL] = RULER_READING.events;
if (FIRST_LEVEL === undefined) throw new Error("nothing was read");
const POUR_READING = book((write) => {
  write(0, pour(mlOf(25.4)));
  write(12, gone);
  write(13, pour(mlOf(25.4)));
  write(30, gone);
});
const KEPT_READING = book((write) => {
  write(0, pour(mlOf(80)));
  write(10, pour(mlOf(9)));
  write(20, pour(mlOf(7)));
  write(40, pour(mlOf(12)));
  write(60, pour(mlOf(11)));
});
const AREA_M2 = (Math.PI * 0.15 ** 2) / 4;
const PIECES = ruler.rulerPieces(RULER_READING.events, RULER, AREA_M2).pieces;
const ALPHA = ALPHA_PER_MM["structured-or-medium-sand"];
const SOIL = { alphaPerMm: ALPHA, waterC: 12 };
const IN_GROUND = { radiusMm: 75, insertionMm: 70 };
const HEIGHTS = { ...RULER, rimToSoilM: [0.08, 0.081, 0.079], heightsM: [0.15] };
const FEW = P3_12.slice(0, 6);
const CURVE = reached(readings.curveReadings(FEW, 2));
const ROOT = simplerLines.rootTime(CURVE);
const STEADY = simplerLines.steady(CURVE);
const FITS = reached(ringFits.ringFits(FEW));
const RAIN = reached(
  rain.gaugeRain(
    [
      { atMin: 10, mm: 2 },
      { atMin: 30, mm: 12 },
    ],
    "total",
  ),
);
const RING_OF_FIELD = {
  id: idOf("observation", 2),
  visit: idOf("visit", 1),
  day: "2026-04-07",
  strip: idOf("strip", 1),
  oldGrass: null,
  place: "wheel-track",
  follows: null,
  soaking: { ok: true, value: RULED },
} as const;

const ON_GRASS = { ...RING_OF_FIELD, oldGrass: idOf("spot", 1) };

/** A soaking out of a bent reading, with what stands behind it. */
const from = <R extends readonly unknown[]>(
  rest: (soaking: soaking.Soaking) => R,
  reading = RULER_READING,
  set = RULER,
) => ({
  raw: [reading, set],
  make: (bent: typeof reading, of: typeof set) => {
    const found = soaking.soakingOf(bent, of);
    return found.ok ? rest(found.value) : null;
  },
});

const CHECKED_READING = "takes a record as `readRing` gives it, where nothing is endless";
const CHECKED_SOAKING = "takes what `soakingOf` gave, where nothing is endless";
const CHECKED_CURVE = "takes what `curveReadings` let through";
const CHECKED_LINE = "takes a line that a fit found, where nothing is endless or below nought";
const NEVER = "without end is what a rate that is never reached, or a depth, has";

const askCapacity = (capacity: Capacity) => [
  capacity.depthAt(0.5),
  capacity.rateAt(0.5),
  capacity.hoursAt(10),
  capacity.depthAtRate(20),
];

export const RINGS_AND_STORMS = [
  ...swept("infiltration/depth-after.ts", depthAfter, {
    depthAfter: { args: [RULED, 30], inner: CHECKED_SOAKING, from: from((one) => [one, 20]) },
  }),
  ...swept("infiltration/happenings.ts", happenings, {
    withHappenings: {
      args: [PIECES, RULER_READING.happenings, RULER_READING.events, false],
      inner: CHECKED_READING,
    },
  }),
  ...swept("infiltration/heads.ts", heads, {
    headsOf: { args: [RULER_READING.events, HEIGHTS, AREA_M2], inner: CHECKED_READING },
    meanHeadMm: {
      args: [
        [
          { atMin: 0, mm: 60, filled: true },
          { atMin: 30, mm: 40, filled: false },
        ],
        0,
        30,
      ],
      inner: CHECKED_SOAKING,
    },
  }),
  ...swept("infiltration/kept-level.ts", keptLevel, {
    keptLevelPieces: { args: [KEPT_READING.events, KEPT, AREA_M2], inner: CHECKED_READING },
  }),
  ...swept("infiltration/kfs/beerkan.ts", beerkan, {
    steadyBeerkanKfs: [100, IN_GROUND, ALPHA, 12],
    transientSlope: [EXAMPLE],
    transientBeerkanKfs: [EXAMPLE, IN_GROUND, ALPHA, 12],
  }),
  ...swept("infiltration/kfs/conductivity.ts", conductivity, {
    conductivity: [20, { n: 1, sampledBy: "rings", method: "kfs-steady-ring", cautions: [] }, 8],
    isAbove0: [1],
  }),
  ...swept("infiltration/kfs/falling-head.ts", fallingHead, {
    fallingHeadKfs: [
      { pouredMm: 25.4, minutes: 10, moistureGap: 0.25, alphaPerMm: ALPHA, insertionMm: 120 },
      8,
    ],
  }),
  ...swept("infiltration/kfs/of-ring.ts", kfsOfRing, {
    steadyKfsOfRing: {
      args: [RULED, HEIGHTS, SOIL],
      inner: CHECKED_SOAKING,
      from: from((one) => [one, HEIGHTS, SOIL]),
    },
    fallingHeadKfsOfRing: {
      args: [POURED, { ...POURS, ...HEIGHTS, way: "measured-pour" }, 0.25, SOIL],
      inner: CHECKED_SOAKING,
      from: from((one) => [one, HEIGHTS, 0.25, SOIL], POUR_READING, POURS),
    },
    steadyBeerkanOfRing: {
      args: [TOPPED, HEIGHTS, SOIL],
      inner: CHECKED_SOAKING,
      from: from((one) => [one, HEIGHTS, SOIL], KEPT_READING, KEPT),
    },
    transientBeerkanOfRing: {
      args: [TOPPED, HEIGHTS, SOIL],
      inner: CHECKED_SOAKING,
      from: from((one) => [one, HEIGHTS, SOIL], KEPT_READING, KEPT),
    },
  }),
  ...swept("infiltration/kfs/permeability-class.ts", permeability, { permeabilityClass: [60] }),
  ...swept("infiltration/kfs/steady-ring.ts", steadyRing, {
    steadyRingKfs: [{ mmPerH: 100, headMm: 50 }, IN_GROUND, ALPHA, 8],
    twoHeadKfs: {
      args: [
        [
          { mmPerH: 60, headMm: 50 },
          { mmPerH: 80, headMm: 100 },
        ],
        IN_GROUND,
        8,
      ],
      fixed: "two heads",
    },
  }),
  ...swept("infiltration/kfs/viscosity.ts", viscosity, { waterViscosity: [8], conductivityAt20: [30, 8] }),
  ...swept("infiltration/last-stretch.ts", lastStretch, {
    lastStretch: { args: [RULED], inner: CHECKED_SOAKING, from: from((one) => [one]) },
    rateOfLastHalfHour: { args: [RULED], inner: CHECKED_SOAKING, from: from((one) => [one]) },
  }),
  ...swept("infiltration/levelling.ts", levelling, {
    lastThree: { args: [RULED], inner: CHECKED_SOAKING, from: from((one) => [one], KEPT_READING, KEPT) },
    minutesForRuler: [60, 1],
    levellingOf: {
      args: [RULED],
      more: [[TOPPED]],
      inner: CHECKED_SOAKING,
      from: from((one) => [one], KEPT_READING, KEPT),
    },
  }),
  ...swept("infiltration/measured-pours.ts", measuredPours, {
    pourPieces: { args: [POUR_READING.events, POURS, AREA_M2], inner: CHECKED_READING },
  }),
  ...swept("infiltration/models/bounded-search.ts", boundedSearch, {
    boundedMinimum: {
      args: [(x: number) => (x - 2) ** 2, 0, 10, 50],
      unbent: "bounds and steps are constants of the fits",
    },
  }),
  ...swept("infiltration/models/fit.ts", fit, {
    simplestAsGood: { args: [CURVE, ROOT, [STEADY]], inner: CHECKED_CURVE, above0: true },
    judged: {
      args: ["philip", "fit-philip", CURVE, ROOT],
      inner: CHECKED_CURVE,
      above0: true,
      fixed: "as many depths as times",
    },
  }),
  ...swept("infiltration/models/green-ampt-curve.ts", greenAmptCurve, {
    greenAmptDepth: { args: [1], inner: CHECKED_LINE, above0: true },
    greenAmptCapacity: {
      args: [{ kind: "green-ampt", k: 6, m: 400 }],
      inner: CHECKED_LINE,
      above0: true,
      endless: NEVER,
      ask: askCapacity,
    },
  }),
  ...swept("infiltration/models/green-ampt.ts", greenAmpt, { fitGreenAmpt: [FEW] }),
  ...swept("infiltration/models/horton-curve.ts", hortonCurve, {
    hortonCapacity: {
      args: [{ kind: "horton", f0: 230, fc: 34, k: 4 }],
      inner: CHECKED_LINE,
      above0: true,
      endless: NEVER,
      ask: askCapacity,
    },
  }),
  ...swept("infiltration/models/horton.ts", horton, { fitHorton: [FEW] }),
  ...swept("infiltration/models/kostiakov.ts", kostiakov, { fitKostiakov: [FEW], fitKostiakovLewis: [FEW] }),
  ...swept("infiltration/models/line.ts", lineOf, {
    capacityOf: {
      args: [{ kind: "two-term", s: 60, a: 50 }],
      inner: CHECKED_LINE,
      above0: true,
      endless: NEVER,
      ask: askCapacity,
    },
  }),
  ...swept("infiltration/models/philip.ts", philip, { fitPhilip: [FEW] }),
  ...swept("infiltration/models/power-curve.ts", powerCurve, {
    powerCapacity: {
      args: [{ kind: "power", a: 82, b: 0.53, c: 4 }],
      inner: CHECKED_LINE,
      above0: true,
      endless: NEVER,
      ask: askCapacity,
    },
  }),
  ...swept("infiltration/models/projection.ts", projection, {
    projectOne: {
      args: [
        [1, 2, 4],
        [1, 2, 3],
      ],
      inner: CHECKED_CURVE,
      above0: true,
      endless: CHECKED_CURVE,
    },
    projectTwo: {
      args: [
        [1, 2, 4],
        [1, 1, 1],
        [1, 2, 3],
      ],
      inner: CHECKED_CURVE,
      above0: true,
      endless: CHECKED_CURVE,
    },
  }),
  ...swept("infiltration/models/readings.ts", readings, {
    curveReadings: { args: [FEW, 2], inner: "the unknowns are those of a curve of this room" },
  }),
  ...swept("infiltration/models/ring-fits.ts", ringFits, { ringFits: [FEW] }),
  ...swept("infiltration/models/simpler-lines.ts", simplerLines, {
    rootTime: { args: [CURVE], inner: CHECKED_CURVE, above0: true, endless: CHECKED_CURVE },
    steady: { args: [CURVE], inner: CHECKED_CURVE, above0: true, endless: CHECKED_CURVE },
    atOnce: { args: [CURVE], inner: CHECKED_CURVE, above0: true, endless: CHECKED_CURVE },
    atOnceThenSteady: { args: [CURVE], inner: CHECKED_CURVE, above0: true, endless: CHECKED_CURVE },
  }),
  ...swept("infiltration/models/spread.ts", residuals, {
    residualSpreadMm: { args: [{ sseMm2: 8, n: 4, free: 2 }], inner: CHECKED_LINE, above0: true },
  }),
  ...swept("infiltration/models/standard-errors.ts", standardErrors, {
    standardErrors: {
      args: [
        [
          [1, 2, 3],
          [1, 1, 2],
        ],
        0.4,
      ],
      inner: CHECKED_CURVE,
      above0: true,
    },
  }),
  ...swept("infiltration/models/step-curve.ts", stepCurve, {
    stepCapacity: {
      args: [{ kind: "step", atOnceMm: 10, mmPerH: 4 }],
      inner: CHECKED_LINE,
      above0: true,
      endless: NEVER,
      ask: askCapacity,
    },
  }),
  ...swept("infiltration/models/two-term-curve.ts", twoTermCurve, {
    twoTermCapacity: {
      args: [{ kind: "two-term", s: 60, a: 50 }],
      inner: CHECKED_LINE,
      above0: true,
      endless: NEVER,
      ask: askCapacity,
    },
  }),
  ...swept("infiltration/pieces.ts", pieces, {
    rateOf: { args: [{ fromMin: 0, toMin: 10, mm: 5 }], unbent: "a piece of a soaking lasts" },
    pieceList: { args: [], ask: (list: ReturnType<typeof pieces.pieceList>) => list.pieces },
  }),
  ...swept("infiltration/replicates.ts", replicates, {
    meanOfRings: [
      [12, 20, 35].map((value, at) => ({
        id: String(at),
        value,
        least: 1,
        censored: at === 0,
        burrow: false,
        crack: false,
      })),
      "mm/h",
    ],
  }),
  ...swept("infiltration/ring-for-specialist.ts", specialist, {
    ringForSpecialist: {
      args: [RULED, HEIGHTS, { ...SOIL, moistureGap: 0.25 }],
      inner: CHECKED_SOAKING,
      from: from((one) => [one, HEIGHTS, { ...SOIL, moistureGap: null }]),
    },
  }),
  ...swept("infiltration/ring-rate.ts", ringRate, {
    ringRate: { args: [RULED], inner: CHECKED_SOAKING, from: from((one) => [one], POUR_READING, POURS) },
  }),
  ...swept("infiltration/ring-set.ts", ringSet, {
    ringSetOf: {
      args: [
        { way: "ruler", rulerReads: "water-depth", rimToSoilM: [0.08] },
        {
          ring: { type: "ring", name: "A", insideM: [0.15, 0.152], heightsM: [0.15], outsideM: 0.156 },
          outer: null,
          ruler: null,
        },
      ],
      inner: "takes records as they lie, and judges nothing",
    },
    insideAreaM2: [[0.15, 0.151]],
    roundDiameterM: [[0.16, 0.25]],
    outOfRoundShare: [[0.3, 0.31]],
    ringArea: [{ insideM: [0.3, null], outerInsideM: [0.6, null], innerOutsideM: 0.304 }, "outer"],
    standingOf: [HEIGHTS],
    rimToSoilMm: [HEIGHTS],
  }),
  ...swept("infiltration/ruler.ts", ruler, {
    rulerPieces: { args: [RULER_READING.events, RULER, AREA_M2], inner: CHECKED_READING },
    rulerLevelOf: { args: [FIRST_LEVEL, 80], inner: CHECKED_READING },
  }),
  ...swept("infiltration/side-flow.ts", sideFlow, {
    sideFlow: { args: [RULED, RULED], inner: CHECKED_SOAKING, from: from((one) => [one, RULED]) },
  }),
  ...swept("infiltration/smallest-ratio.ts", smallestRatio, {
    logSpreadOf: {
      args: [0.8],
      inner: "a coefficient of variation from the room's own constants or samples",
    },
    spreadBetweenRings: [
      [
        [12, 20, 35],
        [4, 6],
      ],
    ],
    smallestRatio: [5, 0.7],
  }),
  ...swept("infiltration/soaked-of-field.ts", soakedOfField, {
    soakedOfField: {
      args: [[RING_OF_FIELD]],
      inner: CHECKED_SOAKING,
      from: from((one) => [[{ ...RING_OF_FIELD, soaking: { ok: true, value: one } }]]),
    },
    soakedOfGrass: {
      args: [[ON_GRASS]],
      inner: CHECKED_SOAKING,
      from: from((one) => [[{ ...ON_GRASS, soaking: { ok: true, value: one } }]]),
    },
  }),
  ...swept("infiltration/soaking.ts", soaking, {
    soakingOf: {
      args: [RULER_READING, RULER],
      more: [
        [POUR_READING, POURS],
        [KEPT_READING, KEPT],
      ],
      inner: CHECKED_READING,
    },
  }),
  ...swept("infiltration/start-gaps.ts", startGaps, {
    startGaps: {
      args: [
        {
          nowMs: 0,
          running: [{ id: "a", planMin: [5, 10], startedAtMs: 0 }],
          waiting: [{ id: "b", planMin: [5] }],
        },
      ],
      ofNothing: "where no ring waits no start is proposed",
    },
  }),
  ...swept("infiltration/until-level.ts", untilLevel, {
    minutesUntilLevel: { args: [RULED, 75, 130], inner: CHECKED_SOAKING, from: from((one) => [one, 20, 30]) },
  }),
  ...swept("infiltration/water.ts", water, {
    litresUsed: {
      args: [[{ reading: POUR_READING, set: POURS }]],
      more: [[[{ reading: RULER_READING, set: RULER }]]],
      ofNothing: "nothing poured is no water",
    },
    litresNeeded: [{ insideM: [0.15, null], outerInsideM: [0.6, null], innerOutsideM: 0.31 }, 25],
    litresToGo: [{ insideM: [0.15, null], outerInsideM: null, innerOutsideM: null }, 60, 30],
    finishFirst: [
      [
        { id: "a", strip: "1", litres: 3 },
        { id: "b", strip: "2", litres: 4 },
      ],
      new Map([["1", 2]]),
      5,
    ],
  }),
  ...swept("storm/curve-number.ts", curveNumber, {
    curveNumberRunoff: [100, 75],
    compositeCurveNumber: [
      [
        { area: 3, curveNumber: 61 },
        { area: 7, curveNumber: 74 },
      ],
    ],
    curveNumberWhen: [75, "wet"],
  }),
  ...swept("storm/green-ampt-soils.ts", greenAmptSoils, {
    greenAmptOfSoil: [greenAmptSoils.GREEN_AMPT_SOILS.loam, 0.3],
  }),
  ...swept("storm/rain.ts", rain, {
    constantRain: [16, 120],
    triangularRain: [40, 60, 0.4],
    shapedRain: [100, "II"],
    gaugeRain: [
      [
        { atMin: 10, mm: 2 },
        { atMin: 30, mm: 12 },
      ],
      "since-last",
    ],
  }),
  ...swept("storm/ring-in-storm.ts", ringInStorm, {
    ringInStorm: { args: [FITS, RAIN, [10, 20]], inner: "takes a fit and a storm that were judged before" },
  }),
  ...swept("storm/strips-in-storm.ts", stripsInStorm, {
    stripsInStorm: {
      args: [
        [
          { id: "a", strip: "1", fits: FITS },
          { id: "b", strip: "2", fits: FITS },
        ],
        RAIN,
      ],
      inner: "takes fits and a storm that were judged before",
    },
  }),
  ...swept("storm/time-compression.ts", compression, {
    absorb: {
      args: [RAIN, lineOf.capacityOf({ kind: "horton", f0: 100, fc: 40, k: 2 }), [10, 20]],
      inner: "takes a storm that was judged before",
    },
  }),
];
