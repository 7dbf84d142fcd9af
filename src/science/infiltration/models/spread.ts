/** How far readings lie from their curve. */
import { failed, ok, type Result } from "../../../record/result.ts";
import type { Fit } from "./fit.ts";

/**
 * What is left over at a reading, on average: `s = √(SSE/(n − p))` with p the unknowns that are free.
 *
 * @returns millimetres; `science/too-few-readings-for-a-curve` when there are no more readings than unknowns
 *
 * @example
 * residualSpreadMm({ sseMm2: 8, n: 4, free: 2 }).value // => 2
 */
export const residualSpreadMm = ({ sseMm2, n, free }: Pick<Fit, "sseMm2" | "n" | "free">): Result<number> =>
  n > free
    ? ok(Math.sqrt(sseMm2 / (n - free)))
    : failed("science/too-few-readings-for-a-curve", { needs: free + 1, has: n });
