/** Methods of residue and straw. */
import * as constant from "../constants/straw.ts";
import { type Constant, limit, type Method, table } from "../method.ts";
import { STRAW_BEHIND as behind } from "./behind/straw.ts";

const ASIDE = {
  symbol: "single",
  value: constant.SINGLE_FIGURE_SPREAD,
  unit: "1",
  source: "own-rule",
} as const satisfies Constant;

export const STRAW_METHODS = {
  "photo-points": {
    formulas: ["p = Σh_i / Σm_i"],
    constants: [
      { symbol: "lower", value: constant.PHOTOS_LOWER_BY, unit: "1", source: "tape-and-photos-2021" },
    ],
    sources: behind["photo-points"],
  },
  "cover-mass": {
    formulas: ["C = 1 − exp(−Σ A_i·M_i)", "M = −ln(1 − C) / A"],
    constants: [
      { symbol: "C_most", value: constant.FULLEST_COVER, unit: "1", source: "gregory-1982" },
      table("A", 23, "cover-coefficients"),
      ASIDE,
      { symbol: "C_near", value: constant.NEAR_FULL_COVER, unit: "1", source: "own-rule" },
    ],
    sources: behind["cover-mass"],
  },
  "thickness-mass": {
    formulas: ["M = T·ρ"],
    constants: [table("ρ", 3, "mulch-density")],
    sources: behind["thickness-mass"],
  },
  "straw-harvest-index": {
    formulas: ["R = G·D·(1 − h) / h"],
    constants: [table("h", 21, "harvest-index-table-s3"), table("D", 15, "ipcc-2006-table-11-2")],
    sources: behind["straw-harvest-index"],
  },
  "straw-per-grain": {
    formulas: ["R = G·r"],
    constants: [table("r", 18, "straw-per-bushel"), ASIDE],
    sources: behind["straw-per-grain"],
  },
  "straw-line": {
    formulas: ["R = a·G·D + b"],
    constants: [
      ASIDE,
      table("a", 15, "ipcc-2006-table-11-2"),
      table("b", 15, "ipcc-2006-table-11-2"),
      table("D", 15, "ipcc-2006-table-11-2"),
    ],
    sources: behind["straw-line"],
  },
  "cutting-height": {
    formulas: ["s = 1 − (1 − z/H)^q", "z = H·(1 − (1 − s)^(1/q))"],
    constants: [table("q", 3, "stubble-share")],
    sources: behind["cutting-height"],
  },
  "two-day-loss": {
    formulas: [
      "m = −ln(1 − C)",
      "k = (ln m_1 − ln m_2) / d",
      "k_low = k − t_ν·√((l_1 − L_1)²/t_1² + (U_2 − l_2)²/t_2²) / d",
      "k_high = k + t_ν·√((U_1 − l_1)²/t_1² + (l_2 − L_2)²/t_2²) / d",
    ],
    constants: [{ symbol: "C_most", value: constant.FULLEST_COVER, unit: "1", source: "gregory-1982" }],
    sources: behind["two-day-loss"],
  },
  "residue-decay": {
    formulas: [
      "F = (2(T + A)²·(T_0 + A)² − (T + A)^4) / (T_0 + A)^4",
      "W = R / R_0",
      "D = Σ min(F, W)",
      "f = 1 − exp(−k·D)",
    ],
    constants: [
      { symbol: "A", value: constant.ROT_SHIFT_C, unit: "Cel", source: "stroo-1989" },
      { symbol: "T_0", value: constant.ROT_BEST_C, unit: "Cel", source: "stroo-1989" },
      { symbol: "R_0", value: constant.WET_HALF_MONTH_MM, unit: "mm", source: "half-month-rain" },
      { symbol: "d_R", value: constant.HALF_MONTH_DAYS, unit: "d", source: "half-month-rain" },
      table("k", 17, "decay-rates"),
      ASIDE,
    ],
    sources: behind["residue-decay"],
  },
  "stems-standing": {
    formulas: ["S = exp(−k·(D − B))"],
    constants: [
      { symbol: "B", value: constant.STEMS_STAND_DAYS, unit: "d", source: "steiner-1994" },
      table("k", 4, "steiner-1994"),
      ASIDE,
    ],
    sources: behind["stems-standing"],
  },
  "mass-left": {
    formulas: ["M_end = M·(1 − f)"],
    constants: [table("f", 8, "stott-1990")],
    sources: behind["mass-left"],
  },
  passes: {
    formulas: ["C_end = C·r_1·r_2", "f = 1 − ln(1 − C_end) / ln(1 − C)"],
    constants: [table("r_1", 40, "scs-emi-1992"), table("C", 16, "scs-emi-1992")],
    sources: behind.passes,
  },
  "rain-erosion": {
    formulas: ["S = exp(−b·C·(R_s / R_u)^p)"],
    constants: [
      { symbol: "R_s", value: constant.SMOOTH_MM, unit: "mm", source: "renard-1997" },
      { symbol: "p", value: constant.ROUGHNESS_POWER, unit: "1", source: "renard-1997" },
      table("b", 3, "rusle2-training"),
    ],
    sources: behind["rain-erosion"],
  },
  "wind-erosion": {
    formulas: ["S = a·exp(−b·C)", "S = exp(−c·C)"],
    constants: [
      { symbol: "a", value: constant.WIND_FACTOR, unit: "1", source: "fryrear-1985" },
      { symbol: "b", value: constant.WIND_RATE, unit: "1", source: "fryrear-1985" },
      { symbol: "c", value: constant.WIND_FLAT_RATE, unit: "1", source: "wind-flat-residue" },
      { symbol: "C_from", value: constant.WIND_FROM, unit: "1", source: "fryrear-1985" },
      { symbol: "C_to", value: constant.WIND_TO, unit: "1", source: "fryrear-1985" },
    ],
    limits: [
      limit("science/outside-published-range", "cover", "below", constant.WIND_FROM, {
        source: "fryrear-1985",
      }),
      limit("science/outside-published-range", "cover", "above", constant.WIND_TO, {
        source: "fryrear-1985",
      }),
    ],
    sources: behind["wind-erosion"],
  },
  "straw-ledger": {
    formulas: ["O = n·w·D / A", "E = h·d·e / A", "L = max(0, G − O − E)"],
    constants: [table("D", 3, "baled-dry-share")],
    sources: behind["straw-ledger"],
  },
  "could-leave": {
    formulas: ["K = max(M / (1 − f), F)", "X = max(0, G − K)"],
    constants: [table("F", 6, "carbon-floor-maize"), table("F_plough", 2, "carbon-floor-mouldboard"), ASIDE],
    sources: behind["could-leave"],
  },
  "leave-as": {
    formulas: ["t = (1 − c)·(1 − s)·p", "1 − s = x / ((1 − c)·p)", "n ≥ t / x"],
    constants: [
      { symbol: "n_most", value: constant.MOST_IN, unit: "1", source: "own-rule" },
      table("c", 3, "allen-1988"),
      table("p", 3, "baler-takes"),
    ],
    sources: behind["leave-as"],
  },
  "straw-nutrients": {
    formulas: ["q = n·X", "n_end = n·(1 − w)"],
    constants: [
      { symbol: "P in P₂O₅", value: constant.P_PER_P2O5, unit: "1", source: "atomic-weights" },
      { symbol: "K in K₂O", value: constant.K_PER_K2O, unit: "1", source: "atomic-weights" },
      table("n", 18, "straw-nutrients-us"),
      table("n_maize", 21, "stover-nutrients-us"),
      table("n_PDA", 10, "pda-2020"),
      table("n_IPCC", 15, "ipcc-2006-table-11-2"),
      ASIDE,
    ],
    sources: behind["straw-nutrients"],
  },
  "break-even": {
    formulas: ["P = Σ n_i·p_i + b + (W − C) / X"],
    constants: [],
    sources: behind["break-even"],
  },
} as const satisfies Readonly<Record<string, Method>>;
