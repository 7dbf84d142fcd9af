/** How many times as fast one strip has to soak in as another for so many rings to show it. */
import { failed, ok, type Result } from "../../record/result.ts";
import { CONFIDENCE_LEVEL, PLANNING_RING_CV, POWER } from "../constants.ts";
import type { Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import { studentQuantile } from "../statistics/distributions.ts";

/** Spread of logs from a coefficient of variation, for lognormal rates: `s = √ln(1+CV²)`. */
export const logSpreadOf = (coefficientOfVariation: number): number =>
  Math.sqrt(Math.log(1 + coefficientOfVariation ** 2));

/** Spread that is planned with before any ring was read. */
export const PLANNED_LOG_SPREAD = logSpreadOf(PLANNING_RING_CV);

/** Spread between rings of a strip, as logs. */
export interface LogSpread {
  readonly logSpread: number;
  readonly degreesOfFreedom: number;
  /** The same as a coefficient of variation. */
  readonly coefficientOfVariation: number;
}

/**
 * Spread seen between the rings of strips, pooled over the strips: `s² = Σ(n−1)s²/Σ(n−1)` on logs.
 *
 * @param strips per strip its rates, each above 0; others are left out
 * @returns `science/too-few-rings` unless there are two rings more than strips with two rings or more,
 * `science/no-number` for rates apart by more than numbers can hold
 *
 * @example
 * spreadBetweenRings([[12, 20, 35, 50, 180]]); // { logSpread: 1.0297, … }
 */
export const spreadBetweenRings = (strips: readonly (readonly number[])[]): Result<LogSpread> => {
  let squares = 0;
  let degreesOfFreedom = 0;
  let rings = 0;
  for (const rates of strips) {
    const logs = rates.filter((rate) => rate > 0 && Number.isFinite(rate)).map(Math.log);
    if (logs.length < 2) continue;
    const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
    squares += logs.reduce((sum, log) => sum + (log - mean) ** 2, 0);
    degreesOfFreedom += logs.length - 1;
    rings += logs.length;
  }
  if (degreesOfFreedom < 2) return failed("science/too-few-rings", { needs: 3, has: rings });
  const logSpread = Math.sqrt(squares / degreesOfFreedom);
  const coefficientOfVariation = Math.sqrt(Math.expm1(logSpread ** 2));
  return Number.isFinite(coefficientOfVariation)
    ? ok({ logSpread, degreesOfFreedom, coefficientOfVariation })
    : failed("science/no-number");
};

/** What so many rings can show. */
export interface SmallestRatio extends Worked {
  /** Times as fast, above 1. */
  readonly ratio: number;
  readonly logSpread: number;
}

/**
 * The smallest ratio of two strips that `ringsEach` rings on each show in 80 of 100 tries, two-sided at 5 %:
 * `R = exp((t_{ν;0.975} + t_{ν;0.8})·s·√(2/n))` with `ν = 2(n−1)`. It speaks of two places; which of them the
 * management made faster is another question.
 *
 * @param ringsEach whole, 2 or more
 * @param logSpread of the rings of a strip on logs, 0 or more; before any ring was read the planned one
 * @returns `science/too-few-rings`, `science/not-a-count` for a number that is not whole, `science/no-number`
 * for a spread that is negative or not finite, or a ratio too large to be one
 *
 * @example
 * smallestRatio(5).value.ratio // => ≈ 4.14
 */
export const smallestRatio = (
  ringsEach: number,
  logSpread: number = PLANNED_LOG_SPREAD,
): Result<SmallestRatio> => {
  if (!Number.isSafeInteger(ringsEach)) return failed("science/not-a-count");
  if (ringsEach < 2) return failed("science/too-few-rings", { needs: 2, has: Math.max(0, ringsEach) });
  if (!(logSpread >= 0 && Number.isFinite(logSpread))) return failed("science/no-number");
  const freedom = 2 * (ringsEach - 1);
  const level = studentQuantile((1 + CONFIDENCE_LEVEL) / 2, freedom);
  const power = studentQuantile(POWER, freedom);
  if (!level.ok) return level;
  if (!power.ok) return power;
  const ratio = Math.exp((level.value + power.value) * logSpread * Math.sqrt(2 / ringsEach));
  if (!Number.isFinite(ratio)) return failed("science/no-number");
  return ok({
    ratio,
    logSpread,
    n: ringsEach,
    sampledBy: "rings",
    cautions: [],
    methods: ["smallest-ratio"],
    sources: sourcesOf(["smallest-ratio"]),
  });
};
