/**
 * Limits at which a caution stands beside a result. The code reads them here and the records of the methods list them,
 * so that what is said of a caution cannot drift from when it stands. All are own rules, from simulation.
 */

/** Fewer holes than this may miss the patches without worms, or the crowded ones. */
export const ENOUGH_HOLES = 30;

/** Holes from which on their own spread tells mostly whether the range is too narrow for long tails. */
export const HOLES_THAT_SHOW_SPREAD = 10;

/** Spread of holes, as a share of their mean, above which the range of the mean is too narrow for long tails. */
export const UNEVEN_SPREAD = 0.7;

/** The same for the part of the spread that chance alone does not give. */
export const UNEVEN_BEYOND_CHANCE = 0.5;

/** Spread beyond chance, as a share of the mean, from which on one of two places can be called the uneven one. */
export const ONE_UNEVEN_PLACE = 0.4;

/** Up to this share of it the other place is the even one. */
export const OTHER_EVEN_SHARE = 0.5;

/** Values from which on a mean of lopsided ones spreads about evenly. */
export const ENOUGH_IF_LOPSIDED = 30;

/** Skewness of values, to either side, above which their mean does not spread evenly with more of them either. */
export const LOPSIDED = 0.8;

/** Holes below which an exact range of their share holds 98 times of 100 and more, on the average over all shares. */
export const HOLES_THAT_STEP = 15;

/** Rings below which, none of them over a burrow, the burrows may have been missed. */
export const ENOUGH_RINGS = 10;

/** Up to so many years counted chances come in such steps that the range holds more than it promises. */
export const FEW_YEARS = 6;

/** Years from which on runs of alike years tell on the range of one spot, and on that of a field. */
export const YEARS_FOR_RUNS = 7;
export const FIELD_YEARS_FOR_RUNS = 5;
