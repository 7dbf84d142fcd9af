/** Numbers that water, nitrogen, shelter and cover-crop mass rest on. */

/** Saturation vapour pressure `0.6108·exp(17.27·T/(T + 237.3))` in kPa, and its slope (FAO-56, eqs 11 and 13). */
export const VAPOUR_KPA = 0.6108;
export const VAPOUR_RATE = 17.27;
export const VAPOUR_SHIFT_C = 237.3;
export const VAPOUR_SLOPE = 4098;

/** Air pressure by height (FAO-56, eq. 7). */
export const SEA_LEVEL_KPA = 101.3;
export const STANDARD_K = 293;
export const LAPSE_K_PER_M = 0.0065;
export const PRESSURE_POWER = 5.26;

/** Psychrometric constant over air pressure, per °C (FAO-56, eq. 8). */
export const PSYCHROMETRIC = 0.000_665;

/** Wind at 2 m over grass (FAO-56, eq. 47). */
export const WIND_TOP = 4.87;
export const WIND_SCALE = 67.8;
export const WIND_SHIFT = 5.42;

/** Sun (FAO-56, eqs 21 to 24). */
export const SOLAR_MJ_PER_M2_MIN = 0.082;
export const SUN_DISTANCE = 0.033;
export const DECLINATION_RAD = 0.409;
export const DECLINATION_SHIFT = 1.39;

/** Millimetres of water that a megajoule on a square metre evaporates (FAO-56, eq. 20). */
export const MM_PER_MJ = 0.408;

/** Ångström: share of the sun's radiation on a dull day, and what a clear one adds (FAO-56, eq. 35). */
export const DULL_SHARE = 0.25;
export const CLEAR_SHARE = 0.5;

/** Clear-sky share at sea level and its gain per metre (FAO-56, eq. 37). */
export const CLEAR_SKY = 0.75;
export const CLEAR_SKY_PER_M = 2e-5;

/** Share that grass sends back (FAO-56, eq. 38). */
export const ALBEDO = 0.23;

/** Net longwave radiation (FAO-56, eq. 39). */
export const STEFAN_BOLTZMANN = 4.903e-9;
export const KELVIN = 273.16;
export const LONGWAVE_AIR = 0.34;
export const LONGWAVE_VAPOUR = 0.14;
export const CLOUD_RATE = 1.35;
export const CLOUD_SHIFT = 0.35;

/** Least share of the clear-sky radiation that the cloud term works with. From memory. */
export const DULLEST_SKY = 0.3;

/** Grass of FAO-56, eq. 6. */
export const GRASS_AERODYNAMIC = 900;
export const GRASS_SURFACE = 0.34;

/** Hargreaves (FAO-56, eq. 52). */
export const HARGREAVES = 0.0023;
export const HARGREAVES_SHIFT_C = 17.8;

/** How far Hargreaves may be off to either side, as a share. Own rule: twice what two checked days show. */
export const HARGREAVES_OFF = 0.2;

/** Depth of the layer that dries by evaporation, in m (FAO-56, eq. 73). */
export const DRYING_LAYER_M = 0.1;

/** Organic mulch cuts evaporation by so much of its cover: 5 % for each 10 % (FAO-56, chapter 11). */
export const CUT_PER_COVER = 0.5;

/** Up to this cover the low end of the cut is nothing (Klocke et al. 2009: small at 25 to 75 %). */
export const LITTLE_CUT_UNTIL = 0.75;

/** From this cover on the high end rises from the 5 % for each 10 % to what was seen at full cover. Own rule. */
export const NEARLY_FULL_COVER = 0.9;

/** Low end of the cut at full cover. Own rule. */
export const LEAST_FULL_CUT = 0.3;

/** What a mulch without gaps was measured to cut without a canopy: in the middle, and at the most. */
export const MIDDLE_FULL_CUT = 0.5;
export const MOST_FULL_CUT = 0.65;

/** Yield monitors saw fields that lost so much beside trees. */
export const LEAST_GAIN = -0.02;

/** Dry mass from which on weeds were said to be down by three quarters, held down, and under excellent control. */
export const WEEDS_DOWN_KG_PER_HA = 5000;
export const WEEDS_HELD_KG_PER_HA = 8000;
export const WEEDS_GONE_KG_PER_HA = 9000;

/** Depletion fraction: `p = p_table + 0.04·(5 − ET_c)`, held between 0.1 and 0.8. From memory. */
export const DEPLETION_PER_MM = 0.04;
export const DEPLETION_AT_MM = 5;
export const LEAST_DEPLETION = 0.1;
export const MOST_DEPLETION = 0.8;

/** Carbon to nitrogen of a diet that soil microbes neither add to nor take from (NRCS 2011). */
export const BALANCED_C_TO_N = 24;

/** Nitrogen line of the Pacific Northwest: nothing below 1.5 % N, 35 lb per ton from 3.5 % on. */
export const LINE_FROM_N = 0.015;
export const LINE_TO_N = 0.035;
export const LINE_MOST_KG_PER_T = 17.5;

/** Its current edition: 3 to 4 % N give 25 to 40 lb per ton. */
export const NEWER_FROM_N = 0.03;
export const NEWER_TO_N = 0.04;
export const NEWER_LEAST_KG_PER_T = 12.5;
export const NEWER_MOST_KG_PER_T = 20;

/** Share of dry matter that is carbon, where nobody measured it: at the least, in the middle, at the most. */
export const CARBON_SHARE = 0.4;
export const MIDDLE_CARBON_SHARE = 0.42;
export const MOST_CARBON_SHARE = 0.45;

/** A wind that meets a row at less than this angle leaves no zone to speak of, in degrees. Own rule. */
export const ALONG_ROW_DEG = 15;

/** Below this angle it is said that the wind comes slanting, in degrees. Own rule. */
export const SLANTING_DEG = 60;

/** Tallest tree that is taken for possible, in m. Own rule. */
export const TALLEST_TREE_M = 120;

/** Quadrats from which on a strip is well sampled (Oregon State University). */
export const QUADRATS_ADVISED = 4;

/** A frame is as wide as whole rows when it is off by no more than this share. Own rule. */
export const FRAME_OFF = 0.02;

/** Rolling: consistent from Zadoks 61 (Mirsky et al. 2009), and no later than early milk, 73 (from memory). */
export const ROLL_FROM_ZADOKS = 61;
export const ROLL_BEFORE_ZADOKS = 73;

/** Where a table prints one C:N, the range reaches this share of it to either side. Own rule. */
export const SINGLE_FIGURE = 0.2;
