/** Ranges from samples drawn anew out of the samples in hand. */
import { failed, ok, type Result } from "../../record/result.ts";
import { FEW_TO_RESAMPLE } from "../constants/comparison.ts";
import type { Caution, Interval } from "../estimate.ts";
import { normalProbability, normalQuantile } from "./distributions.ts";
import { atRank } from "./quantile.ts";
import { seeded } from "./seeded.ts";

const meanOf = (values: Float64Array | undefined): number => {
  if (values === undefined) return Number.NaN;
  let sum = 0;
  for (const value of values) sum += value;
  return sum / values.length;
};

/** One number made from the samples of each group; must not keep or change the arrays. */
export type Statistic = (groups: readonly Float64Array[]) => number;

/**
 * The mean of the first group less that of the second.
 *
 * @param groups two, none of them empty
 * @returns not a number when there are fewer
 *
 * @example
 * differenceOfMeans([Float64Array.of(4, 6), Float64Array.of(1, 2)]) // => 3.5
 */
export const differenceOfMeans: Statistic = ([a, b]) => meanOf(a) - meanOf(b);

export interface Resampling {
  /** Draws; where the groups are so small that there are no more samples than that, each is taken once. */
  readonly draws: number;
  readonly seed: number;
}

/** Values of a statistic over samples drawn anew. */
export interface Resampled {
  readonly value: number;
  /** Ascending. */
  readonly values: Float64Array;
  /** Spread of them: the standard error of the statistic. */
  readonly standardError: number;
  /** Every possible sample was taken. */
  readonly complete: boolean;
  /** The groups as they were, for what leaves one value out. */
  readonly groups: readonly Float64Array[];
  readonly statistic: Statistic;
}

const drawn = (
  groups: readonly Float64Array[],
  statistic: Statistic,
  draws: number,
  seed: number,
): Float64Array => {
  const next = seeded(seed);
  const fresh = groups.map((group) => new Float64Array(group.length));
  const values = new Float64Array(draws);
  for (let draw = 0; draw < draws; draw++) {
    for (const [of, into] of fresh.entries()) {
      const from = groups[of];
      if (from === undefined) continue;
      const n = from.length;
      for (let at = 0; at < n; at++) into[at] = from[(next() * n) | 0] ?? 0;
    }
    values[draw] = statistic(fresh);
  }
  return values;
};

const everyOne = (groups: readonly Float64Array[], statistic: Statistic, all: number): Float64Array => {
  const fresh = groups.map((group) => new Float64Array(group.length));
  const values = new Float64Array(all);
  for (let which = 0; which < all; which++) {
    let left = which;
    for (const [of, into] of fresh.entries()) {
      const from = groups[of];
      if (from === undefined) continue;
      for (let at = 0; at < from.length; at++) {
        into[at] = from[left % from.length] ?? 0;
        left = Math.floor(left / from.length);
      }
    }
    values[which] = statistic(fresh);
  }
  return values;
};

/**
 * A statistic over samples drawn with return, each group from its own values. Ranges of few values come out too
 * narrow, both the percentile one and BCa: prefer Student's t. By simulation of 1500 samples (tests/property) a 95 %
 * range of a mean held the truth 81, 84, 88, 90, 93, 92 and 94 times of 100 with 4, 5, 8, 10, 20, 30 and 50 values that
 * spread evenly, and 74, 77, 82, 86, 88, 90 and 91 times with skewed ones (lognormal, spread of logs 0.8); below 50
 * values it says so.
 *
 * @param groups values per group, in one unit
 * @param statistic for example the difference of two means
 * @returns `science/too-few-samples` unless every group has two values, `science/no-number` when a value is not
 * finite or the statistic is none of some sample, `science/not-a-count` unless `draws` is whole and at least 100
 *
 * Source: Efron & Tibshirani 1993, An Introduction to the Bootstrap, chapters 6 and 8.
 *
 * @example
 * const mean = ([only]) => only.reduce((sum, value) => sum + value, 0) / only.length;
 * resample([[5, 7, 6, 8]], mean, { draws: 10000, seed: 1 }).value.standardError // => ≈ 0.559
 */
export const resample = (
  groups: readonly (readonly number[])[],
  statistic: Statistic,
  { draws, seed }: Resampling,
): Result<Resampled> => {
  if (!(Number.isSafeInteger(draws) && draws >= 100))
    return failed("science/not-a-count", { count: String(draws) });
  const fewest = groups.reduce((least, group) => Math.min(least, group.length), Number.POSITIVE_INFINITY);
  if (!(fewest >= 2 && Number.isFinite(fewest)))
    return failed("science/too-few-samples", { needs: 2, has: Number.isFinite(fewest) ? fewest : 0 });
  if (!groups.every((group) => group.every(Number.isFinite))) return failed("science/no-number");
  // Ascending, so that the order in which values were taken down does not change what is drawn.
  const sorted = groups.map((group) => Float64Array.from(group).sort());
  const all = sorted.reduce((ways, group) => ways * group.length ** group.length, 1);
  const complete = all <= draws;
  const values = complete ? everyOne(sorted, statistic, all) : drawn(sorted, statistic, draws, seed);
  const value = statistic(sorted);
  values.sort();
  const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
  const squares = values.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  if (!Number.isFinite(value + squares)) return failed("science/no-number");
  // Of a complete set nothing was drawn, and nothing is lost to a mean of draws.
  const standardError = Math.sqrt(squares / (complete ? values.length : values.length - 1));
  return ok({ value, values, standardError, complete, groups: sorted, statistic });
};

