/** Readings that can be, and reasons for those that cannot. */
import { failed, ok, type Result } from "../../record/result.ts";

/** A reading with its name and the bounds that it has to keep, in its own unit. */
export type Bounded = readonly [what: string, value: number, least: number, most: number];

/**
 * Whether readings are finite and within their bounds.
 *
 * @returns `science/out-of-bounds` with the name and the bounds of the first that is not
 *
 * @example
 * bounded([["humidity", 1.2, 0, 1]]) // => { ok: false, problem: { facts: { what: "humidity", least: 0, most: 1 } } }
 */
export const bounded = (readings: readonly Bounded[]): Result<true> => {
  const bad = readings.find(([, value, least, most]) => !(value >= least && value <= most));
  if (bad === undefined) return ok(true);
  const [what, , least, most] = bad;
  return failed("science/out-of-bounds", { what, least, most });
};

/** A formula behind the check of what goes into it. */
export const where = (readings: readonly Bounded[], formula: () => number): Result<number> => {
  const good = bounded(readings);
  return good.ok ? ok(formula()) : good;
};
