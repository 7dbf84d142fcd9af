/** Several treatments in blocks, each once in every block: the two-way table without interaction. */
import { failed, ok, type Result } from "../../record/result.ts";
import { CONFIDENCE_LEVEL } from "../constants.ts";
import { fBeyond, studentQuantile } from "./distributions.ts";
import { largestOf, ROUNDING, sumOf } from "./sample.ts";

/** A line of the table of variance. */
export interface SquaresOf {
  readonly squares: number;
  readonly degreesOfFreedom: number;
  readonly meanSquare: number;
}

export interface BlockedTable {
  readonly blocks: SquaresOf;
  readonly treatments: SquaresOf;
  readonly rest: SquaresOf;
  readonly totalSquares: number;
  /** Mean per treatment, in the order of the table. */
  readonly means: readonly number[];
  readonly mean: number;
  /** Treatments over rest, and how often chance alone gives as much. */
  readonly f: number;
  readonly chance: number;
  /** Standard error of the difference of two means. */
  readonly standardError: number;
  /**
   * Least significant difference at 5 %: describes how finely the trial can tell. It is no test of every two
   * means, of which some lie that far apart by chance.
   */
  readonly leastSignificant: number;
  /** Spread of the rest as a share of the mean; null when the mean is not above 0. */
  readonly coefficientOfVariation: number | null;
}

const line = (squares: number, degreesOfFreedom: number): SquaresOf => ({
  squares,
  degreesOfFreedom,
  meanSquare: squares / degreesOfFreedom,
});

/**
 * Analysis of variance of a randomised complete block design. The rest is what treatments do differently from
 * block to block, and the measure of all differences.
 *
 * @param table per treatment its values, one per block, blocks in the same order everywhere; one unit
 * @returns `science/too-few-blocks` for fewer than two blocks, `science/too-few-treatments` for fewer than two
 * treatments, `science/blocks-not-complete` when a treatment misses a block, `science/no-number` when a value is
 * not finite, `science/no-spread-seen` when nothing is left for the rest
 *
 * Source: Snedecor & Cochran 1980, Statistical Methods, chapter 14 (from memory).
 *
 * @example
 * blockedTable([[4, 5, 6], [5, 7, 7]]).value.f // => ≈ 16
 */
export const blockedTable = (table: readonly (readonly number[])[]): Result<BlockedTable> => {
  const [treatments, blocks] = [table.length, table[0]?.length ?? 0];
  if (treatments < 2) return failed("science/too-few-treatments", { needs: 2, has: treatments });
  if (table.some((row) => row.length !== blocks)) return failed("science/blocks-not-complete");
  if (blocks < 2) return failed("science/too-few-blocks", { needs: 2, has: blocks });
  const values = table.flat();
  if (!values.every(Number.isFinite)) return failed("science/no-number");
  const mean = sumOf(values) / values.length;
  const means = table.map((row) => sumOf(row) / blocks);
  const ofBlocks = Array.from(
    { length: blocks },
    (_, at) => sumOf(table.map((row) => row[at] ?? 0)) / treatments,
  );
  const squaresAround = (some: readonly number[]): number => sumOf(some.map((one) => (one - mean) ** 2));
  const rest = sumOf(
    table.flatMap((row, of) =>
      row.map((value, at) => (value - (means[of] ?? 0) - (ofBlocks[at] ?? 0) + mean) ** 2),
    ),
  );
  const between = line(blocks * squaresAround(means), treatments - 1);
  const left = line(rest, (treatments - 1) * (blocks - 1));
  if (!Number.isFinite(between.squares + rest)) return failed("science/no-number");
  if (!(Math.sqrt(left.meanSquare) > 10 * ROUNDING * largestOf(values)))
    return failed("science/no-spread-seen");
  const f = between.meanSquare / left.meanSquare;
  const chance = fBeyond(f, between.degreesOfFreedom, left.degreesOfFreedom);
  if (!chance.ok) return chance;
  const t = studentQuantile((1 + CONFIDENCE_LEVEL) / 2, left.degreesOfFreedom);
  if (!t.ok) return t;
  const standardError = Math.sqrt((2 * left.meanSquare) / blocks);
  return ok({
    blocks: line(treatments * squaresAround(ofBlocks), blocks - 1),
    treatments: between,
    rest: left,
    totalSquares: squaresAround(values),
    means,
    mean,
    f,
    chance: chance.value,
    standardError,
    leastSignificant: t.value * standardError,
    coefficientOfVariation: mean > 0 ? Math.sqrt(left.meanSquare) / mean : null,
  });
};
