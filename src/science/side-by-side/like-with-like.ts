/** Is it like with like? What has to be said before two sets of readings are compared. */
import { UNLIKE_EFFORT, UNLIKE_SHARE, UNLIKE_SIZE } from "../constants/comparison.ts";
import type { Caution, Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";

/**
 * Under which conditions a set of readings was taken. Each holds one value for every reading of which it is
 * known, so that shares can be told; empty when it was not asked, null where it makes no sense, as the pour of a
 * worm hole.
 */
export interface Conditions {
  /** Against the row: in the row, wheel track, swath … */
  readonly places: readonly string[] | null;
  /** What was done with the mulch inside the ring. */
  readonly mulchInRing: readonly string[] | null;
  /** First pours wet the ground; later ones follow on wet ground. */
  readonly pours: readonly ("first" | "later")[] | null;
  readonly wetness: readonly string[] | null;
  /** How it was read: the way to count, the worm method, the way to read a ring. */
  readonly ways: readonly string[] | null;
  /** What size the kit has, in metres: the diameter of rings, the side of holes. */
  readonly sizesM: readonly number[] | null;
  readonly depthsM: readonly number[] | null;
  /** Hands × minutes per hole. */
  readonly personMinutes: readonly number[] | null;
  /** Spring, autumn … as the person names windows of the year. */
  readonly seasons: readonly string[] | null;
  readonly harvestYears: readonly number[] | null;
}

export type ConditionName = keyof Conditions;

/** One way in which two sets are unlike, or may be. */
export interface Unlikeness {
  readonly about: ConditionName;
  /** It was asked on one side only, so nobody can know. */
  readonly notKnown: boolean;
  readonly caution: Caution;
}

/** All ways in which two sets are unlike; n counts the conditions that were asked on one side at least. */
export interface Likeness extends Worked {
  /** Empty when all is alike. */
  readonly unlike: readonly Unlikeness[];
}

const CODES: Readonly<Record<ConditionName, Caution["code"]>> = {
  places: "science/unlike-places",
  mulchInRing: "science/unlike-mulch-in-ring",
  pours: "science/unlike-pours",
  wetness: "science/unlike-wetness",
  ways: "science/unlike-ways",
  sizesM: "science/unlike-sizes",
  depthsM: "science/unlike-depths",
  personMinutes: "science/unlike-efforts",
  seasons: "science/unlike-seasons",
  harvestYears: "science/unlike-harvest-years",
};

/** Before any number, in the order in which they matter. */
const ORDER = [
  "pours",
  "mulchInRing",
  "places",
  "wetness",
  "ways",
  "sizesM",
  "depthsM",
  "personMinutes",
  "seasons",
  "harvestYears",
] as const satisfies readonly ConditionName[];

const shareOf = (value: string | number, all: readonly (string | number)[]): number =>
  all.filter((one) => one === value).length / all.length;

/** The same words on both sides, and less of one side than a fifth that would have to be another word. */
const sameShares = (a: readonly (string | number)[], b: readonly (string | number)[]): boolean => {
  const values = [...new Set([...a, ...b])];
  const shares = values.map((value) => [shareOf(value, a), shareOf(value, b)] as const);
  const apart = shares.reduce((sum, [one, other]) => sum + Math.abs(one - other), 0) / 2;
  return shares.every(([one, other]) => one > 0 && other > 0) && apart < UNLIKE_SHARE - 1e-9;
};

/** Means of numbers whose larger is at most so many times the smaller. */
const close = (a: readonly number[], b: readonly number[], times: number): boolean => {
  const meanOf = (values: readonly number[]): number =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  const [one, other] = [meanOf(a), meanOf(b)];
  return Math.max(one, other) <= Math.min(one, other) * times * (1 + 1e-9);
};

const usable = (values: readonly (string | number)[]): readonly (string | number)[] =>
  values.filter((value) => typeof value === "string" || Number.isFinite(value));

const numbersIn = (values: readonly (string | number)[]): readonly number[] =>
  values.filter((value): value is number => typeof value === "number");

const alike = (
  about: ConditionName,
  a: readonly (string | number)[],
  b: readonly (string | number)[],
): boolean => {
  if (about === "personMinutes") return close(numbersIn(a), numbersIn(b), UNLIKE_EFFORT);
  if (about === "sizesM" || about === "depthsM")
    return close(numbersIn(a), numbersIn(b), 1 / (1 - UNLIKE_SIZE));
  return sameShares(a, b);
};

/**
 * All ways in which two sets of readings are unlike, before a number of a comparison is shown. They are compared
 * only after the person says so, and the sentences stay with the result; nothing is refused.
 *
 * Words are alike when the same ones occur on both sides, in shares of which less than a fifth lies apart (half the
 * sum of their differences: the part of one side that would have to be read elsewhere). Mostly wheel track against
 * mostly between rows is unlike even when both have some of each. Sizes and depths when their means differ by no more
 * than a tenth of the larger, hands × minutes by no more than half as much again. Numbers that are not finite are
 * passed over.
 *
 * @param apart conditions that are meant to differ, as the harvest year over the years
 * @returns no unlikeness when all is alike. What was asked on one side only comes as `science/likeness-not-known`; what was
 * asked on neither is passed over
 *
 * Source: a rule of this product.
 *
 * @example
 * const ring = { places: ["in-row"], mulchInRing: ["kept"], pours: ["later"], wetness: ["moist"], ways: ["ruler"],
 *   sizesM: [0.3], depthsM: null, personMinutes: null, seasons: ["spring"], harvestYears: [2026] };
 * unlikenesses(ring, { ...ring, mulchInRing: ["removed"] }).unlike[0].about // => "mulchInRing"
 */
export const unlikenesses = (
  a: Conditions,
  b: Conditions,
  apart: readonly ConditionName[] = [],
): Likeness => {
  let looked = 0;
  const unlike = ORDER.flatMap((about): readonly Unlikeness[] => {
    if (apart.includes(about)) return [];
    const [one, other] = [usable(a[about] ?? []), usable(b[about] ?? [])];
    if (one.length === 0 && other.length === 0) return [];
    looked++;
    if (one.length === 0 || other.length === 0)
      return [{ about, notKnown: true, caution: { code: "science/likeness-not-known", facts: { about } } }];
    return alike(about, one, other)
      ? []
      : [{ about, notKnown: false, caution: { code: CODES[about], facts: {} } }];
  });
  const methods = ["like-with-like"] as const;
  return {
    unlike,
    n: looked,
    sampledBy: "conditions",
    cautions: unlike.map(({ caution }) => caution),
    methods,
    sources: sourcesOf(methods),
  };
};
