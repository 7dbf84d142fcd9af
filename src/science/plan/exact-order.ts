/** The shortest of all orders, for few places. */
import { type Distances, legM } from "./distances.ts";

/** For every set of places and every place that it may end at: the shortest way, and the place before the end. */
interface Ways {
  readonly lengthsM: Float64Array;
  readonly before: Int8Array;
}

/** Each way that goes on from one set and end by one place more; kept where it is the shortest to get there. */
const goOn = (distances: Distances, ways: Ways, n: number, set: number, end: number): void => {
  const so = ways.lengthsM[set * n + end] ?? Number.POSITIVE_INFINITY;
  if (so === Number.POSITIVE_INFINITY) return;
  for (let next = 0; next < n; next++) {
    if ((set & (1 << next)) !== 0) continue;
    const slot = (set | (1 << next)) * n + next;
    const length = so + legM(distances, end + 1, next + 1);
    if (length < (ways.lengthsM[slot] ?? 0)) {
      ways.lengthsM[slot] = length;
      ways.before[slot] = end;
    }
  }
};

/**
 * The order of the shortest way from place 0 through all others, found by comparing all ways at once. Time grows
 * as n²·2ⁿ: meant for 13 places or fewer besides the start.
 *
 * @param back whether the way leads back to the start
 * @returns numbers of the places, from 1; of equally short ways always the same one; empty without places
 *
 * Source: Held & Karp 1962 (from memory).
 *
 * @example
 * exactOrder([[0, 5, 1], [5, 0, 4], [1, 4, 0]], false) // => [2, 1]
 */
export const exactOrder = (distances: Distances, back: boolean): readonly number[] => {
  const n = distances.length - 1;
  if (n < 1) return [];
  const sets = 2 ** n;
  const ways = {
    lengthsM: new Float64Array(sets * n).fill(Number.POSITIVE_INFINITY),
    before: new Int8Array(sets * n).fill(-1),
  };
  for (let end = 0; end < n; end++) ways.lengthsM[2 ** end * n + end] = legM(distances, 0, end + 1);
  for (let set = 1; set < sets; set++) for (let end = 0; end < n; end++) goOn(distances, ways, n, set, end);
  let set = sets - 1;
  let end = 0;
  let shortest = Number.POSITIVE_INFINITY;
  for (let last = 0; last < n; last++) {
    const length = (ways.lengthsM[set * n + last] ?? 0) + legM(distances, last + 1, back ? 0 : null);
    if (length < shortest) [shortest, end] = [length, last];
  }
  const order: number[] = [];
  while (end >= 0) {
    order.unshift(end + 1);
    const before = ways.before[set * n + end] ?? -1;
    set &= ~(1 << end);
    end = before;
  }
  return order;
};
