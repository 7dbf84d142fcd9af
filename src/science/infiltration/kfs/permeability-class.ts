/** Names for how fast saturated soil lets water through: the permeability classes, and rates by texture. */
import { failed, ok, type Result } from "../../../record/result.ts";
import { type MethodId, sourcesOf } from "../../methods.ts";
import type { SourceId } from "../../sources.ts";

const MM_PER_INCH = 25.4;

export type PermeabilityName =
  | "very-slow"
  | "slow"
  | "moderately-slow"
  | "moderate"
  | "moderately-rapid"
  | "rapid"
  | "very-rapid";

/** Each class from its lowest rate on, in inches an hour as published. The lowest class has no lower end. */
const FROM_IN_PER_H = [
  ["very-slow", 0],
  ["slow", 0.06],
  ["moderately-slow", 0.2],
  ["moderate", 0.6],
  ["moderately-rapid", 2],
  ["rapid", 6],
  ["very-rapid", 20],
] as const satisfies readonly (readonly [PermeabilityName, number])[];

/** A class with its ends. */
export interface PermeabilityClass {
  readonly name: PermeabilityName;
  readonly fromMmPerH: number;
  /** Null for the fastest. */
  readonly belowMmPerH: number | null;
  readonly methods: readonly MethodId[];
  readonly sources: readonly SourceId[];
}

/** A rate on a break, come to by way of inches, must not fall to the slower side by its last digit. */
const SAME = 1 - 1e-12;

/**
 * The permeability class of a rate. Its table is for the permeability of saturated soil; the rate of a ring is
 * more than that, so the name of the table stands with the class. A value on a break belongs to the faster
 * class. The first pour on unsaturated soil is never given a class.
 *
 * @param mmPerH 0 or more
 * @returns `science/not-a-rate` for what is negative or not finite
 *
 * Source: NRCS permeability classes for saturated soil, adapted from USEPA 1981.
 *
 * @example
 * permeabilityClass(127).value.name // => "moderately-rapid"
 */
export const permeabilityClass = (mmPerH: number): Result<PermeabilityClass> => {
  if (!(mmPerH >= 0 && Number.isFinite(mmPerH))) return failed("science/not-a-rate");
  const at = FROM_IN_PER_H.findLastIndex(([, from]) => mmPerH >= from * MM_PER_INCH * SAME);
  const [name, from] = FROM_IN_PER_H[at] ?? FROM_IN_PER_H[0];
  const next = FROM_IN_PER_H[at + 1];
  const methods: MethodId[] = ["permeability-class"];
  return ok({
    name,
    fromMmPerH: from * MM_PER_INCH,
    belowMmPerH: next === undefined ? null : next[1] * MM_PER_INCH,
    methods,
    sources: sourcesOf(methods),
  });
};

export type BasicRateSoil = "sand" | "sandy-loam" | "loam" | "clay-loam" | "clay";

/** A row of the table of basic infiltration rates. */
export interface BasicRate {
  readonly soil: BasicRateSoil;
  readonly fromMmPerH: number;
  /** Null without an upper end. */
  readonly toMmPerH: number | null;
  /** The table prints something else, which the order of its rows contradicts. */
  readonly misprint: boolean;
}

/**
 * Basic infiltration rates by texture. The table prints sand as *less than 30 mm/h*; sandy loam has 20 to 30, so
 * it is read as 30 or more, and that has to be said beside it.
 *
 * Source: FAO Irrigation Water Management Training Manual 5, annex 2, table 7.
 */
export const BASIC_RATES: readonly BasicRate[] = [
  { soil: "sand", fromMmPerH: 30, toMmPerH: null, misprint: true },
  { soil: "sandy-loam", fromMmPerH: 20, toMmPerH: 30, misprint: false },
  { soil: "loam", fromMmPerH: 10, toMmPerH: 20, misprint: false },
  { soil: "clay-loam", fromMmPerH: 5, toMmPerH: 10, misprint: false },
  { soil: "clay", fromMmPerH: 1, toMmPerH: 5, misprint: false },
];
