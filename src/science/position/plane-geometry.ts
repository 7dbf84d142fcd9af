/** Plane geometry of rings and lines, in metres. */
import type { PlanePoint } from "./plane.ts";

/** A closed ring without its closing repeat; the last corner joins the first. */
export type Ring = readonly PlanePoint[];

/** Edges of a ring, each as its two ends. */
export const edgesOf = (ring: Ring): readonly (readonly [PlanePoint, PlanePoint])[] => {
  let from = ring.at(-1);
  const edges: (readonly [PlanePoint, PlanePoint])[] = [];
  for (const to of ring) {
    if (from !== undefined) edges.push([from, to]);
    from = to;
  }
  return edges;
};

/** Twice the area of the triangle, above 0 when c lies left of the way from a to b. */
export const leftOf = (a: PlanePoint, b: PlanePoint, c: PlanePoint): number =>
  (b.eastM - a.eastM) * (c.northM - a.northM) - (b.northM - a.northM) * (c.eastM - a.eastM);

/** Length of the straight way. */
export const apartM = (a: PlanePoint, b: PlanePoint): number =>
  Math.hypot(b.eastM - a.eastM, b.northM - a.northM);

/** Area by the trapezoid rule, above 0 when the ring runs counter-clockwise. */
export const signedAreaM2 = (ring: Ring): number => {
  const [first] = ring;
  if (first === undefined) return 0;
  // From the first corner, so that a field far from the middle loses no digits.
  return edgesOf(ring).reduce((sum, [a, b]) => sum + leftOf(first, a, b), 0) / 2;
};

/** Distance from a point to the straight piece between two others; a piece without length is a point. */
export const toPieceM = (point: PlanePoint, a: PlanePoint, b: PlanePoint): number => {
  const east = b.eastM - a.eastM;
  const north = b.northM - a.northM;
  const squared = east ** 2 + north ** 2;
  const along =
    squared === 0 ? 0 : ((point.eastM - a.eastM) * east + (point.northM - a.northM) * north) / squared;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(point.eastM - a.eastM - share * east, point.northM - a.northM - share * north);
};

/**
 * How deep a point lies inside a ring: its distance to the nearest edge in metres, below 0 outside. A field
 * shrunk by d is exactly the points at least d deep, so no shrunken outline with its spikes and slivers is
 * ever drawn.
 *
 * @param ring three corners or more, in either direction
 *
 * @example
 * const square = [[0, 0], [100, 0], [100, 100], [0, 100]].map(([eastM, northM]) => ({ eastM, northM }));
 * depthM(square, { eastM: 30, northM: 50 }) // => 30
 */
export const depthM = (ring: Ring, point: PlanePoint): number => {
  let nearest = Number.POSITIVE_INFINITY;
  let inside = false;
  for (const [a, b] of edgesOf(ring)) {
    nearest = Math.min(nearest, toPieceM(point, a, b));
    // Half-open, so that a ray through a corner counts once.
    if (a.northM > point.northM !== b.northM > point.northM) {
      const share = (point.northM - a.northM) / (b.northM - a.northM);
      if (point.eastM < a.eastM + share * (b.eastM - a.eastM)) inside = !inside;
    }
  }
  return inside ? nearest : -nearest;
};

/** A point so far along the way from a to b. */
export const between = (a: PlanePoint, b: PlanePoint, share: number): PlanePoint => ({
  eastM: a.eastM + share * (b.eastM - a.eastM),
  northM: a.northM + share * (b.northM - a.northM),
});

/** Lowest and highest of some numbers; spreading 20 000 of them into one call would overflow the stack. */
export const extentOf = (values: readonly number[]): { readonly low: number; readonly high: number } => ({
  low: values.reduce((low, value) => Math.min(low, value), Number.POSITIVE_INFINITY),
  high: values.reduce((high, value) => Math.max(high, value), Number.NEGATIVE_INFINITY),
});
