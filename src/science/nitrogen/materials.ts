/** Carbon to nitrogen of what is left on a field. */
import { failed, ok, type Result } from "../../record/result.ts";
import { CARBON_SHARE, MIDDLE_CARBON_SHARE, MOST_CARBON_SHARE, SINGLE_FIGURE } from "../constants/water.ts";
import { assumed, exactly, type Ranged } from "../residue/ranged.ts";

/** NRCS 2011, Table 1. */
const TABLE = {
  "rye-straw": 82,
  "wheat-straw": 80,
  "oat-straw": 70,
  "maize-stover": 57,
  "rye-anthesis": 37,
  "pea-straw": 29,
  "rye-vegetative": 26,
  "alfalfa-hay-mature": 25,
  "rotted-manure": 20,
  "legume-hay": 17,
  "beef-manure": 17,
  "alfalfa-hay-young": 13,
  "hairy-vetch": 11,
} as const;

/** A material of the table. */
export type NitrogenMaterial = keyof typeof TABLE;
export const NITROGEN_MATERIALS = Object.keys(TABLE) as readonly NitrogenMaterial[];

/**
 * C:N of a material. The table prints single figures; a fifth to either side stands in for how much one stand differs
 * from another (a rule of this product), and a laboratory's own figure is better.
 *
 * Source: NRCS 2011, Table 1.
 *
 * @example
 * carbonToNitrogenOf("wheat-straw").middle // => 80
 */
export const carbonToNitrogenOf = (material: NitrogenMaterial): Ranged => {
  const middle = TABLE[material];
  const span = { low: middle * (1 - SINGLE_FIGURE), middle, high: middle * (1 + SINGLE_FIGURE) };
  return assumed("carbon-to-nitrogen", span, "1", "nrcs-c-to-n-2011");
};

/**
 * Share of dry matter that is carbon, where nobody measured it.
 *
 * Source: common practice, 40 to 45 %; the person can change it.
 *
 * @example
 * usualCarbon().low // => 0.4
 */
export const usualCarbon = (): Ranged =>
  assumed(
    "carbon-share",
    { low: CARBON_SHARE, middle: MIDDLE_CARBON_SHARE, high: MOST_CARBON_SHARE },
    "1",
    "carbon-share",
  );

/**
 * Percent of nitrogen as C:N: carbon share over nitrogen share.
 *
 * @param nitrogenShare of dry matter, above 0 and at most 0.2
 * @param carbonShare of dry matter, 40 % where nobody measured it
 * @returns C:N; `science/out-of-bounds` for what cannot be
 *
 * Source: USDA ARS Akron (40 over C:N).
 *
 * @example
 * carbonToNitrogenFromNitrogen(0.02).value // => 20
 */
export const carbonToNitrogenFromNitrogen = (
  nitrogenShare: number,
  carbonShare: number = CARBON_SHARE,
): Result<number> =>
  nitrogenShare > 0 &&
  nitrogenShare <= 0.2 &&
  Number.isFinite(1 / nitrogenShare) &&
  carbonShare >= 0.2 &&
  carbonShare <= 0.7
    ? ok(carbonShare / nitrogenShare)
    : failed("science/out-of-bounds", { what: "nitrogen", least: 0, most: 0.2 });

/** A laboratory's figure of one material as a range without width. */
export const measuredCarbonToNitrogen = (ratio: number): Ranged =>
  assumed("carbon-to-nitrogen", exactly(ratio), "1", "yours");