/** A range from samples drawn anew, with what it does not reach. */
export interface ResampledRange extends Interval {
  readonly cautions: readonly Caution[];
}

const between = (
  { values, groups }: Resampled,
  [low, high]: readonly [number, number],
  made: Pick<Interval, "level" | "method">,
): ResampledRange => {
  const fewest = Math.min(...groups.map((group) => group.length));
  return {
    lower: atRank(values, 1 + (values.length - 1) * low),
    upper: atRank(values, 1 + (values.length - 1) * high),
    ...made,
    sides: "both",
    cautions:
      fewest < FEW_TO_RESAMPLE
        ? [{ code: "science/resampled-range-too-narrow", facts: { values: fewest } }]
        : [],
  };
};

/**
 * The range that holds the middle share of the values drawn.
 *
 * @param level above 0 and below 1
 * @returns `science/not-a-probability` for the level
 *
 * Source: Efron & Tibshirani 1993, chapter 13.
 *
 * @example
 * const mean = ([only]) => only.reduce((sum, value) => sum + value, 0) / only.length;
 * const drawn = resample([[5, 7, 6, 8]], mean, { draws: 10000, seed: 1 });
 * percentileRange(drawn.value, 0.95).value // => { lower: 5.5, upper: 7.5 }
 */
export const percentileRange = (resampled: Resampled, level: number): Result<ResampledRange> =>
  level > 0 && level < 1
    ? ok(between(resampled, [(1 - level) / 2, (1 + level) / 2], { level, method: "bootstrap-percentile" }))
    : failed("science/not-a-probability", { probability: String(level) });

/** What puts the percentiles right: how far off the middle the value lies, and how its spread runs with it. */
export interface BcaConstants {
  readonly bias: number;
  readonly acceleration: number;
}

/**
 * Bias by the share of drawn values below the value (draws equal to it count half), acceleration by leaving one
 * value out at a time: `a = Σ(U³/n³)/(6·(Σ U²/n²)^{3/2})` with `U = (n−1)(θ̄ − θ_(i))` within each group.
 *
 * @returns `science/no-spread-seen` when every draw lies on one side of the value or nothing varies,
 * `science/too-few-samples` unless every group has three values
 *
 * Source: Efron 1987, J. Am. Stat. Assoc. 82: 171-185; several groups, Davison & Hinkley 1997, section 5.3.
 *
 * @example
 * const mean = ([only]) => only.reduce((sum, value) => sum + value, 0) / only.length;
 * bcaConstants(resample([[5, 7, 6, 8]], mean, { draws: 10000, seed: 1 }).value).value // => { acceleration: 0 }
 */
export const bcaConstants = ({ value, values, groups, statistic }: Resampled): Result<BcaConstants> => {
  const close = 1e-12 * Math.abs(value);
  let [below, equal] = [0, 0];
  for (const one of values) {
    if (one < value - close) below++;
    else if (one <= value + close) equal++;
  }
  const share = (below + equal / 2) / values.length;
  if (!(share > 0 && share < 1) || equal === values.length) return failed("science/no-spread-seen");
  let [cubes, squares] = [0, 0];
  for (const [of, group] of groups.entries()) {
    const n = group.length;
    if (n < 3) return failed("science/too-few-samples", { needs: 3, has: n });
    const without = Array.from(group, (_, out) =>
      statistic(groups.map((one, at) => (at === of ? one.filter((_one, place) => place !== out) : one))),
    );
    const mean = without.reduce((sum, one) => sum + one, 0) / n;
    for (const one of without) {
      const influence = ((n - 1) * (mean - one)) / n;
      squares += influence ** 2;
      cubes += influence ** 3;
    }
  }
  const acceleration = cubes / (6 * squares ** 1.5);
  if (!Number.isFinite(acceleration)) return failed("science/no-spread-seen");
  const bias = normalQuantile(share);
  return bias.ok ? ok({ bias: bias.value, acceleration }) : bias;
};

/**
 * The percentile range put right for bias and for a spread that runs with the value (BCa).
 *
 * @param level above 0 and below 1
 * @returns reasons as `bcaConstants` and `percentileRange`
 *
 * Source: Efron 1987; Efron & Tibshirani 1993, section 14.3.
 *
 * @example
 * const mean = ([only]) => only.reduce((sum, value) => sum + value, 0) / only.length;
 * const drawn = resample([[5, 7, 6, 8]], mean, { draws: 10000, seed: 1 });
 * bcaRange(drawn.value, 0.95).value // => { lower: 5.5, upper: 7.5 }
 */
export const bcaRange = (resampled: Resampled, level: number): Result<ResampledRange> => {
  if (!(level > 0 && level < 1)) return failed("science/not-a-probability", { probability: String(level) });
  const constants = bcaConstants(resampled);
  if (!constants.ok) return constants;
  const { bias, acceleration } = constants.value;
  const shares: number[] = [];
  for (const probability of [(1 - level) / 2, (1 + level) / 2]) {
    const z = normalQuantile(probability);
    if (!z.ok) return z;
    const room = 1 - acceleration * (bias + z.value);
    if (!(room > 0)) return failed("science/no-number");
    const share = normalProbability(bias + (bias + z.value) / room);
    if (!share.ok) return share;
    shares.push(share.value);
  }
  return ok(between(resampled, [shares[0] ?? 0, shares[1] ?? 1], { level, method: "bootstrap-bca" }));
};
