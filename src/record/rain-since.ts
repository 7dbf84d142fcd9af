/** How long ago it rained last, as far as the rain gauge was written down. */
import type { Rain } from "./kinds/rain.ts";

/** Which day it is, counted from one that stands still: arithmetic of the Gregorian calendar, years from March on. */
const dayNumber = (day: string): number => {
  const [year = 0, month = 0, ofMonth = 0] = day.split("-").map(Number);
  const fromMarch = (month + 9) % 12;
  const years = fromMarch > 9 ? year - 1 : year;
  const leapDays = Math.floor(years / 4) - Math.floor(years / 100) + Math.floor(years / 400);
  return years * 365 + leapDays + Math.floor((153 * fromMarch + 2) / 5) + ofMonth;
};

/** The last rain before or on a day. */
export interface LastRain {
  /** Whole calendar days since then; 0 on the day itself. */
  readonly days: number;
  readonly day: string;
  /** All readings of that day added up, in millimetres. */
  readonly depthMm: number;
}

/**
 * The last rain up to a day. A reading of nothing is no rain, and one dated later is not known yet on that day.
 *
 * @param rains readings of the gauge, in any order
 * @param day calendar day that is asked about, like `2026-11-25`
 * @returns null when no rain was written down up to then; that is not the same as no rain
 *
 * @example
 * rainSince([{ day: "2026-11-20", depthMm: 4 }], "2026-11-25") // => { days: 5, day: "2026-11-20", depthMm: 4 }
 */
export const rainSince = (rains: readonly Pick<Rain, "day" | "depthMm">[], day: string): LastRain | null => {
  const fallen = rains.filter((rain) => rain.depthMm > 0 && rain.day <= day);
  const last = fallen.reduce<string | null>(
    (newest, rain) => (newest === null || rain.day > newest ? rain.day : newest),
    null,
  );
  if (last === null) return null;
  return {
    days: dayNumber(day) - dayNumber(last),
    day: last,
    depthMm: fallen.filter((rain) => rain.day === last).reduce((sum, { depthMm }) => sum + depthMm, 0),
  };
};
