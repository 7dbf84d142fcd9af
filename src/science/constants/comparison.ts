/** The numbers that comparing and the years rest on. */

/** Level of the range that has to leave out no difference for *probably different*. */
export const LIKELY_LEVEL = 0.8;

/** Share of tries in which a worthwhile difference is to show. */
export const WANTED_POWER = 0.8;

/** A chance at or below this is seldom enough; tests that can never reach it say so. */
export const SELDOM = 0.05;

/** The spread that is planned with is known no worse than with so many degrees of freedom. Own rule. */
export const LEAST_FREEDOM = 5;

/** Diameters and depths that differ by more than this share of the larger are unlike. Own rule. */
export const UNLIKE_SIZE = 0.1;

/**
 * Two sets of readings are unlike when so large a share of one of them would have to be read at other places for
 * both to lie alike: one of five. Own rule.
 */
export const UNLIKE_SHARE = 0.2;

/** People × minutes that differ by more than this factor are unlike. Own rule. */
export const UNLIKE_EFFORT = 1.5;

/** Ranges from samples drawn anew are too narrow with fewer values than this, as simulation shows. Own rule. */
export const FEW_TO_RESAMPLE = 50;
