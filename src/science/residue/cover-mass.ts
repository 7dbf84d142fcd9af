/** Ground cover from the mass that lies flat, and back (the exponential curve of overlapping pieces). */
import { failed, ok, type Result } from "../../record/result.ts";
import {
  FULLEST_COVER,
  MOST_MASS_KG_PER_HA,
  NEAR_FULL_COVER,
  SINGLE_FIGURE_SPREAD,
} from "../constants/straw.ts";
import type { Caution } from "../estimate.ts";
import type { ResidueCrop } from "./crops.ts";
import { assumed, type Limits, type Ranged, ranged, type Span, usable } from "./ranged.ts";

const M2_PER_HA = 10_000;
const MASS: Limits = { unit: "kg/har", least: 0, most: MOST_MASS_KG_PER_HA };
/** No plant covers less than a tenth or more than a hundred square metres with a kilogram. */
const COEFFICIENT: Limits = { unit: "m2/kg", least: 0.1, most: 100 };
const COVER: Limits = { unit: "1", least: 0, most: 1 };

const span = (low: number, middle: number, high: number): Span => ({ low, middle, high });
const single = (value: number): Span =>
  span(value * (1 - SINGLE_FIGURE_SPREAD), value, value * (1 + SINGLE_FIGURE_SPREAD));

/**
 * Square metres that a kilogram of dry residue covers as if nothing overlapped. Published figures for one crop
 * differ by a third to a half: the ends are the lowest and the highest that are known. The low end for wheat,
 * 3.2, is what makes 1120 kg/ha and 30 % cover the same thing, as rules have it. From memory, except that one.
 */
const COEFFICIENTS: Readonly<Partial<Record<ResidueCrop, Span>>> = {
  "winter-wheat": span(3.2, 5.4, 6.4),
  "spring-wheat": span(3.2, 5.4, 6.4),
  barley: span(3.2, 5.4, 6.4),
  oats: span(3.2, 5.1, 6.4),
  rye: single(4),
  maize: span(2.1, 2.7, 3.4),
  sorghum: single(3),
  soybean: span(5.2, 6, 7.2),
  "oilseed-rape": single(5),
  sunflower: single(1.96),
  cotton: single(1.93),
};

/**
 * The cover–mass coefficient of a crop, in m²/kg of dry matter.
 *
 * @returns `science/no-figure-for-crop` where none is known; a figure of the person's own does as well
 *
 * Source: RUSLE (Agriculture Handbook 703, 1997) and others, from memory; the person can change it.
 *
 * @example
 * coverCoefficientOf("maize").value // => { low: 2.1, middle: 2.7, high: 3.4, unit: "m2/kg" }
 */
export const coverCoefficientOf = (crop: ResidueCrop): Result<Ranged> => {
  const known = COEFFICIENTS[crop];
  return known === undefined
    ? failed("science/no-figure-for-crop", { crop })
    : ok(assumed("cover-coefficient", known, "m2/kg", "cover-coefficients"));
};

/** A residue on the ground. */
export interface Lying {
  /** Dry, lying flat, in kg/ha. */
  readonly mass: Ranged;
  /** m²/kg. */
  readonly coefficient: Ranged;
}

const FLAT_ONLY: Caution = { code: "science/flat-residue-only", facts: {} };

/**
 * Share of the ground that residues cover together: `C = 1 − exp(−Σ A·M)`.
 *
 * More residue never gives less cover. The ends take mass and coefficient both low and both high.
 *
 * @param residues one of each crop that lies there; none is bare ground, 0
 * @returns a share; `science/not-a-range` for a mass that is negative, not finite or above 200 t/ha and for a
 * coefficient outside 0.1 to 100 m²/kg
 *
 * Source: Gregory 1982.
 *
 * @example
 * import { assumed, exactly } from "./ranged.ts";
 * const mass = assumed("mass", exactly(8450), "kg/har", "yours");
 * const coefficient = assumed("cover-coefficient", exactly(2.3), "m2/kg", "yours");
 * coverFromMass([{ mass, coefficient }]).value.middle // => ≈ 0.8568
 */
export const coverFromMass = (residues: readonly Lying[]): Result<Ranged> => {
  const good = usable(
    residues.flatMap(({ mass, coefficient }) => [[mass, MASS] as const, [coefficient, COEFFICIENT] as const]),
  );
  if (!good.ok) return good;
  const at = (end: keyof Span): number =>
    -Math.expm1(-residues.reduce((sum, one) => sum + (one.mass[end] * one.coefficient[end]) / M2_PER_HA, 0));
  return ok(
    ranged([at("low"), at("middle"), at("high")], "1", {
      from: residues.flatMap(({ mass, coefficient }) => [mass, coefficient]),
      method: "cover-mass",
      cautions: [FLAT_ONLY],
    }),
  );
};

/**
 * Mass that covers a share of the ground: `M = −ln(1 − C) / A`, the low end with the high coefficient.
 *
 * @param cover a share from 0 to 1, of residue alone. From 0.999 on it is held at 0.999 and said so
 * (`science/cover-capped`): full cover has no finite mass
 * @returns dry kg/ha, lying flat; `science/not-a-range` for a share outside 0 to 1 or a coefficient as
 * `coverFromMass`. Above 95 % cover with a caution (`science/near-full-cover`): the curve is flat there
 *
 * Source: Gregory 1982.
 *
 * @example
 * import { assumed, exactly } from "./ranged.ts";
 * const cover = assumed("cover", exactly(0.5), "1", "yours");
 * const coefficient = assumed("cover-coefficient", exactly(5.2), "m2/kg", "yours");
 * massForCover(cover, coefficient).value.middle // => ≈ 1333
 */
export const massForCover = (cover: Ranged, coefficient: Ranged): Result<Ranged> => {
  const good = usable([
    [cover, COVER],
    [coefficient, COEFFICIENT],
  ]);
  if (!good.ok) return good;
  const mass = (share: number, perKg: number): number =>
    (-Math.log1p(-Math.min(share, FULLEST_COVER)) * M2_PER_HA) / perKg;
  const cautions: Caution[] = [FLAT_ONLY];
  if (cover.high > FULLEST_COVER) cautions.push({ code: "science/cover-capped", facts: {} });
  else if (cover.high > NEAR_FULL_COVER) cautions.push({ code: "science/near-full-cover", facts: {} });
  return ok(
    ranged(
      [
        mass(cover.low, coefficient.high),
        mass(cover.middle, coefficient.middle),
        mass(cover.high, coefficient.low),
      ],
      "kg/har",
      { from: [cover, coefficient], method: "cover-mass", cautions },
    ),
  );
};
