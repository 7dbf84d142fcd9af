/** The chapters of "Methods and sources", taken from the records of the methods themselves. */

import { METHODS } from "../../science/methods/all.ts";
import { COMPARISON_METHODS } from "../../science/methods/comparison.ts";
import { EARTHWORM_METHODS } from "../../science/methods/earthworms.ts";
import { GROUND_COVER_METHODS } from "../../science/methods/ground-cover.ts";
import { INFILTRATION_METHODS } from "../../science/methods/infiltration.ts";
import { PLANS_METHODS } from "../../science/methods/plans.ts";
import { STORMS_METHODS } from "../../science/methods/storms.ts";
import { STRAW_METHODS } from "../../science/methods/straw.ts";
import { WATER_METHODS } from "../../science/methods/water.ts";
import type { MethodId } from "../../science/methods.ts";
import { COMPARISON_SOURCES } from "../../science/sources/comparison.ts";
import { EARTHWORM_SOURCES } from "../../science/sources/earthworms.ts";
import { INFILTRATION_SOURCES } from "../../science/sources/infiltration.ts";
import { PLANS_SOURCES } from "../../science/sources/plans.ts";
import { STORMS_SOURCES } from "../../science/sources/storms.ts";
import { STRAW_SOURCES } from "../../science/sources/straw.ts";
import { WATER_SOURCES } from "../../science/sources/water.ts";
import { SOURCES, type SourceId } from "../../science/sources.ts";

export type ChapterId =
  | "ground-cover"
  | "earthworms"
  | "infiltration"
  | "storms"
  | "comparison"
  | "straw"
  | "water"
  | "plans"
  | "general";

export interface Chapter {
  readonly id: ChapterId;
  readonly methods: readonly MethodId[];
  /** What the methods name, and what only the tables of the chapter name. */
  readonly sources: readonly SourceId[];
}

const keys = <K extends string>(of: Readonly<Record<K, unknown>>): readonly K[] => Object.keys(of) as K[];

/** They came with the lines; a reader looks for them under positions. */
const OF_POSITION: readonly MethodId[] = ["standing-still", "short-distance"];

const chapter = (id: ChapterId, methods: readonly MethodId[], own: readonly SourceId[]): Chapter => ({
  id,
  methods,
  sources: [
    ...new Set([
      ...methods.flatMap((method) => [
        ...METHODS[method].sources,
        ...METHODS[method].constants.map(({ source }) => source),
      ]),
      ...own,
    ]),
  ],
});

const OF_METHODS: readonly Chapter[] = [
  chapter(
    "ground-cover",
    keys(GROUND_COVER_METHODS).filter((id) => !OF_POSITION.includes(id)),
    [],
  ),
  chapter("earthworms", keys(EARTHWORM_METHODS), keys(EARTHWORM_SOURCES)),
  chapter("infiltration", keys(INFILTRATION_METHODS), keys(INFILTRATION_SOURCES)),
  chapter("storms", keys(STORMS_METHODS), keys(STORMS_SOURCES)),
  chapter("comparison", keys(COMPARISON_METHODS), keys(COMPARISON_SOURCES)),
  chapter("straw", keys(STRAW_METHODS), keys(STRAW_SOURCES)),
  chapter("water", keys(WATER_METHODS), keys(WATER_SOURCES)),
  chapter("plans", [...OF_POSITION, ...keys(PLANS_METHODS)], keys(PLANS_SOURCES)),
];

const named = new Set(OF_METHODS.flatMap(({ sources }) => sources));
const further = keys(SOURCES).filter((id) => !named.has(id));

/** In the order of a field day, what every chapter shares last. */
export const CHAPTERS: readonly Chapter[] =
  further.length === 0 ? OF_METHODS : [...OF_METHODS, chapter("general", [], further)];
