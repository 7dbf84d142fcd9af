/** Where rows of trees shelter a field and where they compete with it, for a wind. */
import { failed, ok, type Result } from "../../record/result.ts";
import { ALONG_ROW_DEG, SLANTING_DEG, TALLEST_TREE_M } from "../constants/water.ts";
import type { Caution, Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import { isPlace, type LatitudeLongitude, metresPerDegree, turnedDeg } from "../position/distance.ts";

const RADIANS = Math.PI / 180;
/** Beyond it no rows grow, and a degree of longitude runs out of metres. */
const FARTHEST_LATITUDE = 80;

/** A row of trees as it is drawn on the map. */
export interface TreeRow {
  /** From one end to the other, two places or more. */
  readonly line: readonly LatitudeLongitude[];
  /** Height of the tallest trees, in m. */
  readonly heightM: number;
}

/** Where the zones end, in tree heights from the row. */
export interface ZoneHeights {
  /** To here trees take more than they give. */
  readonly competition: number;
  /** To here they shelter. */
  readonly shelter: number;
}

/** One four-sided piece of a zone behind one stretch of row. */
export interface ZonePiece {
  readonly zone: "competition" | "shelter";
  /** Four corners, one after another. */
  readonly corners: readonly [LatitudeLongitude, LatitudeLongitude, LatitudeLongitude, LatitudeLongitude];
  readonly areaM2: number;
}

/** The zones of all rows. */
export interface ShelterZones extends Worked {
  readonly pieces: readonly ZonePiece[];
}

interface Metres {
  readonly east: number;
  readonly north: number;
}

const moved = (from: LatitudeLongitude, { east, north }: Metres): LatitudeLongitude => {
  const perDegree = metresPerDegree(from.latitudeDeg);
  return {
    latitudeDeg: from.latitudeDeg + north / perDegree.north,
    longitudeDeg: turnedDeg(from.longitudeDeg + east / perDegree.east),
  };
};

const between = (a: LatitudeLongitude, b: LatitudeLongitude): Metres => {
  const perDegree = metresPerDegree((a.latitudeDeg + b.latitudeDeg) / 2);
  return {
    east: turnedDeg(b.longitudeDeg - a.longitudeDeg) * perDegree.east,
    north: (b.latitudeDeg - a.latitudeDeg) * perDegree.north,
  };
};

/**
 * Angle at which a wind meets a stretch of row, 0 along it to 90 square to it.
 *
 * @param windFromDeg where the wind comes from, degrees from true north through east
 */
const meets = (stretch: Metres, windFromDeg: number): number => {
  const bearing = Math.atan2(stretch.east, stretch.north) / RADIANS;
  const turn = Math.abs(((((windFromDeg - bearing) % 180) + 180) % 180) - 90);
  return 90 - turn;
};

/** A straight stretch of a row, with the angle at which the wind meets it. */
interface Stretch {
  readonly from: LatitudeLongitude;
  readonly to: LatitudeLongitude;
  readonly lengthM: number;
  readonly heightM: number;
  readonly angleDeg: number;
}

const stretchesOf = ({ line, heightM }: TreeRow, windFromDeg: number): readonly Stretch[] =>
  line.flatMap((from, at) => {
    const to = line[at + 1];
    if (to === undefined) return [];
    const stretch = between(from, to);
    const lengthM = Math.hypot(stretch.east, stretch.north);
    return lengthM > 0 ? [{ from, to, lengthM, heightM, angleDeg: meets(stretch, windFromDeg) }] : [];
  });

const pieceOf = (
  { from, to, lengthM, heightM, angleDeg }: Stretch,
  windFromDeg: number,
  zone: ZonePiece["zone"],
  [near, far]: readonly [number, number],
): ZonePiece => {
  const downwind = (windFromDeg + 180) * RADIANS;
  const push = (heights: number): Metres => ({
    east: heights * heightM * Math.sin(downwind),
    north: heights * heightM * Math.cos(downwind),
  });
  return {
    zone,
    corners: [moved(from, push(near)), moved(to, push(near)), moved(to, push(far)), moved(from, push(far))],
    areaM2: lengthM * (far - near) * heightM * Math.sin(angleDeg * RADIANS),
  };
};

const checked = (
  rows: readonly TreeRow[],
  windFromDeg: number,
  { competition, shelter }: ZoneHeights,
): Result<true> => {
  if (!(windFromDeg >= 0 && windFromDeg <= 360))
    return failed("science/out-of-bounds", { what: "wind direction", least: 0, most: 360 });
  if (!(competition >= 0 && shelter > competition && shelter <= 50))
    return failed("science/out-of-bounds", { what: "zone", least: 0, most: 50 });
  for (const { line, heightM } of rows) {
    if (!(heightM > 0 && heightM <= TALLEST_TREE_M))
      return failed("science/out-of-bounds", { what: "tree height", least: 0, most: TALLEST_TREE_M });
    if (!line.every((place) => isPlace(place) && Math.abs(place.latitudeDeg) <= FARTHEST_LATITUDE))
      return failed("science/not-a-place");
  }
  return ok(true);
};

/**
 * Zones on the lee side of rows for one wind. Each stretch of a row is pushed down the wind by so many tree heights, so
 * that a slanting wind shelters a narrower strip of field; a stretch that the wind blows along (15° or less) shelters
 * nothing. Pieces of bent rows and of several rows may lie over one another, and their areas do not add up then.
 *
 * @param rows in any order; fewer than two places make no row, a place twice no stretch
 * @param windFromDeg where the wind comes from, 0 to 360 degrees from true north through east
 * @param zones `competition` below `shelter`, at most 50
 * @returns the pieces in the order of the rows, competition before shelter. `science/no-row` when there is no stretch,
 * `science/wind-along-row` when the wind blows along all of them, `science/out-of-bounds` or `science/not-a-place`
 * for what cannot be
 *
 * Source: plane geometry on the ellipsoid's own degrees; limits of the angle are rules of this product.
 *
 * @example
 * const row = { line: [{ latitudeDeg: 52, longitudeDeg: 10 }, { latitudeDeg: 52.01, longitudeDeg: 10 }], heightM: 12 };
 * const west = sheltered([row], 270, { competition: 1, shelter: 12 });
 * west.value.pieces[1].corners[2].longitudeDeg > 10 // => true
 */
export const sheltered = (
  rows: readonly TreeRow[],
  windFromDeg: number,
  zones: ZoneHeights,
): Result<ShelterZones> => {
  const good = checked(rows, windFromDeg, zones);
  if (!good.ok) return good;
  const all = rows.flatMap((row) => stretchesOf(row, windFromDeg));
  if (all.length === 0) return failed("science/no-row");
  const across = all.filter(({ angleDeg }) => angleDeg > ALONG_ROW_DEG);
  if (across.length === 0) return failed("science/wind-along-row", { degrees: ALONG_ROW_DEG });
  const { competition, shelter } = zones;
  const pieces = across.flatMap((stretch) => [
    ...(competition > 0 ? [pieceOf(stretch, windFromDeg, "competition", [0, competition])] : []),
    pieceOf(stretch, windFromDeg, "shelter", [competition, shelter]),
  ]);
  const cautions: Caution[] = [
    { code: "science/one-wind-only", facts: {} },
    { code: "science/windward-not-counted", facts: {} },
  ];
  if (across.some(({ angleDeg }) => angleDeg < SLANTING_DEG))
    cautions.push({ code: "science/wind-slanting", facts: {} });
  return ok({
    pieces,
    n: all.length,
    sampledBy: "assumptions",
    cautions,
    methods: ["shelter-zones"],
    sources: sourcesOf(["shelter-zones"]),
  });
};
