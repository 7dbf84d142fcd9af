/** All five models of one ring, and the one that its readings speak for. */
import { failed, ok, type Result } from "../../../record/result.ts";
import type { SoakPoint } from "../soaking.ts";
import { type Fit, MODELS, type ModelId } from "./fit.ts";
import { fitGreenAmpt } from "./green-ampt.ts";
import { fitHorton } from "./horton.ts";
import { fitKostiakov, fitKostiakovLewis } from "./kostiakov.ts";
import { fitPhilip } from "./philip.ts";

/** The models that could be laid, or why not, and the one that storms are run on. */
export interface RingFits {
  readonly fits: Readonly<Record<ModelId, Result<Fit>>>;
  /** Lowest AICc; see `ringFits`. */
  readonly chosen: Fit;
  /** The last reading, and how much had soaked in by then: beyond it every curve is a guess. */
  readonly lastMin: number;
  readonly deepestMm: number;
}

/** Fits of the same readings, best first. */
const better = (one: Fit, other: Fit): number => {
  const exact = (fit: Fit): boolean => !fit.aicc.ok && fit.aicc.problem.code === "science/nothing-left-over";
  // Among curves that leave nothing over, the one with the fewest unknowns.
  if (exact(one) || exact(other)) return Number(exact(other)) - Number(exact(one)) || one.free - other.free;
  if (one.aicc.ok && other.aicc.ok) return one.aicc.value - other.aicc.value;
  if (one.aicc.ok !== other.aicc.ok) return one.aicc.ok ? -1 : 1;
  return one.free - other.free || one.sseMm2 - other.sseMm2;
};

/**
 * Lays all five models through the depths of one ring and names the one that its readings speak for: the lowest
 * AICc. Where AICc cannot be had for want of readings, the curve with fewer unknowns, then the smaller sum of
 * squares. No model is right; AICc differences below 2 say nothing.
 *
 * @param curve of a `Soaking`: minutes and millimetres, as `curveReadings`
 * @returns per model its fit or its reason; the reason of the simplest model when none can be laid
 *
 * Source: Hurvich & Tsai 1989 (AICc, from memory); Burnham & Anderson 2002 (from memory).
 */
export const ringFits = (curve: readonly SoakPoint[]): Result<RingFits> => {
  const fits = {
    kostiakov: fitKostiakov(curve),
    "kostiakov-lewis": fitKostiakovLewis(curve),
    philip: fitPhilip(curve),
    horton: fitHorton(curve),
    "green-ampt": fitGreenAmpt(curve),
  } as const satisfies Record<ModelId, Result<Fit>>;
  const laid = MODELS.flatMap((model) => {
    const fit = fits[model];
    return fit.ok ? [fit.value] : [];
  });
  const [chosen] = [...laid].sort(better);
  if (chosen === undefined) return fits.kostiakov.ok ? failed("science/nothing-read") : fits.kostiakov;
  return ok({
    fits,
    chosen,
    lastMin: Math.max(...curve.map(({ atMin }) => atMin)),
    deepestMm: Math.max(...curve.map(({ mm }) => mm)),
  });
};
