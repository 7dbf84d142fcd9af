/** The bar that says how long things on the map are. */
import { inUnit, toSi } from "../../../record/units.ts";

/** A bar of a round length. */
export interface ScaleBar {
  readonly px: number;
  /** What it stands for, in the unit asked for. */
  readonly length: number;
}

/** Round lengths begin with these digits. */
const STEPS = [5, 2, 1] as const;

/**
 * The longest bar of a round length that fits.
 *
 * @param metresPerPx above 0
 * @param mostPx how long it may be
 * @returns null for a scale that is no number
 *
 * @example
 * scaleBar(0.5, "m", 120) // => { px: 100, length: 50 }
 */
export const scaleBar = (metresPerPx: number, unit: "m" | "ft", mostPx: number): ScaleBar | null => {
  const most = inUnit(metresPerPx * mostPx, unit);
  if (!(most > 0 && Number.isFinite(most))) return null;
  const tens = 10 ** Math.floor(Math.log10(most));
  const step = STEPS.find((one) => one * tens <= most) ?? 1;
  const length = step * tens;
  return { px: Math.round(toSi(length, unit) / metresPerPx), length };
};
