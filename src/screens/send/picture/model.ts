/** What stands in the picture: two numbers of one day with everything that has to be said beside them. */
import type { RecordId } from "../../../record/ids.ts";
import type { Estimate } from "../../../science/estimate.ts";
import type { Measure } from "../../findings/side-by-side/conditions.ts";
import { type MeasureNow, measureOf } from "../../findings/side-by-side/model.ts";
import { type Asked, askedOf, estimateOf, guessOf, sidesOf } from "../../findings/side-by-side/sides.ts";
import { type DayOfField, type DayStrip, readDay } from "../../measure/visit/day-strips.ts";
import type { House } from "../../parts/house.ts";
import type { Listed } from "../../parts/reader.ts";
import type { Settings } from "../../parts/settings.ts";

/** What the second number is of. */
export type Second = RecordId<"strip"> | "old-grass" | "none";

/** What somebody chose; what was not chosen yet is proposed. */
export interface Chosen {
  readonly measure?: Measure;
  readonly first?: RecordId<"strip">;
  readonly second?: Second;
  readonly photos?: readonly RecordId<"photo">[];
}

/** One of the two numbers. */
export interface HalfOfPicture {
  readonly of: DayStrip | "old-grass";
  readonly estimate: Estimate;
  /** What was guessed before, in the unit of the number; null when nobody did. */
  readonly guess: number | null;
}

export interface PictureNow {
  readonly day: DayOfField;
  readonly visit: Listed<"visit">;
  /** Measures that can be chosen. */
  readonly measures: readonly Measure[];
  readonly measure: Measure;
  readonly asked: Asked;
  /** Strips that have this measure. */
  readonly able: readonly DayStrip[];
  readonly hasGrass: boolean;
  readonly halves: readonly HalfOfPicture[];
  readonly second: Second;
  /** The two strips compared; null for one strip, or one beside the old-grass spot. */
  readonly compared: MeasureNow | null;
  /** Their places against the row are unlike, and can be looked at one by one. */
  readonly canLookByPlace: boolean;
  readonly photos: readonly Listed<"photo">[];
}

/** Photos in one picture. */
export const MOST_PHOTOS = 2;

const MEASURES = ["cover", "worms", "soak"] as const satisfies readonly Measure[];
/** A photo stands above the number of its own strip. */
const columnOf = (strips: readonly DayStrip[], { id }: Listed<"photo">): number => {
  const column = strips.findIndex(({ photos }) => photos.some((one) => one.id === id));
  return column === -1 ? strips.length : column;
};

/** The photos to begin with: one of each strip, else the first two of the day. */
const photosFor = (day: DayOfField, strips: readonly DayStrip[]): readonly Listed<"photo">[] => {
  const own = strips.flatMap(({ photos }) => photos.slice(0, 1));
  const rest = day.photos.filter((one) => !own.some(({ id }) => id === one.id));
  return [...own, ...rest].slice(0, MOST_PHOTOS);
};

/** What a day and a choice come to; null when nothing was finished on that day. */
export const pictureOf = (
  day: DayOfField,
  visit: Listed<"visit">,
  settings: Settings,
  chosen: Chosen,
): PictureNow | null => {
  const sidesFor = (measure: Measure) =>
    sidesOf(day.strips, askedOf(measure, day.strips, settings.stonesCount));
  const measures = MEASURES.filter((measure) => sidesFor(measure).length > 0);
  // A number that two strips have says more than one that a single strip has.
  const proposed = measures.find((measure) => sidesFor(measure).length > 1) ?? measures[0];
  const measure = measures.find((one) => one === chosen.measure) ?? proposed;
  if (measure === undefined) return null;
  const able = sidesFor(measure).map(({ strip }) => strip);
  const first = able.find(({ id }) => id === chosen.first) ?? able[0];
  if (first === undefined) return null;
  const others = able.filter(({ id }) => id !== first.id);
  const { yardstick } = day;
  const hasGrass =
    yardstick !== null && estimateOf(yardstick, askedOf(measure, day.strips, settings.stonesCount)).ok;
  const usual: Second = others[0]?.id ?? (hasGrass ? "old-grass" : "none");
  const isAble =
    chosen.second === "none" ||
    (chosen.second === "old-grass" && hasGrass) ||
    others.some(({ id }) => id === chosen.second);
  const second = chosen.second !== undefined && isAble ? chosen.second : usual;
  const beside = others.find(({ id }) => id === second);
  const two = beside === undefined ? [first] : [first, beside];
  const now = measureOf(measure, two, yardstick, settings);
  const grass = second === "old-grass" && now.yardstick?.ok === true ? now.yardstick.value : null;
  const picked = day.photos
    .filter(({ id }) => chosen.photos?.includes(id) === true)
    .sort((a, b) => columnOf(two, a) - columnOf(two, b));
  return {
    day,
    visit,
    measures,
    measure,
    asked: now.asked,
    able,
    hasGrass,
    second,
    halves: [
      ...now.sides.map(
        ({ strip, estimate }): HalfOfPicture => ({ of: strip, estimate, guess: guessOf(strip, now.asked) }),
      ),
      ...(grass === null ? [] : [{ of: "old-grass", estimate: grass, guess: null } as const]),
    ],
    compared: two.length === 2 ? now : null,
    canLookByPlace:
      now.offered.length > 0 &&
      now.likeness.some(({ unlike }) => unlike.some(({ about }) => about === "places")),
    photos: chosen.photos === undefined ? photosFor(day, two) : picked.slice(0, MOST_PHOTOS),
  };
};

/** Reads the day of a picture; null when the visit is not on this device. */
export const readPictureDay = async (
  house: Pick<House, "records" | "results">,
  settings: Settings,
  id: RecordId<"visit">,
): Promise<{ readonly day: DayOfField; readonly visit: Listed<"visit"> } | null> => {
  const day = await readDay(house, settings, id);
  const visit = day?.visits[0];
  return day === null || visit === undefined ? null : { day, visit };
};
