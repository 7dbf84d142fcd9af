/** Numbers that positions and plans rest on. */

/** Two corners closer than this are one, and edges closer than this touch, in metres. Own rule. */
export const SAME_PLACE_M = 0.001;

/** Farthest that a corner may lie from the middle of its field, in metres. Own rule. */
export const FARTHEST_CORNER_M = 50_000;

/** Farthest that a position may lie from the middle of a field to be asked about it, in metres. Own rule. */
export const FARTHEST_ASKED_M = 100_000;

/** Beyond this latitude nobody farms, and directions turn within a field. Own rule. */
export const MOST_LATITUDE_DEG = 89;

/** Rounds of the geodesic formula before it counts as not converging; four or five do for any field. Own rule. */
export const GEODESIC_ROUNDS = 500;

/** Change of longitude on the auxiliary sphere at which the geodesic formula is done, in radians (0.006 mm). */
export const GEODESIC_DONE = 1e-12;

/** Fields farther than this are not offered by name, in metres. Own rule. */
export const FIELD_NEAR_M = 2000;

/** Most points that are drawn in one strip. Own rule. */
export const MOST_POINTS = 200;

/** Random points: how often a strip is begun anew, and places tried each time. Own rules. */
export const POINT_ROUNDS = 20;
export const TRIES_PER_POINT = 200;
export const LEAST_TRIES = 1000;

/** Up to so many places the walking order is the shortest there is; it took longer to try all. Own rule. */
export const EXACT_PLACES = 13;

/** Most places that are put in order. Own rule. */
export const MOST_PLACES = 300;

/** Minutes that a test takes one person, as they stand before anybody timed their own. Common practice. */
export const LINE_MINUTES = 8;
export const HOLE_MINUTES = 15;
export const RING_HANDS_MINUTES = 15;
/** Minutes that a ring runs by itself: an hour on the ruler. Common practice. */
export const RING_RUN_MINUTES = 60;
/** Minutes on foot to each test. Common practice. */
export const WALK_MINUTES = 4;

/** Longest day that is planned for, in hours. Arithmetic. */
export const LONGEST_DAY_H = 24;

/** Most rings on a strip that a plan asks for. Own rule. */
export const MOST_RINGS = 10;
