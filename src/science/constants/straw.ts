/** Numbers that residue and straw rest on. Ranges that a person can change stand with their crop or their pass. */

/** Full cover has no finite mass: cover is held at this share before mass is worked out. */
export const FULLEST_COVER = 0.999;

/** Above this share of cover a few marks more or less change the mass much. Own rule. */
export const NEAR_FULL_COVER = 0.95;

/** Where only one figure is published, the range reaches this share of it to either side. Own rule. */
export const SINGLE_FIGURE_SPREAD = 0.25;

/** Residue rots below 0 °C too, down to −6.1 °C, and fastest at 33 °C (the form of Stroo et al. 1989). */
export const ROT_SHIFT_C = 6.1;
export const ROT_BEST_C = 33;

/** Rain of half a month that keeps residue wet enough to rot at full speed, in mm. From memory. */
export const WET_HALF_MONTH_MM = 66;

/** Days of rain that count as half a month, with the day itself. */
export const HALF_MONTH_DAYS = 15;

/** Decomposition days until the first stem falls (Steiner et al. 1994). */
export const STEMS_STAND_DAYS = 17.5;

/** Random roughness of smooth soil, 0.24 in, in mm, and the power of the roughness term. */
export const SMOOTH_MM = 6.096;
export const ROUGHNESS_POWER = 0.08;

/** Wind: `1.81·exp(−0.072·C)` with C in percent, for 8 to 80 % (Fryrear 1985). */
export const WIND_FACTOR = 1.81;
export const WIND_RATE = 0.072;
export const WIND_FROM = 0.08;
export const WIND_TO = 0.8;

/** Wind: `exp(−0.0438·C)` with C in percent, for residue lying flat. From memory. */
export const WIND_FLAT_RATE = 0.0438;

/** P in P₂O₅ and K in K₂O, by standard atomic weights (P 30.974, K 39.098, O 15.999). */
export const P_PER_P2O5 = (2 * 30.974) / (2 * 30.974 + 5 * 15.999);
export const K_PER_K2O = (2 * 39.098) / (2 * 39.098 + 15.999);

/** Most dry matter per hectare that is taken for possible, in kg. Own rule. */
export const MOST_MASS_KG_PER_HA = 200_000;

/** Most years that "one year in n" and swaths that "one swath in n" are counted to. Own rule. */
export const MOST_IN = 20;

/** Points on photos against marks on a rope: so much lower on average in one study, as a share. */
export const PHOTOS_LOWER_BY = 0.103;

/** Standing stubble is no taller than this, in mm; a larger reading is a slip of the pen. Own rule. */
export const TALLEST_STUBBLE_MM = 3000;
