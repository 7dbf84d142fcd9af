/** What a limit of a caution is looked at with: values made here, and what is looked at worked out by itself. */
import type { Caution } from "../../../src/science/estimate.ts";

/** What is looked at, and what was said of it. */
export type Look = readonly [looked: number, said: readonly Caution[]];

export const some = <T>(n: number, one: (at: number) => T): readonly T[] =>
  Array.from({ length: n }, (_, at) => one(at));
export const meanOf = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const momentOf = (values: readonly number[], power: number) =>
  meanOf(values.map((value) => (value - meanOf(values)) ** power));
const skewness = (values: readonly number[]) => momentOf(values, 3) / momentOf(values, 2) ** 1.5;
export const varianceOf = (values: readonly number[]) =>
  (momentOf(values, 2) * values.length) / (values.length - 1);
export const beyond = (values: readonly number[]) =>
  Math.sqrt(Math.max(0, varianceOf(values) - meanOf(values))) / meanOf(values);

export const half = (n: number, low: number, high: number) => some(n, (at) => (at % 2 === 0 ? low : high));
const skewed = some(40, (at) => (at < 36 ? 5 + (at % 4) : 12));
const less = some(40, (at) => (at < 36 ? 5 + (at % 4) : 9));
export const lopsided = (said: (values: readonly number[]) => readonly Caution[]) => ({
  "range-if-lopsided values": [29, 30].map((n): Look => [n, said(half(n, 4, 6))]),
  "range-if-lopsided skewness": [skewed, less].map((values): Look => [skewness(values), said(values)]),
});

/** Looks by method and by what is said of what. */
export type Looks = Readonly<Record<string, Readonly<Record<string, readonly Look[]>>>>;
