/** The range that Student's t gives around an estimate. */
import { ok, type Result } from "../../record/result.ts";
import type { Bounds } from "../estimate.ts";
import { studentQuantile } from "./distributions.ts";

/**
 * `centre ± t_{ν}·SE`.
 *
 * @param centre and `standardError` in one unit; the error is 0 or more
 * @param level above 0 and below 1
 * @returns reasons as `studentQuantile`
 *
 * Source: NIST/SEMATECH e-Handbook, 1.3.5.2.
 *
 * @example
 * studentRange(3, 1, 2, 0.95).value.upper // => ≈ 7.3027
 */
export const studentRange = (
  centre: number,
  standardError: number,
  degreesOfFreedom: number,
  level: number,
): Result<Bounds> => {
  const t = studentQuantile((1 + level) / 2, degreesOfFreedom);
  if (!t.ok) return t;
  const half = t.value * standardError;
  return ok({ lower: centre - half, upper: centre + half });
};
