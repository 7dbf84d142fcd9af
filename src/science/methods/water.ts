/** Methods of water, nitrogen, shelter and cover-crop mass. */

import * as k from "../constants/water.ts";
import { CONFIDENCE_LEVEL } from "../constants.ts";
import { type Constant, type Method, table } from "../method.ts";
import { WATER_BEHIND as behind } from "./behind/water.ts";

const LEVEL = {
  symbol: "1−α",
  value: CONFIDENCE_LEVEL,
  unit: "1",
  source: "own-rule",
} as const satisfies Constant;

export const WATER_METHODS = {
  "vapour-pressure": {
    formulas: [
      "e° = e_0·exp(b·T / (T + c))",
      "e_s = (e°_max + e°_min) / 2",
      "e_a = (e°_min·RH_max + e°_max·RH_min) / 2",
      "Δ = d·e° / (T + c)²",
    ],
    constants: [
      { symbol: "e_0", value: k.VAPOUR_KPA, unit: "kPa", source: "fao-56" },
      { symbol: "b", value: k.VAPOUR_RATE, unit: "1", source: "fao-56" },
      { symbol: "c", value: k.VAPOUR_SHIFT_C, unit: "Cel", source: "fao-56" },
      { symbol: "d", value: k.VAPOUR_SLOPE, unit: "Cel", source: "fao-56" },
    ],
    sources: behind["vapour-pressure"],
  },
  "air-pressure": {
    formulas: ["P = P_0·(1 − l·z / T_0)^m", "γ = a_γ·P"],
    constants: [
      { symbol: "P_0", value: k.SEA_LEVEL_KPA, unit: "kPa", source: "fao-56" },
      { symbol: "l", value: k.LAPSE_K_PER_M, unit: "K/m", source: "fao-56" },
      { symbol: "T_0", value: k.STANDARD_K, unit: "K", source: "fao-56" },
      { symbol: "m", value: k.PRESSURE_POWER, unit: "1", source: "fao-56" },
      { symbol: "a_γ", value: k.PSYCHROMETRIC, unit: "/K", source: "fao-56" },
    ],
    sources: behind["air-pressure"],
  },
  "wind-at-2-m": {
    formulas: ["u_2 = u_z·a / ln(b·z − c)"],
    constants: [
      { symbol: "a", value: k.WIND_TOP, unit: "1", source: "fao-56" },
      { symbol: "b", value: k.WIND_SCALE, unit: "/m", source: "fao-56" },
      { symbol: "c", value: k.WIND_SHIFT, unit: "1", source: "fao-56" },
    ],
    sources: behind["wind-at-2-m"],
  },
  "extraterrestrial-radiation": {
    formulas: [
      "d_r = 1 + a·cos(2·π·J / 365)",
      "δ = b·sin(2·π·J / 365 − c)",
      "ω_s = arccos(−tan φ·tan δ)",
      "R_a = (1440 / π)·G_sc·d_r·(ω_s·sin φ·sin δ + cos φ·cos δ·sin ω_s)",
      "N = 24·ω_s / π",
    ],
    constants: [
      { symbol: "G_sc", value: k.SOLAR_MJ_PER_M2_MIN, unit: "MJ/m2/min", source: "fao-56" },
      { symbol: "a", value: k.SUN_DISTANCE, unit: "1", source: "fao-56" },
      { symbol: "b", value: k.DECLINATION_RAD, unit: "rad", source: "fao-56" },
      { symbol: "c", value: k.DECLINATION_SHIFT, unit: "rad", source: "fao-56" },
    ],
    sources: behind["extraterrestrial-radiation"],
  },
  "net-radiation": {
    formulas: [
      "R_s = (a_s + b_s·n / N)·R_a",
      "R_s = k_Rs·√(T_max − T_min)·R_a",
      "R_so = (a_o + b_o·z)·R_a",
      "R_nl = σ·(T_max,K^4 + T_min,K^4) / 2·(a_e − b_e·√e_a)·(a_c·R_s / R_so − b_c)",
      "R_n = (1 − α)·R_s − R_nl",
    ],
    constants: [
      { symbol: "a_s", value: k.DULL_SHARE, unit: "1", source: "fao-56" },
      { symbol: "b_s", value: k.CLEAR_SHARE, unit: "1", source: "fao-56" },
      { symbol: "a_o", value: k.CLEAR_SKY, unit: "1", source: "fao-56" },
      { symbol: "b_o", value: k.CLEAR_SKY_PER_M, unit: "/m", source: "fao-56" },
      { symbol: "σ", value: k.STEFAN_BOLTZMANN, unit: "MJ/m2/d/K4", source: "fao-56" },
      { symbol: "K", value: k.KELVIN, unit: "Cel", source: "fao-56" },
      { symbol: "a_e", value: k.LONGWAVE_AIR, unit: "1", source: "fao-56" },
      { symbol: "b_e", value: k.LONGWAVE_VAPOUR, unit: "kPa-0.5", source: "fao-56" },
      { symbol: "a_c", value: k.CLOUD_RATE, unit: "1", source: "fao-56" },
      { symbol: "b_c", value: k.CLOUD_SHIFT, unit: "1", source: "fao-56" },
      { symbol: "α", value: k.ALBEDO, unit: "1", source: "fao-56" },
      { symbol: "c_least", value: k.DULLEST_SKY, unit: "1", source: "asce-2005" },
      table("k_Rs", 3, "fao-56"),
    ],
    sources: behind["net-radiation"],
  },
  "penman-monteith": {
    formulas: ["ET_o = (f·Δ·(R_n − G) + γ·c_n / (T + 273)·u_2·(e_s − e_a)) / (Δ + γ·(1 + c_d·u_2))"],
    constants: [
      { symbol: "f", value: k.MM_PER_MJ, unit: "mm.m2/MJ", source: "fao-56" },
      { symbol: "c_n", value: k.GRASS_AERODYNAMIC, unit: "1", source: "fao-56" },
      { symbol: "c_d", value: k.GRASS_SURFACE, unit: "s/m", source: "fao-56" },
      table("u_2", 3, "fao-56-from-memory"),
    ],
    sources: behind["penman-monteith"],
  },
  hargreaves: {
    formulas: ["ET_o = h·(T + s)·√(T_max − T_min)·f·R_a", "ET_o·(1 ± q)"],
    constants: [
      { symbol: "h", value: k.HARGREAVES, unit: "1", source: "fao-56" },
      { symbol: "s", value: k.HARGREAVES_SHIFT_C, unit: "Cel", source: "fao-56" },
      { symbol: "f", value: k.MM_PER_MJ, unit: "mm.m2/MJ", source: "fao-56" },
      { symbol: "q", value: k.HARGREAVES_OFF, unit: "1", source: "own-rule" },
    ],
    sources: behind.hargreaves,
  },
  "two-stage-drying": {
    formulas: [
      "TEW = 1000·(θ_FC − θ_WP / 2)·Z_e",
      "D_e ≤ REW , K_r = 1",
      "D_e > REW , K_r = (TEW − D_e) / (TEW − REW)",
      "E = K_r·K_cmax·ET_o",
    ],
    constants: [
      { symbol: "Z_e", value: k.DRYING_LAYER_M, unit: "m", source: "fao-56" },
      table("REW", 18, "fao-56-table-19"),
      table("TEW", 18, "fao-56-table-19"),
      table("K_cmax", 3, "fao-56-from-memory"),
    ],
    sources: behind["two-stage-drying"],
  },
  "mulch-cut": {
    formulas: [
      "x = max(0, C − C_0) / (1 − C_0)",
      "m_low = f_low·x",
      "m_high = r·C + (f_high − r)·max(0, C − C_1) / (1 − C_1)",
      "m_mid = r·C / 2 + (f_mid − r / 2)·x",
    ],
    constants: [
      { symbol: "C_0", value: k.LITTLE_CUT_UNTIL, unit: "1", source: "klocke-2009" },
      { symbol: "C_1", value: k.NEARLY_FULL_COVER, unit: "1", source: "own-rule" },
      { symbol: "r", value: k.CUT_PER_COVER, unit: "1", source: "fao-56" },
      { symbol: "f_low", value: k.LEAST_FULL_CUT, unit: "1", source: "own-rule" },
    ],
    sources: behind["mulch-cut"],
  },
  "kept-by-mulch": {
    formulas: ["W = m·ΣE", "TEW_m = TEW·(1 − r·C)"],
    constants: [{ symbol: "r", value: k.CUT_PER_COVER, unit: "1", source: "fao-56" }],
    sources: behind["kept-by-mulch"],
  },
  "available-water": {
    formulas: [
      "TAW = 1000·(θ_FC − θ_WP)·Z_r",
      "RAW = p·TAW",
      "p = p_t + q·(e − ET_c)",
      "K_s = (TAW − D_r) / ((1 − p)·TAW)",
    ],
    constants: [
      { symbol: "q", value: k.DEPLETION_PER_MM, unit: "d/mm", source: "fao-56-from-memory" },
      { symbol: "e", value: k.DEPLETION_AT_MM, unit: "mm/d", source: "fao-56-from-memory" },
      { symbol: "p_least", value: k.LEAST_DEPLETION, unit: "1", source: "fao-56-from-memory" },
      { symbol: "p_most", value: k.MOST_DEPLETION, unit: "1", source: "fao-56-from-memory" },
      table("θ_A", 18, "fao-56-table-19"),
      table("Z_r", 20, "fao-56-table-22"),
      table("p_t", 10, "fao-56-table-22"),
    ],
    sources: behind["available-water"],
  },
  "water-that-counts": {
    formulas: ["S ≤ I , S ≤ D_r", "V = S·v"],
    constants: [],
    sources: behind["water-that-counts"],
  },
  "mixture-c-n": {
    formulas: ["C/N = Σ(m_i·c_i) / Σ(m_i·c_i / r_i)"],
    constants: [
      { symbol: "q", value: k.SINGLE_FIGURE, unit: "1", source: "own-rule" },
      table("r_i", 13, "nrcs-c-to-n-2011"),
      { symbol: "c_least", value: k.CARBON_SHARE, unit: "1", source: "carbon-share" },
    ],
    sources: behind["mixture-c-n"],
  },
  "nitrogen-line": {
    formulas: [
      "A = A_1·(n − n_0) / (n_1 − n_0)",
      "A = A_2·(n − n_0) / (n_2 − n_0)",
      "A = A_2 + (A_3 − A_2)·(n − n_2) / (n_3 − n_2)",
    ],
    constants: [
      { symbol: "n_0", value: k.LINE_FROM_N, unit: "1", source: "pnw-636" },
      { symbol: "n_1", value: k.LINE_TO_N, unit: "1", source: "pnw-636" },
      { symbol: "n_2", value: k.NEWER_FROM_N, unit: "1", source: "pnw-636" },
      { symbol: "n_3", value: k.NEWER_TO_N, unit: "1", source: "pnw-636" },
      { symbol: "A_1", value: k.LINE_MOST_KG_PER_T, unit: "kg/t", source: "pnw-636" },
      { symbol: "A_2", value: k.NEWER_LEAST_KG_PER_T, unit: "kg/t", source: "pnw-636" },
      { symbol: "A_3", value: k.NEWER_MOST_KG_PER_T, unit: "kg/t", source: "pnw-636" },
    ],
    sources: behind["nitrogen-line"],
  },
  "nitrogen-tie-up": {
    formulas: ["ΔN = Σ(m_i·c_i / r_i) − Σ(m_i·c_i) / r_0", "ΔN = A·Σm_i"],
    constants: [{ symbol: "r_0", value: k.BALANCED_C_TO_N, unit: "1", source: "nrcs-c-to-n-2011" }],
    sources: behind["nitrogen-tie-up"],
  },
  "first-season-nitrogen": {
    formulas: ["N = m·n·s"],
    constants: [table("s", 3, "cover-crops-profitably")],
    sources: behind["first-season-nitrogen"],
  },
  "shelter-wind": {
    formulas: ["w = w_1 + (w_2 − w_1)·(x − x_1) / (x_2 − x_1)"],
    constants: [table("w", 6, "farmstead-windbreaks"), table("w_other", 5, "how-windbreaks-work")],
    sources: behind["shelter-wind"],
  },
  "shelter-zones": {
    formulas: ["A = L·(k_2 − k_1)·H·sin β", "β > β_0"],
    constants: [
      { symbol: "β_0", value: k.ALONG_ROW_DEG, unit: "deg", source: "own-rule" },
      { symbol: "β_slant", value: k.SLANTING_DEG, unit: "deg", source: "own-rule" },
      table("k_1", 3, "minnesota-yield-monitors"),
      table("k_2", 3, "own-rule"),
    ],
    sources: behind["shelter-zones"],
  },
  "shelter-net": {
    formulas: ["ΔY = (z·g − c·l − w) / W", "g_0 = (w + l·c) / z"],
    constants: [
      table("g", 3, "kort-1988"),
      table("g_other", 5, "kort-1988-from-memory"),
      table("l", 3, "own-rule"),
    ],
    sources: behind["shelter-net"],
  },
  "quadrat-mass": {
    formulas: [
      "M = Σm_i / Σa_i",
      "SE² = n/(n−1) · Σ(m_i − M·a_i)² / (Σa_i)²",
      "M·exp(± t_{n−1}·SE / M)",
      "m_i = f_i·d / f",
    ],
    constants: [
      LEVEL,
      { symbol: "n_0", value: k.QUADRATS_ADVISED, unit: "1", source: "osu-cover-crop-sampling" },
    ],
    sources: behind["quadrat-mass"],
  },
  "quadrat-counts": {
    formulas: ["M = Σx_i / Σa_i", "SE² = n/(n−1) · Σ(x_i − M·a_i)² / (Σa_i)²", "M·exp(± t_{n−1}·SE / M)"],
    constants: [LEVEL],
    sources: behind["quadrat-counts"],
  },
  "quadrat-none-found": {
    formulas: ["M_upper = −ln(α) / Σa_i"],
    constants: [LEVEL],
    sources: behind["quadrat-none-found"],
  },
  "frame-against-rows": {
    formulas: ["e = n·s / w − 1"],
    constants: [{ symbol: "e_0", value: k.FRAME_OFF, unit: "1", source: "own-rule" }],
    sources: behind["frame-against-rows"],
  },
  "weed-statements": {
    formulas: ["M ≥ M_s"],
    constants: [],
    sources: behind["weed-statements"],
  },
  "rolling-stage": {
    formulas: ["Z_1 ≤ Z < Z_2"],
    constants: [
      { symbol: "Z_1", value: k.ROLL_FROM_ZADOKS, unit: "1", source: "mirsky-2009" },
      { symbol: "Z_2", value: k.ROLL_BEFORE_ZADOKS, unit: "1", source: "early-milk" },
    ],
    sources: behind["rolling-stage"],
  },
} as const satisfies Readonly<Record<string, Method>>;
