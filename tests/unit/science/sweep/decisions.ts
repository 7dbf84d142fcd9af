/** Examples of residue, straw, nitrogen, cover crops, shelter and water. */
import * as dryMass from "../../../../src/science/cover-crop/dry-mass.ts";
import * as frame from "../../../../src/science/cover-crop/frame.ts";
import * as quadrats from "../../../../src/science/cover-crop/quadrats.ts";
import * as weeds from "../../../../src/science/cover-crop/weeds.ts";
import { coverOfStrip } from "../../../../src/science/ground-cover/strip.ts";
import * as materials from "../../../../src/science/nitrogen/materials.ts";
import * as mixture from "../../../../src/science/nitrogen/mixture.ts";
import * as tieUp from "../../../../src/science/nitrogen/tie-up.ts";
import * as coverMass from "../../../../src/science/residue/cover-mass.ts";
import * as crops from "../../../../src/science/residue/crops.ts";
import * as cuttingHeight from "../../../../src/science/residue/cutting-height.ts";
import * as decay from "../../../../src/science/residue/decay.ts";
import * as erosion from "../../../../src/science/residue/erosion.ts";
import * as ownLoss from "../../../../src/science/residue/own-loss.ts";
import * as passes from "../../../../src/science/residue/passes.ts";
import * as rangedOf from "../../../../src/science/residue/ranged.ts";
import * as stems from "../../../../src/science/residue/stems.ts";
import * as strawGrown from "../../../../src/science/residue/straw-grown.ts";
import * as strawWays from "../../../../src/science/residue/straw-ways.ts";
import * as thickness from "../../../../src/science/residue/thickness.ts";
import * as shelterNet from "../../../../src/science/shelter/net.ts";
import * as wind from "../../../../src/science/shelter/wind-reduction.ts";
import * as zones from "../../../../src/science/shelter/zones.ts";
import * as breakEven from "../../../../src/science/straw/break-even.ts";
import * as carbonFloor from "../../../../src/science/straw/carbon-floor.ts";
import * as couldLeave from "../../../../src/science/straw/could-leave.ts";
import * as leaveAs from "../../../../src/science/straw/leave-as.ts";
import * as ledger from "../../../../src/science/straw/ledger.ts";
import * as nutrients from "../../../../src/science/straw/nutrients.ts";
import * as air from "../../../../src/science/water/air.ts";
import * as bounded from "../../../../src/science/water/bounded.ts";
import * as corners from "../../../../src/science/water/corners.ts";
import * as extraWater from "../../../../src/science/water/extra-water.ts";
import * as hargreaves from "../../../../src/science/water/hargreaves.ts";
import * as kept from "../../../../src/science/water/kept-by-mulch.ts";
import * as mulchCut from "../../../../src/science/water/mulch-cut.ts";
import * as penman from "../../../../src/science/water/penman-monteith.ts";
import * as radiation from "../../../../src/science/water/radiation.ts";
import * as reference from "../../../../src/science/water/reference-evapotranspiration.ts";
import * as rootZone from "../../../../src/science/water/root-zone.ts";
import * as soils from "../../../../src/science/water/soils.ts";
import * as sun from "../../../../src/science/water/sun.ts";
import * as drying from "../../../../src/science/water/two-stage-drying.ts";
import { line, PLAIN, reached } from "../counts.ts";
import { kgPerHa, metres, own, perKg, share } from "../straw/figures.ts";
import { swept } from "./sweep.ts";

const QUADRATS = [
  { areaM2: 0.25, amount: 212 },
  { areaM2: 0.25, amount: 187 },
  { areaM2: 0.5, amount: 241 },
];
const FRAME = { widthM: 0.5, rowSpacingM: 0.15 };
const PARTS = [
  { mass: kgPerHa(5000), carbon: own(0.42, "1", "carbon-share"), ratio: own(37, "1", "carbon-to-nitrogen") },
  {
    mass: kgPerHa(2500),
    carbon: own(0.42, "1", "carbon-share"),
    ratio: own([9, 11, 13], "1", "carbon-to-nitrogen"),
  },
];
const COVER = (hits: readonly number[]) =>
  reached(
    coverOfStrip(
      hits.map((hit) => line(hit)),
      "residue",
      PLAIN,
    ),
  );
