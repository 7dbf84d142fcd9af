/** How much water somebody said stands ready. A note of the day on this device, not a measurement. */
import type { RecordId } from "../../../record/ids.ts";
import type { RingNow } from "../../../record/ring/clock.ts";
import { elapsedNow } from "../../../record/ring/due.ts";
import { ringRate } from "../../../science/infiltration/ring-rate.ts";
import { type FinishPlan, finishFirst, litresToGo } from "../../../science/infiltration/water.ts";
import type { DayRing } from "./day.ts";
import { resultOf } from "./result.ts";
import { stageOf } from "./status.ts";

const MINUTE_MS = 60_000;

/** What was said, and what had been poured by then. */
export interface WaterReady {
  readonly litres: number;
  readonly usedThen: number;
}

const keyOf = (visit: RecordId<"visit">): string => `mulchmark-water ${visit}`;

/** What was said on this device; null when nothing was. */
export const waterReady = (visit: RecordId<"visit">): WaterReady | null => {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(keyOf(visit)) ?? "null");
    if (typeof found !== "object" || found === null || !("litres" in found) || !("usedThen" in found))
      return null;
    const { litres, usedThen } = found;
    return typeof litres === "number" && typeof usedThen === "number" ? { litres, usedThen } : null;
  } catch {
    // Refused, or written by something else: then it is asked again.
    return null;
  }
};

/** Keeps what was said. */
export const sayWaterReady = (visit: RecordId<"visit">, ready: WaterReady): void => {
  try {
    localStorage.setItem(keyOf(visit), JSON.stringify(ready));
  } catch {
    // Refused or full: it is shown until the screen is left.
  }
};

/** What is left of the water that was said to stand ready; never below nothing. */
export const litresLeft = ({ litres, usedThen }: WaterReady, usedNow: number): number =>
  Math.max(0, litres - (usedNow - usedThen));

/** Minutes that a running ring still has to run by its plan. */
const minutesLeft = ({ header, reading }: DayRing, now: RingNow): number => {
  const runs = (elapsedNow(reading, now) ?? 0) / MINUTE_MS;
  return Math.max(0, Math.max(0, ...header.planMin) - runs);
};

/** What a ring soaks in an hour just now; null while nothing can be said. */
const rateNow = (ring: DayRing): number | null => {
  const { soaking, soFar } = resultOf(ring);
  const rate = soaking.ok ? ringRate(soaking.value) : soaking;
  if (rate.ok) return rate.value.mmPerH;
  return soFar === null ? null : (60 * soFar.mm) / soFar.atMin;
};

/** Which running rings the water reaches for, in the order in which they are to be finished. */
export const finishing = (rings: readonly DayRing[], now: RingNow, left: number): FinishPlan => {
  const running = rings.filter((ring) => stageOf(ring) === "running");
  const finished = new Map<string, number>();
  // Old grass lies in no strip: its rings stand against the strips as one more.
  const groundOf = ({ header, spot }: DayRing): string =>
    spot?.body.oldGrass === true ? spot.id : header.strip;
  for (const ring of rings) {
    const ground = groundOf(ring);
    if (ring.reading.stop?.entry.why === "done") finished.set(ground, (finished.get(ground) ?? 0) + 1);
  }
  const wants = running.map((ring) => {
    const rate = rateNow(ring);
    const litres = rate === null ? null : litresToGo(ring.set, rate, minutesLeft(ring, now));
    return {
      id: ring.id,
      strip: groundOf(ring),
      litres: litres?.ok === true ? litres.value.value : Number.NaN,
    };
  });
  return finishFirst(wants, finished, left);
};
