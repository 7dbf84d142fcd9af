/** Variable projection: the part of a fit that is linear is solved for exactly at each try of the rest. */

/** Coefficients of the columns, none below 0, and what is left over. */
export interface Projected {
  readonly coefficients: readonly [number, number];
  /** Sum of squares of the residuals. */
  readonly sse: number;
}

type Column = ArrayLike<number>;

const dot = (a: Column, b: Column): number => {
  let sum = 0;
  for (let at = 0; at < a.length; at++) sum += (a[at] ?? 0) * (b[at] ?? 0);
  return sum;
};

const leftOver = (y: Column, one: Column, two: Column | null, p: number, q: number): number => {
  let sum = 0;
  for (let at = 0; at < y.length; at++) {
    const residual = (y[at] ?? 0) - p * (one[at] ?? 0) - (two === null ? 0 : q * (two[at] ?? 0));
    sum += residual * residual;
  }
  return sum;
};

/** `y = p·one` with p ≥ 0. */
export const projectOne = (y: Column, one: Column): Projected => {
  const length = dot(one, one);
  const p = length > 0 ? Math.max(0, dot(one, y) / length) : 0;
  return { coefficients: [p, 0], sse: leftOver(y, one, null, p, 0) };
};

/**
 * `y = p·one + q·two` by least squares with p, q ≥ 0. The second column is made orthogonal to the first, so
 * that columns that nearly point the same way keep their digits. A bounded quadratic with two unknowns has its
 * minimum inside, or on one of the two edges; the residuals themselves are compared.
 *
 * Source: Golub & Pereyra 1973 (from memory); the edges, Lawson & Hanson 1974, chapter 23 (from memory).
 */
export const projectTwo = (y: Column, one: Column, two: Column): Projected => {
  const length = dot(one, one);
  const along = length > 0 ? dot(one, two) / length : 0;
  const across = Array.from(two, (value, at) => value - along * (one[at] ?? 0));
  const width = dot(across, across);
  if (length > 0 && width > 1e-24 * dot(two, two)) {
    const q = dot(across, y) / width;
    const p = dot(one, y) / length - along * q;
    if (p >= 0 && q >= 0) return { coefficients: [p, q], sse: leftOver(y, one, two, p, q) };
  }
  const first = projectOne(y, one);
  const second = projectOne(y, two);
  return first.sse <= second.sse ? first : { coefficients: [0, second.coefficients[0]], sse: second.sse };
};
