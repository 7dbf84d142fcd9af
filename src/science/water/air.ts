/** What air holds: vapour pressures, air pressure and the psychrometric constant. */
import { failed, ok, type Result } from "../../record/result.ts";
import * as k from "../constants/water.ts";
import { type Bounded, bounded, where } from "./bounded.ts";

const warmth = (what: string, celsius: number): Bounded => [what, celsius, -60, 60];

const saturation = (celsius: number): number =>
  k.VAPOUR_KPA * Math.exp((k.VAPOUR_RATE * celsius) / (celsius + k.VAPOUR_SHIFT_C));

/**
 * Vapour pressure of saturated air: `e° = 0.6108·exp(17.27·T/(T + 237.3))`.
 *
 * @param celsius air temperature, −60 to 60 °C
 * @returns kPa; `science/out-of-bounds` outside that
 *
 * Source: FAO-56, eq. 11.
 *
 * @example
 * saturationVapourPressure(24.5).value // => ≈ 3.075
 */
export const saturationVapourPressure = (celsius: number): Result<number> =>
  where([warmth("temperature", celsius)], () => saturation(celsius));

/** The warmest and the coldest air of a day, in °C. */
export interface DayWarmth {
  readonly maxC: number;
  readonly minC: number;
}

/**
 * Whether two temperatures are those of a day.
 *
 * @returns `science/out-of-bounds` beyond −60 to 60 °C, `science/warmest-below-coldest` when they are swapped
 */
export const checkedWarmth = ({ maxC, minC }: DayWarmth): Result<true> => {
  const good = bounded([warmth("warmest", maxC), warmth("coldest", minC)]);
  if (!good.ok) return good;
  return maxC >= minC ? ok(true) : failed("science/warmest-below-coldest");
};

/**
 * Mean saturation vapour pressure of a day: the mean of `e°` at the warmest and at the coldest. `e°` of the mean
 * temperature would be too low, and evapotranspiration with it.
 *
 * @returns kPa; reasons as `checkedWarmth`
 *
 * Source: FAO-56, eq. 12.
 *
 * @example
 * meanSaturationVapourPressure({ maxC: 24.5, minC: 15 }).value // => ≈ 2.39
 */
export const meanSaturationVapourPressure = (day: DayWarmth): Result<number> => {
  const good = checkedWarmth(day);
  return good.ok ? ok((saturation(day.maxC) + saturation(day.minC)) / 2) : good;
};

/**
 * Slope of the saturation vapour pressure: `Δ = 4098·e°/(T + 237.3)²`.
 *
 * @param celsius mean air temperature, −60 to 60 °C
 * @returns kPa/°C; `science/out-of-bounds` outside that
 *
 * Source: FAO-56, eq. 13.
 *
 * @example
 * slopeOfVapourPressure(16.9).value // => ≈ 0.122
 */
export const slopeOfVapourPressure = (celsius: number): Result<number> =>
  where(
    [warmth("temperature", celsius)],
    () => (k.VAPOUR_SLOPE * saturation(celsius)) / (celsius + k.VAPOUR_SHIFT_C) ** 2,
  );

/** How the moisture of the air was read; relative humidities are shares, 0 to 1. */
export type Humidity =
  | { readonly by: "extremes"; readonly max: number; readonly min: number }
  | { readonly by: "mean"; readonly mean: number }
  | { readonly by: "dew-point"; readonly celsius: number }
  /** Not read: the air is taken to be saturated at the coldest of the day. */
  | { readonly by: "coldest" };

const share = (what: string, value: number): Bounded => [what, value, 0, 1];

/**
 * Vapour pressure of the air as it is: from the moistest and the driest reading of the day, from a mean, from the
 * dew point, or, when nothing was read, `e°` at the coldest.
 *
 * @returns kPa, never above the mean saturation pressure but by a wrong dew point (`science/dew-above-warmth`);
 * `science/out-of-bounds` for a humidity outside 0 to 1, else reasons as `checkedWarmth`
 *
 * Source: FAO-56, eqs 14, 17, 19 and 48.
 *
 * @example
 * actualVapourPressure({ maxC: 21.5, minC: 12.3 }, { by: "extremes", max: 0.84, min: 0.63 }).value // => ≈ 1.409
 */
export const actualVapourPressure = (day: DayWarmth, humidity: Humidity): Result<number> => {
  const good = checkedWarmth(day);
  if (!good.ok) return good;
  const warm = saturation(day.maxC);
  const cold = saturation(day.minC);
  if (humidity.by === "coldest") return ok(cold);
  if (humidity.by === "dew-point") {
    const dew = saturationVapourPressure(humidity.celsius);
    return dew.ok && dew.value > (warm + cold) / 2 ? failed("science/dew-above-warmth") : dew;
  }
  if (humidity.by === "mean")
    return where([share("humidity", humidity.mean)], () => (humidity.mean * (warm + cold)) / 2);
  const { max, min } = humidity;
  return where(
    [share("humidity", max), ["humidity", min, 0, Math.min(1, max)]],
    () => (cold * max + warm * min) / 2,
  );
};

/**
 * Air pressure at a height above the sea: `P = 101.3·((293 − 0.0065·z)/293)^5.26`.
 *
 * @param elevationM −500 to 9000 m
 * @returns kPa; `science/out-of-bounds` outside that
 *
 * Source: FAO-56, eq. 7.
 *
 * @example
 * airPressure(1800).value // => ≈ 81.76
 */
export const airPressure = (elevationM: number): Result<number> =>
  where(
    [["elevation", elevationM, -500, 9000]],
    () => k.SEA_LEVEL_KPA * (1 - (k.LAPSE_K_PER_M * elevationM) / k.STANDARD_K) ** k.PRESSURE_POWER,
  );

/**
 * Psychrometric constant: `γ = 0.000665·P`.
 *
 * @param pressureKPa air pressure, 20 to 120 kPa
 * @returns kPa/°C; `science/out-of-bounds` outside that
 *
 * Source: FAO-56, eq. 8.
 *
 * @example
 * psychrometricConstant(81.8).value // => ≈ 0.0544
 */
export const psychrometricConstant = (pressureKPa: number): Result<number> =>
  where([["air pressure", pressureKPa, 20, 120]], () => k.PSYCHROMETRIC * pressureKPa);

/**
 * Wind at 2 m over grass from wind at another height: `u_2 = u_z·4.87/ln(67.8·z − 5.42)`.
 *
 * @param speed m/s at `heightM`, 0 to 75
 * @param heightM of the meter, 0.5 to 100 m
 * @returns m/s; `science/out-of-bounds` outside that
 *
 * Source: FAO-56, eq. 47.
 *
 * @example
 * windAt2m(3.2, 10).value // => ≈ 2.39
 */
export const windAt2m = (speed: number, heightM: number): Result<number> =>
  where(
    [
      ["wind", speed, 0, 75],
      ["height of the wind meter", heightM, 0.5, 100],
    ],
    () => (speed * k.WIND_TOP) / Math.log(k.WIND_SCALE * heightM - k.WIND_SHIFT),
  );
