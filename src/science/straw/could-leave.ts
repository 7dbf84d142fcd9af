/** How much straw could leave this year. */
import { ok, type Result } from "../../record/result.ts";
import { MOST_MASS_KG_PER_HA } from "../constants/straw.ts";
import type { Caution } from "../estimate.ts";
import { type Limits, type Ranged, ranged, usable } from "../residue/ranged.ts";

const MASS: Limits = { unit: "kg/har", least: 0, most: MOST_MASS_KG_PER_HA };
/** With everything lost, no mass at harvest leaves any at the date. */
const LOSS: Limits = { unit: "1", least: 0, most: 0.99 };

/** What the straw is needed for. */
export interface StrawNeed {
  /** All that grew, dry kg/ha. */
  readonly grown: Ranged;
  /** Share of the mass that is gone by the date that matters. */
  readonly loss: Ranged;
  /** What must lie there then, dry kg/ha. */
  readonly needed: Ranged;
  /** What has to stay for the soil's carbon; null where none was published for this crop and system. */
  readonly carbonFloor: Ranged | null;
}

/** How much could leave. The low end comes first, and it may be nothing. */
export interface CouldLeave {
  /** Dry kg/ha that has to stay at harvest. */
  readonly mustStay: Ranged;
  /** Dry kg/ha. */
  readonly couldLeave: Ranged;
  /** The same as a share of what grew. */
  readonly share: Ranged;
}

/**
 * What could leave: `K = max(M/(1 − f), F)` has to stay, `X = max(0, G − K)` could leave. The low end is little
 * grown, much lost and much needed at once; nothing is a possible answer, and it is said.
 *
 * Chaff, stubble and what a baler misses stay anyway; `leaveAs` reckons with them.
 *
 * @returns `science/not-a-range` for a mass below 0 or above 200 t/ha or a loss outside 0 to 0.99. Nothing grown
 * gives nothing. Cautions: local rules and advice come first; nothing could leave (`science/none-could-leave`),
 * or at the low end nothing (`science/may-be-none-could-leave`)
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const kg = (value) => assumed("mass", exactly(value), "kg/har", "yours");
 * const loss = assumed("loss", exactly(0.5), "1", "yours");
 * couldLeave({ grown: kg(8450), loss, needed: kg(2000), carbonFloor: kg(5250) }).value.couldLeave.low // => 3200
 */
export const couldLeave = ({ grown, loss, needed, carbonFloor }: StrawNeed): Result<CouldLeave> => {
  const good = usable([
    [grown, MASS],
    [loss, LOSS],
    [needed, MASS],
    ...(carbonFloor === null ? [] : [[carbonFloor, MASS] as const]),
  ]);
  if (!good.ok) return good;
  const stay = (end: "low" | "middle" | "high"): number =>
    Math.max(needed[end] / (1 - loss[end]), carbonFloor?.[end] ?? 0);
  const from = [grown, loss, needed, ...(carbonFloor === null ? [] : [carbonFloor])];
  const mustStay = ranged([stay("low"), stay("middle"), stay("high")], "kg/har", {
    from: from.slice(1),
    method: "could-leave",
  });
  const leave = (had: number, keep: number): number => Math.max(0, had - keep);
  const ends = [
    leave(grown.low, mustStay.high),
    leave(grown.middle, mustStay.middle),
    leave(grown.high, mustStay.low),
  ] as const;
  const cautions: Caution[] = [{ code: "science/local-rules-first", facts: {} }];
  if (ends[2] === 0) cautions.push({ code: "science/none-could-leave", facts: {} });
  else if (ends[0] === 0) cautions.push({ code: "science/may-be-none-could-leave", facts: {} });
  const share = (could: number, had: number): number => (had > 0 ? could / had : 0);
  const made = { from, method: "could-leave", cautions } as const;
  return ok({
    mustStay,
    couldLeave: ranged(ends, "kg/har", made),
    share: ranged(
      [share(ends[0], grown.low), share(ends[1], grown.middle), share(ends[2], grown.high)],
      "1",
      made,
    ),
  });
};
