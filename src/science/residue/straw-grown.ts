/** Straw grown, from the yield of grain. */
import { ok, type Result } from "../../record/result.ts";
import { type Limits, type Ranged, ranged, type Span, usable } from "./ranged.ts";
import type { StrawWay } from "./straw-ways.ts";

const YIELD: Limits = { unit: "kg/har", least: 0, most: 100_000 };
const DRY: Limits = { unit: "1", least: 0.05, most: 1 };
const INDEX: Limits = { unit: "1", least: 0.05, most: 0.95 };
const RATIO: Limits = { unit: "1", least: 0, most: 20 };
const INTERCEPT: Limits = { unit: "kg/har", least: 0, most: 10_000 };

/** Grain as it went over the weighbridge. */
export interface Grain {
  /** kg/ha as weighed. */
  readonly yield: Ranged;
  /** Dry share of what was weighed. */
  readonly dryShare: Ranged;
}

const RISING = ["low", "middle", "high"] as const satisfies readonly (keyof Span)[];
const opposite = (end: keyof Span): keyof Span => (end === "low" ? "high" : end === "high" ? "low" : end);

/**
 * All dry residue that grew above ground, chaff and stubble included.
 *
 * By harvest index `R = G·D·(1 − h)/h`, the low end with the high index; by a ratio `R = G·r` of dry residue to
 * grain as weighed; by a straight line `R = a·G·D + b`.
 *
 * @param grain what was harvested and how dry it was
 * @param way how to come from grain to straw
 * @returns dry kg/ha; a yield of 0 gives 0, by a line its intercept. `science/not-a-range` for a yield below 0
 * or above 100 t/ha, a dry share outside 0.05 to 1, a harvest index outside 0.05 to 0.95, a ratio outside 0 to 20
 *
 * Source: with the figures of `strawWaysOf`.
 *
 * @example
 * import { assumed, exactly } from "./ranged.ts";
 * const grain = { yield: assumed("grain-yield", exactly(8000), "kg/har", "yours"), dryShare: assumed("dry-matter", exactly(0.89), "1", "yours") };
 * const harvestIndex = assumed("harvest-index", { low: 0.4, middle: 0.5, high: 0.5 }, "1", "yours");
 * strawGrown(grain, { way: "harvest-index", harvestIndex }).value // => { low: 7120, middle: 7120 }
 */
export const strawGrown = (grain: Grain, way: StrawWay): Result<Ranged> => {
  const { yield: weighed, dryShare } = grain;
  const good = usable([
    [weighed, YIELD],
    [dryShare, DRY],
  ]);
  if (!good.ok) return good;
  const make = (at: (end: keyof Span) => number): [number, number, number] => {
    const [low, middle, high] = RISING;
    return [at(low), at(middle), at(high)];
  };
  if (way.way === "harvest-index") {
    const { harvestIndex } = way;
    const indexed = usable([[harvestIndex, INDEX]]);
    if (!indexed.ok) return indexed;
    return ok(
      ranged(
        make((end) => {
          const share = harvestIndex[opposite(end)];
          return (weighed[end] * dryShare[end] * (1 - share)) / share;
        }),
        "kg/har",
        { from: [weighed, dryShare, harvestIndex], method: "straw-harvest-index" },
      ),
    );
  }
  if (way.way === "straw-per-grain") {
    const { ratio } = way;
    const known = usable([[ratio, RATIO]]);
    if (!known.ok) return known;
    return ok(
      ranged(
        make((end) => weighed[end] * ratio[end]),
        "kg/har",
        { from: [weighed, ratio], method: "straw-per-grain" },
      ),
    );
  }
  const { slope, interceptKgPerHa } = way;
  const straight = usable([
    [slope, RATIO],
    [interceptKgPerHa, INTERCEPT],
  ]);
  if (!straight.ok) return straight;
  return ok(
    ranged(
      make((end) => slope[end] * weighed[end] * dryShare[end] + interceptKgPerHa[end]),
      "kg/har",
      { from: [weighed, dryShare, slope, interceptKgPerHa], method: "straw-line" },
    ),
  );
};
