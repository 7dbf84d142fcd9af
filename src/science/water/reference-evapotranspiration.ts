/** Reference evapotranspiration of a day, by what was read of its weather. */
import { failed, ok, type Result } from "../../record/result.ts";
import { HARGREAVES_OFF } from "../constants/water.ts";
import type { Caution } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import { assumed, type Limits, type Ranged, ranged, usable } from "../residue/ranged.ts";
import {
  actualVapourPressure,
  airPressure,
  type DayWarmth,
  type Humidity,
  meanSaturationVapourPressure,
  psychrometricConstant,
  slopeOfVapourPressure,
  windAt2m,
} from "./air.ts";
import { corners } from "./corners.ts";
import { hargreaves } from "./hargreaves.ts";
import { penmanMonteith } from "./penman-monteith.ts";
import {
  clearSkyRadiation,
  netRadiation,
  solarRadiationFromSunshine,
  solarRadiationFromWarmth,
} from "./radiation.ts";
import { daylightHours, extraterrestrialRadiation, radiationAsWater } from "./sun.ts";

/** Weather of one day; null is what was not read. */
export interface DayWeather extends DayWarmth {
  readonly humidity: Exclude<Humidity, { readonly by: "coldest" }> | null;
  readonly wind: { readonly metresPerSecond: number; readonly heightM: number } | null;
  readonly sun: { readonly hours: number } | { readonly megajoules: number } | null;
}

/** Where and when. */
export interface DayAndPlace {
  /** South negative. */
  readonly latitudeDeg: number;
  readonly elevationM: number;
  /** 1 to 366. */
  readonly dayOfYear: number;
}

/** What stands in for what was not read; the person can change each. */
export interface StandIns {
  /** m/s at 2 m. */
  readonly wind2m: Ranged;
  /** k_Rs: 0.16 inland, 0.19 at a coast. */
  readonly radiationCoefficient: Ranged;
  /** What Hargreaves is multiplied with to agree with the place. */
  readonly hargreavesFactor: Ranged;
}

/**
 * Usual figures for weather that was not read. Hargreaves was 5 and 10 % above Penman–Monteith on the two days that
 * were checked, and is further off in humid and in windy places: a fifth to either side stands in.
 *
 * Source: FAO-56, eqs 50 and 52, and its usual wind of 2 m/s (from memory).
 *
 * @example
 * usualStandIns().wind2m // => { low: 1, middle: 2, high: 3 }
 */
export const usualStandIns = (): StandIns => ({
  wind2m: assumed("wind-2m", { low: 1, middle: 2, high: 3 }, "m/s", "fao-56-from-memory"),
  radiationCoefficient: assumed(
    "radiation-coefficient",
    { low: 0.16, middle: 0.175, high: 0.19 },
    "1",
    "fao-56",
  ),
  hargreavesFactor: assumed(
    "hargreaves-factor",
    { low: 1 - HARGREAVES_OFF, middle: 1, high: 1 + HARGREAVES_OFF },
    "1",
    "own-rule",
  ),
});

/** Evapotranspiration of a day, and the way that it was worked out. */
export interface ReferenceEvapotranspiration extends Ranged {
  readonly way: "penman-monteith" | "hargreaves";
}

const WIND: Limits = { unit: "m/s", least: 0, most: 75 };
const COEFFICIENT: Limits = { unit: "1", least: 0.1, most: 0.3 };
const FACTOR: Limits = { unit: "1", least: 0.2, most: 3 };
const CALIBRATE: Caution = { code: "science/temperatures-only", facts: {} };
const MOIST_NIGHTS: Caution = { code: "science/humidity-not-read", facts: {} };
const USUAL_WIND: Caution = { code: "science/wind-not-read", facts: {} };
const SUN_GUESSED: Caution = { code: "science/sun-not-read", facts: {} };

/** An answer with the methods of its parts in front of its own. */
const madeOf = (answer: Ranged, parts: readonly MethodId[]): Ranged => ({
  ...answer,
  methods: [...parts, ...answer.methods],
  sources: [...new Set([...answer.sources, ...sourcesOf(parts)])],
});

const byHargreaves = (
  day: DayWeather,
  at: DayAndPlace,
  { hargreavesFactor }: StandIns,
): Result<ReferenceEvapotranspiration> => {
  const good = usable([[hargreavesFactor, FACTOR]]);
  if (!good.ok) return good;
  const above = extraterrestrialRadiation(at.latitudeDeg, at.dayOfYear);
  if (!above.ok) return above;
  const water = radiationAsWater(above.value);
  if (!water.ok) return water;
  const et = hargreaves(day, water.value);
  if (!et.ok) return et;
  const { low, middle, high } = hargreavesFactor;
  const made = { from: [hargreavesFactor], method: "hargreaves", cautions: [CALIBRATE] } as const;
  const answer = ranged([et.value * low, et.value * middle, et.value * high], "mm/d", made);
  return ok({ ...madeOf(answer, ["extraterrestrial-radiation"]), way: "hargreaves" });
};

