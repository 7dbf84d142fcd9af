/** A walk in the shape of a W with stops along it. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Caution, Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import type { Boundary } from "../position/boundary.ts";
import { deepest } from "../position/deepest.ts";
import type { LatitudeLongitude } from "../position/distance.ts";
import type { PlanePoint } from "../position/plane.ts";
import { apartM, between, depthM, type Ring } from "../position/plane-geometry.ts";
import { type Frame, frameOf } from "./frame.ts";
import { goodWishes } from "./wanted.ts";

export interface WalkWanted {
  readonly stops: number;
  /** Least distance of every stop from the edge. */
  readonly headlandM: number;
}

export interface Walk extends Worked {
  /** Where to stop, in the order of walking. */
  readonly stops: readonly LatitudeLongitude[];
  /** The five turning points of the W. */
  readonly turns: readonly LatitudeLongitude[];
  readonly lengthM: number;
}

/** The field is looked at on a grid of so many columns and rows. */
const COLUMNS = 81;
const ROWS = 61;
/** Steps of the way at which it is asked whether they are in the field. */
const STEPS = 1200;

/** The outermost points of a column that are clear of the headland, so that no arm of a field is left out. */
const clearEnds = (ring: Ring, frame: Frame, along: number, headlandM: number) => {
  const clear = Array.from({ length: ROWS }, (_, row) => frame.pointAt(along, row / (ROWS - 1))).filter(
    (point) => depthM(ring, point) >= headlandM,
  );
  const [near, far] = [clear[0], clear.at(-1)];
  return near === undefined || far === undefined ? null : ([near, far] as const);
};

/** The W: at five stations along the field the far and the near end of what is clear of the headland, in turn. */
const turnsOf = (ring: Ring, headlandM: number): readonly PlanePoint[] => {
  const frame = frameOf(ring);
  const columns = Array.from({ length: COLUMNS }, (_, column) =>
    clearEnds(ring, frame, column / (COLUMNS - 1), headlandM),
  ).filter((ends) => ends !== null);
  return [0, 1, 2, 3, 4].flatMap((station) => {
    const ends = columns[Math.round((station * (columns.length - 1)) / 4)];
    return ends === undefined ? [] : [station % 2 === 0 ? ends[1] : ends[0]];
  });
};

/**
 * A W-shaped walk inside a boundary with stops at equal steps along it. The W follows the field: it leans
 * against the headland, within a sixtieth of its width, at five stations along its longer side. Parts of it that leave the field or cross the
 * headland get no stop. A W spreads stops over a field for its mean; it is not for hunting a fault, and it is
 * not random: stops that keep step with tramlines or drains are all in them or all out.
 *
 * @returns stops, turns and length in metres; `science/walk-leaves-field` as a caution where a straight leg
 * crosses ground outside; `science/headland-too-wide` with the widest that leaves anything over, and
 * `science/not-a-count`, `science/too-many-points`, `science/not-a-length`
 *
 * Source: common practice of soil sampling; the way it is fitted to the field is a rule of this product.
 *
 * @example
 * import { boundaryOf } from "../position/boundary.ts";
 * const corners = [[0, 0], [0, 0.02], [0.01, 0.02], [0.01, 0]];
 * const field = boundaryOf(corners.map(([latitudeDeg, longitudeDeg]) => ({ latitudeDeg, longitudeDeg })));
 * wWalk(field.value, { stops: 10, headlandM: 20 }).value.turns.length // => 5
 */
export const wWalk = ({ ring, plane }: Boundary, { stops, headlandM }: WalkWanted): Result<Walk> => {
  const good = goodWishes(stops, [headlandM]);
  if (!good.ok) return good;
  const deep = deepest(ring).depthM;
  const turns = deep < headlandM ? [] : turnsOf(ring, headlandM);
  const legs = turns.slice(1).flatMap((to, index) => {
    const from = turns[index];
    return from === undefined ? [] : [{ from, to, lengthM: apartM(from, to) }];
  });
  const lengthM = legs.reduce((sum, leg) => sum + leg.lengthM, 0);
  if (!(lengthM > 0)) return failed("science/headland-too-wide", { mostM: Math.floor(10 * deep) / 10 });
  const clear: PlanePoint[] = [];
  let leaves = false;
  for (const { from, to, lengthM: legM } of legs) {
    const steps = Math.max(1, Math.round((STEPS * legM) / lengthM));
    for (let step = 0; step < steps; step++) {
      const point = between(from, to, (step + 0.5) / steps);
      const depth = depthM(ring, point);
      if (depth >= headlandM) clear.push(point);
      else if (depth < 0) leaves = true;
    }
  }
  if (clear.length < stops) return failed("science/points-do-not-fit", { asked: stops, fit: clear.length });
  const cautions: Caution[] = leaves ? [{ code: "science/walk-leaves-field", facts: {} }] : [];
  const chosen = Array.from(
    { length: stops },
    (_, stop) => clear[Math.floor(((stop + 0.5) * clear.length) / stops)],
  );
  return ok({
    stops: chosen.flatMap((point) => (point === undefined ? [] : [plane.toPlace(point)])),
    turns: turns.map(plane.toPlace),
    lengthM,
    n: stops,
    sampledBy: "spots",
    cautions,
    methods: ["w-walk", "headland"],
    sources: sourcesOf(["w-walk", "headland"]),
  });
};
