/** What worm methods and guides state about how to dig and count. */
import type { Layer } from "../../record/hole/entries.ts";
import type { LandUse } from "../../record/kinds/observation.ts";
import type { Mark, SourceId } from "../sources.ts";

/** Which half of the earth: spring is not in the same months. */
export type Hemisphere = "north" | "south";

/** The months in which counts are meant, from 1 to 12, where the text was written. */
export interface Season {
  readonly hemisphere: Hemisphere;
  readonly months: readonly number[];
}

/**
 * What a text supposes and no record of a hole says: permanent pasture where much rain falls, counted after 20 to 25 mm
 * of it and not on ground cropped lately.
 */
export type Supposed = "wet-permanent-pasture";

/** How holes are dug and counted, as one text states it. A person may change any of it. */
export interface Protocol {
  /** Short name; the header of a hole keeps it. */
  readonly id: string;
  /** Author or publisher, and year where known. */
  readonly name: string;
  /** Null where the text states no hole. */
  readonly sidesM: readonly [number, number] | null;
  readonly depthM: number | null;
  /** How long one person sorts; null where the text does not say. */
  readonly minutes: number | null;
  /** Null where the text does not say. */
  readonly season: Season | null;
  /** What else the text supposes of the place or the days before, so that its levels hold; null where it says nothing. */
  readonly supposes: Supposed | null;
  readonly landUses: readonly LandUse[];
  /** The layers that the count holds. */
  readonly layers: readonly Layer[];
  readonly source: SourceId;
  /** How well the text stands; a person's own numbers are "your-setting". */
  readonly mark: Mark | "your-setting";
}

/**
 * Whether a month falls in a season; half a year is added on the other half of the earth.
 *
 * @param month 1 to 12; anything else is in no season
 *
 * @example
 * inSeason({ hemisphere: "south", months: [8, 9] }, { month: 3, hemisphere: "north" }) // => true
 */
export const inSeason = (
  { hemisphere, months }: Season,
  at: { readonly month: number; readonly hemisphere: Hemisphere },
): boolean =>
  months.some((month) => (at.hemisphere === hemisphere ? month : ((month + 5) % 12) + 1) === at.month);
