/** The numbers that infiltration models, conductivity and storms rest on. */

/** Shape factor of a ring in the ground, `g = C1·d + C2·a`: 0.316·π and 0.184·π. From memory, consistent. */
export const RING_SHAPE_DEPTH = 0.316 * Math.PI;
export const RING_SHAPE_RADIUS = 0.184 * Math.PI;

/** Steady Beerkan run: γ and γw. From memory; their product 1.3635 agrees with the transient constants. */
export const BEERKAN_GAMMA = 0.75;
export const BEERKAN_GAMMA_W = 1.818;

/** Transient Beerkan run: (2 − 0.6)/3 as printed, and γ·γw over it. From memory. */
export const TRANSIENT_BEERKAN_SLOPE = 0.467;
export const TRANSIENT_BEERKAN_EDGE = 2.92;

/** A Beerkan ring stands about 1 cm deep under next to no head; more than this is said, in mm. Own rule. */
export const BEERKAN_DEEPEST_MM = 20;

/** Scale of temperature in the viscosity of water. */
export const KELVIN_AT_0_C = 273.15;
export const VISCOSITY_SCALE_K = 300;

/** Least head and depth of a ring that the steady single-ring equation was made for, in mm. From memory. */
export const STEADY_RING_HEAD_MM = 50;
export const STEADY_RING_DEPTH_MM = 30;

/** Straight pieces that each side of a triangular storm is cut into. Own rule. */
export const TRIANGLE_SLICES = 250;

/** Share of pairs of rings that agree from which on the order of two strips is called clear. Own rule. */
export const SURE_OF_ORDER = 0.9;

/** Curve number: share of the retention that is held before any runs off, and the two numbers of S in mm. */
export const INITIAL_SHARE = 0.2;
export const RETENTION_SCALE_MM = 25_400;
export const RETENTION_SHIFT_MM = 254;

/** Curve numbers for ground drier and wetter than average: `4.2·CN/(10 − 0.058·CN)`, `23·CN/(10 + 0.13·CN)`. */
export const DRY_CURVE_SCALE = 4.2;
export const DRY_CURVE_BEND = 0.058;
export const WET_CURVE_SCALE = 23;
export const WET_CURVE_BEND = 0.13;

/** Deepest rain and longest storm that are taken for possible: in mm and in minutes (ten days). Own rules. */
export const DEEPEST_RAIN_MM = 2000;
export const LONGEST_RAIN_MIN = 14_400;
