/** What soils hold by their texture, and how much of it dries off their surface. */
import { assumed, type Ranged, type Span } from "../residue/ranged.ts";

export const SOIL_TEXTURES = [
  "sand",
  "loamy-sand",
  "sandy-loam",
  "loam",
  "silt-loam",
  "silt",
  "silt-clay-loam",
  "silty-clay",
  "clay",
] as const;

/** A texture class of the table. */
export type SoilTexture = (typeof SOIL_TEXTURES)[number];

type Ends = readonly [low: number, high: number];

/** FAO-56, Table 19: water by volume between field capacity and wilting point; REW; TEW of a layer of 0.10 m. */
const TABLE: Readonly<Record<SoilTexture, readonly [available: Ends, rew: Ends, tew: Ends]>> = {
  sand: [
    [0.05, 0.11],
    [2, 7],
    [6, 12],
  ],
  "loamy-sand": [
    [0.06, 0.12],
    [4, 8],
    [9, 14],
  ],
  "sandy-loam": [
    [0.11, 0.15],
    [6, 10],
    [15, 20],
  ],
  loam: [
    [0.13, 0.18],
    [8, 10],
    [16, 22],
  ],
  "silt-loam": [
    [0.13, 0.19],
    [8, 11],
    [18, 25],
  ],
  silt: [
    [0.16, 0.2],
    [8, 11],
    [22, 26],
  ],
  "silt-clay-loam": [
    [0.13, 0.18],
    [8, 11],
    [22, 27],
  ],
  "silty-clay": [
    [0.13, 0.19],
    [8, 12],
    [22, 28],
  ],
  clay: [
    [0.12, 0.2],
    [8, 12],
    [22, 29],
  ],
};

/** What a texture says about water. */
export interface SoilWater {
  /** Water by volume between field capacity and wilting point, a share. */
  readonly available: Ranged;
  /** Readily evaporable water (REW), mm: what the first stage of drying takes. */
  readonly quickWater: Ranged;
  /** Totally evaporable water (TEW), mm: what both stages take. */
  readonly surfaceWater: Ranged;
}

const between = ([low, high]: Ends): Span => ({ low, middle: (low + high) / 2, high });

/**
 * Water of a texture class; the middles lie halfway between the ends of the table.
 *
 * Source: FAO-56, Table 19, read second-hand, REW and TEW in one copy only; the person can change each.
 *
 * @example
 * soilWaterOf("silt-loam").surfaceWater // => { low: 18, high: 25, unit: "mm" }
 */
export const soilWaterOf = (texture: SoilTexture): SoilWater => {
  const [available, rew, tew] = TABLE[texture];
  return {
    available: assumed("available-water", between(available), "1", "fao-56-table-19"),
    quickWater: assumed("quick-water", between(rew), "mm", "fao-56-table-19"),
    surfaceWater: assumed("surface-water", between(tew), "mm", "fao-56-table-19"),
  };
};
