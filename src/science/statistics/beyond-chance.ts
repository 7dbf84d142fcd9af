/** How much of a spread of counts chance alone does not give. */

/**
 * Spread beyond chance as a share of the mean: `√max(0, s² − s_0²)/m`. Counts that fall by chance vary by their mean,
 * `s_0² = m`; for a negative binomial it estimates `1/√k`.
 *
 * @param mean m, of counts or of what they stand for
 * @param variance s², in the square of its unit
 * @param byChance s_0², in the same
 * @returns 0 for a mean of 0 or for anything that is no number
 *
 * Source: moments of the Poisson and the negative-binomial distribution.
 *
 * @example
 * beyondChance(6, 15, 6) // => 0.5
 */
export const beyondChance = (mean: number, variance: number, byChance: number): number => {
  const share = Math.sqrt(Math.max(0, variance - byChance)) / mean;
  return Number.isFinite(share) ? share : 0;
};
