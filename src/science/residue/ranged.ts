/** Answers that rest on published or assumed figures: a low end, a middle and a high end, never one number. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Caution, Unit, Worked } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import type { SourceId } from "../sources.ts";
import type { WaterAssumption } from "../water/assumptions.ts";

/** Three figures in rising order. */
export interface Span {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** What a figure stands for; a screen has its words and the field to change it. */
export type AssumptionName =
  | WaterAssumption
  | "baler-takes"
  | "baling"
  | "bale-weight"
  | "carbon-floor"
  | "chaff"
  | "cover"
  | "cover-coefficient"
  | "cover-kept-by-pass"
  | "decay-rate"
  | "dry-matter"
  | "eaten"
  | "erosion-exponent"
  | "grain-yield"
  | "harvest-index"
  | "loss"
  | "mass"
  | "mulch-density"
  | "mulch-thickness"
  | "nutrient"
  | "nutrient-price"
  | "residue-line"
  | "straw-brought-back"
  | "straw-length"
  | "straw-per-grain"
  | "straw-price"
  | "stem-rate"
  | "stem-shape"
  | "washed-out"
  | "wetness"
  | "worth";

/** A figure that an answer rests on. `yours` is one that the person gave, `own-lines` one that lines of the field gave. */
export interface Assumption extends Span {
  readonly name: AssumptionName;
  readonly unit: Unit;
  readonly source: SourceId | "yours" | "own-lines";
}

/**
 * An answer with the figures behind it. Its ends take every figure at its unfavourable end at once, so the
 * range is wider than what is likely; it is no confidence interval and has no level. `n` counts the figures,
 * unless lines stand behind it.
 */
export interface Ranged extends Worked, Span {
  readonly unit: Unit;
  readonly assumptions: readonly Assumption[];
}

/**
 * One number as a range without width.
 *
 * @example
 * exactly(5) // => { low: 5, middle: 5, high: 5 }
 */
export const exactly = (value: number): Span => ({ low: value, middle: value, high: value });

/**
 * A figure as the start of a calculation. It is checked where it is used.
 *
 * @param source where it comes from; `yours` for one that the person gave
 *
 * @example
 * assumed("mass", exactly(3000), "kg/har", "yours").n // => 1
 */
export const assumed = (
  name: AssumptionName,
  { low, middle, high }: Span,
  unit: Unit,
  source: SourceId | "yours",
): Ranged => ({
  low,
  middle,
  high,
  unit,
  n: 1,
  sampledBy: "assumptions",
  assumptions: [{ name, low, middle, high, unit, source }],
  cautions: [],
  methods: [],
  sources: source === "yours" ? [] : [source],
});

/** What a figure has to be. */
export interface Limits {
  readonly unit: Unit;
  readonly least: number;
  readonly most: number;
}

/** Whether three figures are finite, in rising order and within what is possible. */
export const fits = ({ low, middle, high }: Span, least: number, most: number): boolean =>
  [low, middle, high].every(Number.isFinite) &&
  low <= middle &&
  middle <= high &&
  low >= least &&
  high <= most;

/**
 * Whether figures can be worked with.
 *
 * @returns `science/not-a-range` for one that is not finite, not in rising order, outside its limits or in
 * another unit
 */
export const usable = (parts: readonly (readonly [Ranged, Limits])[]): Result<true> => {
  const bad = parts.find(([part, { unit, least, most }]) => part.unit !== unit || !fits(part, least, most));
  return bad === undefined
    ? ok(true)
    : failed("science/not-a-range", {
        what: bad[0].assumptions[0]?.name ?? "",
        least: bad[1].least,
        most: bad[1].most,
      });
};

const once = <T>(items: readonly T[]): readonly T[] => [
  ...new Map(items.map((item) => [JSON.stringify(item), item])).values(),
];

/** How an answer came from others. */
export interface Made {
  readonly from: readonly Ranged[];
  readonly method: MethodId;
  readonly cautions?: readonly Caution[];
}

/** What stands behind an answer made of others: their figures, cautions, methods and sources, each once. */
export const behind = ({ from, method, cautions = [] }: Made): Omit<Ranged, keyof Span | "unit"> => {
  const assumptions = once(from.flatMap((part) => part.assumptions));
  const methods = once([...from.flatMap((part) => part.methods), method]);
  return {
    n: assumptions.length,
    sampledBy: "assumptions",
    assumptions,
    cautions: once([...from.flatMap((part) => part.cautions), ...cautions]),
    methods,
    sources: once([...from.flatMap((part) => part.sources), ...sourcesOf(methods)]),
  };
};

/**
 * An answer made of others.
 *
 * @param ends low, middle and high. They are put in order, since rounding can turn equal ends round
 */
export const ranged = (ends: readonly [number, number, number], unit: Unit, made: Made): Ranged => {
  const [low, middle, high] = ends;
  return {
    low: Math.min(low, middle),
    middle,
    high: Math.max(middle, high),
    unit,
    ...behind(made),
  };
};
