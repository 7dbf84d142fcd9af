/** Water for rings: how much is needed, used and left, and which rings to finish when it runs short. */

import { failed, ok, type Result } from "../../record/result.ts";
import type { RingReading } from "../../record/ring/events.ts";
import { compareText } from "../../record/stamp.ts";
import { ringArea, type Sizes } from "./ring-set.ts";

/** A litre on a square metre is a millimetre. */
const LITRES_PER_M3 = 1000;

/**
 * Water poured into both rings of a test. What the ruler says went in without being measured is not in it.
 *
 * @returns litres; 0 for nothing poured. 1 L weighs 1 kg, for the caution on lifting
 */
export const litresUsed = (readings: readonly RingReading[]): number =>
  readings
    .flatMap(({ events }) => events)
    .reduce((sum, event) => {
      const litres = event.type === "pour" ? event.cubicMetres * LITRES_PER_M3 : 0;
      return Number.isFinite(litres) && litres > 0 ? sum + litres : sum;
    }, 0);

/**
 * Litres for a depth of water in a ring, and in the space around it when it is a double ring.
 *
 * @param depthMm above 0
 * @returns `science/not-a-length` for a depth that is 0, negative or not finite, else as `ringArea`
 *
 * @example
 * litresNeeded({ insideM: [0.1524, null], outerInsideM: null, innerOutsideM: null }, 25.4).value // => ≈ 0.4633
 */
export const litresNeeded = (set: Sizes, depthMm: number): Result<number> => {
  if (!(depthMm > 0 && Number.isFinite(depthMm)))
    return failed("science/not-a-length", { value: String(depthMm) });
  const inner = ringArea(set, "inner");
  if (!inner.ok) return inner;
  if (set.outerInsideM === null) return ok(inner.value.areaM2 * depthMm);
  const between = ringArea(set, "outer");
  return between.ok ? ok((inner.value.areaM2 + between.value.areaM2) * depthMm) : between;
};

/**
 * Litres that a ring will still take if it goes on at its present rate.
 *
 * @param mmPerH 0 or more
 * @param minutes that it still has to run; 0 or fewer need nothing
 * @returns as `litresNeeded`; `science/no-number` for a rate or time that is negative or not finite
 */
export const litresToGo = (set: Sizes, mmPerH: number, minutes: number): Result<number> => {
  const depthMm = (mmPerH * minutes) / 60;
  if (!(mmPerH >= 0 && Number.isFinite(mmPerH) && Number.isFinite(minutes)))
    return failed("science/no-number");
  return depthMm > 0 ? litresNeeded(set, depthMm) : ok(0);
};

/** A ring that still runs, for choosing. */
export interface RingToFinish {
  readonly id: string;
  readonly strip: string;
  /** Water that it will still take. */
  readonly litres: number;
}

/** A ring in the order in which rings are to be finished. */
export interface FinishOrder {
  readonly id: string;
  /** Water that it will still take; null when that is not known. */
  readonly litres: number | null;
  /** The water reaches for it, those before it included. */
  readonly enough: boolean;
}

/**
 * Which rings to finish first when water runs short: next always one of the strip with the fewest finished
 * rings, since a comparison is as good as its poorer side; of that strip the ring that takes the least water.
 * A ring that the water no longer reaches for does not stop a thriftier one behind it.
 *
 * @param finished how many rings each strip has finished already
 * @param litresLeft water at hand; what is not a number counts as none
 * @returns all rings in order; those whose need is not known stand last and are never enough
 */
export const finishFirst = (
  rings: readonly RingToFinish[],
  finished: ReadonlyMap<string, number>,
  litresLeft: number,
): readonly FinishOrder[] => {
  const known = (litres: number): number =>
    Number.isFinite(litres) && litres >= 0 ? litres : Number.POSITIVE_INFINITY;
  const waiting = [...rings].sort((a, b) =>
    known(a.litres) < known(b.litres) ? -1 : known(a.litres) > known(b.litres) ? 1 : compareText(a.id, b.id),
  );
  const done = new Map(finished);
  const order: FinishOrder[] = [];
  let left = Number.isNaN(litresLeft) ? 0 : Math.max(0, litresLeft);
  while (waiting.length > 0) {
    let pick = 0;
    for (const [at, ring] of waiting.entries()) {
      const best = waiting[pick];
      if (best !== undefined && (done.get(ring.strip) ?? 0) < (done.get(best.strip) ?? 0)) pick = at;
    }
    const [ring] = waiting.splice(pick, 1);
    if (ring === undefined) break;
    const litres = known(ring.litres);
    const isKnown = Number.isFinite(litres);
    const enough = isKnown && litres <= left;
    if (enough) left -= litres;
    // A ring that cannot be finished adds nothing to its strip, but its strip had its turn.
    done.set(ring.strip, (done.get(ring.strip) ?? 0) + 1);
    order.push({ id: ring.id, litres: isKnown ? litres : null, enough });
  }
  return order;
};