const STEMS = { length: metres([0.7, 0.8, 0.9]), shape: cuttingHeight.stemShape() };
const GRAIN = { yield: own(8000, "kg/har", "grain-yield"), dryShare: own(0.89, "1", "dry-matter") };
const [way] = strawWays.strawWaysOf("winter-wheat");
if (way === undefined) throw new Error("no way to come from grain to straw");
const WAYS = crops.RESIDUE_CROPS.flatMap(strawWays.strawWaysOf).filter(
  (one, at, all) => one.way !== way.way && all.findIndex((other) => other.way === one.way) === at,
);
const LEFT = [share(0.7), share([0.5, 0.6, 0.7])];
const money = (value: number) => own(value, "{money}/t", "straw-price");
const SALE: breakEven.StrawSale = {
  sold: kgPerHa([3000, 4000, 5000]),
  nutrients: [
    {
      nutrient: "K2O",
      content: own(10, "kg/t", "nutrient"),
      price: own(0.8, "{money}/kg", "nutrient-price"),
    },
  ],
  baling: own(20, "{money}/t", "baling"),
  worth: [{ name: "water-kept", perHa: own([0, 10, 30], "{money}/har", "worth") }],
  costs: [{ name: "slugs", perHa: own(16, "{money}/har", "worth") }],
};
const YEAR: ledger.StrawYear = {
  strip: "a",
  harvestYear: 2025,
  areaHa: 4,
  grown: kgPerHa([6000, 7000, 8000]),
  bales: [{ count: 40, weight: own(250, "kg", "bale-weight"), dryShare: own(0.85, "1", "dry-matter") }],
  grazings: [{ head: 20, days: 10, eaten: own(8, "kg", "eaten") }],
  broughtBack: kgPerHa(900),
};
const { low, middle, high } = kgPerHa([1, 2, 3]);
const SPAN = { low, middle, high };
const DAY = { maxC: 21.5, minC: 12.3 };
const LONGWAVE = { ...DAY, actualKPa: 1.409, solarMJ: 22.07, clearSkyMJ: 30.9 };
const { quickWater, surfaceWater } = soils.soilWaterOf("silt-loam");
const ET = own([3, 4, 5], "mm/d", "reference-evapotranspiration");
const MULCH: mulchCut.Mulch = {
  cover: share([0.8, 0.9, 0.95]),
  fullCut: mulchCut.fullCoverCut(),
  thickness: own(30, "mm", "mulch-thickness"),
  mass: kgPerHa(4000),
  crop: "winter-wheat",
};
const ROW = {
  line: [
    { latitudeDeg: 52, longitudeDeg: 10 },
    { latitudeDeg: 52.001, longitudeDeg: 10 },
  ],
  heightM: 12,
};
const BELT: shelterNet.Belt = {
  height: metres(12),
  width: metres(10),
  field: metres(400),
  ...shelterNet.usualZones(),
  loss: shelterNet.usualLoss(),
  gain: shelterNet.gainOf(shelterNet.SHELTERED_CROPS[0] ?? "winter-wheat"),
};
const [END] = tieUp.COVER_CROP_ENDS;
if (END === undefined) throw new Error("no end of a cover crop stands in the room");
const LIMITS = "the limits are constants of the room, and a row has four places";
const SUM_OF_NONE = "the sum of none is none, as its docstring says";
const NOT_JUDGED = "a figure is only put together here; it is judged where it is used";

