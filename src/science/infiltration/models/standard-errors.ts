/** Standard errors of the unknowns of a curve. */
import { failed, ok, type Result } from "../../../record/result.ts";

/** Columns that point the same way up to this share of their length cannot be told apart. */
const SAME_WAY = 1e-6;

/**
 * Standard errors from the slopes of the curve at its readings: the square roots of the diagonal of
 * `s²·(JᵀJ)⁻¹`. The slopes are made orthogonal one after the other, each of them once as the last one: what is
 * then left of it is what the readings alone say of its unknown.
 *
 * Depths add up, so an error of one reading lives on in all later ones; these errors take readings as
 * independent and are rather too small. On published readings they are those of SciPy's `curve_fit` to 1 part in
 * 1000 (tests/reference/scipy).
 *
 * @param slopes per unknown its column, one number per reading
 * @param variance of the residuals
 * @returns per unknown; `science/parameters-inseparable` where the readings cannot tell it from the others
 *
 * Source: Seber & Wild 1989, Nonlinear Regression, section 2.1.2 (from memory).
 */
export const standardErrors = (
  slopes: readonly (readonly number[])[],
  variance: number,
): readonly Result<number>[] =>
  slopes.map((own) => {
    const others = slopes.filter((column) => column !== own);
    const basis: number[][] = [];
    for (const column of [...others, own]) {
      let rest = [...column];
      // Twice is enough (Kahan): the second round takes out what rounding left in.
      for (let round = 0; round < 2; round++)
        for (const direction of basis) {
          const along = rest.reduce((sum, value, at) => sum + value * (direction[at] ?? 0), 0);
          rest = rest.map((value, at) => value - along * (direction[at] ?? 0));
        }
      const length = Math.hypot(...rest);
      if (!(length > SAME_WAY * Math.hypot(...column))) return failed("science/parameters-inseparable");
      if (column === own) return ok(Math.sqrt(variance) / length);
      basis.push(rest.map((value) => value / length));
    }
    return failed("science/parameters-inseparable");
  });
