/** The place of a field farthest from its edges. */
import type { PlanePoint } from "./plane.ts";
import { depthM, extentOf, type Ring } from "./plane-geometry.ts";

/** A point and its distance to the nearest edge. */
export interface Deepest {
  readonly point: PlanePoint;
  readonly depthM: number;
}

/** Cells smaller than this are not halved any more, in metres. */
const SMALLEST_HALF_M = 0.02;

/** A narrow strip is begun with no more than so many squares along it. */
const SQUARES_ALONG = 50;

const QUARTERS = [
  [-1, -1],
  [-1, 1],
  [1, -1],
  [1, 1],
] as const;

interface Cell extends Deepest {
  readonly halfM: number;
  /** No point of the cell lies deeper. */
  readonly mostM: number;
}

/**
 * The point of a ring that lies deepest inside it, and so the widest headland that leaves anything over. Squares
 * are halved where a deeper point could still lie, until none could by a hundredth.
 *
 * @param ring three corners or more that enclose an area
 * @returns right to 1 % of its depth, or 3 cm
 *
 * Source: the pole of inaccessibility by halving squares; plane geometry.
 *
 * @example
 * const strip = [[0, 0], [400, 0], [400, 12], [0, 12]].map(([eastM, northM]) => ({ eastM, northM }));
 * deepest(strip).depthM // => ≈ 6
 */
export const deepest = (ring: Ring): Deepest => {
  const east = extentOf(ring.map(({ eastM }) => eastM));
  const north = extentOf(ring.map(({ northM }) => northM));
  const cellAt = (eastM: number, northM: number, halfM: number): Cell => {
    const point = { eastM, northM };
    const depth = depthM(ring, point);
    return { point, depthM: depth, halfM, mostM: depth + halfM * Math.SQRT2 };
  };
  const spans = [east.high - east.low, north.high - north.low] as const;
  const width = Math.max(SMALLEST_HALF_M, Math.min(...spans), Math.max(...spans) / SQUARES_ALONG);
  let waiting: Cell[] = [];
  for (let x = east.low; x < east.high; x += width)
    for (let y = north.low; y < north.high; y += width)
      waiting.push(cellAt(x + width / 2, y + width / 2, width / 2));
  let best: Deepest = waiting.reduce<Deepest>(
    (deep, cell) => (cell.depthM > deep.depthM ? cell : deep),
    cellAt((east.low + east.high) / 2, (north.low + north.high) / 2, 0),
  );
  while (waiting.length > 0) {
    const next: Cell[] = [];
    for (const { point, halfM, mostM } of waiting) {
      if (halfM < SMALLEST_HALF_M || mostM <= best.depthM + 0.01 * Math.abs(best.depthM)) continue;
      const quarter = halfM / 2;
      for (const [x, y] of QUARTERS) {
        const cell = cellAt(point.eastM + x * quarter, point.northM + y * quarter, quarter);
        if (cell.depthM > best.depthM) best = cell;
        next.push(cell);
      }
    }
    waiting = next;
  }
  return { point: best.point, depthM: best.depthM };
};
