/** Mass of a mulch from its thickness. */
import { ok, type Result } from "../../record/result.ts";
import { assumed, type Ranged, ranged, usable } from "./ranged.ts";

const M2_PER_HA = 10_000;
const MM_PER_M = 1000;

/**
 * Dry mass of a cubic metre of straw mulch as it lies. From memory, loose to settled: the person weighs what
 * lies in a frame of known area and changes it.
 *
 * @example
 * strawMulchDensity().low // => 12
 */
export const strawMulchDensity = (): Ranged =>
  assumed("mulch-density", { low: 12, middle: 20, high: 35 }, "kg/m3", "mulch-density");

/**
 * Mass that makes a mulch of a wanted thickness: thickness times density.
 *
 * @param thickness in mm, 0 or more
 * @param density in kg/m³ of dry matter
 * @returns dry kg/ha; `science/not-a-range` for a thickness outside 0 to 500 mm or a density outside 1 to 200
 *
 * @example
 * import { assumed, exactly } from "./ranged.ts";
 * const thickness = assumed("mulch-thickness", exactly(30), "mm", "yours");
 * massForThickness(thickness, strawMulchDensity()).value.middle // => ≈ 6000
 */
export const massForThickness = (thickness: Ranged, density: Ranged): Result<Ranged> => {
  const good = usable([
    [thickness, { unit: "mm", least: 0, most: 500 }],
    [density, { unit: "kg/m3", least: 1, most: 200 }],
  ]);
  if (!good.ok) return good;
  const mass = (end: "low" | "middle" | "high"): number =>
    (thickness[end] / MM_PER_M) * density[end] * M2_PER_HA;
  return ok(
    ranged([mass("low"), mass("middle"), mass("high")], "kg/har", {
      from: [thickness, density],
      method: "thickness-mass",
    }),
  );
};
