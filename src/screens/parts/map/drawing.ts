/** What can be drawn on the ground, as plain data. */
import type { LatitudeLongitude } from "../../../science/position/distance.ts";

/** Signs of the map; each has a shape of its own, so that no colour has to be told from another. */
export const SIGNS = ["spot", "old-grass", "edge", "line", "ring", "hole", "note"] as const;
export type Sign = (typeof SIGNS)[number];

/** Something that lies at a place. */
export interface Thing {
  readonly id: string;
  readonly sign: Sign;
  readonly at: LatitudeLongitude;
  /** The other end of a line or of a visible edge, when it is known. */
  readonly to: LatitudeLongitude | null;
  /** A few letters inside or beside the sign; empty for none. */
  readonly label: string;
  /** What its row says. */
  readonly name: string;
  readonly about: string;
  /** Address of its own screen. */
  readonly href: string | null;
}

/** A name written on the ground. */
export interface Label {
  readonly id: string;
  readonly text: string;
  readonly at: LatitudeLongitude;
}

/** Where the person stands, or stood last. */
export interface HereDrawn {
  readonly at: LatitudeLongitude;
  readonly accuracyM: number;
  /** It grew old: drawn open and dashed, never as where the person is now. */
  readonly old: boolean;
}

/** Corners that are being set. */
export interface CornersDrawn {
  readonly places: readonly LatitudeLongitude[];
  readonly chosen: number | null;
  /** The two sides that cross, by the corner that each leads to, from 0. */
  readonly crossing: readonly number[];
  /** Drawn with handles that can be dragged. */
  readonly movable: boolean;
}

/** Everything on one map. */
export interface Drawing {
  readonly boundary: readonly LatitudeLongitude[] | null;
  readonly things: readonly Thing[];
  readonly labels: readonly Label[];
  readonly here: HereDrawn | null;
  readonly corners: CornersDrawn | null;
}

export const NOTHING_DRAWN: Drawing = { boundary: null, things: [], labels: [], here: null, corners: null };

/** Every place of the ground itself; where the person stands is left out unless nothing else is there. */
export const placesOf = ({ boundary, things, corners, here }: Drawing): readonly LatitudeLongitude[] => {
  const ground = [
    ...(boundary ?? []),
    ...(corners?.places ?? []),
    ...things.flatMap(({ at, to }) => (to === null ? [at] : [at, to])),
  ];
  return ground.length > 0 || here === null ? ground : [here.at];
};
