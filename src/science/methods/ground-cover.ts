/** Methods of ground cover, of the statistics that it rests on, and of standing still. */
import * as at from "../constants/cautions.ts";
import * as constant from "../constants.ts";
import { type Constant, limit, type Method } from "../method.ts";
import { GROUND_COVER_BEHIND as behind } from "./behind/ground-cover.ts";

const LEVEL = {
  symbol: "1−α",
  value: constant.CONFIDENCE_LEVEL,
  unit: "1",
  source: "own-rule",
} as const satisfies Constant;
const PLANNED = {
  symbol: "k",
  value: constant.PLANNING_SPREAD,
  unit: "1",
  source: "laflen-1981",
} as const satisfies Constant;

const FEWEST = {
  symbol: "n_least",
  value: constant.SAMPLES_FOR_A_RANGE,
  unit: "1",
  source: "own-rule",
} as const satisfies Constant;

/** Of every mean whose range is Student's t, and of what is compared by it. */
export const LOPSIDED_LIMITS = [
  limit("science/range-if-lopsided", "values", "below", at.ENOUGH_IF_LOPSIDED),
  limit("science/range-if-lopsided", "skewness", "above", at.LOPSIDED),
];

export const GROUND_COVER_METHODS = {
  "marks-share": {
    formulas: ["p = h / m", "m = m_all − m_not_read"],
    constants: [],
    sources: behind["marks-share"],
  },
  "whole-percent": {
    formulas: ["q_i = 100·h_i / m", "Σ q_i = 100"],
    constants: [],
    sources: behind["whole-percent"],
  },
  "wilson-one-line": {
    formulas: ["(p + z²/2m ± z·√(p(1−p)/m + z²/4m²)) / (1 + z²/m)"],
    constants: [LEVEL],
    sources: behind["wilson-one-line"],
  },
  "strip-ratio": {
    formulas: ["p = Σh_i / Σm_i"],
    constants: [],
    sources: behind["strip-ratio"],
  },
  "logit-t": {
    formulas: [
      "SE² = n/(n−1) · Σ(h_i − p·m_i)² / (Σm_i)²",
      "L = ln(p/(1−p))",
      "SE_L = SE / (p(1−p))",
      "1 / (1 + exp(−(L ± t_{n−1}·SE_L)))",
    ],
    constants: [LEVEL, FEWEST, { symbol: "h_few", value: constant.FEW_HITS, unit: "1", source: "own-rule" }],
    limits: [
      limit("science/few-hits", "hits", "below", constant.FEW_HITS),
      limit("science/few-misses", "misses", "below", constant.FEW_HITS),
    ],
    sources: behind["logit-t"],
  },
  "logit-t-planned": {
    formulas: [
      "SE² = k²·p(1−p) / Σm_i",
      "L = ln(p/(1−p))",
      "SE_L = SE / (p(1−p))",
      "1 / (1 + exp(−(L ± t_{n−1}·SE_L)))",
    ],
    constants: [LEVEL, PLANNED],
    sources: behind["logit-t-planned"],
  },
  "one-sided-exact": {
    formulas: ["m_e = Σm_i / k²", "1 − p_upper = α^(1/m_e)", "p_lower = α^(1/m_e)"],
    constants: [LEVEL, PLANNED],
    sources: behind["one-sided-exact"],
  },
  "lines-needed": {
    formulas: [
      "s² = w·k²·p(1−p)/m + (1−w)·n·SE²",
      "w = (6−n)/5",
      "t_{N−1}·s/√N ≤ d",
      "s_low² , s_high² = ν·s² / χ²_{ν; 1/2 ± b/2} , ν = max(5, n−1)",
    ],
    constants: [
      { symbol: "d", value: constant.GIVE_OR_TAKE, unit: "1", source: "own-rule" },
      PLANNED,
      { symbol: "b", value: constant.BAND_LEVEL, unit: "1", source: "own-rule" },
      { symbol: "n_seen", value: constant.LINES_UNTIL_SEEN, unit: "1", source: "own-rule" },
      { symbol: "N_most", value: constant.MOST_LINES, unit: "1", source: "own-rule" },
    ],
    sources: behind["lines-needed"],
  },
  "chance-logit-t": {
    formulas: ["F_{t,n−1}((L − L_target) / SE_L)", "1 − p_target^m_e", "(1 − p_target)^m_e"],
    constants: [
      PLANNED,
      { symbol: "p_rules", value: constant.CONSERVATION_COVER, unit: "1", source: "nebraska-g20" },
      { symbol: "p_protection", value: constant.PROTECTION_COVER, unit: "1", source: "cover-75" },
    ],
    sources: behind["chance-logit-t"],
  },
  "in-step": {
    formulas: ["a = d·sin θ", "φ_j = frac(j·a/w)", "g = max gap(φ)", "g > max(1/5, 2/m)", "(m−1)·a ≥ W"],
    constants: [{ symbol: "g_max", value: constant.WIDEST_GAP_SHARE, unit: "1", source: "own-rule" }],
    sources: behind["in-step"],
  },
  "across-pass": {
    formulas: ["x_j = x_1 + (j−1)·d·sin θ", "y_j = |x_j − W·round(x_j/W)|", "p_c = h_c / m_c"],
    constants: [{ symbol: "c", value: constant.PASS_CLASSES, unit: "1", source: "own-rule" }],
    sources: behind["across-pass"],
  },
  "mean-t": {
    formulas: ["x̄ = Σx_i / n", "x̄ ± t_{n−1}·s/√n"],
    constants: [LEVEL, FEWEST],
    limits: LOPSIDED_LIMITS,
    sources: behind["mean-t"],
  },
  "line-mean-t": {
    formulas: ["x̄ = Σy_i / Σm_i", "SE² = n/(n−1) · Σ(y_i − x̄·m_i)² / (Σm_i)²", "x̄ ± t_{n−1}·SE"],
    constants: [LEVEL],
    limits: LOPSIDED_LIMITS,
    sources: behind["line-mean-t"],
  },
  "standing-still": {
    formulas: [
      "w_i = 1 / max(r_i, 1)²",
      "φ = weighted median(φ_i)",
      "λ = weighted median(λ_i)",
      "s = c·weighted median(d_i)",
    ],
    constants: [
      { symbol: "c", value: constant.RADIUS_95_PER_MEDIAN, unit: "1", source: "geometry" },
      { symbol: "c_68", value: constant.RADIUS_95_PER_68, unit: "1", source: "geometry" },
      { symbol: "n_spread", value: constant.FIXES_FOR_A_SPREAD, unit: "1", source: "own-rule" },
      { symbol: "n_drift", value: constant.FIXES_FOR_A_DRIFT, unit: "1", source: "own-rule" },
    ],
    sources: behind["standing-still"],
  },
  "short-distance": {
    formulas: ["M = a(1−e²) / (1−e²sin²φ)^{3/2}", "N = a / √(1−e²sin²φ)", "d = √((M·Δφ)² + (N·cos φ·Δλ)²)"],
    constants: [
      { symbol: "a", value: constant.WGS84_SEMI_MAJOR_M, unit: "m", source: "nima-tr8350-2" },
      { symbol: "1/f", value: constant.WGS84_INVERSE_FLATTENING, unit: "1", source: "nima-tr8350-2" },
    ],
    sources: behind["short-distance"],
  },
} as const satisfies Readonly<Record<string, Method>>;
