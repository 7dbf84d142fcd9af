/** Bare soil drying in two stages: as fast as the air takes it, then ever slower (FAO-56, dual crop coefficient). */
import { ok, type Result } from "../../record/result.ts";
import { CUT_PER_COVER, DRYING_LAYER_M } from "../constants/water.ts";
import { bounded, where } from "./bounded.ts";

const MM_PER_M = 1000;
const MOST_MM = 300;

/**
 * Totally evaporable water of the layer that dries: `TEW = 1000·(θ_FC − θ_WP/2)·Z_e`.
 *
 * @param fieldCapacity water by volume, a share, 0 to 0.8
 * @param wiltingPoint a share, 0 up to field capacity
 * @param layerM 0.10 to 0.15 m
 * @returns mm; `science/out-of-bounds` for what cannot be
 *
 * Source: FAO-56, eq. 73.
 *
 * @example
 * totallyEvaporableWater(0.15, 0.06).value // => ≈ 12
 */
export const totallyEvaporableWater = (
  fieldCapacity: number,
  wiltingPoint: number,
  layerM: number = DRYING_LAYER_M,
): Result<number> =>
  where(
    [
      ["field capacity", fieldCapacity, 0, 0.8],
      ["wilting point", wiltingPoint, 0, fieldCapacity],
      ["drying layer", layerM, 0.05, 0.3],
    ],
    () => MM_PER_M * (fieldCapacity - wiltingPoint / 2) * layerM,
  );

/**
 * Evaporable water under organic mulch, the water-balance form of the rule: `TEW' = TEW·(1 − 0.5·C)`.
 *
 * @param cover share of the ground, 0 to 1
 * @returns mm; `science/out-of-bounds` for what cannot be
 *
 * Source: FAO-56, chapter 11.
 *
 * @example
 * evaporableUnderMulch(22, 0.6).value // => ≈ 15.4
 */
export const evaporableUnderMulch = (tewMm: number, cover: number): Result<number> =>
  where(
    [
      ["evaporable water", tewMm, 0, MOST_MM],
      ["cover", cover, 0, 1],
    ],
    () => tewMm * (1 - CUT_PER_COVER * cover),
  );

/** The surface that dries, in mm. */
export interface Surface {
  readonly rewMm: number;
  readonly tewMm: number;
}

const reduction = (depletedMm: number, { rewMm, tewMm }: Surface): number => {
  const quick = Math.min(rewMm, tewMm);
  if (depletedMm >= tewMm) return 0;
  // Under full mulch both can be one: without this the second stage would be divided by nothing.
  return depletedMm <= quick ? 1 : (tewMm - depletedMm) / (tewMm - quick);
};

/**
 * How far a drying surface still evaporates: `K_r = 1` up to the readily evaporable water, then
 * `(TEW − D_e)/(TEW − REW)`, 0 when all is gone. Where REW reaches TEW there is one stage only.
 *
 * @param depletedMm what has evaporated since the surface was wet, 0 or more
 * @returns 0 to 1; `science/out-of-bounds` for what cannot be
 *
 * Source: FAO-56, eq. 74.
 *
 * @example
 * evaporationReduction(10.8, { rewMm: 6, tewMm: 12 }).value // => ≈ 0.2
 */
export const evaporationReduction = (depletedMm: number, surface: Surface): Result<number> =>
  where(
    [
      ["depletion", depletedMm, 0, MOST_MM],
      ["readily evaporable water", surface.rewMm, 0, MOST_MM],
      ["evaporable water", surface.tewMm, 0, MOST_MM],
    ],
    () => reduction(depletedMm, surface),
  );

/**
 * Upper limit of evaporation from wet ground, as a multiple of the reference:
 * `K_c,max = 1.2 + (0.04·(u_2 − 2) − 0.004·(RH_min − 45))·(h/3)^0.3`.
 *
 * @param wind2m m/s, taken between 1 and 6
 * @param minHumidity the driest of the day, a share, taken between 0.2 and 0.8
 * @param plantM height of plants, 0 to 10 m; 0 on bare soil, where wind and humidity fall out
 * @returns `science/out-of-bounds` for what cannot be
 *
 * Source: FAO-56, eq. 72; limits of wind and humidity from memory.
 *
 * @example
 * wetSoilCoefficient(2, 0.45, 0.3).value // => 1.2
 */
export const wetSoilCoefficient = (wind2m: number, minHumidity: number, plantM: number): Result<number> =>
  where(
    [
      ["wind", wind2m, 0, 75],
      ["humidity", minHumidity, 0, 1],
      ["plant height", plantM, 0, 10],
    ],
    () => {
      const wind = Math.min(6, Math.max(1, wind2m)) - 2;
      const dryness = 100 * Math.min(0.8, Math.max(0.2, minHumidity)) - 45;
      return 1.2 + (0.04 * wind - 0.004 * dryness) * (plantM / 3) ** 0.3;
    },
  );

/** One day: how much the air asks for, and rain early on it. */
export interface DryingDay {
  /** mm. */
  readonly etMm: number;
  /** mm; 0 for none, null for rain of an amount that nobody knows, which is taken to wet the layer through. */
  readonly rainMm: number | null;
}

/** One day of drying. */
export interface DriedDay {
  readonly stage: "first" | "second" | "dry";
  /** mm that had evaporated since the surface was wet, after rain and before the day's evaporation. */
  readonly startMm: number;
  readonly reduction: number;
  readonly evaporatedMm: number;
  readonly endMm: number;
}

/**
 * Drying day by day. Rain counts early on its day. The step is a day, as in the method: on the day on which the first
 * stage ends the surface gives up to a day's evaporation more than its readily evaporable water.
 *
 * @param days in order, one after another
 * @param coefficient `wetSoilCoefficient`, 0.5 to 2
 * @param startMm evaporated already before the first day; all of TEW is a dry surface, which gives nothing
 * until it rains
 * @returns one entry per day, none for none; `science/out-of-bounds` for what cannot be
 *
 * Source: FAO-56, eqs 71, 74 and 77 for bare soil.
 *
 * @example
 * const day = { etMm: 4.5, rainMm: 0 };
 * const dried = twoStageDrying([{ etMm: 4.5, rainMm: null }, day, day], { rewMm: 6, tewMm: 12 }, 1.2, 12);
 * dried.value[2].evaporatedMm // => ≈ 1.08
 */
export const twoStageDrying = (
  days: readonly DryingDay[],
  surface: Surface,
  coefficient: number,
  startMm: number,
): Result<readonly DriedDay[]> => {
  const good = bounded([
    ["readily evaporable water", surface.rewMm, 0, MOST_MM],
    ["evaporable water", surface.tewMm, 0, MOST_MM],
    ["coefficient of wet soil", coefficient, 0.5, 2],
    ["depletion", startMm, 0, MOST_MM],
    ...days.flatMap(
      ({ etMm, rainMm }) =>
        [
          ["evapotranspiration", etMm, 0, 30],
          ["rain", rainMm ?? 0, 0, 2000],
        ] as const,
    ),
  ]);
  if (!good.ok) return good;
  let depleted = Math.min(startMm, surface.tewMm);
  return ok(
    days.map(({ etMm, rainMm }): DriedDay => {
      const start = rainMm === null ? 0 : Math.max(0, depleted - rainMm);
      const share = reduction(start, surface);
      const evaporatedMm = Math.min(share * coefficient * etMm, surface.tewMm - start);
      depleted = start + evaporatedMm;
      const stage = share === 1 ? "first" : share > 0 ? "second" : "dry";
      return { stage, startMm: start, reduction: share, evaporatedMm, endMm: depleted };
    }),
  );
};
