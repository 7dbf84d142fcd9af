/** The ends of a formula over figures that are ranges. */
import type { Span } from "../residue/ranged.ts";

/**
 * Least, middle and most of a formula when each figure is at either of its ends: all corners are tried, because
 * a figure may push the answer up at one place and down at another. Exact for formulas that are linear, or only
 * rise or only fall, in each figure by itself.
 *
 * @param figures up to about ten
 * @returns the least corner, the formula at all middles, the most; middle is held between them
 *
 * @example
 * const one = { low: 1, middle: 2, high: 3 };
 * corners([one, one], ([a = 0, b = 0]) => a - b) // => { low: -2, middle: 0, high: 2 }
 */
export const corners = (figures: readonly Span[], formula: (at: readonly number[]) => number): Span => {
  let rows: readonly (readonly number[])[] = [[]];
  for (const { low, high } of figures)
    rows = rows.flatMap((row) =>
      low === high
        ? [[...row, low]]
        : [
            [...row, low],
            [...row, high],
          ],
    );
  const middle = formula(figures.map((figure) => figure.middle));
  let low = middle;
  let high = middle;
  for (const row of rows) {
    const value = formula(row);
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return { low, middle, high };
};
