/** Worm methods: each sets hole size, depth, minutes, season and mustard water for a land use. */
import type { LandUse } from "../../record/kinds/observation.ts";
import type { SourceId } from "../sources.ts";
import type { Protocol } from "./protocol.ts";

/** Mustard water, as a method states it. */
export interface MustardStep {
  readonly litres: number;
  /** How long to wait for worms. */
  readonly minutes: number;
  readonly source: SourceId;
}

export interface WormMethod extends Protocol {
  readonly sidesM: readonly [number, number];
  readonly depthM: number;
  /** How many holes per field; null where the text does not say. */
  readonly holes: number | null;
  readonly mustard: MustardStep | null;
}

const BY_HAND = ["mulch", "soil"] as const;
const WITH_MUSTARD = ["mulch", "soil", "mustard-water"] as const;
const INCH_M = 0.0254;

/** March and April, or October and November when the soil is wet again. */
const SPRING_OR_WET_AUTUMN = { hemisphere: "north", months: [3, 4, 10, 11] } as const;

/** Methods offered. What a text does not say is null and left to the person. */
export const WORM_METHODS = [
  {
    id: "survey-2019",
    name: "Stroud (2019), survey of UK farmland",
    sidesM: [0.2, 0.2],
    depthM: 0.2,
    minutes: null,
    season: { hemisphere: "north", months: [3, 4] },
    supposes: null,
    landUses: ["cropland"],
    layers: BY_HAND,
    holes: 10,
    mustard: null,
    source: "stroud-2019",
    mark: "published",
  },
  {
    id: "levy-board",
    name: "AHDB, How to count earthworms",
    sidesM: [0.2, 0.2],
    depthM: 0.2,
    minutes: 5,
    season: SPRING_OR_WET_AUTUMN,
    supposes: null,
    landUses: ["cropland", "grassland"],
    layers: BY_HAND,
    holes: 10,
    mustard: null,
    source: "levy-board-worms",
    mark: "not-checked",
  },
  {
    id: "farm-conservation",
    name: "Game & Wildlife Conservation Trust, advice for farmer clusters",
    sidesM: [0.2, 0.2],
    depthM: 0.3,
    minutes: null,
    season: { hemisphere: "north", months: [3, 4, 5, 9, 10, 11] },
    supposes: null,
    landUses: ["cropland", "grassland"],
    layers: BY_HAND,
    holes: 5,
    mustard: null,
    source: "farm-conservation-worms",
    mark: "published",
  },
  {
    id: "pasture-10-cm",
    name: "Making more from sheep, tool 6.3 (Australia)",
    sidesM: [0.2, 0.2],
    depthM: 0.1,
    minutes: null,
    season: { hemisphere: "south", months: [8, 9] },
    supposes: "wet-permanent-pasture",
    landUses: ["grassland"],
    layers: BY_HAND,
    holes: 10,
    mustard: null,
    source: "sheep-manual-6-3",
    mark: "published",
  },
  {
    id: "soil-cube-2008",
    name: "FAO (2008), visual assessment of a 20 cm cube",
    sidesM: [0.2, 0.2],
    depthM: 0.2,
    minutes: null,
    season: null,
    supposes: null,
    landUses: ["cropland", "orchard-or-vineyard"],
    layers: BY_HAND,
    holes: null,
    mustard: null,
    source: "fao-2008",
    mark: "not-checked",
  },
  {
    id: "square-foot",
    name: "USDA soil quality test kit (1999)",
    sidesM: [12 * INCH_M, 12 * INCH_M],
    depthM: 12 * INCH_M,
    minutes: null,
    season: null,
    supposes: null,
    landUses: ["cropland", "grassland"],
    layers: WITH_MUSTARD,
    holes: null,
    mustard: { litres: 2, minutes: 5, source: "test-kit-worms" },
    source: "test-kit-worms",
    mark: "not-checked",
  },
  {
    id: "half-metre",
    name: "ISO 23611-1, plot of 50 × 50 cm, with mustard water",
    sidesM: [0.5, 0.5],
    depthM: 0.25,
    minutes: null,
    season: null,
    supposes: null,
    landUses: ["cropland", "grassland", "orchard-or-vineyard"],
    layers: WITH_MUSTARD,
    holes: null,
    mustard: { litres: 7, minutes: 20, source: "mustard-water" },
    source: "iso-23611-1",
    mark: "not-checked",
  },
] as const satisfies readonly WormMethod[];

/** The methods for one kind of land; all of them when the land use is not known. */
export const wormMethodsFor = (landUse: LandUse | null): readonly WormMethod[] => {
  const methods: readonly WormMethod[] = WORM_METHODS;
  return landUse === null ? methods : methods.filter(({ landUses }) => landUses.includes(landUse));
};

/** The method that a hole's header names; undefined for a name that is not offered any more. */
export const wormMethod = (id: string): WormMethod | undefined =>
  (WORM_METHODS as readonly WormMethod[]).find((method) => method.id === id);
