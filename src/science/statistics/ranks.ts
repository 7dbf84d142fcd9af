/** Ranks of numbers, and how often chance gives a sum of ranks. */
import { largestOf, ROUNDING } from "./sample.ts";

/** Ranks from 1, and how many share each rank that is shared. */
export interface Ranked {
  /** In the order of the values; equal values share the middle of their ranks. */
  readonly ranks: readonly number[];
  /** Sizes of the groups of equal values, those of one left out. */
  readonly ties: readonly number[];
}

/**
 * Middle ranks. Values that differ by the rounding of a unit alone are equal.
 *
 * @param values finite numbers in any order
 * @returns empty for none
 *
 * @example
 * midRanks([5, 1, 5, 2]) // => { ranks: [3.5, 1, 3.5, 2], ties: [2] }
 */
export const midRanks = (values: readonly number[]): Ranked => {
  const close = 100 * ROUNDING * largestOf(values);
  const order = values.map((value, at) => ({ value, at })).sort((a, b) => a.value - b.value);
  const ranks = new Array<number>(values.length).fill(0);
  const ties: number[] = [];
  for (let from = 0; from < order.length; ) {
    let to = from + 1;
    while (to < order.length && (order[to]?.value ?? 0) - (order[to - 1]?.value ?? 0) <= close) to++;
    for (const { at } of order.slice(from, to)) ranks[at] = (from + 1 + to) / 2;
    if (to - from > 1) ties.push(to - from);
    from = to;
  }
  return { ranks, ties };
};

/** Chance of a sum of ranks, counted in halves so that middle ranks are whole. */
export interface SumChances {
  readonly atMost: (sum: number) => number;
  readonly atLeast: (sum: number) => number;
}

const chancesOf = (counts: Float64Array): SumChances => {
  const all = counts.reduce((total, count) => total + count, 0);
  const share = (from: number, to: number): number =>
    counts.subarray(Math.max(0, from), Math.max(0, to)).reduce((total, count) => total + count, 0) / all;
  return {
    atMost: (sum) => share(0, Math.round(2 * sum) + 1),
    atLeast: (sum) => share(Math.round(2 * sum), counts.length),
  };
};

/** Every rank counted or not, each way as likely: sums of the ranks of positive differences. */
export const sumsOfAnyRanks = (ranks: readonly number[]): SumChances => {
  const halves = ranks.map((rank) => Math.round(2 * rank));
  const counts = new Float64Array(halves.reduce((sum, half) => sum + half, 0) + 1);
  counts[0] = 1;
  for (const half of halves)
    for (let sum = counts.length - 1; sum >= half; sum--)
      counts[sum] = (counts[sum] ?? 0) + (counts[sum - half] ?? 0);
  return chancesOf(counts);
};

/** So many of the ranks counted, each choice as likely: sums of the ranks of one group. */
export const sumsOfChosenRanks = (ranks: readonly number[], chosen: number): SumChances => {
  const halves = ranks.map((rank) => Math.round(2 * rank));
  const width = halves.reduce((sum, half) => sum + half, 0) + 1;
  const counts = Array.from({ length: chosen + 1 }, () => new Float64Array(width));
  const none = counts[0];
  if (none !== undefined) none[0] = 1;
  for (const half of halves)
    for (let k = chosen; k >= 1; k--) {
      const [into, from] = [counts[k], counts[k - 1]];
      if (into === undefined || from === undefined) continue;
      for (let sum = width - 1; sum >= half; sum--) into[sum] = (into[sum] ?? 0) + (from[sum - half] ?? 0);
    }
  return chancesOf(counts[chosen] ?? new Float64Array(1));
};
