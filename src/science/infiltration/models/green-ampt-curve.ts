/** The curve of Green and Ampt: a wetting front that is drawn down by suction and by its own weight. */
import type { Capacity } from "./capacity.ts";

/** `F − M·ln(1 + F/M) = K·t`. */
export interface GreenAmptLine {
  readonly kind: "green-ampt";
  /** Conductivity in mm/h, above 0. */
  readonly k: number;
  /** Suction at the front and depth of water, times the room left in the soil, in mm, above 0. */
  readonly m: number;
}

/** `y − ln(1 + y)`; by its series where the difference would lose its digits. */
const slowed = (y: number): number =>
  y < 1e-3 ? y * y * (1 / 2 - y * (1 / 3 - y * (1 / 4 - y / 5))) : y - Math.log1p(y);

const MOST_STEPS = 50;

/**
 * Solves `y − ln(1 + y) = τ` for y ≥ 0: the curve without its two scales. From `τ + ln(1 + τ + √(2τ))`, which is
 * close at both ends, Newton's steps settle within a handful of turns.
 *
 * @param tau 0 or more
 *
 * @example
 * greenAmptDepth(1 - Math.log(2)) // => ≈ 1.0000000
 */
export const greenAmptDepth = (tau: number): number => {
  if (!(tau > 0)) return 0;
  let y = tau + Math.log1p(tau + Math.sqrt(2 * tau));
  for (let step = 0; step < MOST_STEPS; step++) {
    const next = y - ((slowed(y) - tau) * (1 + y)) / y;
    const done = Math.abs(next - y) <= 1e-14 * y;
    y = next;
    if (done) break;
  }
  return y;
};

/**
 * What soil takes in along the curve of Green and Ampt: `f = K·(1 + M/F)`, so the rate comes down to i at
 * `F = K·M/(i − K)`.
 *
 * @example
 * greenAmptCapacity({ kind: "green-ampt", k: 3, m: 27.5 }).depthAt(3) // => ≈ 28.612
 */
export const greenAmptCapacity = ({ k, m }: GreenAmptLine): Capacity => {
  const depthAt = (hours: number): number => m * greenAmptDepth((k * hours) / m);
  return {
    depthAt,
    rateAt: (hours) => k * (1 + m / depthAt(hours)),
    hoursAt: (mm) => (mm <= 0 ? 0 : (m * slowed(mm / m)) / k),
    depthAtRate: (mmPerH) => (mmPerH > k ? (k * m) / (mmPerH - k) : Number.POSITIVE_INFINITY),
  };
};
