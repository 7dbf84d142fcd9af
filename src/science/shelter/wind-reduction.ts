/** How much of the wind rows of trees take away, by distance in tree heights. */
import { failed, ok, type Result } from "../../record/result.ts";
import type { Caution } from "../estimate.ts";
import { type Ranged, ranged, type Span } from "../residue/ranged.ts";

type Point = readonly [heights: number, reduction: number];

/**
 * Moderately dense belt: Iowa State University Extension, Farmstead windbreaks, Table 1. The columns were scrambled in
 * the copy that was read; their order is inferred.
 */
const FARMSTEAD: readonly Point[] = [
  [5, 0.78],
  [10, 0.66],
  [15, 0.35],
  [20, 0.14],
  [25, 0.1],
  [30, 0.04],
];

/** Belt of 40 to 60 % density: one less the share of open wind (Brandle & Finch), from memory. */
const OPEN_WIND: readonly Point[] = [
  [5, 0.7],
  [10, 0.5],
  [15, 0.4],
  [20, 0.25],
  [30, 0.05],
];

const along = (points: readonly Point[], heights: number): number => {
  const after = points.find(([at]) => at >= heights) ?? points.at(-1) ?? [0, 0];
  const before = points.findLast(([at]) => at <= heights) ?? after;
  const span = after[0] - before[0];
  return span === 0 ? after[1] : before[1] + ((after[1] - before[1]) * (heights - before[0])) / span;
};

const SQUARE_WIND: Caution = { code: "science/shelter-table-square-wind", facts: {} };

/**
 * Share of the open wind that a belt takes away on its lee side, by straight lines between the figures of two tables.
 * They differ by up to 16 points; the ends are the lower and the higher of them, the middle lies halfway.
 *
 * @param heights distance from the belt in tree heights, 5 to 30
 * @returns a share; `science/beyond-shelter-table` nearer or farther, where neither table says anything
 *
 * Source: Iowa State University Extension; Brandle & Finch (from memory).
 *
 * @example
 * windReduction(10).value // => { low: 0.5, high: 0.66, unit: "1" }
 */
export const windReduction = (heights: number): Result<Ranged> => {
  if (!(heights >= 5 && heights <= 30)) return failed("science/beyond-shelter-table", { least: 5, most: 30 });
  const both = [along(FARMSTEAD, heights), along(OPEN_WIND, heights)];
  const ends: Span = {
    low: Math.min(...both),
    middle: ((both[0] ?? 0) + (both[1] ?? 0)) / 2,
    high: Math.max(...both),
  };
  return ok(
    ranged([ends.low, ends.middle, ends.high], "1", {
      from: [],
      method: "shelter-wind",
      cautions: [SQUARE_WIND],
    }),
  );
};

/**
 * Share by one published table alone: moderately dense belt, wind square to it, away from its ends.
 *
 * @returns a share; `science/beyond-shelter-table` outside 5 to 30 tree heights
 *
 * Source: Iowa State University Extension, Farmstead windbreaks, Table 1.
 *
 * @example
 * farmsteadReduction(12).value // => ≈ 0.536
 */
export const farmsteadReduction = (heights: number): Result<number> =>
  heights >= 5 && heights <= 30
    ? ok(along(FARMSTEAD, heights))
    : failed("science/beyond-shelter-table", { least: 5, most: 30 });
