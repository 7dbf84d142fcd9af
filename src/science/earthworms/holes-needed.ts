/** How many more holes until the mean is known well enough. */
import { failed, ok, type Result } from "../../record/result.ts";
import {
  BAND_LEVEL,
  CONFIDENCE_LEVEL,
  HOLES_UNTIL_SEEN,
  MOST_HOLES,
  PLANNING_K,
  PLANNING_WORMS_PER_M2,
  SAMPLES_FOR_A_RANGE,
} from "../constants.ts";
import type { Caution, Worked } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import { chiSquareQuantile, studentQuantile } from "../statistics/distributions.ts";
import { countedHoles } from "./field.ts";
import { type HoleCount, holeAreaM2 } from "./hole-count.ts";

/** What is wanted, and with which hole. */
export interface HolesWanted {
  /** Half width to reach, as a share of the mean: 0.25 is give or take a quarter. */
  readonly giveOrTake: number;
  /** Sides of the next holes. */
  readonly sidesM: readonly [number, number];
}

/** More holes, as a band: the spread of a field is known poorly from a few holes. */
export interface HolesNeeded extends Worked {
  readonly more: { readonly low: number; readonly middle: number; readonly high: number };
  /** Spread between holes that was planned with, as a share of the mean. */
  readonly variation: number;
  /** Share of that spread (as variance) which stands on planning and not on holes seen. */
  readonly planned: number;
}

/**
 * Spread between holes as a share of the mean when worms lie in clumps: `√(1/m + 1/k)`.
 *
 * @param mean worms per hole, above 0
 * @param k exponent of the negative binomial, above 0; without end for worms that lie by chance
 * @returns `science/no-number` unless both are above 0
 *
 * Source: Krebs, Ecological Methodology, chapter 7 (from memory).
 *
 * @example
 * const variation = variationOf(9, 2);
 * variation.ok && variation.value // => ≈ 0.782
 */
export const variationOf = (mean: number, k: number): Result<number> =>
  mean > 0 && k > 0 && Number.isFinite(1 / mean + 1 / k)
    ? ok(Math.sqrt(1 / mean + 1 / k))
    : failed("science/no-number");

/**
 * The least number of holes, three or more, with `t_{N−1}·v/√N ≤ d`. N stands inside t, so the answer is found
 * by trying.
 *
 * @param variation spread between holes as a share of the mean, 0 or more
 * @param giveOrTake half width as a share of the mean, above 0
 * @returns null when even 300 do not do; `science/no-number` for what is no number
 *
 * @example
 * holesInAll(0.5, 0.25) // => { ok: true, value: 18 }
 */
export const holesInAll = (variation: number, giveOrTake: number): Result<number | null> => {
  if (!(variation >= 0 && giveOrTake > 0)) return failed("science/no-number");
  for (let n = SAMPLES_FOR_A_RANGE; n <= MOST_HOLES; n++) {
    const t = studentQuantile((1 + CONFIDENCE_LEVEL) / 2, n - 1);
    if (!t.ok) return t;
    if ((t.value * variation) / Math.sqrt(n) <= giveOrTake) return ok(n);
  }
  return ok(null);
};

interface Seen {
  readonly holes: number;
  /** Worms per m². */
  readonly mean: number;
  /** Squared spread as a share of the mean; null while there is only one hole, or all are alike. */
  readonly squaredVariation: number | null;
  readonly cautions: readonly Caution[];
}

