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

/** Most marks that a rope can have. Own rule. */
export const MOST_MARKS = 10_000;

/** Residue after planting that defines conservation tillage, and cover that is commonly aimed at for protection. */
export const CONSERVATION_COVER = 0.3;
export const PROTECTION_COVER = 0.75;

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

/**
 * 95 % radius over 68 % radius of a round normal scatter: √(ln 0.05 / ln 0.32), with the 68.00 % that platforms promise.
 * The 1.615 that is read elsewhere belongs to the 68.27 % within one standard deviation on a line.
 */
export const RADIUS_95_PER_68 = 1.621_5;

/** Fixes from which on a scatter is given, and from which on walking can be told from standing. Own rule. */
export const FIXES_FOR_A_SPREAD = 3;
export const FIXES_FOR_A_DRIFT = 4;

/** Worms per m² below which cold or dry soil is said beside a count. Own rule. */
export const LOW_WORMS_PER_M2 = 100;

/** Soil colder than this drives worms down, in °C. From memory. */
export const SOIL_COLD_C = 8;

/** Soil worked within so many days is said beside a count of worms. Own rule. */
export const WORKED_RECENTLY_DAYS = 28;

/** People × minutes that differ by more than this factor are said. Own rule. */
export const EFFORT_RATIO = 1.5;

/** Holes closer than this to each other are not independent (Hodson et al. 2021: 20 to 30 m), in metres. */
export const NEAR_HOLES_M = 30;

/** Sides and depths of holes that differ by less are the same, as shares of the larger. Own rules. */
export const SAME_SIDE_SHARE = 0.05;
export const SAME_DEPTH_SHARE = 0.1;

/** Guides for worms disagree by about this factor on what is many in the same hole. */
export const GUIDES_APART = 4;

/** Planning before the first hole: mean of a survey of UK fields, 9 worms in 20 × 20 cm (Stroud 2019). */
export const PLANNING_WORMS_PER_M2 = 225;

/** Exponent of the negative binomial that holes are planned with: worms in clumps. Own rule. */
export const PLANNING_K = 2;

/** Half width that "how many more holes" plans for unless the person says otherwise: a quarter of the mean. */
export const WORMS_GIVE_OR_TAKE = 0.25;

/** From this many holes on only the spread seen counts, and the most that are planned for. Own rules. */
export const HOLES_UNTIL_SEEN = 6;
export const MOST_HOLES = 300;

/** A ruler that nobody named is read to whole millimetres. Common practice, no source. */
export const RULER_STEP_MM = 1;

/** Two inside diameters at right angles that differ by more than this share: the ring is out of round. Own rule. */
export const OUT_OF_ROUND = 0.02;

/** The while of a refill, or between two pours, up to which a curve goes on, in minutes. Own rule. */
export const JOINED_MIN = 1;

/** Pours that follow within so many minutes bring the level back together. Own rule. */
export const TOGETHER_MIN = 0.5;

/** A rate this many times the one before it is said: a leak, a burrow or a disturbance. Own rule. */
export const RATE_ROSE = 1.15;

/** Two readings of a ruler differ from the truth by up to so many of its steps. Arithmetic. */
export const STEPS_OF_NOISE = 2;

/** Minutes of the *last half hour*. */
export const LAST_MIN = 30;

/** Three rates agree when they differ by no more than this share of their mean (the sheet: of the smallest). */
export const LEVEL_SPREAD = 0.1;

/** Share of the time run that the three intervals span. Own rule; `levellingOf` says why. */
export const LEVEL_SPAN = 1 / 3;

/** Steps of the ruler in each drop: at 20 a reading that is one step off is 5 % of the rate. Own rule. */
export const LEVEL_STEPS = 20;

/** None of the three intervals is more than so many times as long as another. Own rule. */
export const LEVEL_UNEVEN = 5;

/**
 * How far `√T·A/S` has to be for `F = S√t + At` to agree within 10 % over the last third of T: with
 * k = 0.58878, 0.54803, 0.51472 and mean 0.55051 it is `(0.07407 − 0.1·0.55051)/0.1`.
 */
export const ROOT_TIME_SHARE = 0.190_15;

/** Longest time that a rate is waited for, in minutes from the start: a day. Own rule. */
export const LONGEST_MIN = 1440;

/** Between the rings over inside the inner ring, from which on water goes sideways. Own rule. */
export const SIDE_FLOW_RATIO = 2;

/** Coefficient of variation between rings that is planned with before any was read. */
export const PLANNING_RING_CV = 0.8;

/** Share of tries in which a difference that is there shows. */
export const POWER = 0.8;

/** Least time between readings of two rings, in minutes. Own rule. */
export const START_GAP_MIN = 1;

/**
 * Changes whenever results of a field could come out differently, so that kept ones are worked out again. Raise the
 * number alone: what was kept under a lower one is dropped by it.
 */
export const FIELD_COVER_VERSION = "field-cover-4";
/** The same for the holes and rings of a field. */
export const HOLES_AND_RINGS_VERSION = "field-holes-rings-5";
