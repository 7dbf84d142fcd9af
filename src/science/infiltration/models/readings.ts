/** The readings that a curve is laid through. */
import { failed, ok, type Result } from "../../../record/result.ts";
import type { SoakPoint } from "../soaking.ts";

/** Times in hours and depths in millimetres, rising times, all above 0. */
export interface CurveReadings {
  readonly hours: readonly number[];
  readonly mm: readonly number[];
  readonly firstH: number;
  readonly lastH: number;
}

/** No ruler shows less; far smaller numbers have squares that no computer can hold. */
const LEAST_MM = 1e-6;

/**
 * Readings for a curve. Nothing has soaked in at the start whatever the curve, so readings at 0 min say
 * nothing about it and are left out. A depth that is lower than the one before it (a ruler read one step off)
 * stays as it was read.
 *
 * @param points minutes since water was first in the ring and depth soaked in, in any order; repeated times
 * each count
 * @param unknowns of the curve; one more time than that is needed, or nothing is left to judge it by
 * @returns `science/not-a-time` and `science/not-a-depth` for what is negative or not finite,
 * `science/too-few-readings-for-a-curve` by the number of different times, `science/nothing-soaked-yet` when
 * every depth is 0 or as good as that
 *
 * @example
 * curveReadings([{ atMin: 30, mm: 20 }, { atMin: 0, mm: 0 }, { atMin: 60, mm: 33 }], 1).value.hours // => [0.5, 1]
 */
export const curveReadings = (points: readonly SoakPoint[], unknowns: number): Result<CurveReadings> => {
  if (points.some(({ atMin }) => !(atMin >= 0 && Number.isFinite(atMin))))
    return failed("science/not-a-time");
  if (points.some(({ mm }) => !(mm >= 0 && Number.isFinite(mm)))) return failed("science/not-a-depth");
  const used = points.filter(({ atMin }) => atMin > 0).sort((a, b) => a.atMin - b.atMin || a.mm - b.mm);
  const times = new Set(used.map(({ atMin }) => atMin)).size;
  const needs = unknowns + 1;
  if (times < needs) return failed("science/too-few-readings-for-a-curve", { needs, has: times });
  if (used.every(({ mm }) => mm < LEAST_MM)) return failed("science/nothing-soaked-yet");
  const hours = used.map(({ atMin }) => atMin / 60);
  return ok({ hours, mm: used.map(({ mm }) => mm), firstH: hours[0] ?? 0, lastH: hours.at(-1) ?? 0 });
};
