/**
 * Every method of this room by its name, with the sources behind it. Formulas and constants stand in `methods/all.ts`:
 * whoever works out an answer says its sources, and carries no formulas about.
 */
import { COMPARISON_BEHIND } from "./methods/behind/comparison.ts";
import { EARTHWORMS_BEHIND } from "./methods/behind/earthworms.ts";
import { GROUND_COVER_BEHIND } from "./methods/behind/ground-cover.ts";
import { INFILTRATION_BEHIND } from "./methods/behind/infiltration.ts";
import { PLANS_BEHIND } from "./methods/behind/plans.ts";
import { STORMS_BEHIND } from "./methods/behind/storms.ts";
import { STRAW_BEHIND } from "./methods/behind/straw.ts";
import { WATER_BEHIND } from "./methods/behind/water.ts";
import type { SourceId } from "./sources.ts";

const BEHIND = {
  ...GROUND_COVER_BEHIND,
  ...EARTHWORMS_BEHIND,
  ...INFILTRATION_BEHIND,
  ...COMPARISON_BEHIND,
  ...STRAW_BEHIND,
  ...WATER_BEHIND,
  ...PLANS_BEHIND,
  ...STORMS_BEHIND,
} as const satisfies Readonly<Record<string, readonly SourceId[]>>;

export type MethodId = keyof typeof BEHIND;

/**
 * The sources of several methods, each once, in the order of the methods.
 *
 * @example
 * sourcesOf(["wilson-one-line"]); // ["wilson-1927"]
 */
export const sourcesOf = (methods: readonly MethodId[]): readonly SourceId[] => [
  ...new Set(methods.flatMap((id) => BEHIND[id])),
];
