/** Philip's two-term curve, with its two edges: root of time alone, and a steady rate alone. */
import type { Capacity } from "./capacity.ts";

/** `F = S·√t + A·t`. */
export interface TwoTermLine {
  readonly kind: "two-term";
  /** Sorptivity in mm/h^½. */
  readonly s: number;
  /** Steady part in mm/h. */
  readonly a: number;
}

/**
 * What soil takes in along the two-term curve. The time to a depth is written so that no digits are lost when
 * the steady part is small: `√t = 2F/(S + √(S² + 4AF))`.
 *
 * @example
 * twoTermCapacity({ kind: "two-term", s: 60.68277, a: 50.37263 }).hoursAt(111.0554) // => ≈ 1.0000
 */
export const twoTermCapacity = ({ s, a }: TwoTermLine): Capacity => ({
  depthAt: (hours) => s * Math.sqrt(hours) + a * hours,
  rateAt: (hours) => (s > 0 ? s / (2 * Math.sqrt(hours)) : 0) + a,
  hoursAt: (mm) => {
    if (mm <= 0) return 0;
    const root = (2 * mm) / (s + Math.sqrt(s * s + 4 * a * mm));
    return root * root;
  },
  depthAtRate: (mmPerH) => {
    if (!(mmPerH > a)) return Number.POSITIVE_INFINITY;
    const root = s / (2 * (mmPerH - a));
    // Nothing times without end is not a number.
    return s * root + (a > 0 ? a * root * root : 0);
  },
});
