/** Scatter as the ground shows it, the same from the same seed. */
import { seeded } from "../../science/statistics/seeded.ts";

/** Numbers that look like readings. */
export interface Scatter {
  /** From 0 up to 1. */
  readonly share: () => number;
  /** Around a value, with this standard deviation. */
  readonly around: (value: number, deviation: number) => number;
  /** Around a value above 0 by factors: `spread` is the standard deviation of the logarithm. */
  readonly times: (value: number, spread: number) => number;
  /** A count whose mean itself varies by factors from place to place. */
  readonly count: (mean: number, spread: number) => number;
}

/** Begins the scatter of a seed. */
export const scatterFrom = (seed: number): Scatter => {
  const share = seeded(seed);
  // Box and Muller 1958, Ann. Math. Statist. 29: 610-611; one of the two numbers is used.
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - share())) * Math.cos(2 * Math.PI * share());
  const times = (value: number, spread: number): number => value * Math.exp(spread * normal());
  const poisson = (mean: number): number => {
    let count = 0;
    for (let left = Math.exp(-mean), product = share(); product > left; product *= share()) count += 1;
    return count;
  };
  return {
    share,
    around: (value, deviation) => value + deviation * normal(),
    times,
    count: (mean, spread) => poisson(times(mean, spread)),
  };
};