export const DECISIONS = [
  ...swept("cover-crop/dry-mass.ts", dryMass, { dryMass: [4354, { fresh: 1, dry: 0.16 }] }),
  ...swept("cover-crop/frame.ts", frame, { frameError: [0.5, 0.19], frameCautions: [FRAME] }),
  ...swept("cover-crop/quadrats.ts", quadrats, {
    coverCropMass: [QUADRATS, FRAME],
    plantsPerM2: {
      args: [QUADRATS, FRAME],
      more: [[QUADRATS.map((one) => ({ ...one, amount: 0 })), FRAME]],
    },
  }),
  ...swept("cover-crop/weeds.ts", weeds, {
    weedSuppression: [{ lower: 4000, upper: 6000 }, "grass"],
    rollingTime: [65],
  }),
  ...swept("nitrogen/materials.ts", materials, {
    carbonToNitrogenOf: [materials.NITROGEN_MATERIALS[0] ?? "wheat-straw"],
    usualCarbon: [],
    carbonToNitrogenFromNitrogen: [0.02, 0.4],
    measuredCarbonToNitrogen: { args: [20], inner: NOT_JUDGED, endless: NOT_JUDGED },
  }),
  ...swept("nitrogen/mixture.ts", mixture, { mixable: [PARTS], mixtureCarbonToNitrogen: [PARTS] }),
  ...swept("nitrogen/tie-up.ts", tieUp, {
    availableNitrogenPerTonne: [own(0.025, "1", "nitrogen-share")],
    tieUpOrRelease: [PARTS],
    firstSeasonNitrogen: [kgPerHa(4000), own(0.025, "1", "nitrogen-share"), END],
  }),
  ...swept("residue/cover-mass.ts", coverMass, {
    coverCoefficientOf: ["maize"],
    coverFromMass: {
      args: [[{ mass: kgPerHa([7000, 8450, 9000]), coefficient: perKg(2.3) }]],
      ofNothing: "no residue covers nothing",
    },
    massForCover: [share(0.5), perKg([2.1, 2.7, 3.4])],
  }),
  ...swept("residue/crops.ts", crops, { fragilityOf: ["soybean"] }),
  ...swept("residue/cutting-height.ts", cuttingHeight, {
    stemShape: [],
    shareBelow: [metres([0.1, 0.15, 0.2]), STEMS],
    cutFor: [share([0.2, 0.3, 0.4]), STEMS],
  }),
  ...swept("residue/decay.ts", decay, {
    rotByTemperature: [10, { shiftC: 6.1, bestC: 33 }],
    rotByRain: [33],
    decompositionDays: {
      args: [[5, 10, 33], share([0.3, 0.6, 1])],
      more: [[[5, 10, 33], { beforeMm: [0, 12], eachMm: [3, 0, 8] }]],
      ofNothing: "no day has passed, so nothing rots",
    },
    decayRateOf: ["winter-wheat"],
    lossAfter: [own([0.006, 0.008, 0.01], "/d", "decay-rate"), own(40, "d", "decay-rate")],
    massLeft: [kgPerHa(9000), share([0.3, 0.4, 0.5])],
  }),
  ...swept("residue/stems.ts", stems, { stemsStanding: ["barley", own(20, "d", "decay-rate")] }),
  ...swept("residue/erosion.ts", erosion, {
    erosionExponent: [],
    lossByRain: [share(0.3), erosion.erosionExponent(), 6.096],
    lossByWind: [share(0.3)],
  }),
  ...swept("residue/own-loss.ts", ownLoss, {
    lossRateOfLines: {
      args: [COVER([78, 80, 82]), COVER([57, 60, 63]), 100],
      inner: "takes what `coverOfStrip` gave",
    },
  }),
  ...swept("residue/passes.ts", passes, {
    leftByPass: ["no-till-drill", "fragile"],
    coverAfterHarvest: ["maize"],
    coverAfterPasses: { args: [share(0.95), LEFT], ofNothing: "no pass leaves all that lay there" },
    lossByPasses: {
      args: [{ mass: kgPerHa(9000), coefficient: perKg(2.3) }, LEFT],
      ofNothing: "no pass takes nothing",
    },
    measuredLoss: ["no-till-wheat-30-weeks"],
  }),
  ...swept("residue/ranged.ts", rangedOf, {
    exactly: { args: [5], inner: NOT_JUDGED, endless: NOT_JUDGED },
    assumed: { args: ["mass", SPAN, "kg/har", "yours"], inner: NOT_JUDGED, endless: NOT_JUDGED },
    fits: [SPAN, 0, 10],
    usable: {
      args: [[[kgPerHa(5), { unit: "kg/har", least: 0, most: 10 }]]],
      inner: LIMITS,
      fixed: LIMITS,
      ofNothing: "no figure is wrong",
    },
    behind: { args: [{ from: [kgPerHa(5)], method: "cover-mass" }], inner: NOT_JUDGED, endless: NOT_JUDGED },
    ranged: {
      fixed: "low, middle and high",
      args: [[1, 2, 3], "kg/har", { from: [kgPerHa(5)], method: "cover-mass" }],
      inner: NOT_JUDGED,
      endless: NOT_JUDGED,
    },
  }),
  ...swept("residue/straw-grown.ts", strawGrown, {
    strawGrown: { args: [GRAIN, way], more: WAYS.map((one) => [GRAIN, one] as const) },
  }),
  ...swept("residue/straw-ways.ts", strawWays, { dryShareOf: ["barley"], strawWaysOf: ["barley"] }),
  ...swept("residue/thickness.ts", thickness, {
    strawMulchDensity: [],
    massForThickness: [own([20, 30, 40], "mm", "mulch-thickness"), thickness.strawMulchDensity()],
  }),
  ...swept("shelter/net.ts", shelterNet, {
    gainOf: [shelterNet.SHELTERED_CROPS[0] ?? "winter-wheat"],
    usualZones: [],
    usualLoss: [],
    beltNet: [BELT],
  }),
  ...swept("shelter/wind-reduction.ts", wind, { windReduction: [12], farmsteadReduction: [12] }),
  ...swept("shelter/zones.ts", zones, { sheltered: [[ROW], 250, { competition: 1, shelter: 12 }] }),
  ...swept("straw/break-even.ts", breakEven, {
    worthPerHa: [SPAN, SPAN],
    breakEven: { args: [SALE], ofNothing: "what was not counted is nought, and a caution says so" },
    gainOfSelling: {
      args: [money(50), reached(breakEven.breakEven(SALE)), SALE.sold],
      inner: "takes the sum that `breakEven` gave",
      ofNothing: "its list of items only says what the price is made of",
    },
  }),
  ...swept("straw/carbon-floor.ts", carbonFloor, {
    carbonFloor: [{ rotation: "continuous-maize", tillage: "mouldboard" }],
  }),
  ...swept("straw/could-leave.ts", couldLeave, {
    couldLeave: [
      { grown: kgPerHa(8450), loss: share(0.5), needed: kgPerHa(2000), carbonFloor: kgPerHa(5250) },
    ],
  }),
  ...swept("straw/leave-as.ts", leaveAs, {
    chaffShare: [],
    balerTakes: [],
    leaveAs: [
      share([0.2, 0.3, 0.4]),
      { cut: metres(0.15), stems: STEMS, chaff: leaveAs.chaffShare(), baler: leaveAs.balerTakes() },
    ],
  }),
  ...swept("straw/ledger.ts", ledger, {
    baledDryShare: [],
    strawLedger: { args: [[YEAR, { ...YEAR, harvestYear: 2023, grown: null }]], ofNothing: SUM_OF_NONE },
  }),
  ...swept("straw/nutrients.ts", nutrients, {
    nutrientPerTonne: ["winter-wheat", "K2O"],
    afterRain: [own([8, 10, 12], "kg/t", "nutrient"), share([0.2, 0.4, 0.8])],
    nutrientTaken: [own(10, "kg/t", "nutrient"), kgPerHa(4000)],
    asElement: ["P2O5", 10],
  }),
  ...swept("water/air.ts", air, {
    saturationVapourPressure: [20],
    checkedWarmth: [DAY],
    meanSaturationVapourPressure: [DAY],
    slopeOfVapourPressure: [20],
    actualVapourPressure: {
      args: [DAY, { by: "extremes", max: 0.84, min: 0.63 }],
      more: [
        [DAY, { by: "mean", mean: 0.7 }],
        [DAY, { by: "dew-point", celsius: 9 }],
      ],
    },
    airPressure: [1800],
    psychrometricConstant: [81.8],
    windAt2m: [3.2, 10],
  }),
  ...swept("water/bounded.ts", bounded, {
    bounded: {
      args: [[["x", 1, 0, 2]]],
      inner: LIMITS,
      fixed: LIMITS,
      ofNothing: "no reading is out of bounds",
    },
    where: {
      args: [[["x", 1, 0, 2]], () => 1],
      inner: LIMITS,
      fixed: LIMITS,
      ofNothing: "no reading is out of bounds",
    },
  }),
  ...swept("water/corners.ts", corners, {
    corners: {
      args: [[SPAN, SPAN], ([a, b]: readonly number[]) => (a ?? 0) * (b ?? 0)],
      inner: "figures were judged before",
      endless: "figures were judged before",
    },
  }),
  ...swept("water/extra-water.ts", extraWater, {
    waterThatCounts: [own([10, 22, 30], "mm", "extra-water"), own(10, "mm", "deficit")],
    nothingPerMm: ["{money}/har/mm"],
    worthOfWater: [own(10, "mm", "extra-water"), own(15, "kg/har/mm", "worth")],
  }),
  ...swept("water/hargreaves.ts", hargreaves, { hargreaves: [DAY, 16] }),
  ...swept("water/kept-by-mulch.ts", kept, {
    wetGround: [],
    bareSoilEvaporation: [
      {
        firstDay: 100,
        lastDay: 119,
        rains: [
          { day: 105, mm: 12 },
          { day: 110, mm: null },
        ],
        reference: [ET],
      },
      { quickWater, surfaceWater, wetSoil: kept.wetGround() },
    ],
    keptByMulch: [own([10, 20, 30], "mm", "extra-water"), share([0.1, 0.3, 0.5])],
  }),
  ...swept("water/mulch-cut.ts", mulchCut, { fullCoverCut: [], evaporationCut: [MULCH] }),
  ...swept("water/penman-monteith.ts", penman, {
    penmanMonteith: [
      {
        netRadiationMJ: 13.28,
        soilHeatMJ: 0,
        meanC: 16.9,
        wind2m: 2.078,
        saturationKPa: 1.997,
        actualKPa: 1.409,
        slope: 0.122,
        psychrometric: 0.0666,
      },
    ],
  }),
  ...swept("water/radiation.ts", radiation, {
    solarRadiationFromSunshine: [9.25, 16.1, 41.09],
    solarRadiationFromWarmth: [DAY, 0.16, 40.6, 30.5],
    clearSkyRadiation: [100, 41.09],
    netShortwave: [22.07],
    netLongwave: [LONGWAVE],
    netRadiation: [LONGWAVE],
  }),
  ...swept("water/reference-evapotranspiration.ts", reference, {
    usualStandIns: [],
    referenceEvapotranspiration: {
      args: [
        {
          ...DAY,
          humidity: { by: "extremes", max: 0.84, min: 0.63 },
          wind: { metresPerSecond: 2.78, heightM: 10 },
          sun: { hours: 9.25 },
        },
        { latitudeDeg: 50.8, elevationM: 100, dayOfYear: 187 },
        reference.usualStandIns(),
      ],
      more: [
        [
          { ...DAY, humidity: null, wind: null, sun: null },
          { latitudeDeg: 50.8, elevationM: 100, dayOfYear: 187 },
          reference.usualStandIns(),
        ],
      ],
    },
  }),
  ...swept("water/root-zone.ts", rootZone, {
    totalAvailableWater: [0.32, 0.12, 0.8],
    readilyAvailableWater: [160, 0.4],
    depletionFraction: [0.55, 3],
    waterStress: [80, 160, 0.4],
    rootsOf: [rootZone.ROOTED_CROPS[0]],
    plantAvailableWater: [
      soils.soilWaterOf("loam").available,
      rootZone.rootsOf(rootZone.ROOTED_CROPS[0]).depth,
    ],
  }),
  ...swept("water/soils.ts", soils, { soilWaterOf: ["loam"] }),
  ...swept("water/sun.ts", sun, {
    dayOfYear: { args: ["2025-07-06"], more: [[""], ["2025-13-40"], ["yesterday"]] },
    inverseRelativeDistance: [187],
    solarDeclination: [187],
    sunsetHourAngle: {
      args: [50.8, 187],
      more: [
        [89.9, 172],
        [-90, 172],
      ],
    },
    daylightHours: { args: [50.8, 187], more: [[90, 355]] },
    extraterrestrialRadiation: { args: [50.8, 187], more: [[-90, 172]] },
    radiationAsWater: [32.2],
  }),
  ...swept("water/two-stage-drying.ts", drying, {
    totallyEvaporableWater: [0.15, 0.06, 0.1],
    evaporableUnderMulch: [12, 0.5],
    evaporationReduction: [8, { rewMm: 6, tewMm: 12 }],
    wetSoilCoefficient: [2, 45, 0.1],
    twoStageDrying: {
      args: [
        [
          { etMm: 4.5, rainMm: null },
          { etMm: 4.5, rainMm: 3 },
        ],
        { rewMm: 6, tewMm: 12 },
        1.2,
        0,
      ],
      ofNothing: "no day dries nothing",
    },
  }),
];
