/** How often sharing out the same values anew gives two means this far apart. */
import { failed, ok, type Result } from "../../record/result.ts";
import { ROUNDING, sumOf } from "./sample.ts";
import { seeded } from "./seeded.ts";
import { DRAWS, type Rearranged } from "./sign-flip.ts";

/** Up to so many ways of sharing out, each is tried. */
const MOST_EXACT = 200_000;

/**
 * In how many ways `chosen` of `all` can be picked; rounded beyond 2⁵³, infinite beyond all numbers.
 *
 * @returns 0 when more are chosen than there are
 *
 * @example
 * waysToChoose(14, 6) // => 3003
 */
export const waysToChoose = (all: number, chosen: number): number => {
  if (chosen < 0 || chosen > all) return 0;
  let ways = 1;
  for (let k = 1; k <= Math.min(chosen, all - chosen) && Number.isFinite(ways); k++)
    ways = (ways * (all - k + 1)) / k;
  return Math.round(ways);
};

/**
 * The smallest two-sided chance that sharing out can give: 3 against 3 stay above 5 %, 4 against 4 reach it.
 *
 * @param a number in one group, 1 or more
 * @param b number in the other
 *
 * @example
 * smallestPermutationChance(3, 3) // => 0.1
 */
export const smallestPermutationChance = (a: number, b: number): number =>
  Math.min(1, (a === b ? 2 : 1) / waysToChoose(a + b, a));

/** Ways of choosing `chosen` whose sum lies at least `far` from `centre`. */
const countedExactly = (values: readonly number[], chosen: number, centre: number, far: number): number => {
  let count = 0;
  const walk = (from: number, left: number, sum: number): void => {
    if (left === 0) {
      if (Math.abs(sum - centre) >= far) count++;
      return;
    }
    for (let at = from; at <= values.length - left; at++) walk(at + 1, left - 1, sum + (values[at] ?? 0));
  };
  walk(0, chosen, 0);
  return count;
};

const countedByDraw = (
  values: readonly number[],
  chosen: number,
  centre: number,
  far: number,
  seed: number,
): number => {
  const next = seeded(seed);
  const deck = Float64Array.from(values);
  let count = 0;
  for (let draw = 0; draw < DRAWS; draw++) {
    let sum = 0;
    for (let at = 0; at < chosen; at++) {
      const from = at + Math.floor(next() * (deck.length - at));
      const taken = deck[from] ?? 0;
      deck[from] = deck[at] ?? 0;
      deck[at] = taken;
      sum += taken;
    }
    if (Math.abs(sum - centre) >= far) count++;
  }
  return (count + 1) / (DRAWS + 1);
};

/**
 * If what was done made no difference, any of these values could have fallen to either group: how often would
 * the means then lie as far apart? Every way of sharing out up to 200,000 of them, 20,000 drawn ones beyond.
 *
 * @param a values of one group, in any order and one unit
 * @param b values of the other
 * @param seed for the draw
 * @returns `science/nothing-read` when a group is empty, `science/no-number` when a value is not finite. All
 * equal give 1; 3 against 3 can never give less than 10 %
 *
 * Source: Fisher 1935, The Design of Experiments; Pitman 1937 (from memory).
 *
 * @example
 * permutationOfTwo([4, 5, 6], [1, 2, 3], 1).value // => { chance: 0.1, smallest: 0.1, exact: true }
 */
export const permutationOfTwo = (
  a: readonly number[],
  b: readonly number[],
  seed: number,
): Result<Rearranged> => {
  if (a.length === 0 || b.length === 0) return failed("science/nothing-read");
  // The smaller group is dealt out: fewer steps, and the same answer whichever of the two stands first.
  const dealt = a.length <= b.length ? a : b;
  const values = [...a, ...b].sort((x, y) => x - y);
  const total = sumOf(values);
  if (!(values.every(Number.isFinite) && Number.isFinite(total))) return failed("science/no-number");
  const centre = (total * dealt.length) / values.length;
  const size = values.reduce((sum, value) => sum + Math.abs(value), 0);
  const far = Math.abs(sumOf(dealt) - centre) - 1000 * ROUNDING * size;
  const ways = waysToChoose(values.length, dealt.length);
  const exact = ways <= MOST_EXACT;
  return ok({
    chance: exact
      ? countedExactly(values, dealt.length, centre, far) / ways
      : countedByDraw(values, dealt.length, centre, far, seed),
    smallest: smallestPermutationChance(a.length, b.length),
    exact,
  });
};
