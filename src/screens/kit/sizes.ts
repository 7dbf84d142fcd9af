/** Sizes that a ring, a hole template, a bottle or a ruler may have, in SI. */
/** What is kept without asking, and what a record can hold at all. What is usual is own choice, no source. */
type Bounds = { readonly usual: readonly [number, number]; readonly possible: readonly [number, number] };

/** Across a ring, in metres. */
export const ACROSS: Bounds = { usual: [0.08, 0.8], possible: [0.02, 3] };
/** Height of a ring, in metres. */
export const HIGH: Bounds = { usual: [0.05, 0.6], possible: [0.01, 2] };
/** One side of a hole, in metres. */
export const SIDE: Bounds = { usual: [0.1, 0.6], possible: [0.05, 2] };
/** What a bottle holds, in cubic metres. */
export const HOLDS: Bounds = { usual: [1e-4, 0.025], possible: [1e-5, 0.2] };
/** One step of a ruler, in metres. */
export const STEP: Bounds = { usual: [0.0005, 0.01], possible: [0.0001, 0.05] };

/** Said at the tape already, well before it is said of a result: there it can still be measured again. Own choice. */
const SAID_OUT_OF_ROUND = 0.02;

/**
 * By how much two measures of a ring at right angles differ, when that is more than a round ring would.
 *
 * @returns a share of the smaller one; null when it is round or one is not measured
 *
 * @example
 * outOfRoundShare(0.3, 0.31) // => ≈ 0.0333
 */
export const outOfRoundShare = (firstM: number | null, secondM: number | null): number | null => {
  if (firstM === null || secondM === null) return null;
  const smaller = Math.min(firstM, secondM);
  const apart = Math.abs(firstM - secondM);
  // A hair more, so that 30 cm and 30.6 cm are not told apart from 2 % by the last bit.
  return apart > (SAID_OUT_OF_ROUND + 1e-9) * smaller ? apart / smaller : null;
};
