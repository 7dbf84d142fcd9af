/** The place of a marked spot: measured standing still, or put on the map, the measured one kept. */
import type { Position } from "../../record/shapes.ts";
import type { LatitudeLongitude } from "../../science/position/distance.ts";

/**
 * A place put on the map by hand. What was measured before is kept, however often the spot is moved.
 *
 * @param before where it was; null for a spot without a place
 */
export const placedByHand = (
  before: Position | null,
  { latitudeDeg, longitudeDeg }: LatitudeLongitude,
  atMs: number,
): Position => {
  const measured = before === null ? undefined : measuredOf(before);
  return {
    latitudeDeg,
    longitudeDeg,
    accuracyM: null,
    accuracyMeans: null,
    spreadM: null,
    fixes: 0,
    how: "by-hand",
    atMs,
    ...(measured === undefined ? {} : { movedFrom: measured }),
  };
};

/** What was measured of a place: itself, or what it was before somebody moved it; undefined when nothing was. */
export const measuredOf = (position: Position): Position["movedFrom"] => {
  const { movedFrom, ...placed } = position;
  return movedFrom ?? (placed.how === "standing-still" ? placed : undefined);
};
