/** Kendall's S over seasons and places together, each compared only with itself. */
import { failed, ok, type Result } from "../../record/result.ts";
import { kendallNormal, kendallSum, kendallZ, smallestTrendChance, type Timed } from "./kendall.ts";
import { largestOf, ROUNDING } from "./sample.ts";
import { seeded } from "./seeded.ts";
import { DRAWS, type Rearranged } from "./sign-flip.ts";

/** What exchanging whole years says of S. */
export interface WholeYears extends Rearranged {
  /** Of S over the orders: above the sum of the groups' variances when groups rise and fall together. */
  readonly variance: number;
}

export interface KendallOfGroups {
  readonly groups: number;
  readonly s: number;
  /** Sum of the variances: as if no two groups had anything to do with each other. */
  readonly variance: number;
  readonly z: number;
  /** On both sides by the normal curve, groups taken as independent. */
  readonly chance: number;
}

/**
 * Seasonal Kendall (groups are seasons) and regional Kendall (groups are places): `S = ΣS_g`, `Var = ΣVar_g`.
 * Places in one field share the weather of a year, which this chance knows nothing of: `chanceByWholeYears` does.
 *
 * @param groups points of each group in any order; groups of fewer than two points say nothing and leave
 * @returns `science/too-few-samples` when no group has two points, `science/no-number` when one is not finite
 *
 * Source: Hirsch, Slack & Smith 1982, Water Resour. Res. 18: 107-121; Helsel & Frans 2006, Environ. Sci. Technol.
 * 40: 4066-4073 (from memory).
 *
 * @example
 * const spring = [2, 3, 4].map((value, time) => ({ time, value }));
 * const autumn = [7, 9, 8].map((value, time) => ({ time, value }));
 * kendallOfGroups([spring, autumn]).value // => { groups: 2, s: 4 }
 */
export const kendallOfGroups = (groups: readonly (readonly Timed[])[]): Result<KendallOfGroups> => {
  const used = groups.filter((points) => points.length > 1);
  if (used.length === 0)
    return failed("science/too-few-samples", { needs: 2, has: Math.min(1, groups.length) });
  let [s, variance] = [0, 0];
  for (const points of used) {
    const sum = kendallSum(points);
    if (!sum.ok) return sum;
    s += sum.value.s;
    variance += sum.value.variance;
  }
  const chance = kendallNormal(s, variance);
  return chance.ok
    ? ok({ groups: used.length, s, variance, z: kendallZ(s, variance), chance: chance.value })
    : chance;
};

/** Up to so many times every order of them is tried (362,880). */
const MOST_EXACT = 9;

/** Rises less falls from one time to another, summed over groups. */
const stepsBetween = (groups: readonly (readonly Timed[])[], times: readonly number[]): Int32Array => {
  const n = times.length;
  const place = new Map(times.map((time, at) => [time, at]));
  const steps = new Int32Array(n * n);
  for (const points of groups) {
    const close = 100 * ROUNDING * largestOf(points.map(({ value }) => value));
    for (const one of points)
      for (const other of points) {
        const [from, to] = [place.get(one.time), place.get(other.time)];
        if (from === undefined || to === undefined || from === to) continue;
        const rise = other.value - one.value;
        const at = from * n + to;
        steps[at] = (steps[at] ?? 0) + (Math.abs(rise) <= close ? 0 : Math.sign(rise));
      }
  }
  return steps;
};

interface Counted {
  readonly chance: number;
  readonly variance: number;
}

const countedExactly = (steps: Int32Array, n: number, far: number): Counted => {
  const order: number[] = [];
  const free = new Uint8Array(n).fill(1);
  let [count, all, squares] = [0, 0, 0];
  const place = (s: number): void => {
    if (order.length === n) {
      all++;
      squares += s * s;
      if (Math.abs(s) >= far) count++;
      return;
    }
    for (let next = 0; next < n; next++) {
      if (free[next] === 0) continue;
      let more = s;
      for (const before of order) more += steps[before * n + next] ?? 0;
      free[next] = 0;
      order.push(next);
      place(more);
      order.pop();
      free[next] = 1;
    }
  };
  place(0);
  return { chance: count / all, variance: squares / all };
};

const countedByDraw = (steps: Int32Array, n: number, far: number, seed: number): Counted => {
  const random = seeded(seed);
  const order = Int32Array.from({ length: n }, (_, at) => at);
  let [count, squares] = [0, 0];
  for (let draw = 0; draw < DRAWS; draw++) {
    let s = 0;
    for (let at = 0; at < n; at++) {
      const from = at + Math.floor(random() * (n - at));
      const taken = order[from] ?? 0;
      order[from] = order[at] ?? 0;
      order[at] = taken;
      for (let before = 0; before < at; before++) s += steps[(order[before] ?? 0) * n + taken] ?? 0;
    }
    squares += s * s;
    if (Math.abs(s) >= far) count++;
  }
  return { chance: (count + 1) / (DRAWS + 1), variance: squares / DRAWS };
};

/**
 * If the years had come in another order, how often would S lie as far from 0? Whole years change places, with
 * all that was read in them: spots and seasons that rise together because of one wet year stay together, so many
 * spots do not make up for few years. Every order up to nine years, 20,000 drawn ones beyond.
 *
 * @param groups points of each group in any order, at most one per group and time
 * @param seed for the draw
 * @returns `science/one-time-only` unless there are two times, `science/time-repeated` when a group has two points
 * at one time, `science/no-number` when one is not finite. Four years can never give less than 8.3 %
 *
 * Source: permutation of whole years; derived here from the exchange of years when there is no trend.
 *
 * @example
 * const rising = [1, 2, 3, 4].map((value, time) => ({ time, value }));
 * chanceByWholeYears([rising, rising, rising], 1).value.chance // => ≈ 0.0833
 */
export const chanceByWholeYears = (
  groups: readonly (readonly Timed[])[],
  seed: number,
): Result<WholeYears> => {
  const points = groups.flat();
  if (!points.every(({ time, value }) => Number.isFinite(time) && Number.isFinite(value)))
    return failed("science/no-number");
  if (groups.some((group) => new Set(group.map(({ time }) => time)).size < group.length))
    return failed("science/time-repeated");
  const times = [...new Set(points.map(({ time }) => time))].sort((a, b) => a - b);
  const n = times.length;
  if (n < 2) return failed("science/one-time-only");
  const steps = stepsBetween(groups, times);
  let seen = 0;
  for (let to = 0; to < n; to++) for (let from = 0; from < to; from++) seen += steps[from * n + to] ?? 0;
  const exact = n <= MOST_EXACT;
  const far = Math.abs(seen);
  return ok({
    ...(exact ? countedExactly(steps, n, far) : countedByDraw(steps, n, far, seed)),
    smallest: smallestTrendChance(n),
    exact,
  });
};
