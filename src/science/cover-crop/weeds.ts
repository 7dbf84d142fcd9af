/** What was published of a cover crop's mass and weeds, and when to roll. Nothing beyond that is said. */
import { failed, ok, type Result } from "../../record/result.ts";
import {
  ROLL_BEFORE_ZADOKS,
  ROLL_FROM_ZADOKS,
  WEEDS_DOWN_KG_PER_HA,
  WEEDS_GONE_KG_PER_HA,
  WEEDS_HELD_KG_PER_HA,
} from "../constants/water.ts";
import type { Caution, Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import type { SourceId } from "../sources.ts";

/** One published statement, by the mass of dry matter from which on it was made. */
export interface WeedStatement {
  readonly source: SourceId;
  /** Dry kg/ha. */
  readonly fromKgPerHa: number;
  /** What was seen: the screen has its words. */
  readonly seen:
    | "weed-biomass-down-by-three-quarters"
    | "annual-weeds-held-down-consistently"
    | "excellent-control";
}

/**
 * Published statements by rising mass. All are for grasses, mostly rye, rolled or left as mulch.
 *
 * Source: Nichols et al. 2020; Mirsky et al. 2013; Wells et al. 2016.
 */
export const WEED_STATEMENTS: readonly WeedStatement[] = [
  { source: "nichols-2020", fromKgPerHa: WEEDS_DOWN_KG_PER_HA, seen: "weed-biomass-down-by-three-quarters" },
  { source: "mirsky-2013", fromKgPerHa: WEEDS_HELD_KG_PER_HA, seen: "annual-weeds-held-down-consistently" },
  { source: "wells-2016", fromKgPerHa: WEEDS_GONE_KG_PER_HA, seen: "excellent-control" },
];

/** A statement against the mass that stands. */
export interface WeedReading extends WeedStatement {
  /** Whether the mass, with its range, lies above, below or on both sides. */
  readonly mass: "above" | "below" | "cannot-tell";
}

/** The statements, read. */
export interface WeedSuppression extends Worked {
  readonly statements: readonly WeedReading[];
}

const BESIDE: readonly Caution[] = [
  { code: "science/weeds-as-published", facts: {} },
  { code: "science/weeds-annual-only", facts: {} },
  { code: "science/weed-numbers-disputed", facts: {} },
  { code: "science/local-advice-first", facts: {} },
];

/**
 * Published statements on weeds, each against the mass and its range. No statement is made for legumes or other
 * broad-leaved crops, because none was published.
 *
 * @param mass dry kg/ha with its ends; without a range give both ends the value, and say that there is none
 * @param kind what grows
 * @returns the statements by rising mass; `science/no-weed-statement` for other than grasses, `science/out-of-bounds`
 * for a mass that is negative, not finite, above 200 t/ha or out of order
 *
 * Source: see `WEED_STATEMENTS`; denied for weed numbers by one review and affirmed by another.
 *
 * @example
 * weedSuppression({ lower: 5500, upper: 7000 }, "grass").value.statements.map(({ mass }) => mass).join() // => "above,below,below"
 */
export const weedSuppression = (
  mass: { readonly lower: number; readonly upper: number },
  kind: "grass" | "legume" | "other",
): Result<WeedSuppression> => {
  const { lower, upper } = mass;
  if (!(lower >= 0 && upper >= lower && upper <= 200_000))
    return failed("science/out-of-bounds", { what: "mass", least: 0, most: 200_000 });
  if (kind !== "grass") return failed("science/no-weed-statement");
  const methods = ["weed-statements"] as const;
  return ok({
    statements: WEED_STATEMENTS.map((statement) => ({
      ...statement,
      mass:
        lower >= statement.fromKgPerHa ? "above" : upper < statement.fromKgPerHa ? "below" : "cannot-tell",
    })),
    n: WEED_STATEMENTS.length,
    sampledBy: "assumptions",
    cautions: BESIDE,
    methods,
    sources: sourcesOf(methods),
  });
};

/** Whether the stage is one for rolling; n counts the stage that was read. */
export interface RollingTime extends Worked {
  readonly when: "too-early" | "in-time" | "too-late";
}

/**
 * Whether a cereal cover crop stands at a stage for rolling.
 *
 * @param zadoks growth stage, 0 to 99
 * @returns `too-early` before 61 (it grows up again), `too-late` from 73 on (it sheds seed), else `in-time`;
 * `science/out-of-bounds` for what is no stage
 *
 * Source: Mirsky et al. 2009 (from 61); early milk as the end, from memory.
 *
 * @example
 * rollingTime(67).value.when // => "in-time"
 */
export const rollingTime = (zadoks: number): Result<RollingTime> => {
  if (!(zadoks >= 0 && zadoks <= 99))
    return failed("science/out-of-bounds", { what: "stage", least: 0, most: 99 });
  const methods = ["rolling-stage"] as const;
  return ok({
    when: zadoks < ROLL_FROM_ZADOKS ? "too-early" : zadoks < ROLL_BEFORE_ZADOKS ? "in-time" : "too-late",
    n: 1,
    sampledBy: "readings",
    cautions: [{ code: "science/local-advice-first", facts: {} }],
    methods,
    sources: sourcesOf(methods),
  });
};
