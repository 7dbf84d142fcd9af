/** Horton's curve: a rate that dies away towards a steady one. */
import type { Capacity } from "./capacity.ts";

/** `F = fc·t + (f0 − fc)·(1 − exp(−k·t))/k`. */
export interface HortonLine {
  readonly kind: "horton";
  /** Rate at the beginning in mm/h. */
  readonly f0: number;
  /** Rate in the end in mm/h, 0 or more and below f0. */
  readonly fc: number;
  /** How fast it dies away, per hour. */
  readonly k: number;
}

const MOST_STEPS = 100;

/**
 * What soil takes in along Horton's curve. The time to a depth has no formula: the curve is concave, so
 * Newton's steps from the left come up to the answer without passing it.
 *
 * @example
 * const curve = hortonCapacity({ kind: "horton", f0: 8, fc: 0.5, k: 0.4 });
 * curve.depthAt(5) - curve.depthAt(2) // => ≈ 7.38738
 */
export const hortonCapacity = ({ f0, fc, k }: HortonLine): Capacity => {
  const dying = f0 - fc;
  const depthAt = (hours: number): number => fc * hours - (dying * Math.expm1(-k * hours)) / k;
  const rateAt = (hours: number): number => fc + dying * Math.exp(-k * hours);
  const hoursAt = (mm: number): number => {
    if (mm <= 0) return 0;
    if (fc === 0) return mm < f0 / k ? -Math.log1p((-k * mm) / f0) / k : Number.POSITIVE_INFINITY;
    let hours = Math.max(mm / f0, (mm - dying / k) / fc);
    for (let step = 0; step < MOST_STEPS; step++) {
      const next = hours + (mm - depthAt(hours)) / rateAt(hours);
      if (!(next > hours * (1 + 1e-15))) break;
      hours = next;
    }
    return hours;
  };
  const depthAtRate = (mmPerH: number): number => {
    if (mmPerH >= f0) return 0;
    if (mmPerH <= fc) return Number.POSITIVE_INFINITY;
    return depthAt(Math.log(dying / (mmPerH - fc)) / k);
  };
  return { depthAt, rateAt, hoursAt, depthAtRate };
};
