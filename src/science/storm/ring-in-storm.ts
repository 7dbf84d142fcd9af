/** One ring in a storm. */
import type { Caution, Worked } from "../estimate.ts";
import { MODELS, type ModelId } from "../infiltration/models/fit.ts";
import { capacityOf } from "../infiltration/models/line.ts";
import type { RingFits } from "../infiltration/models/ring-fits.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import { STORM_LIMITS } from "./limits.ts";
import type { Rain } from "./rain.ts";
import { type Absorbed, absorb } from "./time-compression.ts";

/** What became of a storm on one ring. */
export interface RingInStorm extends Worked, Absorbed {
  /** The model that it was run on: the one that the readings speak for. */
  readonly model: ModelId;
  /** The same on every model that could be laid: how much the choice of the model matters. */
  readonly byModel: readonly { readonly model: ModelId; readonly absorbed: Absorbed }[];
}

/**
 * Runs a storm over the curve of one ring, on the model that its readings speak for and beside it on all that
 * could be laid. Said beside it: what a ring cannot know (`STORM_LIMITS`), and when the storm goes deeper than
 * the ring was read.
 *
 * @param wantedMin minutes at which sums are wanted
 *
 * @example
 * ringInStorm(fits, rain, []); // { model: "horton", pondsAtMin: 703, soakedMm: 92.7, ranOffMm: 7.3, … }
 */
export const ringInStorm = (
  { fits, chosen, deepestMm }: RingFits,
  rain: Rain,
  wantedMin: readonly number[],
): RingInStorm => {
  const absorbed = absorb(rain, capacityOf(chosen.line), wantedMin);
  const byModel = MODELS.flatMap((model) => {
    const fit = fits[model];
    if (!fit.ok) return [];
    return [
      {
        model,
        absorbed: model === chosen.model ? absorbed : absorb(rain, capacityOf(fit.value.line), []),
      },
    ];
  });
  const beyond: Caution[] =
    absorbed.soakedMm > deepestMm * (1 + 1e-9)
      ? [{ code: "science/storm-beyond-readings", facts: { mm: Math.round(deepestMm * 10) / 10 } }]
      : [];
  const methods: MethodId[] = [...chosen.methods, ...rain.methods, "time-compression"];
  if (chosen.model === "green-ampt") methods.push("green-ampt-ponding");
  return {
    ...absorbed,
    model: chosen.model,
    byModel,
    n: chosen.n,
    sampledBy: "readings",
    cautions: [...beyond, ...rain.cautions, ...STORM_LIMITS],
    methods,
    sources: sourcesOf(methods),
  };
};
