/** Readings of marked spots over the harvest years: one value a year for each spot and season. */
import type { Caution, Unit, Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import {
  type ConditionName,
  type Conditions,
  type Unlikeness,
  unlikenesses,
} from "../side-by-side/like-with-like.ts";
import type { Timed } from "../statistics/kendall.ts";
import { medianOf } from "../statistics/quantile.ts";

/** One result of one spot. */
export interface YearValue {
  /** The marked spot, or the strip where spots were not marked. */
  readonly spot: string;
  /** Window of the year in which it was read; spring is never compared with autumn. */
  readonly season: string;
  readonly harvestYear: number;
  readonly value: number;
  /** Entered from paper: there are no raw readings behind it. */
  readonly fromPaper: boolean;
}

/** What is asked of the years. */
export interface YearsAsked {
  /** Unit of the values; the slope is per year. */
  readonly unit: Unit;
  /** For drawn orders of years, where there are too many to try each. */
  readonly seed: number;
}

/** Values of one spot in one season, one a year. */
export interface SpotSeries {
  readonly spot: string;
  readonly season: string;
  readonly points: readonly Timed[];
}

/**
 * Values by spot and season, the middle one where a year has several.
 *
 * @param values in any order; values or years that are not finite are passed over
 * @returns series in the order of spot and season, with cautions on what was left out, taken together or came
 * from paper
 *
 * Source: one value a year where there are several, Gilbert 1987, section 16.4 (from memory).
 *
 * @example
 * const value = { spot: "1", season: "spring", harvestYear: 2024, value: 3, fromPaper: false };
 * seriesOf([value, { ...value, value: 5 }]).series[0].points[0] // => { time: 2024, value: 4 }
 */
export const seriesOf = (
  values: readonly YearValue[],
): { readonly series: readonly SpotSeries[]; readonly cautions: readonly Caution[] } => {
  const usable = values.filter(
    ({ harvestYear, value }) => Number.isFinite(harvestYear) && Number.isFinite(value),
  );
  const groups = new Map<string, { spot: string; season: string; years: Map<number, number[]> }>();
  for (const { spot, season, harvestYear, value } of usable) {
    const key = JSON.stringify([spot, season]);
    const group = groups.get(key) ?? { spot, season, years: new Map<number, number[]>() };
    group.years.set(harvestYear, [...(group.years.get(harvestYear) ?? []), value]);
    groups.set(key, group);
  }
  let repeated = 0;
  const series = [...groups]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, { spot, season, years }]): SpotSeries => {
      const points = [...years]
        .sort(([a], [b]) => a - b)
        .flatMap(([time, some]) => {
          if (some.length > 1) repeated++;
          const middle = medianOf(some);
          return middle.ok ? [{ time, value: middle.value }] : [];
        });
      return { spot, season, points };
    });
  const cautions: Caution[] = [];
  const say = (code: Caution["code"], count: number): void => {
    if (count > 0) cautions.push({ code, facts: { values: count } });
  };
  say("science/values-left-out", values.length - usable.length);
  say("science/years-with-several", repeated);
  say("science/values-from-paper", usable.filter(({ fromPaper }) => fromPaper).length);
  return { series, cautions };
};

/** Years are meant to differ here. */
const APART: readonly ConditionName[] = ["harvestYears"];

/** Visits that are unlike the last one; n counts all of them. */
export interface UnlikeYears extends Worked {
  readonly visits: readonly { readonly visit: number; readonly unlike: readonly Unlikeness[] }[];
}

/**
 * In which ways earlier visits are unlike the last one: season window, method, size of the ring, depth of the
 * hole and all else that `unlikenesses` looks at, without the harvest year.
 *
 * @param visits conditions of each visit, in the order of time
 * @returns per earlier visit its place in the order and the unlikenesses; none when all are alike or there is one
 *
 * @example
 * unlikeOverYears([]).visits // => []
 */
export const unlikeOverYears = (visits: readonly Conditions[]): UnlikeYears => {
  const last = visits.at(-1);
  const before = last === undefined ? [] : visits.slice(0, -1).map((one) => unlikenesses(one, last, APART));
  const methods = ["like-with-like"] as const;
  return {
    visits: before.flatMap(({ unlike }, visit) => (unlike.length > 0 ? [{ visit, unlike }] : [])),
    n: visits.length,
    sampledBy: "years",
    cautions: [...new Map(before.flatMap((one) => one.cautions.map((said) => [said.code, said]))).values()],
    methods,
    sources: sourcesOf(methods),
  };
};
