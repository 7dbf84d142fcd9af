/** Ranges for a share of independent trials. Marks of several lines are not such trials; see `coverOfStrip`. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Bounds } from "../estimate.ts";
import { betaQuantile, normalQuantile } from "./distributions.ts";

const checked = (hits: number, trials: number): Result<number> => {
  if (!(Number.isSafeInteger(hits) && Number.isSafeInteger(trials) && hits >= 0 && hits <= trials))
    return failed("science/not-a-count", { hits: String(hits), of: String(trials) });
  return trials === 0 ? failed("science/no-marks-read") : ok(hits / trials);
};

/**
 * Wilson's range for a share.
 *
 * @param hits whole number, 0 to `trials`
 * @param trials whole number, 1 or more
 * @param level above 0 and below 1
 * @returns both ends as shares; `science/no-marks-read` for no trials, `science/not-a-count` for anything
 * that is not a count
 *
 * Source: Wilson 1927, J. Am. Stat. Assoc. 22: 209-212.
 *
 * @example
 * wilsonInterval(30, 100, 0.95); // 0.219 to 0.396
 */
export const wilsonInterval = (hits: number, trials: number, level: number): Result<Bounds> => {
  const share = checked(hits, trials);
  if (!share.ok) return share;
  const quantile = normalQuantile((1 + level) / 2);
  if (!quantile.ok) return quantile;
  const z2 = quantile.value ** 2 / trials;
  const centre = share.value + z2 / 2;
  const half = Math.sqrt(z2 * (share.value * (1 - share.value) + z2 / 4));
  return ok({
    // At none and all the ends are exactly 0 and 1; rounding would leave them a hair inside or outside.
    lower: hits === 0 ? 0 : (centre - half) / (1 + z2),
    upper: hits === trials ? 1 : (centre + half) / (1 + z2),
  });
};

/**
 * The exact range for a share after Clopper and Pearson: never too narrow, often a little too wide.
 *
 * @param hits whole number, 0 to `trials`
 * @param trials whole number, 1 or more
 * @param level above 0 and below 1
 * @returns both ends as shares; reasons as `wilsonInterval`
 *
 * Source: Clopper & Pearson 1934, Biometrika 26: 404-413.
 *
 * @example
 * exactInterval(0, 10, 0.95); // 0 to 0.3085
 */
export const exactInterval = (hits: number, trials: number, level: number): Result<Bounds> => {
  const share = checked(hits, trials);
  if (!share.ok) return share;
  const tail = (1 - level) / 2;
  const lower = hits === 0 ? ok(0) : betaQuantile(tail, hits, trials - hits + 1);
  const upper = hits === trials ? ok(1) : betaQuantile(1 - tail, hits + 1, trials - hits);
  if (!lower.ok) return lower;
  return upper.ok ? ok({ lower: lower.value, upper: upper.value }) : upper;
};

/**
 * The largest share that still leaves a chance of `1 − level` to see none: `1 − (1 − level)^(1/trials)`.
 * All hits are the same question asked about the misses.
 *
 * @param trials above 0; need not be whole, for trials that count for less than one
 * @param level above 0 and below 1
 * @returns `science/no-marks-read` unless `trials` is above 0, `science/not-a-probability` for the level
 *
 * Source: the one-sided case of Clopper & Pearson 1934.
 *
 * @example
 * largestShareUnseen(10, 0.95); // 0.2589
 */
export const largestShareUnseen = (trials: number, level: number): Result<number> => {
  if (!(trials > 0 && Number.isFinite(trials))) return failed("science/no-marks-read");
  if (!(level > 0 && level < 1)) return failed("science/not-a-probability", { probability: String(level) });
  return ok(-Math.expm1(Math.log1p(-level) / trials));
};
