/** Examples of ground cover and earthworms. */
import * as byChance from "../../../../src/science/earthworms/by-chance.ts";
import * as conditions from "../../../../src/science/earthworms/conditions.ts";
import * as wormField from "../../../../src/science/earthworms/field.ts";
import * as groups from "../../../../src/science/earthworms/groups.ts";
import * as guides from "../../../../src/science/earthworms/guides.ts";
import * as oneHole from "../../../../src/science/earthworms/hole.ts";
import * as holeCount from "../../../../src/science/earthworms/hole-count.ts";
import * as holesNeeded from "../../../../src/science/earthworms/holes-needed.ts";
import * as protocol from "../../../../src/science/earthworms/protocol.ts";
import * as readGuide from "../../../../src/science/earthworms/read-guide.ts";
import * as seenAtAll from "../../../../src/science/earthworms/seen-at-all.ts";
import * as spread from "../../../../src/science/earthworms/spread.ts";
import * as unlike from "../../../../src/science/earthworms/unlike.ts";
import * as wormMethods from "../../../../src/science/earthworms/worm-methods.ts";
import * as wormsOfField from "../../../../src/science/earthworms/worms-of-field.ts";
import * as fieldResults from "../../../../src/science/field-results.ts";
import * as acrossPass from "../../../../src/science/ground-cover/across-pass.ts";
import * as fieldCover from "../../../../src/science/ground-cover/field-cover.ts";
import * as inStep from "../../../../src/science/ground-cover/in-step.ts";
import * as lineOf from "../../../../src/science/ground-cover/line.ts";
import * as linesNeeded from "../../../../src/science/ground-cover/lines-needed.ts";
import * as percentages from "../../../../src/science/ground-cover/percentages.ts";
import * as photoPoints from "../../../../src/science/ground-cover/photo-points.ts";
import * as stubble from "../../../../src/science/ground-cover/standing-stubble.ts";
import * as strip from "../../../../src/science/ground-cover/strip.ts";
import * as stripShare from "../../../../src/science/ground-cover/strip-share.ts";
import * as targets from "../../../../src/science/ground-cover/targets.ts";
import * as together from "../../../../src/science/together.ts";
import { did, dug, found, holeBody, readOf, sorted, worms } from "../../record/hole-made-up.ts";
import { idOf } from "../../record/made-up.ts";
import { line, PLAIN } from "../counts.ts";
import { hole, holes, placed } from "../earthworms/holes.ts";
import { ruled } from "../infiltration/rings.ts";
import { swept } from "./sweep.ts";

const DUG = [
  hole(7, {
    soilTemperatureC: 9,
    wetness: "moist",
    personMinutes: 10,
    place: { latitudeDeg: 52, longitudeDeg: 5 },
  }),
  placed(3, 1, 4, 1),
  hole(0, { found: { mulch: 1, soil: 0, "mustard-water": 2 }, workedDaysAgo: 20 }),
  hole(12),
];
const LINES = [line(44), line(36), line(52), { ...line(30), stone: 3, own: 2, notRead: 5 }];
const ESTIMATE = { ok: true, value: wormEstimate() } as const;

function wormEstimate() {
  const estimate = wormField.wormsPerHole(holes(3, 4, 8));
  if (!estimate.ok) throw new Error(estimate.problem.code);
  return estimate.value;
}

const [guide] = guides.GUIDES;
if (guide === undefined) throw new Error("no guide stands in the room");
const READING = readOf(did(dug(), [...worms(2, "mulch"), found(7), sorted(4, "topsoil")]));
const HOLE_OF_FIELD = {
  visit: idOf("visit", 1),
  day: "2026-04-07",
  strip: idOf("strip", 1),
  oldGrass: null,
  place: null,
  count: hole(5),
};
const ON_GRASS = { ...HOLE_OF_FIELD, oldGrass: idOf("spot", 1) };
const LINE_OF_FIELD = {
  id: idOf("observation", 1),
  visit: idOf("visit", 1),
  day: "2026-04-07",
  strip: idOf("strip", 1),
  oldGrass: null,
  place: "between-rows",
  finished: true,
  counts: line(44),
} as const;
const RING_OF_FIELD = {
  id: idOf("observation", 2),
  visit: idOf("visit", 1),
  day: "2026-04-07",
  strip: idOf("strip", 1),
  oldGrass: null,
  place: "wheel-track",
  follows: null,
  soaking: {
    ok: true,
    value: ruled([
      [10, 20],
      [30, 45],
      [60, 70],
    ]),
  },
} as const;
const WANTED = { stoneCounts: false, target: 0.3 };
const LAYOUT = { markSpacingMm: 304.8, marks: 100, angleToRowsDeg: 45, rowSpacingMm: 762, passWidthMm: 6000 };

const NOTHING_MEASURED = "a field without tests has empty lists of results";

