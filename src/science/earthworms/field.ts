/** Worms of a field or strip from its holes. */
import { failed, ok, type Result } from "../../record/result.ts";
import {
  ENOUGH_HOLES,
  HOLES_THAT_SHOW_SPREAD,
  UNEVEN_BEYOND_CHANCE,
  UNEVEN_SPREAD,
} from "../constants/cautions.ts";
import { CONFIDENCE_LEVEL, SAMPLES_FOR_A_RANGE } from "../constants.ts";
import type { Caution, Estimate, Interval } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import { beyondChance } from "../statistics/beyond-chance.ts";
import { studentQuantile } from "../statistics/distributions.ts";
import { conditionCautions, sameSides, unlikeCautions } from "./conditions.ts";
import { type HoleCount, holeAreaM2, wormsFound } from "./hole-count.ts";

/** A hole that counts, with its worms. */
export interface Counted {
  readonly hole: HoleCount;
  readonly worms: number;
}

/** The holes that count, and why others do not. */
export interface CountedHoles {
  readonly counted: readonly Counted[];
  readonly cautions: readonly Caution[];
}

/**
 * The holes that a result rests on: finished ones without a number in doubt.
 *
 * @returns cautions for those left out (`science/holes-unfinished`, `science/holes-in-doubt`);
 * `science/nothing-read` when none is left, `science/not-a-count` when a count is no count
 */
export const countedHoles = (holes: readonly HoleCount[]): Result<CountedHoles> => {
  const counted: Counted[] = [];
  let unfinished = 0;
  let inDoubt = 0;
  for (const hole of holes) {
    const worms = wormsFound(hole);
    if (worms.ok && hole.finished) counted.push({ hole, worms: worms.value });
    else if (!worms.ok && worms.problem.code === "science/two-answers") inDoubt++;
    else if (!worms.ok && worms.problem.code !== "science/nothing-read") return worms;
    else unfinished++;
  }
  if (counted.length === 0) return failed("science/nothing-read");
  const cautions: Caution[] = [];
  if (unfinished > 0) cautions.push({ code: "science/holes-unfinished", facts: { holes: unfinished } });
  if (inDoubt > 0) cautions.push({ code: "science/holes-in-doubt", facts: { holes: inDoubt } });
  return ok({ counted, cautions });
};

/** Worms of one hole and the ground that they stand for, in the unit of the answer. */
interface Sample {
  readonly worms: number;
  readonly ground: number;
}

const upperBound = (samples: readonly Sample[]): Interval => ({
  lower: 0,
  upper: -Math.log(1 - CONFIDENCE_LEVEL) / samples.reduce((sum, { ground }) => sum + ground, 0),
  level: CONFIDENCE_LEVEL,
  sides: "upper-only",
  method: "none-found-exact",
});

/** What the range of the mean may miss: crowded holes that few holes do not meet, or that more of them show. */
const spreadCautions = (n: number, mean: number, variance: number, byChance: number): readonly Caution[] => {
  const cautions: Caution[] = [];
  if (n < ENOUGH_HOLES) cautions.push({ code: "science/few-holes-may-miss-patches", facts: { holes: n } });
  const uneven =
    Math.sqrt(variance) > UNEVEN_SPREAD * mean ||
    beyondChance(mean, variance, byChance) > UNEVEN_BEYOND_CHANCE;
  if (n >= HOLES_THAT_SHOW_SPREAD && uneven)
    cautions.push({ code: "science/range-if-lopsided", facts: { values: n } });
  return cautions;
};

interface MeanOfHoles {
  readonly mean: number;
  readonly range: Result<Interval>;
  /** What is special about these counts, and what their range may miss: before and after what else is said. */
  readonly cautions: readonly Caution[];
  readonly spread: readonly Caution[];
}

