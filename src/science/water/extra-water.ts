/** Extra water that soaks in, as far as a crop can use it. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Caution, Unit } from "../estimate.ts";
import { assumed, exactly, type Limits, type Ranged, ranged, type Span, usable } from "../residue/ranged.ts";

const DEPTH: Limits = { unit: "mm", least: 0, most: 5000 };
const BESIDE: readonly Caution[] = [
  { code: "science/rest-drains", facts: {} },
  { code: "science/rings-are-points", facts: {} },
];

/**
 * Extra water that counts: no more than the root zone misses at that time, the rest drains.
 *
 * @param extra mm that soak in more than before, as rings and a storm gave it
 * @param deficit mm that the root zone misses then, 0 up to what it holds (`plantAvailableWater`)
 * @returns mm; 0 when nothing is missing. `science/not-a-range` for water outside 0 to 5000 mm
 *
 * Source: water balance of the root zone (FAO-56, chapter 8), worked out here.
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const mm = (name, value) => assumed(name, exactly(value), "mm", "yours");
 * waterThatCounts(mm("extra-water", 22), mm("deficit", 10)).value.middle // => 10
 */
export const waterThatCounts = (extra: Ranged, deficit: Ranged): Result<Ranged> => {
  const good = usable([
    [extra, DEPTH],
    [deficit, DEPTH],
  ]);
  if (!good.ok) return good;
  const least = (end: keyof Span): number => Math.min(extra[end], deficit[end]);
  return ok(
    ranged([least("low"), least("middle"), least("high")], "mm", {
      from: [extra, deficit],
      method: "water-that-counts",
      cautions: BESIDE,
    }),
  );
};

/**
 * What a millimetre is worth before the person says so: nothing.
 *
 * @param unit money or kg of grain, per hectare and millimetre
 *
 * @example
 * nothingPerMm("{money}/har/mm").high // => 0
 */
export const nothingPerMm = (unit: "{money}/har/mm" | "kg/har/mm"): Ranged =>
  assumed("worth-per-mm", exactly(0), unit, "yours");

const PER_MM: Readonly<Partial<Record<Unit, Unit>>> = {
  "{money}/har/mm": "{money}/har",
  "kg/har/mm": "kg/har",
};

/**
 * What water is worth: millimetres times the person's own figure for one. An upper bound: it holds where water is what
 * the crop lacks. No published yield per millimetre is offered: those that circulate count water that went through the
 * crop, after a tenth of a metre is taken off, and not rain.
 *
 * @param water mm that count, as `waterThatCounts` or `keptByMulch`
 * @param perMm money or kg of grain per hectare and millimetre
 * @returns money or kg per hectare; 0 with the figure that is offered. `science/not-a-range` for negative or not finite
 * figures, `science/no-worth-per-mm` for another unit
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const water = assumed("extra-water", exactly(10), "mm", "yours");
 * worthOfWater(water, assumed("worth-per-mm", exactly(15), "kg/har/mm", "yours")).value // => { middle: 150, unit: "kg/har" }
 */
export const worthOfWater = (water: Ranged, perMm: Ranged): Result<Ranged> => {
  const unit = PER_MM[perMm.unit];
  if (unit === undefined) return failed("science/no-worth-per-mm");
  const good = usable([
    [water, { unit: "mm", least: 0, most: 30_000 }],
    [perMm, { unit: perMm.unit, least: 0, most: 1e9 }],
  ]);
  if (!good.ok) return good;
  const worth = (end: keyof Span): number => water[end] * perMm[end];
  return ok(
    ranged([worth("low"), worth("middle"), worth("high")], unit, {
      from: [water, perMm],
      method: "water-that-counts",
      cautions: [{ code: "science/only-if-water-lacks", facts: {} }],
    }),
  );
};
