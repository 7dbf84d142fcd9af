/** Where a boundary crosses or touches itself. */
import { SAME_PLACE_M } from "../constants/plans.ts";
import type { PlanePoint } from "./plane.ts";
import { edgesOf, leftOf, type Ring, toPieceM } from "./plane-geometry.ts";

interface Edge {
  readonly at: number;
  readonly a: PlanePoint;
  readonly b: PlanePoint;
  readonly westM: number;
  readonly eastM: number;
}

const cross = ({ a, b }: Edge, { a: c, b: d }: Edge): boolean =>
  leftOf(a, b, c) > 0 !== leftOf(a, b, d) > 0 && leftOf(c, d, a) > 0 !== leftOf(c, d, b) > 0;

const touch = ({ a, b }: Edge, { a: c, b: d }: Edge): boolean =>
  Math.min(toPieceM(c, a, b), toPieceM(d, a, b), toPieceM(a, c, d), toPieceM(b, c, d)) < SAME_PLACE_M;

/** Whether the second of two edges that share a corner runs back along the first. */
const foldsBack = ({ a, b }: Edge, { b: c }: Edge): boolean =>
  Math.min(toPieceM(c, a, b), toPieceM(a, b, c)) < SAME_PLACE_M;

/** Whether two edges of a ring of n meet where they must not; the first has the lower number. */
const meetBadly = (first: Edge, second: Edge, n: number): boolean => {
  if (second.at === first.at + 1) return foldsBack(first, second);
  if (first.at === 0 && second.at === n - 1) return foldsBack(second, first);
  return cross(first, second) || touch(first, second);
};

/**
 * The first two edges, by number, that cross, touch within a millimetre, or run back along each other. Edge
 * number i leads to corner i, counted from 0. Edges are taken from west to east, so that 20 000 corners are no
 * trouble.
 *
 * @param ring three corners or more, none repeated
 * @returns null when the ring is simple
 *
 * @example
 * const bow = [[0, 0], [100, 100], [100, 0], [0, 100]].map(([eastM, northM]) => ({ eastM, northM }));
 * selfCrossing(bow) // => [1, 3]
 */
export const selfCrossing = (ring: Ring): readonly [number, number] | null => {
  const n = ring.length;
  const edges = edgesOf(ring)
    .map(([a, b], at): Edge => {
      const [westM, eastM] = a.eastM < b.eastM ? [a.eastM, b.eastM] : [b.eastM, a.eastM];
      return { at, a, b, westM, eastM };
    })
    .sort((one, other) => one.westM - other.westM || one.at - other.at);
  let open: Edge[] = [];
  let found: readonly [number, number] | null = null;
  for (const edge of edges) {
    open = open.filter(({ eastM }) => eastM >= edge.westM - SAME_PLACE_M);
    for (const other of open) {
      const [first, second] = other.at < edge.at ? [other, edge] : [edge, other];
      const sooner = found === null || first.at < found[0] || (first.at === found[0] && second.at < found[1]);
      if (sooner && meetBadly(first, second, n)) found = [first.at, second.at];
    }
    open.push(edge);
  }
  return found;
};