/** The parts that do not depend on what was not read. */
const known = (day: DayWeather, at: DayAndPlace) => {
  const meanC = (day.maxC + day.minC) / 2;
  const pressure = airPressure(at.elevationM);
  const above = extraterrestrialRadiation(at.latitudeDeg, at.dayOfYear);
  const daylight = daylightHours(at.latitudeDeg, at.dayOfYear);
  const saturation = meanSaturationVapourPressure(day);
  const actual = actualVapourPressure(day, day.humidity ?? { by: "coldest" });
  const slope = slopeOfVapourPressure(meanC);
  if (!pressure.ok) return pressure;
  if (!above.ok) return above;
  if (!daylight.ok) return daylight;
  if (!saturation.ok) return saturation;
  if (!actual.ok) return actual;
  if (!slope.ok) return slope;
  const psychrometric = psychrometricConstant(pressure.value);
  const clear = clearSkyRadiation(at.elevationM, above.value);
  if (!psychrometric.ok) return psychrometric;
  if (!clear.ok) return clear;
  return ok({
    meanC,
    raMJ: above.value,
    daylightH: daylight.value,
    clearSkyMJ: clear.value,
    saturationKPa: saturation.value,
    actualKPa: actual.value,
    slope: slope.value,
    psychrometric: psychrometric.value,
  });
};

const byPenmanMonteith = (
  day: DayWeather,
  at: DayAndPlace,
  { wind2m, radiationCoefficient }: StandIns,
): Result<ReferenceEvapotranspiration> => {
  const read = known(day, at);
  if (!read.ok) return read;
  const { raMJ, daylightH, clearSkyMJ, actualKPa } = read.value;
  const { sun, wind } = day;
  const et = (windMs: number, coefficient: number): Result<number> => {
    const solar =
      sun === null
        ? solarRadiationFromWarmth(day, coefficient, raMJ, clearSkyMJ)
        : "hours" in sun
          ? solarRadiationFromSunshine(sun.hours, daylightH, raMJ)
          : ok(sun.megajoules);
    const speed = wind === null ? ok(windMs) : windAt2m(wind.metresPerSecond, wind.heightM);
    if (!solar.ok) return solar;
    if (!speed.ok) return speed;
    const net = netRadiation({ ...day, actualKPa, solarMJ: solar.value, clearSkyMJ });
    if (!net.ok) return net;
    return penmanMonteith({
      ...read.value,
      netRadiationMJ: net.value,
      soilHeatMJ: 0,
      wind2m: speed.value,
    });
  };
  const from = [
    ...(wind === null ? [[wind2m, WIND] as const] : []),
    ...(sun === null ? [[radiationCoefficient, COEFFICIENT] as const] : []),
  ];
  const good = usable(from);
  if (!good.ok) return good;
  const first = et(wind2m.middle, radiationCoefficient.middle);
  if (!first.ok) return first;
  const span = corners([wind2m, radiationCoefficient], ([speed = 0, coefficient = 0]) => {
    const one = et(speed, coefficient);
    return one.ok ? one.value : first.value;
  });
  const cautions = [
    ...(day.humidity === null ? [MOIST_NIGHTS] : []),
    ...(wind === null ? [USUAL_WIND] : []),
    ...(sun === null ? [SUN_GUESSED] : []),
  ];
  const made = { from: from.map(([one]) => one), method: "penman-monteith", cautions } as const;
  const answer = ranged([span.low, span.middle, span.high], "mm/d", made);
  const parts: readonly MethodId[] = [
    "vapour-pressure",
    "air-pressure",
    ...(wind === null ? [] : (["wind-at-2-m"] as const)),
    "extraterrestrial-radiation",
    "net-radiation",
  ];
  return ok({ ...madeOf(answer, parts), way: "penman-monteith" });
};

/**
 * Evapotranspiration of well-watered short grass on one day. By Penman–Monteith when humidity, wind or sunshine
 * was read, with stand-ins for what is missing among them; by Hargreaves from temperatures alone.
 *
 * @returns mm per day with the way and cautions on what was not read. A day with everything read has no width, which
 * says nothing of how good the readings are. `science/out-of-bounds`, `science/warmest-below-coldest`,
 * `science/dew-above-warmth` or `science/not-a-range` for what cannot be; a day and a night alike give 0 by Hargreaves
 *
 * Source: FAO-56, chapters 2 to 4.
 *
 * @example
 * const uccle = { latitudeDeg: 50.8, elevationM: 100, dayOfYear: 187 };
 * const sixthOfJuly = { maxC: 21.5, minC: 12.3, humidity: { by: "extremes", max: 0.84, min: 0.63 }, wind: { metresPerSecond: 2.78, heightM: 10 }, sun: { hours: 9.25 } };
 * referenceEvapotranspiration(sixthOfJuly, uccle, usualStandIns()).value.middle // => ≈ 3.88
 */
export const referenceEvapotranspiration = (
  day: DayWeather,
  at: DayAndPlace,
  standIns: StandIns,
): Result<ReferenceEvapotranspiration> => {
  if (day.sun !== null && "megajoules" in day.sun && !(day.sun.megajoules >= 0 && day.sun.megajoules <= 60))
    return failed("science/out-of-bounds", { what: "solar radiation", least: 0, most: 60 });
  return day.humidity === null && day.wind === null && day.sun === null
    ? byHargreaves(day, at, standIns)
    : byPenmanMonteith(day, at, standIns);
};
