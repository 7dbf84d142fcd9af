/** Published readings of worm counts. They disagree, so none of them stands alone and none is mixed with another. */
import type { LandUse } from "../../record/kinds/observation.ts";
import type { Protocol } from "./protocol.ts";
import { WORM_METHODS } from "./worm-methods.ts";

/** What a guide says of a count, as a word that the message catalogue holds. */
export const GUIDE_WORDS = [
  "below-survey-mean",
  "survey-mean",
  "high",
  "few",
  "middling",
  "many",
  "below-good",
  "good",
  "excellent",
  "not-high",
] as const;
export type GuideWord = (typeof GUIDE_WORDS)[number];

/** From which count on a guide says so. */
export interface GuideLevel {
  readonly from: number;
  /** "above" where the guide says more than, "at-least" where it says this or more. */
  readonly limit: "above" | "at-least";
  readonly says: GuideWord;
}

export interface Guide extends Protocol {
  /** What the levels count: worms per hole of the guide, or per square metre. */
  readonly per: "hole" | "m2";
  /** Rising; the first one begins at 0. */
  readonly levels: readonly GuideLevel[];
}

const level = (from: number, limit: GuideLevel["limit"], says: GuideWord): GuideLevel => ({
  from,
  limit,
  says,
});

type MethodName = (typeof WORM_METHODS)[number]["id"];

/** A guide that counts as one of the methods does. */
const byMethod = (
  id: MethodName,
  landUses: readonly LandUse[],
  levels: readonly GuideLevel[],
): readonly Guide[] =>
  WORM_METHODS.filter((method) => method.id === id).map(
    ({ name, sidesM, depthM, minutes, season, supposes, layers, source, mark }) => ({
      id,
      name,
      sidesM,
      depthM,
      minutes,
      season,
      supposes,
      layers,
      source,
      mark,
      landUses,
      per: "hole",
      levels,
    }),
  );

/**
 * Guides offered. Each keeps its own hole, depth, season and land use. Those from memory are marked and a
 * person may change them. The survey of 2019 is no guide of good and bad: it says where a count stands among
 * the fields surveyed.
 */
export const GUIDES: readonly Guide[] = [
  ...byMethod(
    "survey-2019",
    ["cropland"],
    [
      level(0, "at-least", "below-survey-mean"),
      level(9, "at-least", "survey-mean"),
      level(16, "above", "high"),
    ],
  ),
  ...byMethod(
    "levy-board",
    ["cropland"],
    [level(0, "at-least", "few"), level(4, "at-least", "middling"), level(8, "above", "many")],
  ),
  ...byMethod(
    "farm-conservation",
    ["cropland", "grassland"],
    [level(0, "at-least", "below-good"), level(10, "at-least", "good"), level(15, "at-least", "excellent")],
  ),
  ...byMethod("pasture-10-cm", ["grassland"], [level(0, "at-least", "not-high"), level(10, "above", "high")]),
  ...byMethod(
    "soil-cube-2008",
    ["cropland", "orchard-or-vineyard"],
    [level(0, "at-least", "few"), level(15, "at-least", "middling"), level(30, "above", "many")],
  ),
  ...byMethod(
    "square-foot",
    ["cropland"],
    [level(0, "at-least", "below-good"), level(10, "at-least", "good")],
  ),
  {
    id: "central-europe",
    name: "Soil fertility guide of organic research (Central Europe)",
    sidesM: null,
    depthM: null,
    minutes: null,
    season: null,
    supposes: null,
    landUses: ["cropland"],
    layers: ["mulch", "soil"],
    source: "central-european-worms",
    mark: "published",
    per: "m2",
    levels: [level(0, "at-least", "below-good"), level(120, "at-least", "good")],
  },
];

/** The guides for one kind of land; all of them when the land use is not known. */
export const guidesFor = (landUse: LandUse | null): readonly Guide[] =>
  landUse === null ? GUIDES : GUIDES.filter(({ landUses }) => landUses.includes(landUse));
