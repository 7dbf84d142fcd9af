import type { Kind } from "../../record/ids.ts";
import type { BodyOf } from "../../record/kinds/all.ts";
import type { EVENTS } from "../../record/kinds/event.ts";
import type { MEASURES } from "../../record/kinds/guess.ts";
import type { Kit } from "../../record/kinds/kit.ts";
import type { LandUse, MulchInside, RingWay } from "../../record/kinds/observation.ts";
import type { RulerReads } from "../../record/ring/entries.ts";
import type { Catalogue } from "../catalogue.ts";
import { useHouse } from "../parts/house.ts";
import type { TradeWords } from "../parts/trade.ts";
import { useWordsOf, type WordsOf } from "../parts/words-of.ts";
import { kindWords } from "./words.kinds.ts";
import { SEND_WORDS, type SendWords } from "./words.ts";

type KeysOf<T> = T extends unknown ? keyof T : never;
/** Every property that a record of any kind may have. */
export type Property = Exclude<KeysOf<BodyOf[Kind]>, "type">;

/** What single records, their properties and their values are called. */
const english = (trade: TradeWords) => ({
  ...kindWords().records,
  tests: {
    line: "line",
    ring: (letter: string) => (letter === "" ? "ring" : `ring ${letter}`),
    hole: (number: number) => `hole ${number}`,
    note: "note",
  },
  kit: {
    rope: "rope or tape",
    ring: "ring",
    "hole-template": "hole template",
    bottle: "bottle",
    ruler: "ruler",
  } satisfies Record<Kit["type"], string>,
  ringWays: {
    "measured-pour": "one measured pour",
    ruler: "ruler in the ring",
    "kept-at-one-level": "kept at one level",
  } satisfies Record<RingWay, string>,
  rulerReads: {
    "water-depth": "the depth of the water",
    "down-from-rim": "down from the rim",
  } satisfies Record<RulerReads, string>,
  mulchInside: {
    kept: "kept",
    parted: "parted at the edge",
    removed: "removed",
    replaced: "replaced",
  } satisfies Record<MulchInside, string>,
  landUses: {
    cropland: "cropland",
    grassland: "grassland",
    "orchard-or-vineyard": "orchard or vineyard",
  } satisfies Record<LandUse, string>,
  minutes: (count: string) => `${count} min`,
  properties: {
    name: "Name",
    farm: "Farm",
    boundary: "Boundary",
    rowDirectionDeg: "Direction of the rows",
    soilTexture: "Soil texture",
    harvestCrop: "Crop",
    field: "Field",
    strip: "Strip",
    done: "What was done",
    wholeField: "Whole field",
    rep: "Rep",
    position: "Position",
    oldGrass: "Old-grass spot",
    marks: "Marks",
    spacingM: "From mark to mark",
    day: "Day",
    harvestYear: trade.harvestYear.charAt(0).toUpperCase() + trade.harvestYear.slice(1),
    visit: "Visit",
    rope: "Rope or tape",
    insideM: "Inside edge to inside edge",
    outsideM: "Outside edge to outside edge",
    heightsM: "Height of the ring",
    sidesM: "Sides of the hole",
    volumeM3: "Holds",
    stepM: "Smallest step",
    ring: "Ring",
    outer: "Outer ring",
    ruler: "Ruler",
    bottle: "Bottle",
    rulerReads: "The ruler shows",
    mulch: "Mulch in the ring",
    rimToSoilM: "From the rim to the ground",
    planMin: "Readings due after",
    at: "Position",
    follows: "Goes on from",
    template: "Hole template",
    depthM: "Depth",
    method: "Worm method",
    landUse: "Land use",
    minutes: "Minutes of sorting",
    mustardMin: "Minutes of mustard water",
    number: "Number",
    way: "Way of counting or reading",
    angleToRowsDeg: "Angle to the rows",
    rowSpacingM: "From row to row",
    passWidthM: "Width of one machine pass",
    place: "Place against the row",
    start: "Start",
    end: "End",
    person: "Who",
    fifthKey: "Fifth key",
    askThickness: "Asks for the mulch thickness",
    startedAtMs: "Begun",
    of: "Belongs to",
    sha256: "Picture",
    byteCount: "Size",
    widthPx: "Width",
    heightPx: "Height",
    takenAtMs: "Taken",
    what: "What",
    words: "Words",
    depthMm: "Depth",
    value: "Value",
    atMs: "When",
    samples: "Samples",
    origin: "Where from",
    from: "This",
    to: "is the same as",
    spot: "Marked spot",
    edge: "Visible edge",
    text: "Words",
  } satisfies Record<Property, string>,
  events: {
    drilled: trade.drilled,
    harvested: "harvested",
    "straw-baled": "straw baled",
    "straw-left": "straw left",
    grazed: "grazed",
    "cover-crop-sown": "cover crop sown",
    "cover-crop-terminated": "cover crop terminated",
    tilled: "tilled",
    sprayed: "sprayed",
    other: "other",
  } satisfies Record<(typeof EVENTS)[number], string>,
  measures: {
    "ground-cover-percent": "ground cover, %",
    "worms-per-hole": "worms per hole",
    "soaked-in-60-min-mm": "mm soaked in after 60 min",
  } satisfies Record<(typeof MEASURES)[number], string>,
  yes: "yes",
  no: "no",
  notSaid: "not said",
  noStrip: "no strip",
  corners: (count: string) => `${count} corners`,
  degrees: (value: string) => `${value}°`,
  within: (place: string, accuracy: string) => `${place}, within about ${accuracy}`,
  pictureId: (digest: string) => `number ${digest}`,
});

/** What records are called, by language. */
export const RECORD_WORDS: WordsOf<RecordWords> = { en: english };

/** What every language has to say about records. */
export type RecordWords = ReturnType<typeof english>;

/** The catalogue with the words of records, for whoever describes them. */
export type Spoken = Omit<Catalogue, "records"> & SendWords & { readonly records: RecordWords };

/** The catalogue with the words of records, as this person reads them. */
export const useSpoken = (): Spoken => {
  const { words } = useHouse();
  return { ...words.value, ...useWordsOf(SEND_WORDS), records: useWordsOf(RECORD_WORDS) };
};
