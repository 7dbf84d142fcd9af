/** Three treatments or more in blocks. */
import { ok, type Result } from "../../record/result.ts";
import { LIKELY_LEVEL } from "../constants/comparison.ts";
import { CONFIDENCE_LEVEL } from "../constants.ts";
import type { Bounds, Interval, Unit, Worked } from "../estimate.ts";
import { type MethodId, sourcesOf } from "../methods.ts";
import { type BlockedTable, blockedTable } from "../statistics/blocks.ts";
import { sumOf } from "../statistics/sample.ts";
import { lopsidedCautions, studentRange } from "../statistics/student-range.ts";
import type { Asked } from "./comparison.ts";
import { type ComparisonPlan, planFor } from "./plan.ts";
import { boundsOn, noneOn, type Seen, shownOn, workedWith } from "./scale.ts";
import { type Word, wordFor } from "./words.ts";

/** Two of the treatments against each other. */
export interface TwoOfMany {
  readonly first: string;
  readonly second: string;
  /** First less second, or first over second. */
  readonly value: number;
  readonly range: Result<Interval>;
  readonly likely: Result<Interval>;
  readonly word: Word;
}

export interface BlocksComparison extends Worked {
  readonly unit: Unit;
  /** As it was worked out: of logarithms where ratios are compared. */
  readonly table: BlockedTable;
  readonly means: readonly { readonly label: string; readonly value: number }[];
  readonly twos: readonly TwoOfMany[];
  /**
   * Least significant difference at 5 %, or the ratio that it stands for: how finely the trial tells, and no
   * test of any two means.
   */
  readonly leastSignificant: number;
  /** Blocks for any two of the treatments to show the worthwhile difference. */
  readonly plan: ComparisonPlan;
}

/**
 * Treatments that each stand once in every block (randomised complete blocks), as a two-way table without
 * interaction. With more than two treatments there are many pairs to look at and some lie apart by chance, so the
 * level of every range is raised with their number (Bonferroni): all words together err no more than one would.
 *
 * By simulation of 500 trials each of 3 to 5 treatments in 3 to 6 blocks (tests/property) all 95 % ranges of a trial held
 * their true differences together 94 to 98 times of 100 with even spreads and 95 to 99 times with skewed ones; each by
 * itself 98 to 99.7 times, which is said (`science/ranges-for-all-pairs`). Where one treatment varies four or five times
 * as much as another they hold together 91 to 96 times, and 88 to 92 where one of four or five varies five times as much
 * as all others: one spread stands for all. Where it is strongly skewed besides (lognormal, spread of logs 0.8) and varies
 * three times as much they hold together 86 to 91 times with 3 to 10 blocks. Differences carry a caution for it
 * (`science/range-if-lopsided`), as in `comparePairs`; ratios are worked out on logs, which takes most of the skew away.
 *
 * @param treatments each with one value per block, blocks in the same order everywhere
 * @returns reasons as `blockedTable` and `workedWith`
 *
 * Source: Snedecor & Cochran 1980, chapter 14 (from memory).
 *
 * @example
 * const seen = (values) => values.map((value) => ({ value, least: null }));
 * const table = [{ label: "A", blocks: seen([4, 5, 6]) }, { label: "B", blocks: seen([5, 7, 7]) }];
 * compareBlocks(table, { scale: "difference", unit: "1", worthwhile: 1 }).value.twos[0].word // => "probably-different"
 */
export const compareBlocks = (
  treatments: readonly { readonly label: string; readonly blocks: readonly Seen[] }[],
  { scale, unit, worthwhile }: Pick<Asked, "scale" | "unit" | "worthwhile">,
): Result<BlocksComparison> => {
  const numbers: number[][] = [];
  let raised = 0;
  for (const { blocks } of treatments) {
    const row: number[] = [];
    for (const seen of blocks) {
      const worked = workedWith(seen, scale);
      if (!worked.ok) return worked;
      raised += Number(worked.value.raised);
      row.push(worked.value.number);
    }
    numbers.push(row);
  }
  const table = blockedTable(numbers);
  if (!table.ok) return table;
  const { means, standardError, rest, leastSignificant } = table.value;
  const ofBlocks = (numbers[0] ?? []).map(
    (_, at) => sumOf(numbers.map((row) => row[at] ?? 0)) / numbers.length,
  );
  const looks = (treatments.length * (treatments.length - 1)) / 2;
  const method: MethodId = "blocks-t";
  const at = (difference: number, level: number): Result<Interval> => {
    const raisedLevel = 1 - (1 - level) / looks;
    const bounds: Result<Bounds> = boundsOn(
      scale,
      studentRange(difference, standardError, rest.degreesOfFreedom, raisedLevel),
    );
    return bounds.ok ? ok({ ...bounds.value, level, sides: "both", method }) : bounds;
  };
  const twos = treatments.flatMap(({ label: first }, one) =>
    treatments.slice(one + 1).map(({ label: second }, after): TwoOfMany => {
      const difference = (means[one] ?? 0) - (means[one + 1 + after] ?? 0);
      const [range, likely] = [at(difference, CONFIDENCE_LEVEL), at(difference, LIKELY_LEVEL)];
      const value = shownOn(scale, difference);
      return { first, second, value, range, likely, word: wordFor(range, likely, noneOn(scale)) };
    }),
  );
  const methods: MethodId[] = ["blocks-two-way", method, "words-of-difference"];
  return ok({
    unit: scale === "ratio" ? "1" : unit,
    table: table.value,
    means: treatments.map(({ label }, of) => ({ label, value: shownOn(scale, means[of] ?? 0) })),
    twos,
    leastSignificant: shownOn(scale, leastSignificant),
    plan: planFor(
      {
        spread: Math.sqrt(rest.meanSquare),
        degreesOfFreedom: rest.degreesOfFreedom,
        n: numbers[0]?.length ?? 0,
      },
      worthwhile,
      { treatments: treatments.length },
      scale,
    ),
    n: numbers[0]?.length ?? 0,
    sampledBy: "blocks",
    cautions: [
      ...(raised > 0 ? [{ code: "science/least-stands-in" as const, facts: { values: raised } }] : []),
      ...(looks > 1 ? [{ code: "science/ranges-for-all-pairs" as const, facts: { pairs: looks } }] : []),
      ...(scale === "difference" && twos.every(({ range }) => range.ok)
        ? lopsidedCautions(numbers.map((row) => row.map((value, at) => value - (ofBlocks[at] ?? 0))))
        : []),
    ],
    methods,
    sources: sourcesOf(methods),
  });
};
