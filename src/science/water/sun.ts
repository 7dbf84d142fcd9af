/** Where the sun stands on a day of the year, and what it sends above the air. */
import { failed, ok, type Result } from "../../record/result.ts";
import * as k from "../constants/water.ts";
import { type Bounded, where } from "./bounded.ts";

const RADIANS = Math.PI / 180;
const MINUTES_PER_DAY = 1440;
const HOURS_PER_DAY = 24;
const turnOfYear = (dayOfYear: number): number => (2 * Math.PI * dayOfYear) / 365;
const aDay = (dayOfYear: number): Bounded => ["day of the year", dayOfYear, 1, 366];
const aLatitude = (latitudeDeg: number): Bounded => ["latitude", latitudeDeg, -90, 90];

const DAYS_BEFORE = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/**
 * Day of the year of a calendar day, 1 to 366.
 *
 * @param isoDay year, month and day as in 2025-09-03
 * @returns `science/not-a-calendar-day` for anything else and for days that are not in the calendar
 *
 * @example
 * dayOfYear("2025-09-03").value // => 246
 */
export const dayOfYear = (isoDay: string): Result<number> => {
  const parts = /^(\d{4})-(\d\d)-(\d\d)$/.exec(isoDay);
  const [year = 0, month = 0, day = 0] = parts === null ? [] : parts.slice(1).map(Number);
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const start = (after: number): number => (DAYS_BEFORE[after] ?? 365) + (leap && after > 1 ? 1 : 0);
  const inMonth = start(month) - start(month - 1);
  return month >= 1 && month <= 12 && day >= 1 && day <= inMonth
    ? ok(start(month - 1) + day)
    : failed("science/not-a-calendar-day");
};

/**
 * Inverse relative distance to the sun: `d_r = 1 + 0.033·cos(2π·J/365)`.
 *
 * @param day of the year, 1 to 366, as `dayOfYear`
 * @returns `science/out-of-bounds` outside that
 *
 * Source: FAO-56, eq. 23.
 *
 * @example
 * inverseRelativeDistance(246).value // => ≈ 0.985
 */
export const inverseRelativeDistance = (day: number): Result<number> =>
  where([aDay(day)], () => 1 + k.SUN_DISTANCE * Math.cos(turnOfYear(day)));

/**
 * Solar declination: `δ = 0.409·sin(2π·J/365 − 1.39)`, north positive.
 *
 * @returns radians; `science/out-of-bounds` for a day outside 1 to 366
 *
 * Source: FAO-56, eq. 24.
 *
 * @example
 * solarDeclination(246).value // => ≈ 0.12
 */
export const solarDeclination = (day: number): Result<number> =>
  where([aDay(day)], () => k.DECLINATION_RAD * Math.sin(turnOfYear(day) - k.DECLINATION_SHIFT));

/**
 * Sunset hour angle: `ω_s = arccos(−tan φ·tan δ)`. Where the sun does not set it is π, where it does not rise 0:
 * the argument is held between −1 and 1, or the far north would have no answer in summer.
 *
 * @param latitudeDeg −90 to 90, south negative
 * @returns radians; `science/out-of-bounds` outside that
 *
 * Source: FAO-56, eq. 25.
 *
 * @example
 * sunsetHourAngle(-20, 246).value // => ≈ 1.527
 */
export const sunsetHourAngle = (latitudeDeg: number, day: number): Result<number> => {
  const declination = solarDeclination(day);
  if (!declination.ok) return declination;
  return where([aLatitude(latitudeDeg)], () =>
    Math.acos(Math.max(-1, Math.min(1, -Math.tan(latitudeDeg * RADIANS) * Math.tan(declination.value)))),
  );
};

/**
 * Hours from sunrise to sunset: `N = 24·ω_s/π`.
 *
 * @returns 0 to 24 h; reasons as `sunsetHourAngle`
 *
 * Source: FAO-56, eq. 34.
 *
 * @example
 * daylightHours(-20, 246).value // => ≈ 11.67
 */
export const daylightHours = (latitudeDeg: number, day: number): Result<number> => {
  const angle = sunsetHourAngle(latitudeDeg, day);
  return angle.ok ? ok((HOURS_PER_DAY * angle.value) / Math.PI) : angle;
};

/**
 * Extraterrestrial radiation of a day:
 * `R_a = (1440/π)·0.082·d_r·(ω_s·sin φ·sin δ + cos φ·cos δ·sin ω_s)`.
 *
 * @returns MJ/m² per day, 0 in the polar night; reasons as `sunsetHourAngle`
 *
 * Source: FAO-56, eq. 21.
 *
 * @example
 * extraterrestrialRadiation(-20, 246).value // => ≈ 32.2
 */
export const extraterrestrialRadiation = (latitudeDeg: number, day: number): Result<number> => {
  const angle = sunsetHourAngle(latitudeDeg, day);
  const declination = solarDeclination(day);
  const distance = inverseRelativeDistance(day);
  if (!angle.ok) return angle;
  if (!declination.ok) return declination;
  if (!distance.ok) return distance;
  const [phi, delta, omega] = [latitudeDeg * RADIANS, declination.value, angle.value];
  const lit = omega * Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.sin(omega);
  return ok(Math.max(0, (MINUTES_PER_DAY / Math.PI) * k.SOLAR_MJ_PER_M2_MIN * distance.value * lit));
};

/**
 * Water that radiation could evaporate: 0.408 mm for each MJ/m².
 *
 * @param megajoules MJ/m² per day, 0 to 60
 * @returns mm per day; `science/out-of-bounds` outside that
 *
 * Source: FAO-56, eq. 20.
 *
 * @example
 * radiationAsWater(32.2).value // => ≈ 13.1
 */
export const radiationAsWater = (megajoules: number): Result<number> =>
  where([["radiation", megajoules, 0, 60]], () => k.MM_PER_MJ * megajoules);
