/** The least rectangle about a field, turned as the field lies. */
import type { PlanePoint } from "../position/plane.ts";
import { edgesOf, extentOf, leftOf, type Ring } from "../position/plane-geometry.ts";

/** A rectangle; points inside it are named by shares along and across. */
export interface Frame {
  /** The longer side and the shorter one. */
  readonly alongM: number;
  readonly acrossM: number;
  /** The point at these shares, 0 to 1 each. */
  readonly pointAt: (alongShare: number, acrossShare: number) => PlanePoint;
}

/** Convex hull, counter-clockwise (monotone chain). */
const hullOf = (ring: Ring): Ring => {
  const sorted = [...ring].sort((a, b) => a.eastM - b.eastM || a.northM - b.northM);
  const half = (points: Ring): readonly PlanePoint[] => {
    const chain: PlanePoint[] = [];
    for (const point of points) {
      while (chain.length >= 2) {
        const [a, b] = chain.slice(-2);
        if (a === undefined || b === undefined || leftOf(a, b, point) > 0) break;
        chain.pop();
      }
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
};

/**
 * The rectangle of least area that holds a ring. One of its sides runs along an edge of the hull, so all of them
 * are tried. A strip that runs across the compass is filled by it, where a box from west to east would be mostly
 * empty.
 *
 * @param ring three corners or more that enclose an area
 *
 * Source: Freeman & Shapira 1975 (from memory): the least rectangle shares an edge with the convex hull.
 *
 * @example
 * const strip = [[0, 0], [300, 400], [292, 406], [-8, 6]].map(([eastM, northM]) => ({ eastM, northM }));
 * frameOf(strip).acrossM // => ≈ 10
 */
export const frameOf = (ring: Ring): Frame => {
  const hull = hullOf(ring);
  let best: Frame = {
    alongM: Number.POSITIVE_INFINITY,
    acrossM: Number.POSITIVE_INFINITY,
    pointAt: (eastM, northM) => ({ eastM, northM }),
  };
  for (const [a, b] of edgesOf(hull)) {
    const length = Math.hypot(b.eastM - a.eastM, b.northM - a.northM);
    if (length === 0) continue;
    const [east, north] = [(b.eastM - a.eastM) / length, (b.northM - a.northM) / length];
    const u = extentOf(hull.map((point) => point.eastM * east + point.northM * north));
    const v = extentOf(hull.map((point) => point.northM * east - point.eastM * north));
    const [long, wide] = [u.high - u.low, v.high - v.low];
    if (long * wide >= best.alongM * best.acrossM) continue;
    const at = (shareU: number, shareV: number): PlanePoint => {
      const [alongEdge, offEdge] = [u.low + shareU * long, v.low + shareV * wide];
      return { eastM: alongEdge * east - offEdge * north, northM: alongEdge * north + offEdge * east };
    };
    best =
      long >= wide
        ? { alongM: long, acrossM: wide, pointAt: at }
        : { alongM: wide, acrossM: long, pointAt: (along, across) => at(across, along) };
  }
  return best;
};
