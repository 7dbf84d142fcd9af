/** The headline of a ring: how deep water had soaked in after so many minutes. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Estimate } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import type { Soaking } from "./soaking.ts";

/** The times of the headline. */
export const HEADLINE_MINUTES = [30, 60, 180] as const;

/**
 * Depth soaked in after so many minutes, straight between the two readings around that moment and never
 * beyond the last one. One ring is one point: no range.
 *
 * @param minutes since water was first in the ring, above 0
 * @returns millimetres with the number of readings up to there. `science/not-a-time` for a time that is 0,
 * negative or not finite; `science/not-so-long-yet` when the readings do not reach so far;
 * `science/curve-broken` when a stretch before it does not count
 *
 * @example
 * depthAfter(soaking, 30); // 42.5 mm
 */
export const depthAfter = (soaking: Soaking, minutes: number): Result<Estimate> => {
  if (!(minutes > 0 && Number.isFinite(minutes))) return failed("science/not-a-time");
  const { curve, brokenBy } = soaking;
  const next = curve.findIndex(({ atMin }) => atMin >= minutes);
  const after = curve[next];
  const before = curve[next - 1];
  const reachedMin = Math.floor(curve.at(-1)?.atMin ?? 0);
  if (after === undefined || before === undefined)
    return failed(brokenBy === null ? "science/not-so-long-yet" : "science/curve-broken", {
      minutes,
      reachedMin,
    });
  const part = (minutes - before.atMin) / (after.atMin - before.atMin);
  const methods: MethodId[] = [...soaking.methods, "ring-depth-after"];
  return ok({
    value: before.mm + part * (after.mm - before.mm),
    unit: "mm",
    n: next + 1,
    sampledBy: "readings",
    range: failed("science/one-ring-only"),
    cautions: soaking.cautions,
    methods,
    sources: sourcesOf(methods),
  });
};
