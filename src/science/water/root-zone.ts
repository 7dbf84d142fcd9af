/** Water that a crop's roots can reach, and when it starts to miss it. */
import { ok, type Result } from "../../record/result.ts";
import * as k from "../constants/water.ts";
import { assumed, exactly, type Ranged, ranged, usable } from "../residue/ranged.ts";
import { where } from "./bounded.ts";

const MM_PER_M = 1000;

/**
 * Total available water of the root zone: `TAW = 1000·(θ_FC − θ_WP)·Z_r`.
 *
 * @param fieldCapacity water by volume, a share, 0 to 0.8
 * @param wiltingPoint a share, 0 up to field capacity
 * @param rootingM depth of roots, 0 to 10 m
 * @returns mm; `science/out-of-bounds` for what cannot be
 *
 * Source: FAO-56, eq. 82.
 *
 * @example
 * totalAvailableWater(0.32, 0.15, 0.8).value // => ≈ 136
 */
export const totalAvailableWater = (
  fieldCapacity: number,
  wiltingPoint: number,
  rootingM: number,
): Result<number> =>
  where(
    [
      ["field capacity", fieldCapacity, 0, 0.8],
      ["wilting point", wiltingPoint, 0, fieldCapacity],
      ["rooting depth", rootingM, 0, 10],
    ],
    () => MM_PER_M * (fieldCapacity - wiltingPoint) * rootingM,
  );

/**
 * Water that the crop takes without missing it: `RAW = p·TAW`.
 *
 * @returns mm; `science/out-of-bounds` for a fraction outside 0 to 1 or water outside 0 to 5000 mm
 *
 * Source: FAO-56, eq. 83.
 *
 * @example
 * readilyAvailableWater(136, 0.4).value // => ≈ 54.4
 */
export const readilyAvailableWater = (tawMm: number, fraction: number): Result<number> =>
  where(
    [
      ["available water", tawMm, 0, 5000],
      ["depletion fraction", fraction, 0, 1],
    ],
    () => fraction * tawMm,
  );

/**
 * Depletion fraction on a day of other thirst than 5 mm: `p = p_table + 0.04·(5 − ET_c)`, held between 0.1 and 0.8.
 *
 * @param cropEtMm mm per day, 0 to 20
 * @returns `science/out-of-bounds` for what cannot be
 *
 * Source: FAO-56, footnote of Table 22; bounds from memory.
 *
 * @example
 * depletionFraction(0.55, 3).value // => ≈ 0.63
 */
export const depletionFraction = (fromTable: number, cropEtMm: number): Result<number> =>
  where(
    [
      ["depletion fraction", fromTable, 0, 1],
      ["evapotranspiration", cropEtMm, 0, 20],
    ],
    () =>
      Math.min(
        k.MOST_DEPLETION,
        Math.max(k.LEAST_DEPLETION, fromTable + k.DEPLETION_PER_MM * (k.DEPLETION_AT_MM - cropEtMm)),
      ),
  );

/**
 * How far a crop still transpires with part of its water gone: 1 up to RAW, then `(TAW − D_r)/((1 − p)·TAW)`.
 *
 * @param deficitMm 0 up to TAW
 * @param fraction depletion fraction, 0 up to, and not, 1
 * @returns 0 to 1; `science/out-of-bounds` for what cannot be, a root zone that holds nothing among it
 *
 * Source: FAO-56, eq. 84.
 *
 * @example
 * waterStress(100, 160, 0.4).value // => ≈ 0.625
 */
export const waterStress = (deficitMm: number, tawMm: number, fraction: number): Result<number> =>
  where(
    [
      ["available water", tawMm, 1e-9, 5000],
      ["deficit", deficitMm, 0, tawMm],
      ["depletion fraction", fraction, 0, 0.999],
    ],
    () => Math.min(1, (tawMm - deficitMm) / ((1 - fraction) * tawMm)),
  );

export const ROOTED_CROPS = [
  "maize",
  "winter-wheat",
  "soybean",
  "barley",
  "oats",
  "sunflower",
  "alfalfa",
  "potato",
  "onion",
  "tomato",
] as const;

/** A crop with a rooting depth in the table. */
export type RootedCrop = (typeof ROOTED_CROPS)[number];

/** FAO-56, Table 22: deepest roots in m (for a soil without a pan) and depletion fraction. */
const TABLE: Readonly<Record<RootedCrop, readonly [least: number, most: number, fraction: number]>> = {
  maize: [1, 1.7, 0.55],
  "winter-wheat": [1.5, 1.8, 0.55],
  soybean: [0.6, 1.3, 0.5],
  barley: [1, 1.5, 0.55],
  oats: [1, 1.5, 0.55],
  sunflower: [0.8, 1.5, 0.45],
  alfalfa: [1, 2, 0.55],
  potato: [0.4, 0.6, 0.35],
  onion: [0.3, 0.6, 0.3],
  tomato: [0.7, 1.5, 0.4],
};

/** Roots of a crop. */
export interface CropRoots {
  /** m. */
  readonly depth: Ranged;
  readonly fraction: Ranged;
}

/**
 * Greatest rooting depth and depletion fraction of a crop. Young crops and soils with a pan root less deep.
 *
 * Source: FAO-56, Table 22, read second-hand in two copies; the person can change both.
 *
 * @example
 * rootsOf("potato").depth // => { low: 0.4, high: 0.6, unit: "m" }
 */
export const rootsOf = (crop: RootedCrop): CropRoots => {
  const [low, high, fraction] = TABLE[crop];
  return {
    depth: assumed("rooting-depth", { low, middle: (low + high) / 2, high }, "m", "fao-56-table-22"),
    fraction: assumed("depletion-fraction", exactly(fraction), "1", "fao-56-table-22"),
  };
};

/**
 * Plant-available water of a root zone from ranges: water by volume times depth.
 *
 * @param available share by volume between field capacity and wilting point, as `soilWaterOf`
 * @param depth of roots in m
 * @returns mm; `science/not-a-range` for a share outside 0 to 0.8 or a depth outside 0 to 10 m
 *
 * Source: FAO-56, eq. 82.
 *
 * @example
 * import { soilWaterOf } from "./soils.ts";
 * plantAvailableWater(soilWaterOf("silt").available, rootsOf("potato").depth).value.low // => ≈ 64
 */
export const plantAvailableWater = (available: Ranged, depth: Ranged): Result<Ranged> => {
  const good = usable([
    [available, { unit: "1", least: 0, most: 0.8 }],
    [depth, { unit: "m", least: 0, most: 10 }],
  ]);
  if (!good.ok) return good;
  const mm = (end: "low" | "middle" | "high"): number => MM_PER_M * available[end] * depth[end];
  const cautions = [{ code: "science/roots-less-deep", facts: {} } as const];
  return ok(
    ranged([mm("low"), mm("middle"), mm("high")], "mm", {
      from: [available, depth],
      method: "available-water",
      cautions,
    }),
  );
};
