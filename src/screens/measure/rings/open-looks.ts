/** Looks whose numbers are still missing, over all rings of a board. */
import type { OpenLook } from "../../../record/ring/events.ts";
import type { DayRing } from "./day.ts";

/** A look of any ring of the board. */
export interface LookOnBoard {
  readonly ring: DayRing;
  readonly look: OpenLook;
}

/** All open looks of the day, the oldest first. */
export const openLooksOf = (rings: readonly DayRing[]): readonly LookOnBoard[] =>
  rings
    .flatMap((ring) => ring.reading.openLooks.map((look) => ({ ring, look })))
    .sort((a, b) => a.look.moment.lookedAtMs - b.look.moment.lookedAtMs);
