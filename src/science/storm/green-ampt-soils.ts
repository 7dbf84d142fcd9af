/** Green and Ampt's curve from what is known of a soil without a ring, with ponding as Mein and Larson. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Worked } from "../estimate.ts";
import type { GreenAmptLine } from "../infiltration/models/green-ampt-curve.ts";
import { sourcesOf } from "../methods.ts";

/** What the curve needs of a soil. */
export interface GreenAmptSoil {
  readonly conductivityMmPerH: number;
  /** Suction at the wetting front. */
  readonly suctionMm: number;
  /** Pores that can fill with water, as a share of the volume. */
  readonly effectivePorosity: number;
}

export type Texture =
  | "sand"
  | "loamy-sand"
  | "sandy-loam"
  | "loam"
  | "silt-loam"
  | "sandy-clay-loam"
  | "clay-loam"
  | "silty-clay-loam"
  | "sandy-clay"
  | "silty-clay"
  | "clay";

const row = (porosityPercent: number, suctionMm: number, conductivityMmPerH: number): GreenAmptSoil => ({
  effectivePorosity: porosityPercent / 100,
  suctionMm,
  conductivityMmPerH,
});

/**
 * Middle values by texture, to begin with and to be changed: single soils differ from them by factors.
 *
 * Source: Rawls, Brakensiek & Miller 1983 (from memory; the row of sandy loam read in a course sheet).
 */
export const GREEN_AMPT_SOILS: Readonly<Record<Texture, GreenAmptSoil>> = {
  sand: row(41.7, 49.5, 117.8),
  "loamy-sand": row(40.1, 61.3, 29.9),
  "sandy-loam": row(41.2, 110.1, 10.9),
  loam: row(43.4, 88.9, 3.4),
  "silt-loam": row(48.6, 166.8, 6.5),
  "sandy-clay-loam": row(33, 218.5, 1.5),
  "clay-loam": row(30.9, 208.8, 1),
  "silty-clay-loam": row(43.2, 273, 1),
  "sandy-clay": row(32.1, 239, 0.6),
  "silty-clay": row(42.3, 292.2, 0.5),
  clay: row(38.5, 316.3, 0.3),
};

/** The curve of a soil, from what is known of its texture and no ring. */
export interface CurveOfSoil extends Worked {
  readonly line: GreenAmptLine;
}

/**
 * The curve of a soil that is filled to a share of its pores: `M = ψ·(1 − Se)·θe`. Run over rain it ponds at
 * `Fp = K·M/(i − K)`, as Mein and Larson.
 *
 * @param filledShare of the pores before the rain, from 0 to below 1
 * @returns `n` counts the four figures that it rests on, and there is no range: a caution says how far single soils
 * lie apart. `science/not-a-soil` for values that are not above 0, `science/not-a-filled-share`
 *
 * @example
 * greenAmptOfSoil(GREEN_AMPT_SOILS["silt-loam"], 0.3).value.line.m // => ≈ 56.745
 */
export const greenAmptOfSoil = (soil: GreenAmptSoil, filledShare: number): Result<CurveOfSoil> => {
  const { conductivityMmPerH: k, suctionMm, effectivePorosity } = soil;
  const good = [k, suctionMm, effectivePorosity].every((value) => value > 0 && Number.isFinite(value));
  if (!good || effectivePorosity >= 1) return failed("science/not-a-soil");
  if (!(filledShare >= 0 && filledShare < 1)) return failed("science/not-a-filled-share");
  const methods = ["green-ampt-ponding"] as const;
  return ok({
    line: { kind: "green-ampt", k, m: suctionMm * effectivePorosity * (1 - filledShare) },
    n: 4,
    sampledBy: "assumptions",
    cautions: [{ code: "science/soil-by-texture", facts: {} }],
    methods,
    sources: sourcesOf(methods),
  });
};
