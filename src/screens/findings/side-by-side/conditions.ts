/** Under which conditions a strip was measured, test by test: what has to be alike before it is compared. */
import type { Result } from "../../../record/result.ts";
import { countedHoles } from "../../../science/earthworms/field.ts";
import { squareSideM } from "../../../science/earthworms/hole-count.ts";
import { roundDiameterM } from "../../../science/infiltration/ring-set.ts";
import type { Conditions } from "../../../science/side-by-side/like-with-like.ts";
import type { PlaceResults } from "../../measure/visit/day-strips.ts";
import type { SoakMinutes } from "../../measure/visit/rings-together.ts";

/** What is set side by side. */
export type Measure = "cover" | "worms" | "soak";

const known = (size: Result<number>): readonly number[] => (size.ok ? [size.value] : []);

/** Nothing was asked. */
export const NOT_ASKED: Conditions = {
  places: null,
  mulchInRing: null,
  pours: null,
  wetness: null,
  ways: null,
  sizesM: null,
  depthsM: null,
  personMinutes: null,
  seasons: null,
  harvestYears: null,
};

/** One for every reading of which it is known: shares have to be alike, and not only kinds. */
const said = <T>(values: readonly (T | null | undefined)[]): readonly T[] =>
  values.filter((value): value is T => value !== null && value !== undefined);

const ofLines = ({ cover }: PlaceResults): Conditions => ({
  ...NOT_ASKED,
  places: said(cover.finished.map(({ header }) => header.place)),
  ways: said(cover.finished.map(({ header }) => header.way)),
});

const ofHoles = ({ holes, holeCounts }: PlaceResults): Conditions => {
  const all = countedHoles(holeCounts);
  const counted = new Set(all.ok ? all.value.counted.map(({ hole }) => hole) : []);
  const used = holes.flatMap(({ header }, at) => {
    const count = holeCounts[at];
    return count !== undefined && counted.has(count) ? [{ header, count }] : [];
  });
  return {
    ...NOT_ASKED,
    places: said(used.map(({ header }) => header.place)),
    wetness: said(used.map(({ count }) => count.wetness)),
    ways: said(used.map(({ header }) => header.method)),
    sizesM: used.flatMap(({ count }) => known(squareSideM(count.sidesM))),
    depthsM: used.map(({ count }) => count.depthM),
    personMinutes: used.flatMap(({ count }) => (count.personMinutes === null ? [] : [count.personMinutes])),
  };
};

const ofRings = ({ soak }: PlaceResults, minutes: SoakMinutes): Conditions => {
  const counted = new Set(soak.after.find((one) => one.minutes === minutes)?.points.map(({ id }) => id));
  const used = soak.rings.filter(({ id }) => counted.has(id));
  return {
    ...NOT_ASKED,
    places: said(used.map(({ header }) => header.place)),
    mulchInRing: said(used.map(({ header }) => header.mulch)),
    // Depth after so many minutes is read from the first water on: of measured pours that is the wetting.
    pours: used.some(({ header }) => header.way === "measured-pour") ? ["first"] : [],
    wetness: said(
      used.map(({ entries }) => {
        const wet = entries.findLast(({ type }) => type === "wetness");
        return wet?.type === "wetness" ? wet.is : null;
      }),
    ),
    ways: said(used.map(({ header }) => header.way)),
    sizesM: used.flatMap(({ set }) => known(roundDiameterM(set.insideM))),
  };
};

/** The conditions of one test on one strip, of what counts in its result. */
export const conditionsOf = (measure: Measure, of: PlaceResults, minutes: SoakMinutes): Conditions => {
  switch (measure) {
    case "cover":
      return ofLines(of);
    case "worms":
      return ofHoles(of);
    case "soak":
      return ofRings(of, minutes);
  }
};

const both = <T>(a: readonly T[] | null, b: readonly T[] | null): readonly T[] | null =>
  a === null && b === null ? null : [...(a ?? []), ...(b ?? [])];

/** Conditions of several strips of one treatment, together. */
export const conditionsTogether = (all: readonly Conditions[]): Conditions =>
  all.reduce<Conditions>(
    (one, other) => ({
      places: both(one.places, other.places),
      mulchInRing: both(one.mulchInRing, other.mulchInRing),
      pours: both(one.pours, other.pours),
      wetness: both(one.wetness, other.wetness),
      ways: both(one.ways, other.ways),
      sizesM: both(one.sizesM, other.sizesM),
      depthsM: both(one.depthsM, other.depthsM),
      personMinutes: both(one.personMinutes, other.personMinutes),
      seasons: both(one.seasons, other.seasons),
      harvestYears: both(one.harvestYears, other.harvestYears),
    }),
    NOT_ASKED,
  );