const seenSoFar = (holes: readonly HoleCount[]): Result<Seen> => {
  const none = { holes: 0, mean: PLANNING_WORMS_PER_M2, squaredVariation: null };
  const all = countedHoles(holes);
  if (!all.ok)
    return all.problem.code === "science/nothing-read"
      ? ok({ ...none, cautions: [{ code: "science/no-hole-yet", facts: {} }] })
      : all;
  const areas: number[] = [];
  const values: number[] = [];
  for (const { hole, worms } of all.value.counted) {
    const area = holeAreaM2(hole.sidesM);
    if (!area.ok) continue;
    areas.push(area.value);
    values.push(worms / area.value);
  }
  const n = values.length;
  if (n === 0) return ok({ ...none, cautions: [{ code: "science/no-hole-yet", facts: {} }] });
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  // Holes that are all alike have shown no spread yet; planning with none would ask for no more holes.
  const alike = values.every((value) => value === values[0]);
  const variance = alike ? null : values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1);
  return ok({
    holes: n,
    // No worm at all would plan with no mean: half a worm in all holes is as near to none as they can tell.
    mean: mean > 0 ? mean : 0.5 / areas.reduce((sum, area) => sum + area, 0),
    squaredVariation: variance === null ? null : variance / mean ** 2,
    cautions: all.value.cautions,
  });
};

/**
 * Holes still to be dug until the mean is known to give or take `giveOrTake` of itself.
 *
 * Holes in all: `holesInAll`. Spread between holes as a share of the mean:
 * `v² = w·(1/m + 1/k) + (1−w)·s²/m²` with `w = (6−n)/5`: all planning with one hole, all seen from six on.
 * Planning goes by a negative binomial with the mean seen so far, in holes of the size given; before the first
 * hole by 225 per m², the mean of a survey of fields (published), and k = 2, which stands for worms in clumps
 * (a rule of this product). The band comes from how poorly so few
 * holes know a spread: the middle half of the chi-square distribution with max(5, n−1) degrees of freedom.
 *
 * @param holes the holes so far, in any order; may be none
 * @returns never fewer than what makes three holes. `science/not-a-share-of-mean` unless `giveOrTake` lies
 * above 0 and at most at 1, `science/no-hole-size` for sides that are no sides, `science/too-many-holes` when
 * more than 300 would be needed even at the low end, `science/not-a-count` as `countedHoles`. An end of the
 * band beyond 300 is given as 300 less the holes so far.
 *
 * @example
 * holesNeeded([], { giveOrTake: 0.25, sidesM: [0.2, 0.2] }) // => { value: { more: { middle: 41 } } }
 */
export const holesNeeded = (
  holes: readonly HoleCount[],
  { giveOrTake, sidesM }: HolesWanted,
): Result<HolesNeeded> => {
  if (!(giveOrTake > 0 && giveOrTake <= 1))
    return failed("science/not-a-share-of-mean", { giveOrTake: String(giveOrTake) });
  const area = holeAreaM2(sidesM);
  if (!area.ok) return area;
  const so = seenSoFar(holes);
  if (!so.ok) return so;
  const { holes: n, mean, squaredVariation, cautions } = so.value;
  const planned =
    squaredVariation === null ? 1 : Math.max(0, (HOLES_UNTIL_SEEN - n) / (HOLES_UNTIL_SEEN - 1));
  const plan = variationOf(mean * area.value, PLANNING_K);
  if (!plan.ok) return plan;
  const variation = Math.sqrt(planned * plan.value ** 2 + (1 - planned) * (squaredVariation ?? 0));
  const freedom = Math.max(HOLES_UNTIL_SEEN - 1, n - 1);
  const few = chiSquareQuantile((1 + BAND_LEVEL) / 2, freedom);
  const many = chiSquareQuantile((1 - BAND_LEVEL) / 2, freedom);
  if (!few.ok) return few;
  if (!many.ok) return many;
  const low = holesInAll(variation * Math.sqrt(freedom / few.value), giveOrTake);
  const middle = holesInAll(variation, giveOrTake);
  const high = holesInAll(variation * Math.sqrt(freedom / many.value), giveOrTake);
  if (!low.ok) return low;
  if (!middle.ok) return middle;
  if (!high.ok) return high;
  if (low.value === null) return failed("science/too-many-holes", { most: MOST_HOLES });
  const more = (inAll: number | null): number => Math.max(0, (inAll ?? MOST_HOLES) - n);
  return ok({
    more: { low: more(low.value), middle: more(middle.value), high: more(high.value) },
    variation,
    planned,
    n,
    sampledBy: "holes",
    cautions,
    methods: ["holes-needed"],
    sources: sourcesOf(["holes-needed"]),
  });
};
