/** A position put elsewhere by hand. The measured one stays beside it, however often it is moved. */
import type { Position } from "../../record/shapes.ts";
import {
  type LatitudeLongitude,
  metresPerDegree,
  roughDistanceM,
  turnedDeg,
} from "../../science/position/distance.ts";

/** Where a step goes. */
export const WAYS_TO_GO = ["north", "west", "east", "south"] as const;
export type WayToGo = (typeof WAYS_TO_GO)[number];

const STEPS: Readonly<Record<WayToGo, { readonly north: number; readonly east: number }>> = {
  north: { north: 1, east: 0 },
  south: { north: -1, east: 0 },
  east: { north: 0, east: 1 },
  west: { north: 0, east: -1 },
};

// Ten millionths of a degree are a centimetre; more digits would pretend to know more.
const rounded = (deg: number): number => Math.round(deg * 1e9) / 1e9 + 0;

/**
 * The place one step away, by the radii of curvature of WGS 84 at the place itself (an error below 0.1 mm for
 * 10 m up to 80° of latitude). At a pole it stays where it is: no direction is east there.
 *
 * @example
 * oneStep({ latitudeDeg: 0, longitudeDeg: 0 }, "east", 111.32) // about 0.001° of longitude
 */
export const oneStep = (from: LatitudeLongitude, way: WayToGo, metres: number): LatitudeLongitude => {
  const per = metresPerDegree(from.latitudeDeg);
  const { north, east } = STEPS[way];
  const latitudeDeg = from.latitudeDeg + (north * metres) / per.north;
  if (Math.abs(latitudeDeg) >= 89.9) return from;
  return {
    latitudeDeg: rounded(latitudeDeg),
    longitudeDeg: rounded(turnedDeg(from.longitudeDeg + (east * metres) / per.east)),
  };
};

/**
 * A position put to a place by hand. What was measured is kept as `movedFrom`: the first measured position,
 * not the one before the last move. One that was put there by hand from the beginning has nothing to keep.
 *
 * @param before the position as it is on record; null when there is none
 * @param atMs when it was moved, by the wall clock
 */
export const movedTo = (before: Position | null, to: LatitudeLongitude, atMs: number): Position => {
  const measured = measuredOf(before);
  return {
    latitudeDeg: to.latitudeDeg,
    longitudeDeg: to.longitudeDeg,
    accuracyM: null,
    accuracyMeans: null,
    spreadM: null,
    fixes: 0,
    how: "by-hand",
    atMs,
    ...(measured === null ? {} : { movedFrom: measured }),
  };
};

/** The position that was measured, or null when it was put there by hand from the beginning. */
export const measuredOf = (position: Position | null): NonNullable<Position["movedFrom"]> | null => {
  if (position === null) return null;
  const { movedFrom, ...placed } = position;
  return movedFrom ?? (placed.how === "by-hand" ? null : placed);
};

/** How far a position was moved from where it was measured, in metres; null when it was not. */
export const movedByM = (position: Position): number | null =>
  position.movedFrom === undefined ? null : roughDistanceM(position.movedFrom, position);
