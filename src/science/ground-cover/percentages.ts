/** Whole percentages that a reader can add up. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Worked } from "../estimate.ts";
import { sourcesOfCover } from "../methods/behind/ground-cover.ts";

/** Whole percent of every part; n counts the marks that were shared out. */
export interface Percentages<K extends string> extends Worked {
  readonly percent: Readonly<Record<K, number>>;
}

/**
 * Whole percent for every part, summing to 100: each is rounded down, and the points left over go to the
 * parts with the largest remainders. Equal remainders: the larger part first, then the one named first.
 *
 * @param counts marks of every kind, 0 or more
 * @returns `science/nothing-read` when all are 0, there are none, or they are too
 * large to be added up, `science/not-a-count` for a negative or
 * not finite one
 *
 * Source: largest-remainder rounding, common practice.
 *
 * @example
 * percentagesThatSum({ residue: 1, green: 1, bare: 1 }).value.percent.residue // => 34
 */
export const percentagesThatSum = <K extends string>(
  counts: Readonly<Record<K, number>>,
): Result<Percentages<K>> => {
  const entries = Object.entries<number>(counts) as [K, number][];
  const bad = entries.find(([, count]) => !(Number.isFinite(count) && count >= 0));
  if (bad !== undefined) return failed("science/not-a-count", { field: bad[0], count: String(bad[1]) });
  const sum = entries.reduce((total, [, count]) => total + count, 0);
  if (!(sum > 0 && Number.isFinite(100 * sum))) return failed("science/nothing-read");
  const parts = entries.map(([key, count]) => {
    const exact = (100 * count) / sum;
    // 100·count/sum of a whole percentage may come out a hair below it.
    const floor = Math.floor(exact + 1e-9);
    return { key, count, floor, rest: Math.round((exact - floor) * 1e9) };
  });
  const left = 100 - parts.reduce((total, part) => total + part.floor, 0);
  const raised = new Set(
    [...parts]
      .sort((a, b) => b.rest - a.rest || b.count - a.count)
      .slice(0, left)
      .map((part) => part.key),
  );
  const methods = ["whole-percent"] as const;
  return ok({
    percent: Object.fromEntries(
      parts.map(({ key, floor }) => [key, floor + (raised.has(key) ? 1 : 0)]),
    ) as Record<K, number>,
    n: sum,
    sampledBy: "marks",
    cautions: [],
    methods,
    sources: sourcesOfCover(methods),
  });
};
