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
