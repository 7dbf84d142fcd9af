/** How often flipping signs alone gives a sum of differences this large: no shape of their spread is assumed. */
import { failed, ok, type Result } from "../../record/result.ts";
import { largestOf, ROUNDING } from "./sample.ts";
import { seeded } from "./seeded.ts";

/** Up to this many differences every pattern of signs is tried (half a million); beyond, a seeded draw. */
const MOST_EXACT = 20;

/** Patterns drawn when there are too many to try: the chance is known to 0.003 or better. */
export const DRAWS = 20_000;

export interface Rearranged {
  /** On both sides. */
  readonly chance: number;
  /** The smallest chance that so many samples can give, however clear they are. */
  readonly smallest: number;
  /** Every arrangement was tried; else the chance comes from a seeded draw. */
  readonly exact: boolean;
}

/**
 * The smallest two-sided chance that flipping signs can give with so many pairs: `2^(1−n)`. Five pairs stay
 * above 5 %, six reach it.
 *
 * @param pairs whole, 0 or more
 * @returns 1 for none or one
 *
 * @example
 * smallestSignFlipChance(6) // => 0.03125
 */
export const smallestSignFlipChance = (pairs: number): number => Math.min(1, 2 ** (1 - pairs));

/** Patterns with the first sign fixed whose sum lies as far from 0; steps by one flip at a time (Gray code). */
const countedExactly = (sizes: readonly number[], far: number): number => {
  const signed = [...sizes];
  let sum = sizes.reduce((total, size) => total + size, 0);
  let count = Math.abs(sum) >= far ? 1 : 0;
  const patterns = 2 ** (sizes.length - 1);
  for (let step = 1; step < patterns; step++) {
    const place = 32 - Math.clz32(step & -step);
    const size = signed[place] ?? 0;
    sum -= 2 * size;
    signed[place] = -size;
    if (Math.abs(sum) >= far) count++;
  }
  return count / patterns;
};

const countedByDraw = (sizes: readonly number[], far: number, seed: number): number => {
  const next = seeded(seed);
  let count = 0;
  for (let draw = 0; draw < DRAWS; draw++) {
    let sum = 0;
    for (const size of sizes) sum += next() < 0.5 ? size : -size;
    if (Math.abs(sum) >= far) count++;
  }
  // The pattern in hand counts as one of those drawn, so the chance is never 0.
  return (count + 1) / (DRAWS + 1);
};

/**
 * If the two of a pair had been laid the other way round by chance, how often would the mean difference lie as
 * far from none? All 2^n patterns of signs up to 20 pairs, 20,000 drawn ones beyond.
 *
 * @param differences one per pair, in any order; zeros stay and flip to themselves
 * @param seed for the draw beyond 20 pairs
 * @returns `science/nothing-read` for none, `science/no-number` when one is not finite. All zero give 1; fewer
 * than six pairs can never give less than 5 %
 *
 * Source: Fisher 1935, The Design of Experiments, section 21.
 *
 * @example
 * signFlip([4, 3, 8], 1).value // => { chance: 0.25, smallest: 0.25, exact: true }
 */
export const signFlip = (differences: readonly number[], seed: number): Result<Rearranged> => {
  if (differences.length === 0) return failed("science/nothing-read");
  if (!differences.every(Number.isFinite)) return failed("science/no-number");
  const sizes = differences.map(Math.abs).sort((a, b) => a - b);
  const total = sizes.reduce((sum, size) => sum + size, 0);
  if (!Number.isFinite(total)) return failed("science/no-number");
  const exact = sizes.length <= MOST_EXACT;
  const seen = Math.abs([...differences].sort((a, b) => a - b).reduce((sum, value) => sum + value, 0));
  // Sums that differ by rounding alone are ties, and ties count.
  const far = seen - 1000 * ROUNDING * Math.max(total, largestOf(differences));
  return ok({
    chance: exact ? countedExactly(sizes, far) : countedByDraw(sizes, far, seed),
    smallest: smallestSignFlipChance(sizes.length),
    exact,
  });
};
