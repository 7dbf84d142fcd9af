/** What may be said of a difference. */
import type { Result } from "../../record/result.ts";
import type { Bounds } from "../estimate.ts";

/** Clearly different, probably different, or not to be told yet. */
export type Word = "clearly-different" | "probably-different" | "cannot-tell-yet";

const leavesOut = (range: Result<Bounds>, none: number): boolean =>
  range.ok && (range.value.lower > none || range.value.upper < none);

/**
 * *Clearly different* when the 95 % range leaves out no difference, *probably different* when only the 80 % range
 * does, else *cannot tell yet*: a range that touches no difference, or that could not be made, tells nothing.
 * Never "no difference": few samples cannot show that.
 *
 * @param range at 95 %
 * @param likely at 80 %
 * @param none what no difference is on this scale: 0 for differences and slopes, 1 for ratios
 *
 * Source: a rule of this product.
 *
 * @example
 * const range = { ok: true, value: { lower: -1, upper: 9 } };
 * const likely = { ok: true, value: { lower: 1, upper: 7 } };
 * wordFor(range, likely, 0) // => "probably-different"
 */
export const wordFor = (range: Result<Bounds>, likely: Result<Bounds>, none: number): Word =>
  leavesOut(range, none)
    ? "clearly-different"
    : leavesOut(likely, none)
      ? "probably-different"
      : "cannot-tell-yet";
