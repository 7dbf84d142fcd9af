/** Reference evapotranspiration of grass by FAO-56 Penman–Monteith, from its parts. */
import type { Result } from "../../record/result.ts";
import * as k from "../constants/water.ts";
import { where } from "./bounded.ts";

/** The parts of the equation for one day. */
export interface PenmanMonteithParts {
  /** MJ/m² per day. */
  readonly netRadiationMJ: number;
  /** Heat that goes into the soil, MJ/m² per day: about 0 for a day. */
  readonly soilHeatMJ: number;
  readonly meanC: number;
  /** m/s at 2 m. */
  readonly wind2m: number;
  /** kPa. */
  readonly saturationKPa: number;
  readonly actualKPa: number;
  /** kPa/°C. */
  readonly slope: number;
  readonly psychrometric: number;
}

/**
 * `ET_o = (0.408·Δ·(R_n − G) + γ·900/(T + 273)·u_2·(e_s − e_a)) / (Δ + γ·(1 + 0.34·u_2))`.
 *
 * @returns mm per day; 0 where the equation would have dew settle. `science/out-of-bounds` for a part that cannot
 * be or is not finite
 *
 * Source: FAO-56, eq. 6.
 *
 * @example
 * penmanMonteith({ netRadiationMJ: 13.28, soilHeatMJ: 0, meanC: 16.9, wind2m: 2.078, saturationKPa: 1.997, actualKPa: 1.409, slope: 0.122, psychrometric: 0.0666 }).value // => ≈ 3.88
 */
export const penmanMonteith = (parts: PenmanMonteithParts): Result<number> => {
  const { netRadiationMJ, soilHeatMJ, meanC, wind2m, saturationKPa, actualKPa, slope, psychrometric } = parts;
  return where(
    [
      ["net radiation", netRadiationMJ, -60, 60],
      ["soil heat", soilHeatMJ, -60, 60],
      ["temperature", meanC, -60, 60],
      ["wind", wind2m, 0, 75],
      ["saturation vapour pressure", saturationKPa, 0, 20],
      ["vapour pressure", actualKPa, 0, saturationKPa],
      ["slope", slope, 1e-6, 2],
      ["psychrometric constant", psychrometric, 1e-3, 0.1],
    ],
    () => {
      const warmth = k.MM_PER_MJ * slope * (netRadiationMJ - soilHeatMJ);
      const dryness =
        ((psychrometric * k.GRASS_AERODYNAMIC) / (meanC + 273)) * wind2m * (saturationKPa - actualKPa);
      return Math.max(0, (warmth + dryness) / (slope + psychrometric * (1 + k.GRASS_SURFACE * wind2m)));
    },
  );
};
