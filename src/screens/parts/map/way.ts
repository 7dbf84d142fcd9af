/** How far and in which direction one place lies from another. */
import type { LatitudeLongitude } from "../../../science/position/distance.ts";
import { geodesicBetween } from "../../../science/position/geodesic.ts";

/** The eight winds, clockwise from north. */
export const WINDS = [
  "north",
  "north-east",
  "east",
  "south-east",
  "south",
  "south-west",
  "west",
  "north-west",
] as const;

/** One of the eight winds. */
export type Wind = (typeof WINDS)[number];

/**
 * The wind that a bearing lies nearest to.
 *
 * @param bearingDeg from true north, 0 up to 360
 *
 * @example
 * windOf(50) // => "north-east"
 */
export const windOf = (bearingDeg: number): Wind =>
  WINDS[Math.round(bearingDeg / 45) % WINDS.length] ?? "north";

/** The way from one place to another. */
export interface Way {
  readonly distanceM: number;
  /** Null at the place itself. */
  readonly wind: Wind | null;
}

/**
 * The way between two places; null when one of them is no place on earth.
 *
 * @example
 * wayBetween({ latitudeDeg: 0, longitudeDeg: 0 }, { latitudeDeg: 0, longitudeDeg: 0.001 })?.wind // => "east"
 */
export const wayBetween = (from: LatitudeLongitude, to: LatitudeLongitude): Way | null => {
  const way = geodesicBetween(from, to);
  if (!way.ok) return null;
  const { distanceM, initialBearingDeg } = way.value;
  return { distanceM, wind: initialBearingDeg === null ? null : windOf(initialBearingDeg) };
};
