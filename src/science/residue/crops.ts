/** Crops whose residue is known, and how fragile it is. */
import { failed, ok, type Result } from "../../record/result.ts";

export const RESIDUE_CROPS = [
  "winter-wheat",
  "spring-wheat",
  "barley",
  "oats",
  "rye",
  "maize",
  "sorghum",
  "millet",
  "rice",
  "soybean",
  "oilseed-rape",
  "sunflower",
  "cotton",
  "pea",
  "field-bean",
  "dry-bean",
  "peanut",
  "potato",
] as const;

/** A crop by what it leaves behind. */
export type ResidueCrop = (typeof RESIDUE_CROPS)[number];

/** Whether a pass breaks it up easily. */
export type Fragility = "fragile" | "non-fragile";

const FRAGILITY: Readonly<Record<ResidueCrop, Fragility | null>> = {
  "winter-wheat": "non-fragile",
  "spring-wheat": "non-fragile",
  barley: "non-fragile",
  oats: "non-fragile",
  rye: "non-fragile",
  maize: "non-fragile",
  sorghum: "non-fragile",
  millet: "non-fragile",
  rice: "non-fragile",
  soybean: "fragile",
  "oilseed-rape": "fragile",
  sunflower: null,
  cotton: null,
  pea: null,
  "field-bean": "fragile",
  "dry-bean": "fragile",
  peanut: "fragile",
  potato: "fragile",
};

/**
 * Whether a crop's residue counts as fragile in lists of what a pass leaves (from memory).
 *
 * @returns `science/no-figure-for-crop` where the lists disagree: the person chooses
 *
 * @example
 * fragilityOf("soybean") // => { ok: true, value: "fragile" }
 */
export const fragilityOf = (crop: ResidueCrop): Result<Fragility> => {
  const known = FRAGILITY[crop];
  return known === null ? failed("science/no-figure-for-crop", { crop }) : ok(known);
};
