/** A small seeded generator, so that a simulation gives the same figures on every machine. */

/** Numbers from 0 up to 1 (mulberry32). */
export const seeded = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

/** A number from the standard normal distribution (Box & Muller 1958). */
export const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** Gamma with scale 1 (Marsaglia & Tsang 2000; below 1 by the usual power of a uniform). */
export const gamma = (shape: number, random: () => number): number => {
  if (shape < 1) return gamma(shape + 1, random) * (1 - random()) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal(random);
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - random()) < 0.5 * x ** 2 + d - d * v + d * Math.log(v)) return d * v;
  }
};

/**
 * Hits on one line of a strip whose lines differ: beta-binomial with the given mean and with the variance
 * `deff·p(1−p)/marks` of a line's share.
 */
export const hitsOnALine = (p: number, marks: number, deff: number, random: () => number): number => {
  const correlation = (deff - 1) / (marks - 1);
  const sum = (1 - correlation) / correlation;
  const a = gamma(p * sum, random);
  const b = gamma((1 - p) * sum, random);
  const share = a / (a + b);
  let hits = 0;
  for (let mark = 0; mark < marks; mark++) if (random() < share) hits++;
  return hits;
};

/**
 * Hits on one line where covered and bare ground come in runs: a mark is the one before with the chance `alike`, else
 * drawn anew. Marks of no model that any range here presumes.
 */
export const hitsInRuns = (p: number, marks: number, alike: number, random: () => number): number => {
  let covered = random() < p;
  let hits = 0;
  for (let mark = 0; mark < marks; mark++) {
    if (covered) hits++;
    if (random() >= alike) covered = random() < p;
  }
  return hits;
};

/** A count that falls by chance with the given mean (Knuth; means here are small). */
export const chanceCount = (mean: number, random: () => number): number => {
  let count = -1;
  for (let product = 1, floor = Math.exp(-mean); product > floor; count++) product *= random();
  return Math.max(0, count);
};

/** A count in clumps: negative binomial with the given mean and exponent k. */
export const clumpedCount = (mean: number, k: number, random: () => number): number =>
  chanceCount((gamma(k, random) * mean) / k, random);
