/** Every method of this room: its formulas in symbols, its constants and where they come from. */
import type { Method } from "../method.ts";
import type { MethodId } from "../methods.ts";
import { COMPARISON_METHODS } from "./comparison.ts";
import { EARTHWORM_METHODS } from "./earthworms.ts";
import { GROUND_COVER_METHODS } from "./ground-cover.ts";
import { INFILTRATION_METHODS } from "./infiltration.ts";
import { PLANS_METHODS } from "./plans.ts";
import { STORMS_METHODS } from "./storms.ts";
import { STRAW_METHODS } from "./straw.ts";
import { WATER_METHODS } from "./water.ts";

export const METHODS = {
  ...GROUND_COVER_METHODS,
  ...EARTHWORM_METHODS,
  ...INFILTRATION_METHODS,
  ...COMPARISON_METHODS,
  ...STRAW_METHODS,
  ...WATER_METHODS,
  ...PLANS_METHODS,
  ...STORMS_METHODS,
} as const satisfies Readonly<Record<MethodId, Method>>;
