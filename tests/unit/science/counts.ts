import type { Failed, Result } from "../../../src/record/result.ts";
import type { Counting, LineCounts } from "../../../src/science/ground-cover/line.ts";

/** A line on which nothing was counted. */
export const EMPTY: LineCounts = {
  residueFlat: 0,
  residueStanding: 0,
  green: 0,
  bare: 0,
  stone: 0,
  own: 0,
  notRead: 0,
};

/** A line with residue at `hits` of its marks and bare ground at the rest. */
export const line = (hits: number, marks = 100): LineCounts => ({
  ...EMPTY,
  residueFlat: hits,
  bare: marks - hits,
});

export const PLAIN: Counting = { stoneCounts: false };

/** The value, or the end of the test. */
export const reached = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(`${result.problem.code} ${JSON.stringify(result.problem.facts)}`);
  return result.value;
};

/** The code of the reason, or null when it worked. */
export const reasonOf = (result: Result<unknown>): Failed["problem"]["code"] | null =>
  result.ok ? null : result.problem.code;
