/** Every method of this room: its formulas in symbols, its constants and where they come from. */
import type { Method } from "./method.ts";
import { COMPARISON_METHODS } from "./methods/comparison.ts";
import { EARTHWORM_METHODS } from "./methods/earthworms.ts";
import { GROUND_COVER_METHODS } from "./methods/ground-cover.ts";
import { GROUND_COVER_LATE } from "./methods/ground-cover-late.ts";
import { INFILTRATION_METHODS } from "./methods/infiltration.ts";
import { PLANS_METHODS } from "./methods/plans.ts";
import { STORMS_METHODS } from "./methods/storms.ts";
import { STRAW_METHODS } from "./methods/straw.ts";
import { WATER_METHODS } from "./methods/water.ts";
import type { SourceId } from "./sources.ts";

export type { Constant, Method } from "./method.ts";

export const METHODS = {
  ...GROUND_COVER_METHODS,
  ...GROUND_COVER_LATE,
  ...EARTHWORM_METHODS,
  ...INFILTRATION_METHODS,
  ...COMPARISON_METHODS,
  ...STRAW_METHODS,
  ...WATER_METHODS,
  ...PLANS_METHODS,
  ...STORMS_METHODS,
} as const satisfies Readonly<Record<string, Method>>;

export type MethodId = keyof typeof METHODS;

/**
 * The sources of several methods, each once, in the order of the methods.
 *
 * @example
 * sourcesOf(["wilson-one-line"]); // ["wilson-1927"]
 */
export const sourcesOf = (methods: readonly MethodId[]): readonly SourceId[] => [
  ...new Set(methods.flatMap((id) => METHODS[id].sources)),
];
