/** What may have changed the counts of holes. It is said beside the number and never removes it. */
import {
  EFFORT_RATIO,
  LOW_WORMS_PER_M2,
  NEAR_HOLES_M,
  SAME_DEPTH_SHARE,
  SAME_SIDE_SHARE,
  SOIL_COLD_C,
  WORKED_RECENTLY_DAYS,
} from "../constants.ts";
import type { Caution } from "../estimate.ts";
import { isPlace, roughDistanceM } from "../position/distance.ts";
import type { HoleCount } from "./hole-count.ts";

const usable = (value: number | null): value is number => value !== null && Number.isFinite(value);

/** Few worms: below what any guide takes for many. A hole of unknown size is few only when it is empty. */
const isLow = ({ found, sidesM }: HoleCount): boolean => {
  const worms = Object.values(found).reduce<number>((sum, count) => sum + (count ?? 0), 0);
  const area = sidesM === null ? 0 : sidesM[0] * sidesM[1];
  return area > 0 ? worms / area < LOW_WORMS_PER_M2 : worms === 0;
};

/** Two sizes that differ by more than this share of the larger. */
const differ = (least: number, most: number, share: number): boolean => least < most * (1 - share);

const spanOf = (values: readonly number[]): { readonly least: number; readonly most: number } => ({
  least: values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY),
  most: values.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY),
});

/** Sides with the shorter one first: 20 × 30 and 30 × 20 are the same hole. */
const shorterFirst = ([a, b]: readonly [number, number]): readonly [number, number] =>
  a <= b ? [a, b] : [b, a];

/**
 * Whether two holes are the same size, each side within 5 %. A rule of this product.
 *
 * @returns two of unknown size are the same; one unknown and one known are not
 */
export const sameSides = (a: HoleCount["sidesM"], b: HoleCount["sidesM"]): boolean => {
  if (a === null || b === null) return a === b;
  const [short, long] = shorterFirst(a);
  const [otherShort, otherLong] = shorterFirst(b);
  return !(
    differ(Math.min(short, otherShort), Math.max(short, otherShort), SAME_SIDE_SHARE) ||
    differ(Math.min(long, otherLong), Math.max(long, otherLong), SAME_SIDE_SHARE)
  );
};

/** Whether two depths are the same within 10 %. A rule of this product. */
export const sameDepth = (a: number, b: number): boolean =>
  !differ(Math.min(a, b), Math.max(a, b), SAME_DEPTH_SHARE);

/**
 * Whether efforts are unlike: the largest over the smallest is more than 1.5. A rule of this product.
 * Fewer than two efforts, or none above 0, are alike.
 */
export const effortsUnlike = (personMinutes: readonly number[]): boolean => {
  if (personMinutes.length < 2) return false;
  const { least, most } = spanOf(personMinutes);
  return most > least * EFFORT_RATIO;
};

/** People × minutes that were taken. */
export const effortsOf = (holes: readonly HoleCount[]): readonly number[] =>
  holes
    .map(({ personMinutes }) => personMinutes)
    .filter((minutes) => usable(minutes) && minutes >= 0) as number[];

/**
 * Soil that was cold, dry or worked lately. Cold and dry soil drive worms down, so they are said of holes
 * with few worms alone: many worms in cold soil are many worms.
 *
 * @param holes any number; none gives nothing to say
 *
 * Source: soil below 8 °C and dry soil as reasons for low counts, from memory of field guides; 28 days after
 * working and what counts as few are rules of this product.
 */
export const conditionCautions = (holes: readonly HoleCount[]): readonly Caution[] => {
  const cautions: Caution[] = [];
  const low = holes.filter(isLow);
  const cold = low.filter(
    ({ soilTemperatureC }) => usable(soilTemperatureC) && soilTemperatureC < SOIL_COLD_C,
  );
  if (cold.length > 0) cautions.push({ code: "science/soil-cold", facts: { holes: cold.length } });
  const dry = low.filter(({ wetness }) => wetness === "dry");
  if (dry.length > 0) cautions.push({ code: "science/soil-dry", facts: { holes: dry.length } });
  const { least } = spanOf(holes.map(({ workedDaysAgo }) => workedDaysAgo).filter(usable));
  if (least >= 0 && least <= WORKED_RECENTLY_DAYS)
    cautions.push({ code: "science/worked-recently", facts: { days: Math.floor(least) } });
  return cautions;
};

/**
 * No two places that far apart in latitude lie near each other: a degree is nowhere less than 110 km. It
 * spares the long way for nearly all pairs.
 */
const NEAR_LATITUDE_DEG = NEAR_HOLES_M / 110_000;

/** How many holes lie within 30 m of another one. */
const closeTogether = (holes: readonly HoleCount[]): number => {
  const places = holes.flatMap(({ place }) => (place !== null && isPlace(place) ? [place] : []));
  return places.filter((place, at) =>
    places.some(
      (other, otherAt) =>
        otherAt !== at &&
        Math.abs(place.latitudeDeg - other.latitudeDeg) < NEAR_LATITUDE_DEG &&
        roughDistanceM(place, other) < NEAR_HOLES_M,
    ),
  ).length;
};

const lookedAt = ({ found }: HoleCount): string =>
  Object.entries(found)
    .filter(([, count]) => count !== null)
    .map(([layer]) => layer)
    .join(" ");

/**
 * What the holes of one mean have not in common. Nearness matters here, for the mean of a field; pairs
 * across a boundary are meant to lie close.
 *
 * @param holes any number; fewer than two have nothing to differ in
 *
 * Source: Hodson et al. 2021 for 30 m (counts within 20 to 30 m predict each other); the other limits are
 * rules of this product.
 */
export const unlikeCautions = (holes: readonly HoleCount[]): readonly Caution[] => {
  const [first] = holes;
  if (first === undefined) return [];
  const cautions: Caution[] = [];
  if (effortsUnlike(effortsOf(holes))) cautions.push({ code: "science/efforts-differ", facts: {} });
  const depths = spanOf(holes.map(({ depthM }) => depthM));
  if (!sameDepth(depths.least, depths.most)) cautions.push({ code: "science/depths-differ", facts: {} });
  if (new Set(holes.map(lookedAt)).size > 1) cautions.push({ code: "science/layers-differ", facts: {} });
  const close = closeTogether(holes);
  if (close > 0)
    cautions.push({ code: "science/holes-close-together", facts: { holes: close, metres: NEAR_HOLES_M } });
  return cautions;
};
