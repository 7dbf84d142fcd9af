/** Conductivity from one pour that soaks away: the simplified falling head. */
import { failed, type Result } from "../../../record/result.ts";
import type { Caution } from "../../estimate.ts";
import { type Conductivity, conductivity, isAbove0 } from "./conductivity.ts";

/** One pour on soil of known wetness. */
export interface FallingHead {
  /** Depth poured at once. */
  readonly pouredMm: number;
  /** Until the last of it was gone. */
  readonly minutes: number;
  /** Water content when full less water content before, as a share of the volume, above 0 and below 1. */
  readonly moistureGap: number;
  readonly alphaPerMm: number;
  /** How deep the ring stands; null when it was not measured. */
  readonly insertionMm: number | null;
}

/**
 * Conductivity by the simplified falling head: the curve of Green and Ampt under a head that sinks to nothing,
 * `K = Δθ/((1−Δθ)·t)·(D/Δθ − (D + 1/α*)/(1−Δθ)·ln(1 + (1−Δθ)·D/(Δθ·(D + 1/α*))))`. Water must go straight down
 * inside the ring: the wetting front, at D/Δθ, must not pass its lower edge. The first pour on dry ground is
 * the one to use, since the wetness before it has to be known.
 *
 * @param waterC temperature of the water; null when not measured
 * @returns `science/not-a-depth`, `science/not-a-time`, `science/not-a-moisture-gap`, `science/not-an-alpha`,
 * `science/not-a-length` for a ring that stands less than nothing deep
 *
 * Source: Philip 1992; Bagarello, Iovino & Elrick 2004 (from memory, proved by integration).
 *
 * @example
 * const pour = { pouredMm: 25.4, minutes: 10, moistureGap: 0.25, alphaPerMm: 0.012, insertionMm: 120 };
 * fallingHeadKfs(pour, null).value.value // => ≈ 49.2055
 */
export const fallingHeadKfs = (pour: FallingHead, waterC: number | null): Result<Conductivity> => {
  const { pouredMm: depth, minutes, moistureGap: gap, alphaPerMm, insertionMm } = pour;
  if (!isAbove0(depth)) return failed("science/not-a-depth");
  if (!isAbove0(minutes)) return failed("science/not-a-time");
  if (!(gap > 0 && gap < 1)) return failed("science/not-a-moisture-gap");
  if (!isAbove0(alphaPerMm)) return failed("science/not-an-alpha");
  if (insertionMm !== null && !(insertionMm >= 0 && Number.isFinite(insertionMm)))
    return failed("science/not-a-length", { value: String(insertionMm) });
  const driven = depth + 1 / alphaPerMm;
  const rest = 1 - gap;
  const logarithm = Math.log1p((rest * depth) / (gap * driven));
  const mmPerH = (gap / (rest * (minutes / 60))) * (depth / gap - (driven / rest) * logarithm);
  const cautions: Caution[] = [];
  const frontMm = depth / gap;
  if (insertionMm === null) cautions.push({ code: "science/kfs-insertion-not-measured", facts: {} });
  else if (frontMm > insertionMm)
    cautions.push({
      code: "science/kfs-front-below-ring",
      facts: { front: Math.round(frontMm), ring: Math.round(insertionMm) },
    });
  return conductivity(mmPerH, { n: 1, sampledBy: "readings", method: "kfs-falling-head", cautions }, waterC);
};
