/** Conductivity from the steady rate of a single ring that stands in the ground, under one head or two. */
import { failed, ok, type Result } from "../../../record/result.ts";
import {
  RING_SHAPE_DEPTH,
  RING_SHAPE_RADIUS,
  STEADY_RING_DEPTH_MM,
  STEADY_RING_HEAD_MM,
} from "../../constants/storms.ts";
import type { Caution } from "../../estimate.ts";
import { type Conductivity, conductivity, isAbove0 } from "./conductivity.ts";

/** Where a single ring stands. */
export interface RingInGround {
  readonly radiusMm: number;
  readonly insertionMm: number;
}

/** A steady rate under a head of water. */
export interface SteadyRate {
  readonly mmPerH: number;
  /** Mean depth of the water in the ring, 0 or more. */
  readonly headMm: number;
}

/** `g = C1·d + C2·a` in millimetres. */
const shapeOf = ({ radiusMm, insertionMm }: RingInGround): number =>
  RING_SHAPE_DEPTH * insertionMm + RING_SHAPE_RADIUS * radiusMm;

const problemOf = (ring: RingInGround, rates: readonly SteadyRate[]): Result<true> => {
  if (!(isAbove0(ring.radiusMm) && isAbove0(ring.insertionMm))) return failed("science/not-a-ring");
  if (!rates.every(({ mmPerH }) => isAbove0(mmPerH))) return failed("science/not-a-rate");
  if (!rates.every(({ headMm }) => headMm >= 0 && Number.isFinite(headMm)))
    return failed("science/not-a-depth");
  return ok(true);
};

const outsideRange = (ring: RingInGround, rates: readonly SteadyRate[]): Caution[] => {
  const low = rates.some(({ headMm }) => headMm < STEADY_RING_HEAD_MM);
  const shallow = ring.insertionMm < STEADY_RING_DEPTH_MM;
  return low || shallow
    ? [
        {
          code: "science/kfs-outside-steady-range",
          facts: { head: STEADY_RING_HEAD_MM, depth: STEADY_RING_DEPTH_MM },
        },
      ]
    : [];
};

/**
 * Conductivity from one steady rate: `q/K = H/g + 1/(α*·g) + 1`. The rate of a small ring is well above the
 * conductivity, because water also goes sideways and is drawn in by suction.
 *
 * @param alphaPerMm of the kind of soil, above 0
 * @param waterC temperature of the water; null when not measured
 * @returns `science/not-a-ring`, `science/not-a-rate`, `science/not-a-depth`, `science/not-an-alpha`
 *
 * Source: Reynolds & Elrick 1990 (from memory).
 *
 * @example
 * const ring = { radiusMm: 100, insertionMm: 50 };
 * steadyRingKfs({ mmPerH: 100, headMm: 50 }, ring, 0.012, null).value.value // => ≈ 44.623
 */
export const steadyRingKfs = (
  rate: SteadyRate,
  ring: RingInGround,
  alphaPerMm: number,
  waterC: number | null,
): Result<Conductivity> => {
  const good = problemOf(ring, [rate]);
  if (!good.ok) return good;
  if (!isAbove0(alphaPerMm)) return failed("science/not-an-alpha");
  const g = shapeOf(ring);
  const times = rate.headMm / g + 1 / (alphaPerMm * g) + 1;
  return conductivity(
    rate.mmPerH / times,
    { n: 1, sampledBy: "readings", method: "kfs-steady-ring", cautions: outsideRange(ring, [rate]) },
    waterC,
  );
};

/** Conductivity from two heads, and what it says of the soil's suction. */
export interface TwoHeads {
  readonly kfs: Conductivity;
  /** α* per mm, which one head alone has to take from a table. */
  readonly alphaPerMm: Result<number>;
}

/**
 * Conductivity from two steady rates under two heads: `K = g·(q₂ − q₁)/(H₂ − H₁)`, and α* from what is left over.
 * Needs no kind of soil, but a small error of either rate is a large one of their difference. The app takes no test that
 * is read steadily at two depths, so no screen shows this: it is for readings that were taken elsewhere.
 *
 * @param rates in any order
 * @returns reasons as `steadyRingKfs`; `science/kfs-heads-disagree` when the heads are the same or the higher
 * one does not give the higher rate. Its α* is `science/kfs-no-suction-left` when suction comes out at 0 or
 * below, as in soil that is not alike all the way down
 *
 * @example
 * const ring = { radiusMm: 100, insertionMm: 50 };
 * const two = twoHeadKfs([{ mmPerH: 100, headMm: 50 }, { mmPerH: 120.766, headMm: 100 }], ring, null);
 * two.value.kfs.value // => ≈ 44.623
 */
export const twoHeadKfs = (
  rates: readonly [SteadyRate, SteadyRate],
  ring: RingInGround,
  waterC: number | null,
): Result<TwoHeads> => {
  const good = problemOf(ring, rates);
  if (!good.ok) return good;
  const [one, other] = rates;
  const [low, high] = one.headMm <= other.headMm ? [one, other] : [other, one];
  if (!(high.headMm > low.headMm && high.mmPerH > low.mmPerH)) return failed("science/kfs-heads-disagree");
  const g = shapeOf(ring);
  const mmPerH = (g * (high.mmPerH - low.mmPerH)) / (high.headMm - low.headMm);
  const suction = g * low.mmPerH - mmPerH * (low.headMm + g);
  const kfs = conductivity(
    mmPerH,
    { n: 2, sampledBy: "readings", method: "kfs-two-heads", cautions: outsideRange(ring, rates) },
    waterC,
  );
  if (!kfs.ok) return kfs;
  const alphaPerMm = suction > 0 ? ok(mmPerH / suction) : failed("science/kfs-no-suction-left");
  return ok({ kfs: kfs.value, alphaPerMm });
};
