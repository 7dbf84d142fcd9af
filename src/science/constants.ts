/**
 * The numbers that the methods of this room rest on. They stand here, and not in the files that use
 * them, so that "How this was worked out" lists the very constants that the formulas read.
 */

/** Level of every range shown. */
export const CONFIDENCE_LEVEL = 0.95;

/** Samples from which on a range is given; fewer are "too few to give a range". */
export const SAMPLES_FOR_A_RANGE = 3;

/**
 * Spread between lines, as a multiple of what marks falling independently would give:
 * `SD = 1.25·√(p(1−p)/marks)`. It equals a coefficient of variation of 12.5 % at half cover and 100
 * marks, which is what the precision remembered from Laflen, Amemiya & Hintz 1981 implies. From memory.
 */
export const PLANNING_SPREAD = 1.25;

/** From this many lines on only the spread seen counts. Own rule. */
export const LINES_UNTIL_SEEN = 6;

/** Half width that "how many more lines" plans for unless the person says otherwise: 5 points. */
export const GIVE_OR_TAKE = 0.05;

/** The band of "how many more lines" covers this share of what the spread may really be. Own rule. */
export const BAND_LEVEL = 0.5;

/** Most lines that are planned for; beyond it another rope helps more than another line. Own rule. */
export const MOST_LINES = 300;

/** Below this many hits or misses in the whole strip its range is rough, as simulation shows (see `coverOfStrip`). */
export const FEW_HITS = 10;

/** Marks are in step with the rows when they leave a stretch wider than this share of a row unsampled. Own rule. */
export const WIDEST_GAP_SHARE = 0.2;

/** Classes by distance from the middle of a machine pass. Own rule. */
export const PASS_CLASSES = 4;

/** Semi-major axis of the WGS 84 ellipsoid in metres. */
export const WGS84_SEMI_MAJOR_M = 6_378_137;

/** Inverse flattening of the WGS 84 ellipsoid. */
export const WGS84_INVERSE_FLATTENING = 298.257_223_563;

/** Farthest that two positions may lie apart for the short-distance formula, in metres. Own rule. */
export const FARTHEST_M = 10_000;

/** 95 % radius over median radius of a round normal scatter: √(ln 20 / ln 2). */
export const RADIUS_95_PER_MEDIAN = 2.078_9;

/** 95 % radius over 68 % radius of a round normal scatter: √(ln 0.05 / ln 0.32). */
export const RADIUS_95_PER_68 = 1.621_5;

/** Fixes from which on a scatter is given, and from which on walking can be told from standing. Own rule. */
export const FIXES_FOR_A_SPREAD = 3;
export const FIXES_FOR_A_DRIFT = 4;

/** Changes whenever results of a field could come out differently, so that kept ones are worked out again. */
export const FIELD_COVER_VERSION = "field-cover-1";
