/** Radiation at the ground: what the sun sends, what grass keeps. */
import { ok, type Result } from "../../record/result.ts";
import * as k from "../constants/water.ts";
import { checkedWarmth, type DayWarmth } from "./air.ts";
import { type Bounded, bounded, where } from "./bounded.ts";

const radiation = (what: string, megajoules: number): Bounded => [what, megajoules, 0, 60];

/**
 * Solar radiation from hours of sunshine (Ångström): `R_s = (0.25 + 0.5·n/N)·R_a`.
 *
 * @param sunshineH hours of bright sunshine, 0 up to the hours of daylight
 * @param daylightH as `daylightHours`; 0 in the polar night gives 0
 * @param raMJ extraterrestrial radiation, MJ/m² per day
 * @returns MJ/m² per day; `science/out-of-bounds` for more sunshine than daylight (half an hour is forgiven)
 *
 * Source: FAO-56, eq. 35.
 *
 * @example
 * solarRadiationFromSunshine(9.25, 16.1, 41.09).value // => ≈ 22.1
 */
export const solarRadiationFromSunshine = (
  sunshineH: number,
  daylightH: number,
  raMJ: number,
): Result<number> =>
  where(
    [
      radiation("radiation", raMJ),
      ["daylight", daylightH, 0, 24],
      ["sunshine", sunshineH, 0, Math.min(24, daylightH + 0.5)],
    ],
    () => (daylightH === 0 ? 0 : (k.DULL_SHARE + k.CLEAR_SHARE * Math.min(1, sunshineH / daylightH)) * raMJ),
  );

/**
 * Solar radiation from the spread of temperatures (Hargreaves): `R_s = k_Rs·√(T_max − T_min)·R_a`, never above
 * clear sky.
 *
 * @param coefficient 0.16 inland to 0.19 at a coast, 0.1 to 0.3 are taken
 * @param clearSkyMJ as `clearSkyRadiation`
 * @returns MJ/m² per day; `science/out-of-bounds` for what cannot be, else reasons as `checkedWarmth`
 *
 * Source: FAO-56, eq. 50.
 *
 * @example
 * solarRadiationFromWarmth({ maxC: 26.6, minC: 14.8 }, 0.16, 40.6, 30.6).value // => ≈ 22.3
 */
export const solarRadiationFromWarmth = (
  day: DayWarmth,
  coefficient: number,
  raMJ: number,
  clearSkyMJ: number,
): Result<number> => {
  const good = checkedWarmth(day);
  if (!good.ok) return good;
  return where(
    [
      ["radiation coefficient", coefficient, 0.1, 0.3],
      radiation("radiation", raMJ),
      radiation("clear-sky radiation", clearSkyMJ),
    ],
    () => Math.min(clearSkyMJ, coefficient * Math.sqrt(day.maxC - day.minC) * raMJ),
  );
};

/**
 * Radiation under a clear sky: `R_so = (0.75 + 0.00002·z)·R_a`.
 *
 * @returns MJ/m² per day; `science/out-of-bounds` for a height outside −500 to 9000 m
 *
 * Source: FAO-56, eq. 37.
 *
 * @example
 * clearSkyRadiation(100, 41.09).value // => ≈ 30.9
 */
export const clearSkyRadiation = (elevationM: number, raMJ: number): Result<number> =>
  where(
    [radiation("radiation", raMJ), ["elevation", elevationM, -500, 9000]],
    () => (k.CLEAR_SKY + k.CLEAR_SKY_PER_M * elevationM) * raMJ,
  );

/**
 * Shortwave radiation that grass keeps: `R_ns = (1 − 0.23)·R_s`.
 *
 * @returns MJ/m² per day; `science/out-of-bounds` outside 0 to 60
 *
 * Source: FAO-56, eq. 38.
 *
 * @example
 * netShortwave(22.07).value // => ≈ 16.99
 */
export const netShortwave = (solarMJ: number): Result<number> =>
  where([radiation("solar radiation", solarMJ)], () => (1 - k.ALBEDO) * solarMJ);

/** What the net longwave radiation rests on. */
export interface LongwaveDay extends DayWarmth {
  /** Vapour pressure of the air, kPa. */
  readonly actualKPa: number;
  /** Solar radiation as it was and under a clear sky, MJ/m² per day. */
  readonly solarMJ: number;
  readonly clearSkyMJ: number;
}

/**
 * Longwave radiation that leaves, net:
 * `R_nl = σ·(T_max,K⁴ + T_min,K⁴)/2·(0.34 − 0.14·√e_a)·(1.35·R_s/R_so − 0.35)`.
 *
 * The cloud term takes R_s/R_so between 0.3 and 1: below that it would turn round and let clouds radiate.
 *
 * @returns MJ/m² per day, 0 or more; `science/out-of-bounds` for what cannot be, else reasons as `checkedWarmth`
 *
 * Source: FAO-56, eq. 39; lower limit ASCE 2005, from memory.
 *
 * @example
 * netLongwave({ maxC: 21.5, minC: 12.3, actualKPa: 1.409, solarMJ: 22.07, clearSkyMJ: 30.9 }).value // => ≈ 3.71
 */
export const netLongwave = (day: LongwaveDay): Result<number> => {
  const good = checkedWarmth(day);
  if (!good.ok) return good;
  const { actualKPa, solarMJ, clearSkyMJ } = day;
  const readings = bounded([
    ["vapour pressure", actualKPa, 0, 20],
    radiation("solar radiation", solarMJ),
    radiation("clear-sky radiation", clearSkyMJ),
  ]);
  if (!readings.ok) return readings;
  const fourth = (celsius: number): number => (celsius + k.KELVIN) ** 4;
  const clear = clearSkyMJ === 0 ? 1 : Math.max(k.DULLEST_SKY, Math.min(1, solarMJ / clearSkyMJ));
  const body = (k.STEFAN_BOLTZMANN * (fourth(day.maxC) + fourth(day.minC))) / 2;
  const air = Math.max(0, k.LONGWAVE_AIR - k.LONGWAVE_VAPOUR * Math.sqrt(actualKPa));
  return ok(body * air * (k.CLOUD_RATE * clear - k.CLOUD_SHIFT));
};

/**
 * Net radiation of grass: `R_n = R_ns − R_nl`; negative on a winter's day.
 *
 * @returns MJ/m² per day; reasons as `netLongwave`
 *
 * Source: FAO-56, eq. 40.
 *
 * @example
 * netRadiation({ maxC: 21.5, minC: 12.3, actualKPa: 1.409, solarMJ: 22.07, clearSkyMJ: 30.9 }).value // => ≈ 13.28
 */
export const netRadiation = (day: LongwaveDay): Result<number> => {
  const out = netLongwave(day);
  const kept = netShortwave(day.solarMJ);
  if (!out.ok) return out;
  return kept.ok ? ok(kept.value - out.value) : kept;
};
