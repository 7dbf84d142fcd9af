/** Methods of spade holes. */

import * as at from "../constants/cautions.ts";
import { SELDOM } from "../constants/comparison.ts";
import * as constant from "../constants.ts";
import { type Constant, limit, type Method, table } from "../method.ts";
import { EARTHWORMS_BEHIND as behind } from "./behind/earthworms.ts";

const LEVEL = {
  symbol: "1−α",
  value: constant.CONFIDENCE_LEVEL,
  unit: "1",
  source: "own-rule",
} as const satisfies Constant;

export const EARTHWORM_METHODS = {
  "hole-density": {
    formulas: ["c = Σ c_layer", "D = c / (a·b)"],
    constants: [],
    sources: behind["hole-density"],
  },
  "holes-mean-log-t": {
    formulas: ["m = Σ x_i / n", "s² = Σ(x_i − m)² / (n−1)", "m·exp(± t_{n−1}·s / (m·√n))"],
    constants: [
      LEVEL,
      { symbol: "n_least", value: constant.SAMPLES_FOR_A_RANGE, unit: "1", source: "own-rule" },
    ],
    limits: [
      limit("science/few-holes-may-miss-patches", "holes", "below", at.ENOUGH_HOLES),
      limit("science/range-if-lopsided", "holes", "from", at.HOLES_THAT_SHOW_SPREAD),
      limit("science/range-if-lopsided", "spread", "above", at.UNEVEN_SPREAD),
      limit("science/range-if-lopsided", "spread-beyond-chance", "above", at.UNEVEN_BEYOND_CHANCE),
    ],
    sources: behind["holes-mean-log-t"],
  },
  "holes-mean-alike": {
    formulas: ["m = Σ x_i / n", "s² = m / A", "m·exp(± t_{n−1}·s / (m·√n))"],
    constants: [LEVEL],
    sources: behind["holes-mean-alike"],
  },
  "none-found-exact": {
    formulas: ["x_upper = −ln(α) / ΣA_i"],
    constants: [LEVEL],
    sources: behind["none-found-exact"],
  },
  "hole-conditions": {
    formulas: ["x < x_0 , T < T_0", "d ≤ d_0", "e_most > r_0·e_least", "z < z_0"],
    constants: [
      { symbol: "x_0", value: constant.LOW_WORMS_PER_M2, unit: "/m2", source: "own-rule" },
      { symbol: "T_0", value: constant.SOIL_COLD_C, unit: "Cel", source: "worm-conditions" },
      { symbol: "d_0", value: constant.WORKED_RECENTLY_DAYS, unit: "d", source: "own-rule" },
      { symbol: "r_0", value: constant.EFFORT_RATIO, unit: "1", source: "own-rule" },
      { symbol: "z_0", value: constant.NEAR_HOLES_M, unit: "m", source: "hodson-2021" },
    ],
    limits: [
      limit("science/soil-cold", "soil-temperature", "below", constant.SOIL_COLD_C, {
        unit: "Cel",
        source: "worm-conditions",
      }),
      limit("science/worked-recently", "days-since-worked", "up-to", constant.WORKED_RECENTLY_DAYS, {
        unit: "d",
      }),
      limit("science/efforts-differ", "efforts-apart", "above", constant.EFFORT_RATIO),
      limit("science/holes-close-together", "metres-apart", "below", constant.NEAR_HOLES_M, {
        unit: "m",
        source: "hodson-2021",
      }),
    ],
    sources: behind["hole-conditions"],
  },
  "share-of-holes": {
    formulas: ["p = x / n", "P(X ≥ x ; p_lower) = α/2", "P(X ≤ x ; p_upper) = α/2"],
    constants: [LEVEL],
    limits: [limit("science/exact-share-wide", "holes", "below", at.HOLES_THAT_STEP)],
    sources: behind["share-of-holes"],
  },
  "counts-dispersion": {
    formulas: ["v = s² / m", "X² = (n−1)·s² / m"],
    constants: [],
    sources: behind["counts-dispersion"],
  },
  "negative-binomial-k": {
    formulas: ["Var = m + m²/k", "Σ N_j / (k + j − 1) = n·ln(1 + m/k)"],
    constants: [],
    sources: behind["negative-binomial-k"],
  },
  "empty-share": {
    formulas: ["P_0 = (1 + m/k)^(−k)", "P_0 = exp(−m)"],
    constants: [],
    sources: behind["empty-share"],
  },
  "count-range-exact": {
    formulas: ["D = x / ΣA_i", "P(X ≥ x ; μ_lower) = α/2", "P(X ≤ x ; μ_upper) = α/2"],
    constants: [LEVEL, { symbol: "P_seldom", value: SELDOM, unit: "1", source: "own-rule" }],
    sources: behind["count-range-exact"],
  },
  "holes-to-see": {
    formulas: ["P = 1 − (1 − p)^n", "p_upper = 1 − α^(1/n)"],
    constants: [LEVEL, { symbol: "N_most", value: constant.MOST_HOLES, unit: "1", source: "own-rule" }],
    sources: behind["holes-to-see"],
  },
  "guide-level": {
    formulas: ["m ≥ g", "m > g"],
    constants: [
      table("g_survey", 2, "stroud-2019"),
      table("g_levy_board", 2, "levy-board-worms"),
      table("g_farm", 2, "farm-conservation-worms"),
      table("g_pasture", 1, "sheep-manual-6-3"),
      table("g_cube", 2, "fao-2008"),
      table("g_foot", 1, "test-kit-worms"),
      table("g_Europe", 1, "central-european-worms"),
      { symbol: "same side", value: constant.SAME_SIDE_SHARE, unit: "1", source: "own-rule" },
      { symbol: "same depth", value: constant.SAME_DEPTH_SHARE, unit: "1", source: "own-rule" },
      { symbol: "apart", value: constant.GUIDES_APART, unit: "1", source: "own-rule" },
    ],
    sources: behind["guide-level"],
  },
  "holes-needed": {
    formulas: [
      "v² = w·(1/m + 1/k) + (1−w)·s²/m²",
      "w = (6−n)/5",
      "t_{N−1}·v/√N ≤ d",
      "v_low² , v_high² = ν·v² / χ²_{ν; 1/2 ± b/2} , ν = max(5, n−1)",
    ],
    constants: [
      { symbol: "m_0", value: constant.PLANNING_WORMS_PER_M2, unit: "/m2", source: "stroud-2019" },
      { symbol: "k", value: constant.PLANNING_K, unit: "1", source: "own-rule" },
      { symbol: "d", value: constant.WORMS_GIVE_OR_TAKE, unit: "1", source: "own-rule" },
      { symbol: "b", value: constant.BAND_LEVEL, unit: "1", source: "own-rule" },
      { symbol: "n_seen", value: constant.HOLES_UNTIL_SEEN, unit: "1", source: "own-rule" },
      { symbol: "N_most", value: constant.MOST_HOLES, unit: "1", source: "own-rule" },
    ],
    sources: behind["holes-needed"],
  },
} as const satisfies Readonly<Record<string, Method>>;
