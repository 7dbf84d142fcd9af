/** What is left of a curve when all its slowing lies before the first reading: a depth at once, then a steady rate. */
import type { Capacity } from "./capacity.ts";

/** `F = F1 + A·t` for t above 0. */
export interface StepLine {
  readonly kind: "step";
  /** Soaked in at once, in mm. */
  readonly atOnceMm: number;
  /** Steady rate in mm/h, 0 or more. */
  readonly mmPerH: number;
}

/** What soil takes in that takes a depth at once and then goes on steadily. */
export const stepCapacity = ({ atOnceMm, mmPerH }: StepLine): Capacity => ({
  depthAt: (hours) => (hours > 0 ? atOnceMm + mmPerH * hours : 0),
  rateAt: (hours) => (hours > 0 ? mmPerH : Number.POSITIVE_INFINITY),
  hoursAt: (mm) => {
    if (mm <= atOnceMm) return 0;
    return mmPerH > 0 ? (mm - atOnceMm) / mmPerH : Number.POSITIVE_INFINITY;
  },
  depthAtRate: (rate) => (rate > mmPerH ? atOnceMm : Number.POSITIVE_INFINITY),
});
