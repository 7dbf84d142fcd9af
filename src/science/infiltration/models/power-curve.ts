/** Kostiakov's power curve, and Lewis's with a steady part beside it. */
import type { Capacity } from "./capacity.ts";

/** `F = a·t^b + c·t`; c is 0 for Kostiakov's own curve. */
export interface PowerLine {
  readonly kind: "power";
  /** Millimetres after one hour of the slowing part. */
  readonly a: number;
  /** Above 0 and below 1. */
  readonly b: number;
  /** Steady part in mm/h. */
  readonly c: number;
}

const MOST_STEPS = 60;

/**
 * The time at which a power curve with a steady part reaches a depth. On logarithms the curve is convex with a
 * slope between b and 1, so Newton's steps from the right come down to the answer without passing it.
 */
const hoursOfSum = ({ a, b, c }: PowerLine, mm: number): number => {
  const goal = Math.log(mm);
  const logA = Math.log(a);
  const logC = Math.log(c);
  let x = Math.min((goal - logA) / b, goal - logC);
  for (let step = 0; step < MOST_STEPS; step++) {
    const slowing = logA + b * x;
    const steady = logC + x;
    const larger = Math.max(slowing, steady);
    const sum = Math.exp(slowing - larger) + Math.exp(steady - larger);
    const off = larger + Math.log(sum) - goal;
    const slope = (b * Math.exp(slowing - larger) + Math.exp(steady - larger)) / sum;
    const next = x - off / slope;
    if (!(Math.abs(next - x) > 1e-15 * Math.max(1, Math.abs(x)))) break;
    x = next;
  }
  return Math.exp(x);
};

/**
 * What soil takes in along a power curve. The rate comes down to i at `t = ((i − c)/(a·b))^(1/(b − 1))`.
 *
 * @example
 * powerCapacity({ kind: "power", a: 82.37535, b: 0.532647, c: 0 }).depthAt(2) // => ≈ 119.163
 */
export const powerCapacity = (line: PowerLine): Capacity => {
  const { a, b, c } = line;
  // Nothing times without end is not a number.
  const depthAt = (hours: number): number => a * hours ** b + (c > 0 ? c * hours : 0);
  return {
    depthAt,
    rateAt: (hours) => a * b * hours ** (b - 1) + c,
    hoursAt: (mm) => (mm <= 0 ? 0 : c > 0 ? hoursOfSum(line, mm) : (mm / a) ** (1 / b)),
    depthAtRate: (mmPerH) =>
      mmPerH > c ? depthAt(((mmPerH - c) / (a * b)) ** (1 / (b - 1))) : Number.POSITIVE_INFINITY,
  };
};