const meanWithRange = (samples: readonly Sample[]): MeanOfHoles => {
  const n = samples.length;
  const values = samples.map(({ worms, ground }) => worms / ground);
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  if (n < SAMPLES_FOR_A_RANGE)
    return {
      mean,
      range: failed("science/too-few-holes", { needs: SAMPLES_FOR_A_RANGE, has: n }),
      cautions: [],
      spread: [],
    };
  if (samples.every(({ worms }) => worms === 0))
    return {
      mean: 0,
      range: ok(upperBound(samples)),
      cautions: [{ code: "science/none-found", facts: { holes: n } }],
      spread: [],
    };
  const [first = 0] = values;
  // Densities of equal counts in equal holes are equal to the last bit; a mean of them may not be.
  const alike = values.every((value) => value === first);
  const byChance = samples.reduce((sum, { ground }) => sum + mean / ground, 0) / n;
  const variance = alike ? byChance : values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1);
  const t = studentQuantile((1 + CONFIDENCE_LEVEL) / 2, n - 1);
  if (!t.ok) return { mean, range: t, cautions: [], spread: [] };
  const half = (t.value * Math.sqrt(variance)) / (mean * Math.sqrt(n));
  return {
    mean,
    range: ok({
      lower: mean * Math.exp(-half),
      upper: mean * Math.exp(half),
      level: CONFIDENCE_LEVEL,
      sides: "both",
      method: alike ? "holes-mean-alike" : "holes-mean-log-t",
    }),
    cautions: alike ? [{ code: "science/holes-alike", facts: { holes: n } }] : [],
    spread: alike ? [] : spreadCautions(n, mean, variance, byChance),
  };
};

const estimate = (
  samples: readonly Sample[],
  unit: Estimate["unit"],
  holes: readonly HoleCount[],
  leftOut: readonly Caution[],
): Estimate => {
  const { mean, range, cautions: own, spread } = meanWithRange(samples);
  const conditions = [...conditionCautions(holes), ...unlikeCautions(holes)];
  const methods: MethodId[] = ["hole-density", range.ok ? range.value.method : "holes-mean-log-t"];
  if (conditions.length > 0) methods.push("hole-conditions");
  return {
    value: mean,
    unit,
    n: samples.length,
    sampledBy: "holes",
    range,
    cautions: [...own, ...leftOut, ...conditions, ...spread],
    methods,
    sources: sourcesOf(methods),
  };
};

/**
 * Worms per hole, mean of the holes, with its range.
 *
 * Range: `m·exp(± t·s/(m·√n))` with Student's t of n−1 degrees of freedom, the t range of the mean on the log
 * scale by the delta method, so that it never falls below 0. From three holes on; fewer give the mean and the
 * reason (`science/too-few-holes`). Special cases, each with a caution:
 * - None found in any hole: the exact one-sided bound, `−ln(0.05)` = 3.0 worms over all holes together, as if
 *   worms lay by chance (`science/none-found`). With worms in clumps more may have been missed: true means at
 *   the bound of five holes are missed 7 of 100 times with k = 2 and 14 of 100 with k = 0.5, instead of 5.
 * - All holes alike: a spread of 0 would give a range of no width; the spread of worms that lie by chance
 *   stands in, `s² = m` (`science/holes-alike`).
 *
 * How often a 95 % range holds the truth, by simulation of negative-binomial counts (tests/property): see
 * `wormsPerM2`.
 *
 * @param holes in any order; unfinished and doubtful ones are left out and said
 * @returns `science/hole-sizes-differ` when the holes are not one size (per m² can still be said), else
 * reasons as `countedHoles`
 *
 * Source: t range, NIST/SEMATECH e-Handbook 1.3.5.2; bound, Garwood 1936 (from memory).
 *
 * @example
 * wormsPerHole([hole9, hole14, hole4]); // 9 per hole, 3 holes, 2.3 to 36
 */
