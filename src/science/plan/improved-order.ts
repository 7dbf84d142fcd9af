/** An order of walking made shorter by small changes. */
import { type Distances, legM } from "./distances.ts";

/** What a change has to save, in metres, so that rounding never goes round in circles. */
const WORTH_M = 1e-6;
/** Distances that differ there and back could go round in circles; a walk of 300 places takes some hundred rounds. */
const MOST_ROUNDS = 10_000;
/** Most neighbours that are moved together. */
const MOVED_TOGETHER = 3;

/** A change, by what it saves. */
interface Change {
  readonly savedM: number;
  readonly order: () => readonly number[];
}

type Place = (index: number) => number | null;

/** Places by their number in a way: the start before the first, and after the last when the way leads back. */
const placeOf =
  (order: readonly number[], back: boolean): Place =>
  (index) =>
    index < 0 ? 0 : (order[index] ?? (back ? 0 : null));

/** The stretch to turn round that saves most. */
const bestTurn = (distances: Distances, order: readonly number[], back: boolean): Change => {
  const place = placeOf(order, back);
  let best: Change = { savedM: 0, order: () => order };
  for (let i = 0; i < order.length; i++)
    for (let j = i + 1; j < order.length; j++) {
      const [a, b, c, d] = [place(i - 1), place(i), place(j), place(j + 1)];
      const savedM =
        legM(distances, a, b) + legM(distances, c, d) - legM(distances, a, c) - legM(distances, b, d);
      if (savedM > best.savedM)
        best = {
          savedM,
          order: () => [...order.slice(0, i), ...order.slice(i, j + 1).reverse(), ...order.slice(j + 1)],
        };
    }
  return best;
};

/** The best new gap, either way round, for the neighbours that were taken out. */
const bestGap = (distances: Distances, rest: readonly number[], moved: readonly number[], back: boolean) => {
  const place = placeOf(rest, back);
  const [first, last] = [moved[0] ?? null, moved.at(-1) ?? null];
  let best = { addedM: Number.POSITIVE_INFINITY, gap: 0, turned: false };
  for (let gap = 0; gap <= rest.length; gap++) {
    const [from, to] = [place(gap - 1), place(gap)];
    const bridgedM = legM(distances, from, to);
    const aheadM = legM(distances, from, first) + legM(distances, last, to) - bridgedM;
    const turnedM = legM(distances, from, last) + legM(distances, first, to) - bridgedM;
    if (Math.min(aheadM, turnedM) < best.addedM)
      best = { addedM: Math.min(aheadM, turnedM), gap, turned: turnedM < aheadM };
  }
  return best;
};

/** The move of up to three neighbours to another gap that saves most. */
const bestMove = (distances: Distances, order: readonly number[], back: boolean): Change => {
  const place = placeOf(order, back);
  let best: Change = { savedM: 0, order: () => order };
  for (let i = 0; i < order.length; i++)
    for (let size = 1; size <= MOVED_TOGETHER && i + size <= order.length; size++) {
      const moved = order.slice(i, i + size);
      const rest = [...order.slice(0, i), ...order.slice(i + size)];
      const [before, after] = [place(i - 1), place(i + size)];
      const freedM =
        legM(distances, before, place(i)) +
        legM(distances, place(i + size - 1), after) -
        legM(distances, before, after);
      const { addedM, gap, turned } = bestGap(distances, rest, moved, back);
      if (freedM - addedM > best.savedM)
        best = {
          savedM: freedM - addedM,
          order: () => [...rest.slice(0, gap), ...(turned ? moved.reverse() : moved), ...rest.slice(gap)],
        };
    }
  return best;
};

/** Always on to the nearest place left; of equal ones the first. */
const nearestFirst = (distances: Distances): readonly number[] => {
  const left = Array.from({ length: Math.max(0, distances.length - 1) }, (_, index) => index + 1);
  const order: number[] = [];
  let from = 0;
  while (left.length > 0) {
    let pick = 0;
    for (const [index, place] of left.entries())
      if (legM(distances, from, place) < legM(distances, from, left[pick] ?? null)) pick = index;
    const [next] = left.splice(pick, 1);
    if (next === undefined) break;
    order.push(next);
    from = next;
  }
  return order;
};

/**
 * An order that starts as "always to the nearest place left" and is changed, the change that saves most first,
 * until neither turning a stretch round (2-opt) nor moving up to three neighbours elsewhere (or-opt) shortens it.
 *
 * @param back whether the way leads back to the start
 * @returns numbers of the places, from 1; the same distances always give the same order
 *
 * Source: Croes 1958; Or 1976 (both from memory).
 */
export const improvedOrder = (distances: Distances, back: boolean): readonly number[] => {
  let order = nearestFirst(distances);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const turn = bestTurn(distances, order, back);
    const move = bestMove(distances, order, back);
    const best = move.savedM > turn.savedM ? move : turn;
    if (best.savedM <= WORTH_M) return order;
    order = best.order();
  }
  return order;
};
