/** Random points in strips, the same ones for the same seed. */
import { failed, ok, type Result } from "../../record/result.ts";
import { LEAST_TRIES, POINT_ROUNDS, TRIES_PER_POINT } from "../constants/plans.ts";
import type { Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import type { Boundary } from "../position/boundary.ts";
import { deepest } from "../position/deepest.ts";
import type { LatitudeLongitude } from "../position/distance.ts";
import type { PlanePoint } from "../position/plane.ts";
import { apartM, depthM } from "../position/plane-geometry.ts";
import { seeded } from "../statistics/seeded.ts";
import { frameOf } from "./frame.ts";
import { goodWishes } from "./wanted.ts";

/** A strip, or any stratum, that gets points of its own. */
export interface StripToSample {
  readonly id: string;
  readonly boundary: Boundary;
}

/** What is wanted in every strip. */
export interface PointsWanted {
  readonly perStrip: number;
  /** Least distance from every edge of the strip. */
  readonly headlandM: number;
  /** Least distance between two points of a strip. */
  readonly apartM: number;
  /** Any number; the same one gives the same points. */
  readonly seed: number;
}

/** The points of a strip. */
export interface PlannedPoints extends Worked {
  readonly places: readonly LatitudeLongitude[];
}

/** A strip with its points, or the reason why it has none. */
export interface StripPoints {
  readonly id: string;
  readonly points: Result<PlannedPoints>;
}

/** A number from a text (FNV-1a, 32 bits). */
const numberOf = (text: string): number => {
  let hash = 0x811c9dc5;
  for (const letter of text) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return hash >>> 0;
};

/**
 * Random points of one strip: all places of the strip clear of its headland are equally likely, and a
 * point too near to one before it is drawn again (simple sequential inhibition). When the last ones find no
 * room the strip is begun anew, up to 20 times.
 *
 * @returns `science/headland-too-wide` with the widest that leaves anything over, `science/points-do-not-fit` with
 * the most that were placed, reasons as `goodWishes`
 */
const pointsOf = ({ id, boundary }: StripToSample, wanted: PointsWanted): Result<PlannedPoints> => {
  const { perStrip, headlandM, seed } = wanted;
  const { ring, plane } = boundary;
  const deep = deepest(ring).depthM;
  if (deep < headlandM) return failed("science/headland-too-wide", { mostM: Math.floor(10 * deep) / 10 });
  const frame = frameOf(ring);
  // The strip's own name goes into its seed, so that another strip beside it changes nothing here.
  const next = seeded(numberOf(id) ^ Math.trunc(seed % 2 ** 32));
  let most = 0;
  for (let round = 0; round < POINT_ROUNDS; round++) {
    const points: PlanePoint[] = [];
    const tries = Math.max(LEAST_TRIES, TRIES_PER_POINT * perStrip);
    for (let attempt = 0; attempt < tries && points.length < perStrip; attempt++) {
      const point = frame.pointAt(next(), next());
      const free = points.every((other) => apartM(point, other) >= wanted.apartM);
      if (free && depthM(ring, point) >= headlandM) points.push(point);
    }
    most = Math.max(most, points.length);
    if (points.length === perStrip)
      return ok({
        places: points.map(plane.toPlace),
        n: perStrip,
        sampledBy: "spots",
        cautions: [],
        methods: ["random-points", "headland"],
        sources: sourcesOf(["random-points", "headland"]),
      });
  }
  return failed("science/points-do-not-fit", { asked: perStrip, fit: most });
};

/**
 * Stratified random points: as many in every strip, clear of the headland and apart from each other. The same
 * seed, strip and wishes give the same points, whatever other strips there are and in whatever order.
 *
 * @param strips may be none
 * @returns one entry per strip, in the order given: its points, or `science/headland-too-wide`,
 * `science/points-do-not-fit`, `science/not-a-count`, `science/too-many-points`, `science/not-a-length`,
 * `science/no-number` for a seed that is not finite
 *
 * Source: Cochran 1977, Sampling Techniques, chapter 5 (stratified sampling); Diggle 2003, simple sequential
 * inhibition (both from memory).
 *
 * @example
 * import { boundaryOf } from "../position/boundary.ts";
 * const corners = [[0, 0], [0, 0.01], [0.01, 0.01], [0.01, 0]];
 * const field = boundaryOf(corners.map(([latitudeDeg, longitudeDeg]) => ({ latitudeDeg, longitudeDeg })));
 * const wanted = { perStrip: 5, headlandM: 20, apartM: 30, seed: 7 };
 * stratifiedPoints([{ id: "a", boundary: field.value }], wanted)[0].points.value.n // => 5
 */
export const stratifiedPoints = (
  strips: readonly StripToSample[],
  wanted: PointsWanted,
): readonly StripPoints[] =>
  strips.map((strip) => {
    const good = goodWishes(wanted.perStrip, [wanted.headlandM, wanted.apartM]);
    if (!good.ok) return { id: strip.id, points: good };
    if (!Number.isFinite(wanted.seed)) return { id: strip.id, points: failed("science/no-number") };
    return { id: strip.id, points: pointsOf(strip, wanted) };
  });
