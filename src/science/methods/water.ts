/** Methods of water; with those of nitrogen, shelter and cover-crop mass they make one chapter. */

import * as k from "../constants/water.ts";
import { type Method, table } from "../method.ts";
import { WATER_BEHIND as behind } from "./behind/water.ts";
import { COVER_CROP_METHODS } from "./cover-crop.ts";
import { NITROGEN_METHODS } from "./nitrogen.ts";
import { SHELTER_METHODS } from "./shelter.ts";

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
      { symbol: "f_mid", value: k.MIDDLE_FULL_CUT, unit: "1", source: "fao-56" },
      { symbol: "f_high", value: k.MOST_FULL_CUT, unit: "1", source: "klocke-2009" },
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
  ...NITROGEN_METHODS,
  ...SHELTER_METHODS,
  ...COVER_CROP_METHODS,
} as const satisfies Readonly<Record<string, Method>>;