export const GROUND_AND_HOLES = [
  ...swept("earthworms/by-chance.ts", byChance, {
    densityByChance: { args: [holes(9, 8, 10)], more: [[DUG], [holes(0, 0, 0)]] },
  }),
  ...swept("earthworms/conditions.ts", conditions, {
    sameSides: [
      [0.2, 0.2],
      [0.25, 0.25],
    ],
    sameDepth: [0.2, 0.3],
    effortsUnlike: [[10, 30]],
    effortsOf: [DUG],
    conditionCautions: [DUG],
    unlikeCautions: [DUG],
  }),
  ...swept("earthworms/field.ts", wormField, {
    countedHoles: [DUG],
    wormsPerHole: [DUG],
    wormsPerM2: { args: [DUG], more: [[holes(0, 0, 0)], [holes(4, 4, 4)]] },
  }),
  ...swept("earthworms/groups.ts", groups, { shareOfHolesWith: ["deep", DUG] }),
  ...swept("earthworms/guides.ts", guides, { guidesFor: ["cropland"] }),
  ...swept("earthworms/hole-count.ts", holeCount, {
    holeAreaM2: [[0.2, 0.2]],
    squareSideM: [[0.25, 0.16]],
    wormsFound: [{ found: { mulch: 1, soil: 5, "mustard-water": null }, settled: true }],
  }),
  ...swept("earthworms/hole.ts", oneHole, {
    holeOf: {
      args: [READING, holeBody, { sidesM: [0.2, 0.2] }],
      inner: "takes a record as `readHole` gives it and judges nothing",
    },
    wormsInHole: { args: [hole(5)], ofNothing: "a worm count needs no size of the hole" },
    wormsPerM2OfHole: [hole(5)],
  }),
  ...swept("earthworms/holes-needed.ts", holesNeeded, {
    variationOf: [9, 2],
    holesInAll: [0.6, 0.25],
    holesNeeded: {
      args: [DUG, { giveOrTake: 0.25, sidesM: [0.2, 0.2] }],
      ofNothing: "before the first hole the number is planned from a survey",
    },
  }),
  ...swept("earthworms/protocol.ts", protocol, {
    inSeason: [
      { hemisphere: "north", months: [3, 4] },
      { month: 4, hemisphere: "south" },
    ],
  }),
  ...swept("earthworms/read-guide.ts", readGuide, {
    readByGuide: [guide, DUG, { landUse: "cropland", month: 4, hemisphere: "north" }],
  }),
  ...swept("earthworms/seen-at-all.ts", seenAtAll, {
    holesToSee: [0.2],
    chanceToSee: [0.2, 10],
    shareIfNoneSeen: [10],
  }),
  ...swept("earthworms/spread.ts", spread, { shareOfHoles: [3, 10], spreadOfHoles: [DUG] }),
  ...swept("earthworms/unlike.ts", unlike, { unlikeLastTime: [DUG, holes(3, 4)] }),
  ...swept("earthworms/worm-methods.ts", wormMethods, { wormMethodsFor: [null], wormMethod: ["none"] }),
  ...swept("earthworms/worms-of-field.ts", wormsOfField, {
    meanFound: {
      args: [ESTIMATE],
      inner: "takes what `wormsPerHole` gave",
      ofNothing: "its lists are cautions",
    },
    wormsOfField: [[HOLE_OF_FIELD, { ...HOLE_OF_FIELD, count: hole(8) }]],
    wormsOfGrass: [[ON_GRASS, { ...ON_GRASS, count: hole(8) }]],
  }),
  ...swept("field-results.ts", fieldResults, {
    resultsOfField: {
      args: [{ lines: [LINE_OF_FIELD], holes: [HOLE_OF_FIELD], rings: [RING_OF_FIELD] }, WANTED],
      ofNothing: NOTHING_MEASURED,
    },
  }),
  ...swept("together.ts", together, {
    groupedBy: {
      args: [[1, 2, 3], (one: unknown) => String(one)],
      inner: "puts together what it was given, and reckons nothing",
    },
    byStripAndDay: [[HOLE_OF_FIELD]],
    grassByDay: [[ON_GRASS]],
    spotsOf: { args: [[ON_GRASS]], ofNothing: "of no test no spot is known" },
    placesOf: { args: [[HOLE_OF_FIELD, LINE_OF_FIELD]], ofNothing: "no test lies at no place" },
    newestFirst: [{ day: "2026-04-07" }, { day: "2025-04-07" }],
  }),
  ...swept("ground-cover/across-pass.ts", acrossPass, {
    coverAcrossPass: [
      [{ marks: [true, null, false], markSpacingMm: 1000, angleToRowsDeg: 90, firstMarkFromMiddleMm: 0 }],
      8000,
    ],
  }),
  ...swept("ground-cover/field-cover.ts", fieldCover, {
    coverOfField: [[LINE_OF_FIELD, LINE_OF_FIELD], WANTED],
  }),
  ...swept("ground-cover/in-step.ts", inStep, { checkLayout: [LAYOUT] }),
  ...swept("ground-cover/line.ts", lineOf, {
    hitsOf: [line(44), "ground-cover", PLAIN],
    marksByKind: { args: [LINES], ofNothing: "no line has no marks of any kind, and percentages say so" },
  }),
  ...swept("ground-cover/lines-needed.ts", linesNeeded, {
    linesNeeded: {
      args: [LINES, "residue", PLAIN, { giveOrTake: 0.05, marksPerLine: 100 }],
      ofNothing: "before the first line the number is planned from half cover",
    },
  }),
  ...swept("ground-cover/percentages.ts", percentages, {
    percentagesThatSum: [{ residue: 44, bare: 55, stone: 1 }],
  }),
  ...swept("ground-cover/photo-points.ts", photoPoints, { coverOfPhotos: [LINES, "residue", PLAIN] }),
  ...swept("ground-cover/standing-stubble.ts", stubble, { stubbleHeight: [[[180, 220], [200], [150, 250]]] }),
  ...swept("ground-cover/strip-share.ts", stripShare, { stripShare: [LINES, "residue", PLAIN] }),
  ...swept("ground-cover/strip.ts", strip, {
    coverOfStrip: {
      args: [LINES, "ground-cover", { stoneCounts: true }],
      more: [
        [[line(44), line(44), line(44)], "residue", PLAIN],
        [[line(0), line(0), line(0)], "residue", PLAIN],
      ],
    },
    coverOfLine: [line(44), "residue", PLAIN],
  }),
  ...swept("ground-cover/targets.ts", targets, {
    chanceOfAtLeast: [LINES, "residue", PLAIN, 0.3],
    kindAimedAt: [0.3],
  }),
];
