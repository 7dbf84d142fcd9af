/** What passes with a machine, a winter, or a year leave: published ranges, each to be changed. */
import { failed, ok, type Result } from "../../record/result.ts";
import { sourcesOf } from "../methods.ts";
import { coverFromMass, type Lying } from "./cover-mass.ts";
import type { Fragility, ResidueCrop } from "./crops.ts";
import { assumed, type Limits, type Ranged, ranged, type Span, usable } from "./ranged.ts";

type Ends = readonly [low: number, high: number];

/** Share of the COVER that is left, per fragility. From memory. */
const LEFT = {
  "mouldboard-plough": { "non-fragile": [0, 0.1], fragile: [0, 0.05] },
  "chisel-straight-points": { "non-fragile": [0.6, 0.8], fragile: [0.4, 0.6] },
  "tandem-disc-finishing": { "non-fragile": [0.4, 0.7], fragile: [0.25, 0.4] },
  "field-cultivator-secondary": { "non-fragile": [0.8, 0.9], fragile: [0.6, 0.75] },
  "planter-double-disc": { "non-fragile": [0.85, 0.95], fragile: [0.75, 0.85] },
  "no-till-drill": { "non-fragile": [0.75, 0.95], fragile: [0.7, 0.9] },
  "anhydrous-applicator": { "non-fragile": [0.75, 0.85], fragile: [0.45, 0.7] },
  "rotary-hoe": { "non-fragile": [0.85, 0.9], fragile: [0.8, 0.9] },
  "winter-after-summer-harvest": { "non-fragile": [0.7, 0.9], fragile: [0.65, 0.85] },
  "winter-after-autumn-harvest": { "non-fragile": [0.8, 0.95], fragile: [0.7, 0.8] },
} as const satisfies Readonly<Record<string, Readonly<Record<Fragility, Ends>>>>;

/** A pass, or a winter, that has a published range. */
export type Pass = keyof typeof LEFT;
export const PASSES = Object.keys(LEFT) as readonly Pass[];

/**
 * Share of the cover that one pass leaves.
 *
 * Source: SCS & Equipment Manufacturers Institute 1992, from memory; the person can change it.
 *
 * @example
 * leftByPass("no-till-drill", "non-fragile") // => { low: 0.75, high: 0.95 }
 */
export const leftByPass = (pass: Pass, fragility: Fragility): Ranged => {
  const [low, high] = LEFT[pass][fragility];
  return assumed("cover-kept-by-pass", { low, middle: (low + high) / 2, high }, "1", "scs-emi-1992");
};

/** Share of the ground that is covered right after harvest. From memory. */
const AFTER_HARVEST: Readonly<Partial<Record<ResidueCrop, Ends>>> = {
  maize: [0.9, 0.95],
  "winter-wheat": [0.85, 0.9],
  "spring-wheat": [0.85, 0.9],
  barley: [0.85, 0.9],
  oats: [0.85, 0.9],
  rye: [0.85, 0.9],
  sorghum: [0.8, 0.9],
  soybean: [0.7, 0.8],
};

/**
 * Cover right after harvest, before any pass: where nobody has counted yet it is a start for `coverAfterPasses`.
 *
 * @returns a share; `science/no-figure-for-crop` where none is known
 *
 * Source: SCS & Equipment Manufacturers Institute 1992, from memory; the person can change it.
 *
 * @example
 * coverAfterHarvest("soybean").value // => { low: 0.7, high: 0.8 }
 */
export const coverAfterHarvest = (crop: ResidueCrop): Result<Ranged> => {
  const known = AFTER_HARVEST[crop];
  if (known === undefined) return failed("science/no-figure-for-crop", { crop });
  const [low, high] = known;
  const figure = assumed("cover", { low, middle: (low + high) / 2, high }, "1", "scs-emi-1992");
  const methods = ["passes"] as const;
  const cautions = [{ code: "science/cover-as-published", facts: {} }] as const;
  return ok({ ...figure, cautions, methods, sources: sourcesOf(methods) });
};

const M2_PER_HA = 10_000;
/** Below this pile of leaf over leaf the logarithms would only carry rounding. */
const THIN = 1e-9;
const SHARE: Limits = { unit: "1", least: 0, most: 1 };

