/** Conductivities from what was read at a ring. */
import { failed, type Result } from "../../../record/result.ts";
import type { Caution } from "../../estimate.ts";
import { meanHeadMm } from "../heads.ts";
import { lastThree, levellingOf } from "../levelling.ts";
import { type RingSet, standingOf } from "../ring-set.ts";
import type { Soaking } from "../soaking.ts";
import { type BeerkanRing, steadyBeerkanKfs, transientBeerkanKfs } from "./beerkan.ts";
import type { Conductivity } from "./conductivity.ts";
import { fallingHeadKfs } from "./falling-head.ts";
import { steadyRingKfs } from "./steady-ring.ts";

/** The kind of soil and the water, as a person states them. */
export interface SoilAndWater {
  readonly alphaPerMm: number;
  /** Null when not measured. */
  readonly waterC: number | null;
}

const radiusOf = ({ areaM2 }: Soaking): number => 1000 * Math.sqrt(areaM2 / Math.PI);

const insertionOf = (set: Pick<RingSet, "rimToSoilM" | "heightsM">): number | null => {
  const { insertionMm } = standingOf(set);
  return insertionMm.ok ? insertionMm.value : null;
};

const withCautions = (
  result: Result<Conductivity>,
  soaking: Soaking,
  more: readonly Caution[],
): Result<Conductivity> =>
  result.ok
    ? {
        ok: true,
        value: { ...result.value, cautions: [...soaking.cautions, ...more, ...result.value.cautions] },
      }
    : result;

const doubled = ({ outerInsideM }: Pick<RingSet, "outerInsideM">): Caution[] =>
  outerInsideM === null ? [] : [{ code: "science/kfs-double-ring", facts: {} }];

/** The pooled rate of the last three intervals, and what to say when it has not levelled off. */
const steadyOf = (soaking: Soaking): Result<{ mmPerH: number; cautions: readonly Caution[] }> => {
  const levelling = levellingOf(soaking);
  if (!levelling.ok) return levelling;
  const { rate, status } = levelling.value;
  const cautions: Caution[] =
    status === "levelled-off" ? [] : [{ code: "science/kfs-not-level-yet", facts: {} }];
  return { ok: true, value: { mmPerH: rate.value, cautions } };
};

/**
 * Conductivity from the last three intervals of a single ring, under the mean head of that time.
 *
 * @returns as `steadyRingKfs`; `science/too-few-intervals`, `science/head-not-known`, and as `standingOf` when
 * it was not measured how deep the ring stands
 *
 * @example
 * steadyKfsOfRing(soaking, set, { alphaPerMm: ALPHA_PER_MM["structured-or-medium-sand"], waterC: 12 });
 */
export const steadyKfsOfRing = (
  soaking: Soaking,
  set: RingSet,
  { alphaPerMm, waterC }: SoilAndWater,
): Result<Conductivity> => {
  const steady = steadyOf(soaking);
  if (!steady.ok) return steady;
  const three = lastThree(soaking);
  const head = meanHeadMm(soaking.heads, three[0]?.fromMin ?? 0, three.at(-1)?.toMin ?? 0);
  if (!head.ok) return head;
  const { insertionMm } = standingOf(set);
  if (!insertionMm.ok) return insertionMm;
  const { mmPerH, cautions } = steady.value;
  const ring = { radiusMm: radiusOf(soaking), insertionMm: insertionMm.value };
  const kfs = steadyRingKfs({ mmPerH, headMm: head.value }, ring, alphaPerMm, waterC);
  return withCautions(kfs, soaking, [...cautions, ...doubled(set)]);
};

/**
 * Conductivity from the first pour by the simplified falling head.
 *
 * @param moistureGap water content when full less water content before the pour, as a share of the volume
 * @returns as `fallingHeadKfs`; `science/kfs-first-pour-not-gone` when there is no first pour of measured water
 * that drained and counts
 */
export const fallingHeadKfsOfRing = (
  soaking: Soaking,
  set: RingSet,
  moistureGap: number,
  { alphaPerMm, waterC }: SoilAndWater,
): Result<Conductivity> => {
  const first = soaking.pours.find(({ wetting }) => wetting);
  if (first === undefined || !first.drained || first.toMin === null || first.leftOut !== null)
    return failed("science/kfs-first-pour-not-gone");
  const { pouredMm, fromMin, toMin } = first;
  const insertionMm = insertionOf(set);
  const pour = { pouredMm, minutes: toMin - fromMin, moistureGap, alphaPerMm, insertionMm };
  return withCautions(fallingHeadKfs(pour, waterC), soaking, doubled(set));
};

const beerkanRing = (soaking: Soaking, set: RingSet): BeerkanRing => ({
  radiusMm: radiusOf(soaking),
  insertionMm: insertionOf(set),
});

/**
 * Conductivity by the steady Beerkan equation, from the last three pours or intervals.
 *
 * @returns as `steadyBeerkanKfs`; `science/too-few-intervals`
 */
export const steadyBeerkanOfRing = (
  soaking: Soaking,
  set: RingSet,
  { alphaPerMm, waterC }: SoilAndWater,
): Result<Conductivity> => {
  const steady = steadyOf(soaking);
  if (!steady.ok) return steady;
  const { mmPerH, cautions } = steady.value;
  const kfs = steadyBeerkanKfs(mmPerH, beerkanRing(soaking, set), alphaPerMm, waterC);
  return withCautions(kfs, soaking, [...cautions, ...doubled(set)]);
};

/**
 * Conductivity by the transient Beerkan equation, from the whole curve.
 *
 * @returns as `transientBeerkanKfs`
 */
export const transientBeerkanOfRing = (
  soaking: Soaking,
  set: RingSet,
  { alphaPerMm, waterC }: SoilAndWater,
): Result<Conductivity> => {
  const kfs = transientBeerkanKfs(soaking.curve, beerkanRing(soaking, set), alphaPerMm, waterC);
  return withCautions(kfs, soaking, doubled(set));
};
