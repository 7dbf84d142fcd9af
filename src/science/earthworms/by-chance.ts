/** Worms per square metre from one count over all holes, as if worms lay by chance. */
import { failed, ok, type Result } from "../../record/result.ts";
import { SELDOM } from "../constants/comparison.ts";
import { CONFIDENCE_LEVEL } from "../constants.ts";
import type { Estimate } from "../estimate.ts";
import { sourcesOf } from "../methods.ts";
import { dispersionOf } from "../statistics/negative-binomial.ts";
import { countRange } from "../statistics/poisson.ts";
import { sumOf } from "../statistics/sample.ts";
import { sameSides } from "./conditions.ts";
import { countedHoles } from "./field.ts";
import { type HoleCount, holeAreaM2 } from "./hole-count.ts";

/**
 * All worms over all ground, with the exact range of one count. It supposes that worms lie by chance, which they seldom
 * do: the caution `science/range-supposes-chance` always stands beside it, and there is no range where the holes show
 * clumps. `wormsPerM2` takes the spread between holes instead and is what a screen leads with.
 *
 * @param holes of one size, in any order; finished ones count
 * @returns per m²; no range for fewer than three holes (`science/too-few-holes`) or where counts this uneven come by
 * chance at most 5 times of 100 (`science/counts-in-clumps`). `science/no-hole-size` when they have none,
 * `science/hole-sizes-differ`, else reasons as `countedHoles`
 *
 * Source: Garwood 1936 for the range; the test of clumps as `dispersionOf`.
 *
 * @example
 * densityByChance(tenHoles); // 90 worms in ten holes of 20 × 20 cm: 225 per m², 180.9 to 276.6
 */
export const densityByChance = (holes: readonly HoleCount[]): Result<Estimate> => {
  const all = countedHoles(holes);
  if (!all.ok) return all;
  const { counted, cautions } = all.value;
  const sides = counted[0]?.hole.sidesM ?? null;
  const area = holeAreaM2(sides);
  if (!area.ok) return area;
  if (!counted.every(({ hole }) => sameSides(hole.sidesM, sides))) return failed("science/hole-sizes-differ");
  const counts = counted.map(({ worms }) => worms);
  const ground = counts.length * area.value;
  const spread = dispersionOf(counts);
  const found = sumOf(counts);
  const bounds = countRange(found, CONFIDENCE_LEVEL);
  if (!bounds.ok) return bounds;
  const methods = ["count-range-exact", "counts-dispersion"] as const;
  const range = () => {
    // No worm in any hole shows no clumps; fewer than three holes show nothing.
    if (!spread.ok && spread.problem.code !== "science/all-empty") return spread;
    if (spread.ok && spread.value.chance <= SELDOM) return failed("science/counts-in-clumps");
    return ok({
      lower: bounds.value.lower / ground,
      upper: bounds.value.upper / ground,
      level: CONFIDENCE_LEVEL,
      sides: found === 0 ? ("upper-only" as const) : ("both" as const),
      method: "count-range-exact" as const,
    });
  };
  return ok({
    value: found / ground,
    unit: "/m2",
    n: counts.length,
    sampledBy: "holes",
    range: range(),
    cautions: [{ code: "science/range-supposes-chance", facts: {} }, ...cautions],
    methods,
    sources: sourcesOf(methods),
  });
};
