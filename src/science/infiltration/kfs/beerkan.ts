/**
 * Conductivity from a Beerkan run: a ring that just stands in the ground, and small pours one after the other.
 * The steady and the transient equation look alike and are not: the one divides a steady rate, the other the
 * slope of `F/√t` against `√t`. Mixing them changes the answer by a quarter.
 */
import { failed, ok, type Result } from "../../../record/result.ts";
import {
  BEERKAN_DEEPEST_MM,
  BEERKAN_GAMMA,
  BEERKAN_GAMMA_W,
  TRANSIENT_BEERKAN_EDGE,
  TRANSIENT_BEERKAN_SLOPE,
} from "../../constants/storms.ts";
import type { Caution } from "../../estimate.ts";
import type { SoakPoint } from "../soaking.ts";
import { type Conductivity, conductivity, isAbove0 } from "./conductivity.ts";

/** The ring of a Beerkan run. */
export interface BeerkanRing {
  readonly radiusMm: number;
  /** How deep it stands; null when it was not measured. */
  readonly insertionMm: number | null;
}

const cautionsOf = ({ insertionMm }: BeerkanRing): Caution[] =>
  insertionMm !== null && insertionMm > BEERKAN_DEEPEST_MM
    ? [{ code: "science/kfs-ring-too-deep", facts: { mm: BEERKAN_DEEPEST_MM } }]
    : [];

const problemOf = ({ radiusMm }: BeerkanRing, alphaPerMm: number): Result<true> => {
  if (!isAbove0(radiusMm)) return failed("science/not-a-ring");
  return isAbove0(alphaPerMm) ? ok(true) : failed("science/not-an-alpha");
};

/**
 * The steady Beerkan equation: `K = q/(γ·γw/(r·α*) + 1)` with q the steady rate.
 *
 * @param mmPerH steady rate, above 0
 * @returns `science/not-a-ring`, `science/not-an-alpha`, `science/not-a-rate`
 *
 * Source: steady simplified method of 2017 (from memory; constants consistent with the transient ones).
 *
 * @example
 * steadyBeerkanKfs(100, { radiusMm: 75, insertionMm: 10 }, 0.012, null).value.value // => ≈ 39.761
 */
export const steadyBeerkanKfs = (
  mmPerH: number,
  ring: BeerkanRing,
  alphaPerMm: number,
  waterC: number | null,
): Result<Conductivity> => {
  const good = problemOf(ring, alphaPerMm);
  if (!good.ok) return good;
  if (!isAbove0(mmPerH)) return failed("science/not-a-rate");
  const times = (BEERKAN_GAMMA * BEERKAN_GAMMA_W) / (ring.radiusMm * alphaPerMm) + 1;
  return conductivity(
    mmPerH / times,
    { n: 1, sampledBy: "readings", method: "kfs-beerkan-steady", cautions: cautionsOf(ring) },
    waterC,
  );
};

/**
 * Slope of `F/√t` against `√t` by least squares, in mm/h: the steady part as the transient equation wants it.
 *
 * @param points minutes and millimetres; those at 0 min are left out
 * @returns `science/too-few-readings-for-a-curve` for fewer than three different times, `science/not-a-time`,
 * `science/not-a-depth`, `science/kfs-no-steady-part` when the slope is not above 0
 */
export const transientSlope = (points: readonly SoakPoint[]): Result<number> => {
  if (points.some(({ atMin }) => !(atMin >= 0 && Number.isFinite(atMin))))
    return failed("science/not-a-time");
  if (points.some(({ mm }) => !(mm >= 0 && Number.isFinite(mm)))) return failed("science/not-a-depth");
  const used = points.filter(({ atMin }) => atMin > 0);
  const times = new Set(used.map(({ atMin }) => atMin)).size;
  if (times < 3) return failed("science/too-few-readings-for-a-curve", { needs: 3, has: times });
  const roots = used.map(({ atMin }) => Math.sqrt(atMin / 60));
  const ratios = used.map(({ mm }, at) => mm / (roots[at] ?? 1));
  const meanOf = (values: readonly number[]): number =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  const root = meanOf(roots);
  const ratio = meanOf(ratios);
  let above = 0;
  let below = 0;
  for (const [at, value] of roots.entries()) {
    above += (value - root) * ((ratios[at] ?? 0) - ratio);
    below += (value - root) ** 2;
  }
  const slope = above / below;
  return isAbove0(slope) ? ok(slope) : failed("science/kfs-no-steady-part");
};

/**
 * The transient Beerkan equation: `K = b/(0.467·(2.92/(r·α*) + 1))` with b the slope of `F/√t` against `√t`.
 *
 * @param points minutes and millimetres of the whole run, as `transientSlope`
 * @returns reasons as `transientSlope` and `steadyBeerkanKfs`
 *
 * Source: simplified method of 2014 (from memory).
 */
export const transientBeerkanKfs = (
  points: readonly SoakPoint[],
  ring: BeerkanRing,
  alphaPerMm: number,
  waterC: number | null,
): Result<Conductivity> => {
  const good = problemOf(ring, alphaPerMm);
  if (!good.ok) return good;
  const slope = transientSlope(points);
  if (!slope.ok) return slope;
  const edge = TRANSIENT_BEERKAN_EDGE / (ring.radiusMm * alphaPerMm);
  const n = points.filter(({ atMin }) => atMin > 0).length;
  return conductivity(
    slope.value / (TRANSIENT_BEERKAN_SLOPE * (edge + 1)),
    { n, sampledBy: "readings", method: "kfs-beerkan-transient", cautions: cautionsOf(ring) },
    waterC,
  );
};
