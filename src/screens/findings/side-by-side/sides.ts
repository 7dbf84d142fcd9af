/** Each strip with its number, and with the single lines, holes and rings that the number rests on. */
import type { Guess } from "../../../record/kinds/guess.ts";
import { failed, type Result } from "../../../record/result.ts";
import { countedHoles } from "../../../science/earthworms/field.ts";
import { holeAreaM2 } from "../../../science/earthworms/hole-count.ts";
import type { Estimate } from "../../../science/estimate.ts";
import type { Conditions } from "../../../science/side-by-side/like-with-like.ts";
import { leastOfMean, type Scale, type Seen } from "../../../science/side-by-side/scale.ts";
import type { DayStrip, PlaceResults, Yardstick } from "../../measure/visit/day-strips.ts";
import { PREFERRED_MINUTES, type SoakMinutes } from "../../measure/visit/rings-together.ts";
import { groundCoverOf } from "../../parts/line-counts.ts";
import { conditionsOf, type Measure } from "./conditions.ts";

/** What is asked of a measure: how two values are set against each other, and which difference is worth while. */
export interface Asked {
  readonly measure: Measure;
  readonly scale: Scale;
  /** Worms: of holes of several sizes only the number per square metre can be compared. */
  readonly per: "hole" | "m2";
  readonly minutes: SoakMinutes;
  /** Own choice, no source: ten points of cover; half as many worms again; twice as much soaked in. */
  readonly worthwhile: number;
  readonly stonesCount: boolean;
}

/** One strip with its number. */
export interface Side {
  readonly strip: DayStrip;
  readonly estimate: Estimate;
  /** The lines, holes or rings behind the number. */
  readonly spots: readonly Seen[];
  /** The strip as one value among strips. */
  readonly mean: Seen;
  readonly conditions: Conditions;
}

const TESTS = { cover: "line", worms: "hole", soak: "ring" } as const satisfies Readonly<
  Record<Measure, keyof Yardstick["days"]>
>;

/** The day on which the yardstick was measured, when it is another one than this; else null. */
export const otherDayOf = (
  yardstick: Pick<Yardstick, "days"> | null,
  measure: Measure,
  day: string,
): string | null => {
  const of = yardstick?.days[TESTS[measure]] ?? null;
  return of === day ? null : of;
};

const GUESSED = {
  cover: "ground-cover-percent",
  worms: "worms-per-hole",
  soak: "soaked-in-60-min-mm",
} as const satisfies Readonly<Record<Measure, Guess["what"]>>;

/** What was guessed before, in the unit of the number; null when nobody guessed just this. */
export const guessOf = ({ guesses }: DayStrip, { measure, per, minutes }: Asked): number | null => {
  // A guess stands beside a number of the same kind only.
  if ((measure === "worms" && per === "m2") || (measure === "soak" && minutes !== 60)) return null;
  const guess = guesses[GUESSED[measure]];
  if (guess === undefined) return null;
  return measure === "cover" ? guess / 100 : guess;
};

const WORTHWHILE = { cover: 0.1, worms: 1.5, soak: 2 } as const satisfies Readonly<Record<Measure, number>>;

const isOneSize = (strips: readonly PlaceResults[]): boolean => {
  const sizes = strips.flatMap(({ holeCounts }) => {
    const all = countedHoles(holeCounts);
    return all.ok
      ? all.value.counted.map(({ hole }) => (hole.sidesM === null ? "" : [...hole.sidesM].sort().join(" ")))
      : [];
  });
  return new Set(sizes).size <= 1;
};

/** Minutes for which most strips can say; an hour before half an hour before three. */
const minutesFor = (strips: readonly PlaceResults[]): SoakMinutes => {
  const able = (minutes: SoakMinutes): number =>
    strips.filter(({ soak }) => soak.after.some((one) => one.minutes === minutes && one.mean.ok)).length;
  return [...PREFERRED_MINUTES].sort((a, b) => able(b) - able(a))[0] ?? 60;
};

/** What is asked of a measure on these strips. */
export const askedOf = (measure: Measure, strips: readonly PlaceResults[], stonesCount: boolean): Asked => ({
  measure,
  scale: measure === "cover" ? "difference" : "ratio",
  per: isOneSize(strips) ? "hole" : "m2",
  minutes: minutesFor(strips),
  worthwhile: WORTHWHILE[measure],
  stonesCount,
});

/** The number of a strip, or why there is none. */
export const estimateOf = (of: PlaceResults, { measure, per, minutes }: Asked): Result<Estimate> => {
  switch (measure) {
    case "cover":
      return of.cover.cover;
    case "worms":
      return per === "hole" ? of.perHole : of.perM2;
    case "soak":
      return of.soak.after.find((one) => one.minutes === minutes)?.mean ?? failed("science/nothing-read");
  }
};

const linesSeen = ({ cover }: PlaceResults, stonesCount: boolean): readonly Seen[] =>
  cover.finished.flatMap(({ reading }) => {
    const { share } = groundCoverOf(reading.tally, stonesCount);
    return share === null ? [] : [{ value: share, least: null }];
  });

const holesSeen = ({ holeCounts }: PlaceResults, per: Asked["per"]): readonly Seen[] => {
  const all = countedHoles(holeCounts);
  if (!all.ok) return [];
  return all.value.counted.flatMap(({ hole, worms }) => {
    if (per === "hole") return [{ value: worms, least: 1 }];
    const area = holeAreaM2(hole.sidesM);
    return area.ok ? [{ value: worms / area.value, least: 1 / area.value }] : [];
  });
};

const ringsSeen = ({ soak }: PlaceResults, minutes: SoakMinutes): readonly Seen[] =>
  (soak.after.find((one) => one.minutes === minutes)?.points ?? []).map(({ value, least }) => ({
    value,
    least,
  }));

const spotsOf = (of: PlaceResults, { measure, per, minutes, stonesCount }: Asked): readonly Seen[] => {
  switch (measure) {
    case "cover":
      return linesSeen(of, stonesCount);
    case "worms":
      return holesSeen(of, per);
    case "soak":
      return ringsSeen(of, minutes);
  }
};

/** The strips that have a number, in the order given. */
export const sidesOf = (strips: readonly DayStrip[], asked: Asked): readonly Side[] =>
  strips.flatMap((strip) => {
    const estimate = estimateOf(strip, asked);
    const spots = spotsOf(strip, asked);
    if (!estimate.ok || spots.length === 0) return [];
    // Nothing at all in a strip: less than one in all of its holes, or than one step of the ruler, was seen.
    const mean = { value: estimate.value.value, least: leastOfMean(spots) };
    const conditions = conditionsOf(asked.measure, strip, asked.minutes);
    return [{ strip, estimate: estimate.value, spots, mean, conditions }];
  });