/**
 * Cover after passes, one after another: `C_end = C·r_1·r_2·…`. The share acts on cover, never on mass: at 95 %
 * cover a pass that leaves 70 % of the cover leaves little more than a third of the mass (McCool et al. 1995).
 * For mass go through `massForCover`.
 *
 * @param cover a share before the first pass
 * @param left what each pass leaves, in any order; none leaves all
 * @returns a share; `science/not-a-range` for anything outside 0 to 1
 *
 * @example
 * import { assumed, exactly } from "./ranged.ts";
 * const cover = assumed("cover", exactly(0.95), "1", "yours");
 * const left = [0.7, 0.5, 0.9].map((share) => assumed("cover-kept-by-pass", exactly(share), "1", "yours"));
 * coverAfterPasses(cover, left).value.middle // => ≈ 0.299
 */
export const coverAfterPasses = (cover: Ranged, left: readonly Ranged[]): Result<Ranged> => {
  const good = usable([[cover, SHARE], ...left.map((one) => [one, SHARE] as const)]);
  if (!good.ok) return good;
  const product = (end: "low" | "middle" | "high"): number =>
    left.reduce((kept, one) => kept * one[end], cover[end]);
  return ok(
    ranged([product("low"), product("middle"), product("high")], "1", {
      from: [cover, ...left],
      method: "passes",
      cautions: [{ code: "science/cover-not-mass", facts: {} }],
    }),
  );
};

/**
 * Share of the MASS that passes or a winter take, from the shares of cover that they leave:
 * `f = 1 − ln(1 − C·r)/ln(1 − C)`. The more lay there, the larger it is.
 *
 * @param mass dry kg/ha before the first pass
 * @param coefficient m²/kg of the crop
 * @param left what each pass leaves of the cover; none takes nothing
 * @returns a share; `science/not-a-range` as `coverFromMass` and `coverAfterPasses`
 *
 * Source: Gregory 1982 for the curve; McCool et al. 1995 for cover and mass.
 *
 * @example
 * import { assumed, exactly } from "./ranged.ts";
 * const mass = assumed("mass", exactly(13025), "kg/har", "yours");
 * const coefficient = assumed("cover-coefficient", exactly(2.3), "m2/kg", "yours");
 * const left = [assumed("cover-kept-by-pass", exactly(0.7), "1", "yours")];
 * lossByPasses({ mass, coefficient }, left).value.middle // => ≈ 0.635
 */
export const lossByPasses = ({ mass, coefficient }: Lying, left: readonly Ranged[]): Result<Ranged> => {
  const before = coverFromMass([{ mass, coefficient }]);
  if (!before.ok) return before;
  const good = usable(left.map((one) => [one, SHARE] as const));
  if (!good.ok) return good;
  const kept = (end: keyof Span): number => left.reduce((product, one) => product * one[end], 1);
  const lost = (at: keyof Span, share: number): number => {
    const pile = (mass[at] * coefficient[at]) / M2_PER_HA;
    // Of a thin cover, mass and cover go alike; a pass that leaves all takes nothing even of full cover.
    if (pile < THIN || share === 1) return 1 - share;
    return Math.max(0, 1 + Math.log1p(-before.value[at] * share) / pile);
  };
  return ok(
    ranged([lost("low", kept("high")), lost("middle", kept("middle")), lost("high", kept("low"))], "1", {
      from: [before.value, ...left],
      method: "passes",
    }),
  );
};

/** Measured losses of mass. */
const MEASURED = {
  "no-till-wheat-30-weeks": { ends: [0.35, 0.42], source: "stott-1990" },
  "no-till-wheat-35-weeks": { ends: [0.38, 0.55], source: "stott-1990" },
  "fallow-wheat-52-weeks": { ends: [0.5, 0.8], source: "stott-1990" },
  "no-till-wheat-to-spring-harvest": { ends: [0.81, 0.88], source: "stott-1990" },
} as const;

/** A loss that was measured. */
export type MeasuredLoss = keyof typeof MEASURED;
export const MEASURED_LOSSES = Object.keys(MEASURED) as readonly MeasuredLoss[];

/**
 * Share of the mass lost, as it was measured elsewhere. Winter-wheat straw without tillage; another crop, load or
 * climate may be far from it.
 *
 * Source: Stott et al. 1990, five sites.
 *
 * @example
 * measuredLoss("no-till-wheat-30-weeks") // => { low: 0.35, high: 0.42 }
 */
export const measuredLoss = (which: MeasuredLoss): Ranged => {
  const {
    ends: [low, high],
    source,
  } = MEASURED[which];
  const figure = assumed("loss", { low, middle: (low + high) / 2, high }, "1", source);
  return { ...figure, cautions: [{ code: "science/measured-elsewhere", facts: {} }] };
};
