/** Water for rings: how much is needed, used and left, and which rings to finish when it runs short. */

import { failed, ok, type Result } from "../../record/result.ts";
import type { InRing } from "../../record/ring/entries.ts";
import type { RingEvent, RingReading } from "../../record/ring/events.ts";
import { compareText } from "../../record/stamp.ts";
import type { Caution, Estimate, Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import { type RingSet, rimToSoilMm, ringArea, type Sizes } from "./ring-set.ts";
import { type RulerLevel, rulerLevelOf } from "./ruler.ts";

/** A litre on a square metre is a millimetre. */
const LITRES_PER_M3 = 1000;

/** How the litres of an answer are known. */
interface HowKnown {
  /** Some of it was not measured: it is reckoned from the levels of the ruler. */
  readonly reckoned: boolean;
  /** More went in, and nothing that was read says how much. */
  readonly more: boolean;
}

/** Litres that went into rings; 1 L weighs 1 kg, for the caution on lifting. */
export interface WaterUsed extends Estimate, HowKnown {}

/** A ring of which the litres are asked. */
export interface RingWater {
  readonly reading: Pick<RingReading, "events">;
  readonly set: RingSet;
}

interface Litres extends HowKnown {
  readonly litres: number;
}

const NOTHING: Litres = { litres: 0, reckoned: false, more: false };

const WATER_METHODS = ["ring-water"] as const;

/** Litres as an answer: no sample stands behind them, so there is no range. */
const answer = (
  litres: number,
  rings: number,
  noRange: Caution["code"],
  cautions: readonly Caution[],
): Estimate => ({
  value: litres,
  unit: "L",
  n: rings,
  sampledBy: "rings",
  range: failed(noRange),
  cautions,
  methods: WATER_METHODS,
  sources: sourcesOf(WATER_METHODS),
});

const together = (a: Litres, b: Litres): Litres => ({
  litres: a.litres + b.litres,
  reckoned: a.reckoned || b.reckoned,
  more: a.more || b.more,
});

const measuredLitres = (event: RingEvent): number => {
  const litres = event.type === "pour" ? event.cubicMetres * LITRES_PER_M3 : 0;
  return Number.isFinite(litres) && litres > 0 ? litres : 0;
};

/**
 * By how much the water rose from level to level, in millimetres; null where water went in unseen. A ring whose
 * water was gone rose from the ground.
 *
 * @param before null for the first level: then all that stands there was poured in
 */
const riseMm = (before: RulerLevel | null, now: RulerLevel, set: RingSet): number | null => {
  if (before === null) return now.scale === "rim" || now.empty === "gone" ? null : Math.max(0, now.upMm);
  const upMm = now.scale === before.scale ? now.upMm - before.upMm : null;
  const wasEmpty = before.empty === "gone" && now.empty !== "gone";
  // Nobody says of a ring kept at one level that it was filled up: a level that rose shows it.
  const rose = set.way === "kept-at-one-level" && (upMm ?? 0) > set.stepMm * 1.000_001;
  if (!now.afterRefill && !wasEmpty && !rose) return 0;
  return upMm === null || (upMm <= 0 && now.afterRefill) ? null : Math.max(0, upMm);
};

const litresOfRing = ({ reading, set }: RingWater, ring: InRing): Litres => {
  const area = ringArea(set, ring);
  // From rim to ground is measured at the inner ring; the outer one may stand higher.
  const rimMm = ring === "inner" ? rimToSoilMm(set) : null;
  let used = NOTHING;
  let before: RulerLevel | null = null;
  let measured = false;
  for (const event of reading.events) {
    if (event.ring !== ring) continue;
    if (event.type === "pour") {
      used = together(used, { ...NOTHING, litres: measuredLitres(event) });
      measured = true;
      continue;
    }
    const now = rulerLevelOf(event, rimMm);
    if (now === null || !Number.isFinite(now.upMm)) continue;
    const mm = measured ? 0 : riseMm(before, now, set);
    const litres = mm === null || !area.ok ? null : area.value.areaM2 * mm;
    if (litres === null || !Number.isFinite(litres)) used = { ...used, more: true };
    else if (litres > 0) used = together(used, { litres, reckoned: true, more: false });
    before = now;
    measured = false;
  }
  return used;
};

/**
 * Water that went into the rings, the outer ones included. Measured litres count as measured. Where none were
 * measured, litres are reckoned from the ruler: for the first filling the depth of the first level by the area
 * inside, for a refill the rise from the level before it to the level behind it by the same area. That is a
 * little too few, because some soaks in meanwhile. Down from the rim the first level is a depth only where the
 * distance from rim to ground was measured.
 *
 * @returns litres; `more` when water went in that nothing tells of, also for an outer ring of which nothing was read.
 * No range (`science/exact-by-definition`, or `science/water-partly-reckoned` where some was not measured). No rings, 0
 */
export const litresUsed = (rings: readonly RingWater[]): WaterUsed => {
  const { litres, reckoned, more } = rings
    .map((ring) => {
      const inner = litresOfRing(ring, "inner");
      const outer = litresOfRing(ring, "outer");
      const unread =
        ring.set.outerInsideM !== null &&
        inner.litres > 0 &&
        !ring.reading.events.some((event) => event.ring === "outer");
      return together(inner, unread ? { ...outer, more: true } : outer);
    })
    .reduce(together, NOTHING);
  const noRange = reckoned || more ? "science/water-partly-reckoned" : "science/exact-by-definition";
  return { ...answer(litres, rings.length, noRange, []), reckoned, more };
};

/**
 * Litres for a depth of water in a ring, and in the space around it when it is a double ring.
 *
 * @param depthMm above 0
 * @returns litres without a range; `science/not-a-length` for a depth that is 0, negative or not finite, else as `ringArea`
 *
 * @example
 * litresNeeded({ insideM: [0.1524, null], outerInsideM: null, innerOutsideM: null }, 25.4).value.value // => ≈ 0.4633
 */
export const litresNeeded = (set: Sizes, depthMm: number): Result<Estimate> => {
  if (!(depthMm > 0 && Number.isFinite(depthMm)))
    return failed("science/not-a-length", { value: String(depthMm) });
  const inner = ringArea(set, "inner");
  if (!inner.ok) return inner;
  const between = set.outerInsideM === null ? null : ringArea(set, "outer");
  if (between?.ok === false) return between;
  const areas = between === null ? [inner.value] : [inner.value, between.value];
  const litres = areas.reduce((sum, { areaM2 }) => sum + areaM2, 0) * depthMm;
  const cautions = areas.flatMap((area) => area.cautions);
  return ok(answer(litres, 1, "science/exact-by-definition", cautions));
};

/**
 * Litres that a ring will still take if it goes on at its present rate, which is why there is no range
 * (`science/rests-on-present-rate`).
 *
 * @param mmPerH 0 or more
 * @param minutes that it still has to run; 0 or fewer need nothing
 * @returns as `litresNeeded`; `science/no-number` for a rate or time that is negative or not finite
 */
export const litresToGo = (set: Sizes, mmPerH: number, minutes: number): Result<Estimate> => {
  const depthMm = (mmPerH * minutes) / 60;
  if (!(mmPerH >= 0 && Number.isFinite(mmPerH) && Number.isFinite(minutes)))
    return failed("science/no-number");
  const needed =
    depthMm > 0 ? litresNeeded(set, depthMm) : ok(answer(0, 1, "science/rests-on-present-rate", []));
  return needed.ok ? ok({ ...needed.value, range: failed("science/rests-on-present-rate") }) : needed;
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

/** The order in which to finish rings; n counts the rings that still run. */
export interface FinishPlan extends Worked {
  readonly order: readonly FinishOrder[];
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
): FinishPlan => {
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
  const methods = ["ring-water", "finish-first"] as const;
  return { order, n: rings.length, sampledBy: "rings", cautions: [], methods, sources: sourcesOf(methods) };
};
