/** The direction of the rows, from what somebody says, reads off a compass, or walks. */
import type { Position } from "../../record/shapes.ts";
import { geodesicBetween } from "../../science/position/geodesic.ts";

/** Directions that rows are named by, with their degrees from true north. */
export const ROW_WINDS = [
  { name: "north-south", deg: 0 },
  { name: "nne-ssw", deg: 22.5 },
  { name: "ne-sw", deg: 45 },
  { name: "ene-wsw", deg: 67.5 },
  { name: "east-west", deg: 90 },
  { name: "ese-wnw", deg: 112.5 },
  { name: "se-nw", deg: 135 },
  { name: "sse-nnw", deg: 157.5 },
] as const;
export type RowWind = (typeof ROW_WINDS)[number]["name"];

/**
 * A direction as rows have it: they run both ways, so that 200° is the same as 20°.
 *
 * @param degrees any finite number, from true north
 * @returns 0 up to 180
 *
 * @example
 * rowsOf(200) // => 20
 */
export const rowsOf = (degrees: number): number => {
  const turned = degrees - 180 * Math.floor(degrees / 180);
  return turned >= 180 ? 0 : turned + 0;
};

/** The name that lies nearest to a direction of rows. */
export const windOfRows = (deg: number): RowWind => {
  const at = Math.round(rowsOf(deg) / 22.5) % ROW_WINDS.length;
  return ROW_WINDS[at]?.name ?? "north-south";
};

/** Rows walked from one end to the other. */
export interface WalkedRows {
  readonly deg: number;
  readonly lengthM: number;
  /** How far the direction may be off, in degrees, by how good both positions are; null when nobody knows. */
  readonly offDeg: number | null;
}

/**
 * The direction of a row from its two ends; null when both lie at one place.
 *
 * The doubt is the angle at which both positions, each off by its accuracy to opposite sides, lie apart
 * (plane geometry).
 */
export const rowsBetween = (from: Position, to: Position): WalkedRows | null => {
  const way = geodesicBetween(from, to);
  if (!way.ok || way.value.initialBearingDeg === null) return null;
  const lengthM = way.value.distanceM;
  const { accuracyM: a } = from;
  const { accuracyM: b } = to;
  return {
    deg: rowsOf(way.value.initialBearingDeg),
    lengthM,
    offDeg: a === null || b === null ? null : (Math.atan2(a + b, lengthM) * 180) / Math.PI,
  };
};
