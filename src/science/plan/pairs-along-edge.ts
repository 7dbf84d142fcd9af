/** Pairs of spots on both sides of a visible edge. */
import { failed, ok, type Result } from "../../record/result.ts";
import { FARTHEST_CORNER_M, SAME_PLACE_M } from "../constants/plans.ts";
import type { Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import { middleOf } from "../position/boundary.ts";
import { isPlace, type LatitudeLongitude } from "../position/distance.ts";
import { type PlanePoint, planeAbout } from "../position/plane.ts";
import { apartM, between, toPieceM } from "../position/plane-geometry.ts";
import { seeded } from "../statistics/seeded.ts";
import { goodWishes } from "./wanted.ts";

export interface PairsWanted {
  readonly pairs: number;
  /** From the edge to either spot. */
  readonly offEdgeM: number;
  /** Left out at both ends of the edge, for the headlands. */
  readonly fromEndsM: number;
  readonly seed: number;
}

/** One spot on each side of the same place of the edge. */
export interface EdgePair {
  /** Along the edge from its first place. */
  readonly alongM: number;
  readonly atEdge: LatitudeLongitude;
  /** Left and right of the edge as it was walked. */
  readonly left: LatitudeLongitude;
  readonly right: LatitudeLongitude;
}

export interface EdgePairs extends Worked {
  readonly pairs: readonly EdgePair[];
  /** Between two pairs, along the edge, where none had to be moved out of a bend. */
  readonly stepM: number;
}

interface Piece {
  readonly a: PlanePoint;
  readonly b: PlanePoint;
  /** Along the edge up to a. */
  readonly sinceM: number;
  readonly lengthM: number;
}

interface Across {
  readonly atEdge: PlanePoint;
  readonly left: PlanePoint;
  readonly right: PlanePoint;
}

/** In a bend the other leg of the edge may come nearer than this share of the distance wanted. */
const NEARER = 0.99;
/** Places tried around a pair that falls into a bend. */
const MOVES = 40;

const piecesOf = (points: readonly PlanePoint[]): readonly Piece[] => {
  const pieces: Piece[] = [];
  let from = points[0];
  let sinceM = 0;
  for (const to of points.slice(1)) {
    if (from === undefined) break;
    const lengthM = apartM(from, to);
    if (lengthM < SAME_PLACE_M) continue;
    pieces.push({ a: from, b: to, sinceM, lengthM });
    sinceM += lengthM;
    from = to;
  }
  return pieces;
};

/** The two spots at a place of the edge, null when a bend brings the edge nearer to one of them. */
const acrossAt = (pieces: readonly Piece[], alongM: number, offM: number): Across | null => {
  const piece = pieces.findLast(({ sinceM }) => sinceM <= alongM) ?? pieces[0];
  if (piece === undefined) return null;
  const { a, b, sinceM, lengthM } = piece;
  const atEdge = between(a, b, Math.min(1, (alongM - sinceM) / lengthM));
  const east = (-(b.northM - a.northM) / lengthM) * offM;
  const north = ((b.eastM - a.eastM) / lengthM) * offM;
  const left = { eastM: atEdge.eastM + east, northM: atEdge.northM + north };
  const right = { eastM: atEdge.eastM - east, northM: atEdge.northM - north };
  const free = pieces.every((other) =>
    [left, right].every((spot) => toPieceM(spot, other.a, other.b) >= NEARER * offM),
  );
  return free ? { atEdge, left, right } : null;
};

/** The place nearest to the wanted one where both spots are free, at most a quarter of a step away. */
const movedTo = (
  pieces: readonly Piece[],
  wantedM: number,
  { stepM, offM, lowM, highM }: { stepM: number; offM: number; lowM: number; highM: number },
) => {
  for (let move = 0; move <= MOVES; move++)
    for (const side of move === 0 ? [0] : [1, -1]) {
      const alongM = wantedM + (side * move * stepM) / (4 * MOVES);
      const across = alongM < lowM || alongM > highM ? null : acrossAt(pieces, alongM, offM);
      if (across !== null) return { alongM, across };
    }
  return null;
};

/**
 * Pairs of spots along an edge that can be seen (the last pass of the drill, the end of the straw), each with the
 * same distance to the edge on both sides, at equal steps from a random start. Pairs share their ground better
 * than spots thrown over two strips. In a bend, where the edge would come nearer to one spot than to the other,
 * a pair is moved by up to a quarter of a step.
 *
 * Whether both spots lie in the strips meant, and clear of the wheelings, is to be looked at in the field: keep
 * the distance off the edge below half the narrower strip.
 *
 * @param edge its places in order, two or more
 * @returns `science/edge-too-short` when nothing is left between the ends, `science/edge-too-crooked` when a pair
 * finds no place, `science/field-too-large` for an edge that reaches beyond 50 km from its middle,
 * `science/not-a-place`, `science/near-a-pole`, `science/not-a-count`, `science/too-many-points`,
 * `science/not-a-length` for a distance below 0 or spots on the edge itself, `science/no-number` for the seed
 *
 * Source: systematic sampling with a random start, Cochran 1977, chapter 8 (from memory); plane geometry.
 *
 * @example
 * const edge = [{ latitudeDeg: 0, longitudeDeg: 0 }, { latitudeDeg: 0, longitudeDeg: 0.01 }];
 * const wanted = { pairs: 5, offEdgeM: 10, fromEndsM: 20, seed: 3 };
 * pairsAlongEdge(edge, wanted).value.pairs[0].left.latitudeDeg // => ≈ 0.00009044
 */
export const pairsAlongEdge = (
  edge: readonly LatitudeLongitude[],
  { pairs, offEdgeM, fromEndsM, seed }: PairsWanted,
): Result<EdgePairs> => {
  const good = goodWishes(pairs, [offEdgeM, fromEndsM]);
  if (!good.ok) return good;
  if (offEdgeM < SAME_PLACE_M) return failed("science/not-a-length", { value: String(offEdgeM) });
  if (!Number.isFinite(seed)) return failed("science/no-number");
  if (!edge.every(isPlace)) return failed("science/not-a-place");
  const middle = middleOf(edge);
  if (!middle.ok) return failed("science/edge-too-short");
  const plane = planeAbout(middle.value);
  if (!plane.ok) return plane;
  const points = edge.map(plane.value.toPlane);
  if (points.some(({ eastM, northM }) => Math.hypot(eastM, northM) > FARTHEST_CORNER_M))
    return failed("science/field-too-large", { mostKm: FARTHEST_CORNER_M / 1000 });
  const pieces = piecesOf(points);
  const lengthM = pieces.reduce((sum, piece) => sum + piece.lengthM, 0);
  const usableM = lengthM - 2 * fromEndsM;
  if (!(usableM > SAME_PLACE_M)) return failed("science/edge-too-short");
  const stepM = usableM / pairs;
  const startM = fromEndsM + seeded(Math.trunc(seed % 2 ** 32))() * stepM;
  const { toPlace } = plane.value;
  const bounds = { stepM, offM: offEdgeM, lowM: fromEndsM, highM: lengthM - fromEndsM };
  const found: EdgePair[] = [];
  for (let pair = 0; pair < pairs; pair++) {
    const moved = movedTo(pieces, startM + pair * stepM, bounds);
    if (moved === null) return failed("science/edge-too-crooked", { asked: pairs, fit: found.length });
    const { atEdge, left, right } = moved.across;
    found.push({ alongM: moved.alongM, atEdge: toPlace(atEdge), left: toPlace(left), right: toPlace(right) });
  }
  return ok({
    pairs: found,
    stepM,
    n: pairs,
    sampledBy: "pairs",
    cautions: [],
    methods: ["pairs-along-edge"],
    sources: sourcesOf(["pairs-along-edge"]),
  });
};