export const wormsPerHole = (holes: readonly HoleCount[]): Result<Estimate> => {
  const all = countedHoles(holes);
  if (!all.ok) return all;
  const { counted, cautions } = all.value;
  const sides = counted[0]?.hole.sidesM ?? null;
  if (!counted.every(({ hole }) => sameSides(hole.sidesM, sides))) return failed("science/hole-sizes-differ");
  const samples = counted.map(({ worms }) => ({ worms, ground: 1 }));
  return ok(
    estimate(
      samples,
      "/{hole}",
      counted.map(({ hole }) => hole),
      cautions,
    ),
  );
};

/**
 * Worms per square metre, mean of the holes, with its range as in `wormsPerHole`. Each hole is one sample,
 * whatever its size; holes of several sizes carry a caution (`science/hole-sizes-mixed`), because a small
 * hole varies more than a large one. Depth does not enter.
 *
 * How often a 95 % range holds the truth, by simulation of 4000 fields of 3, 5 and 10 equal holes with 3, 9 and
 * 25 worms in the mean (tests/property): 94.6 to 97.6 of 100 for worms that lie by chance, 93.8 to 98.1 in clumps
 * of k = 4 and 2, 92.3 to 95.4 in very strong clumps of k = 0.7, where it dips with the number of holes because
 * one rare crowded hole carries the mean. With half a worm in the mean 95.5 to 99.3. Where three of ten holes fall on
 * patches without any worm, or holes differ lognormally (spread of logs 0.8), neither of which any formula here
 * presumes, it holds 90 to 96 of 100 with 5 holes and 5 or 9 worms, 86 with 20 worms on such patches, and 91 to 96 with
 * 10: five holes may all lie on good patches. If one hole in ten holds ten times as many as the others, the range of 5
 * holes holds 42 to 59 of 100 with 9 and 20 worms and 88 with 3, of 10 holes 65 to 74, of 20 holes 84 to 86, of 30 and 40
 * holes 91 to 94: what no hole met nobody can know of. Fewer than thirty holes carry a caution for both
 * (`science/few-holes-may-miss-patches`).
 *
 * More holes mend that slowly: with lognormal holes (spread of logs 0.8, 1 and 1.2) it holds 91 to 94, 88 to 92 and 86
 * to 91 of 100 from 10 holes to 50. From ten on a caution (`science/range-if-lopsided`) stands where the spread of the
 * holes is above 0.7 of their mean, or the part of it that chance does not give above 0.5: beside 70 to all of 100
 * ranges that miss where it holds less than 92, with 10 holes of spread 0.8 beside half of them; beside 3 to 18 of 100
 * with worms by chance. In clumps of k = 2, where it holds 94 to 95, it stands beside 77 to 99: so few holes cannot tell
 * those from longer tails.
 *
 * @returns holes without a size are left out and said (`science/holes-without-size`); when none has one
 * `science/no-hole-size`, else reasons as `countedHoles`
 *
 * @example
 * wormsPerM2([hole9, hole14, hole4]); // 225 per m² with holes of 20 × 20 cm
 */
export const wormsPerM2 = (holes: readonly HoleCount[]): Result<Estimate> => {
  const all = countedHoles(holes);
  if (!all.ok) return all;
  const { counted } = all.value;
  const cautions: Caution[] = [...all.value.cautions];
  const sized = counted.flatMap(({ hole, worms }) => {
    const area = holeAreaM2(hole.sidesM);
    return area.ok ? [{ hole, worms, ground: area.value }] : [];
  });
  const [first] = sized;
  if (first === undefined) return failed("science/no-hole-size");
  if (sized.length < counted.length)
    cautions.push({ code: "science/holes-without-size", facts: { holes: counted.length - sized.length } });
  if (!sized.every(({ hole }) => sameSides(hole.sidesM, first.hole.sidesM)))
    cautions.push({ code: "science/hole-sizes-mixed", facts: {} });
  return ok(
    estimate(
      sized,
      "/m2",
      sized.map(({ hole }) => hole),
      cautions,
    ),
  );
};
