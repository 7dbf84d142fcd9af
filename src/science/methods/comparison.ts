/** Methods of comparing and the years. */

import * as at from "../constants/cautions.ts";
import * as constant from "../constants/comparison.ts";
import { CONFIDENCE_LEVEL, FEW_HITS } from "../constants.ts";
import { type Constant, limit, type Method } from "../method.ts";
import { DRAWS } from "../statistics/sign-flip.ts";
import { COMPARISON_BEHIND as behind } from "./behind/comparison.ts";
import { LOPSIDED_LIMITS } from "./ground-cover.ts";

const LEVEL = {
  symbol: "1−α",
  value: CONFIDENCE_LEVEL,
  unit: "1",
  source: "own-rule",
} as const satisfies Constant;

const DRAWN = { symbol: "N_drawn", value: DRAWS, unit: "1", source: "own-rule" } as const satisfies Constant;

const FEW_HOLES = limit("science/few-holes-may-miss-patches", "holes", "below", at.ENOUGH_HOLES);
const FEW_TO_COUNT = [limit("science/few-worms-wide-range", "worms", "below", FEW_HITS), FEW_HOLES];
const RUNS = "science/years-may-run-together";

export const COMPARISON_METHODS = {
  "welch-t": {
    formulas: [
      "d = ā − b̄",
      "SE² = s_a²/n_a + s_b²/n_b",
      "ν = (SE²)² / ((s_a²/n_a)²/(n_a−1) + (s_b²/n_b)²/(n_b−1))",
      "d ± t_ν·SE",
    ],
    constants: [LEVEL],
    limits: LOPSIDED_LIMITS,
    sources: behind["welch-t"],
  },
  "welch-ratio-t": {
    formulas: ["x = ln(v)", "d = x̄_a − x̄_b", "SE² = s_a²/n_a + s_b²/n_b", "exp(d ± t_ν·SE)"],
    constants: [LEVEL],
    limits: [FEW_HOLES],
    sources: behind["welch-ratio-t"],
  },
  "paired-t": {
    formulas: ["d_i = a_i − b_i", "d̄ ± t_{n−1}·s_d/√n"],
    constants: [LEVEL],
    limits: LOPSIDED_LIMITS,
    sources: behind["paired-t"],
  },
  "paired-ratios-t": {
    formulas: ["d_i = ln(a_i / b_i)", "exp(d̄ ± t_{n−1}·s_d/√n)"],
    constants: [LEVEL],
    sources: behind["paired-ratios-t"],
  },
  "sign-flip": {
    formulas: ["P = N(|Σ ± d_i| ≥ |Σd_i|) / 2^n", "P_least = 2^{1−n}"],
    constants: [{ symbol: "α", value: constant.SELDOM, unit: "1", source: "own-rule" }, DRAWN],
    limits: [limit("science/too-few-pairs-for-five-percent", "chance", "above", constant.SELDOM)],
    sources: behind["sign-flip"],
  },
  "two-group-permutation": {
    formulas: ["P = N(|d_shared| ≥ |d|) / K"],
    constants: [{ symbol: "α", value: constant.SELDOM, unit: "1", source: "own-rule" }, DRAWN],
    limits: [limit("science/too-few-strips-for-five-percent", "chance", "above", constant.SELDOM)],
    sources: behind["two-group-permutation"],
  },
  "signed-rank": {
    formulas: ["W = Σ r_i", "z = (|W − Σr/2| − 1/2) / √(Σr²/4)"],
    constants: [],
    sources: behind["signed-rank"],
  },
  "rank-sum": {
    formulas: ["U = Σ r_a − n_a·(n_a+1)/2"],
    constants: [],
    sources: behind["rank-sum"],
  },
  "blocks-two-way": {
    formulas: ["e_ij = x_ij − x̄_i − x̄_j + x̄", "EMS = Σe_ij² / ((k−1)(b−1))", "LSD = t·√(2·EMS/b)"],
    constants: [LEVEL],
    sources: behind["blocks-two-way"],
  },
  "blocks-t": {
    formulas: ["d ± t_{1−α/2m}·√(2·EMS/b)", "m = k(k−1)/2"],
    constants: [LEVEL],
    limits: LOPSIDED_LIMITS,
    sources: behind["blocks-t"],
  },
  "spots-alike": {
    formulas: ["ρ = (MSB − MSW) / (MSB + (m−1)·MSW)", "deff = 1 + (m−1)·ρ", "n_eff = n / deff"],
    constants: [],
    sources: behind["spots-alike"],
  },
  "rate-ratio-exact": {
    formulas: [
      "R = (x/A_x) / (y/A_y)",
      "p = R·A_x / (R·A_x + A_y)",
      "P(X ≥ x ; p_lower) = α/2",
      "P(X ≤ x ; p_upper) = α/2",
    ],
    constants: [LEVEL],
    limits: FEW_TO_COUNT,
    sources: behind["rate-ratio-exact"],
  },
  "rate-ratio-scaled": {
    formulas: [
      "φ = Σ(x_i−m)²/m / Σ(n−1)",
      "φ = Σ(max(1 , Σ(x_i−m)² / (m·(n−1))) / x) / Σ(1/x)",
      "x_e = x·z² / (φ·t²)",
      "p = R·A_x / (R·A_x + A_y)",
    ],
    constants: [LEVEL],
    limits: [
      ...FEW_TO_COUNT,
      // All three have to hold.
      limit("science/range-if-lopsided", "holes", "from", at.HOLES_THAT_SHOW_SPREAD),
      limit("science/range-if-lopsided", "spread-beyond-chance", "above", at.ONE_UNEVEN_PLACE),
      limit("science/range-if-lopsided", "other-spread-share", "below", at.OTHER_EVEN_SHARE),
    ],
    sources: behind["rate-ratio-scaled"],
  },
  "words-of-difference": {
    formulas: ["|d| > t·SE", "G = 1 − F_{ν,δ}(t) + F_{ν,δ}(−t)", "δ = d / (s·√(c/n))"],
    constants: [
      LEVEL,
      { symbol: "1−α_likely", value: constant.LIKELY_LEVEL, unit: "1", source: "own-rule" },
      { symbol: "G_wanted", value: constant.WANTED_POWER, unit: "1", source: "own-rule" },
      { symbol: "ν_least", value: constant.LEAST_FREEDOM, unit: "1", source: "own-rule" },
    ],
    sources: behind["words-of-difference"],
  },
  "counts-needed": {
    formulas: ["s² = φ·(1 + R)² / (4·R·m)", "δ = ln(R) / (s·√(2/n))"],
    constants: [],
    sources: behind["counts-needed"],
  },
  "like-with-like": {
    formulas: ["Σ|a_i − b_i| / 2 < s_0", "e_most ≤ r_0·e_least", "z_least ≥ (1 − q)·z_most"],
    constants: [
      { symbol: "s_0", value: constant.UNLIKE_SHARE, unit: "1", source: "own-rule" },
      { symbol: "r_0", value: constant.UNLIKE_EFFORT, unit: "1", source: "own-rule" },
      { symbol: "q", value: constant.UNLIKE_SIZE, unit: "1", source: "own-rule" },
    ],
    limits: [
      limit("science/unlike-places", "share-apart", "from", constant.UNLIKE_SHARE),
      limit("science/unlike-efforts", "efforts-apart", "above", constant.UNLIKE_EFFORT),
      limit("science/unlike-sizes", "sizes-apart", "above", constant.UNLIKE_SIZE),
      limit("science/unlike-depths", "sizes-apart", "above", constant.UNLIKE_SIZE),
    ],
    sources: behind["like-with-like"],
  },
  "theil-sen": {
    formulas: ["b = median((x_j − x_i) / (t_j − t_i))"],
    constants: [],
    limits: [limit(RUNS, "years", "from", at.YEARS_FOR_RUNS)],
    sources: behind["theil-sen"],
  },
  "gilbert-range": {
    formulas: ["C = z·√Var_S", "M_1 = (N − C)/2", "M_2 = (N + C)/2 + 1"],
    constants: [LEVEL],
    sources: behind["gilbert-range"],
  },
  "counted-range": {
    formulas: ["P(S ≥ s) ≤ α/2", "M_1 = (N − s)/2 + 1", "M_2 = (N + s)/2"],
    constants: [LEVEL],
    limits: [limit("science/few-years-wide-range", "years", "up-to", at.FEW_YEARS)],
    sources: behind["counted-range"],
  },
  "mann-kendall-exact": {
    formulas: ["S = Σ sgn(x_j − x_i)", "P = N(|S_order| ≥ |S|) / n!", "P_least = 2 / n!"],
    constants: [{ symbol: "α", value: constant.SELDOM, unit: "1", source: "own-rule" }],
    limits: [limit("science/too-few-years-for-five-percent", "chance", "above", constant.SELDOM)],
    sources: behind["mann-kendall-exact"],
  },
  "mann-kendall-normal": {
    formulas: [
      "S = Σ sgn(x_j − x_i)",
      "Var_S = (n(n−1)(2n+5) − Σq(q−1)(2q+5)) / 18",
      "z = (|S| − 1) / √Var_S",
    ],
    constants: [],
    sources: behind["mann-kendall-normal"],
  },
  "seasonal-kendall": {
    formulas: ["S = Σ S_g", "Var_S = Σ Var_g", "z = (|S| − 1) / √Var_S"],
    constants: [],
    sources: behind["seasonal-kendall"],
  },
  "whole-years": {
    formulas: ["P = N(|S_order| ≥ |S|) / n!", "Var_S = ΣS_order² / n!", "P_least = 2 / n!"],
    constants: [{ symbol: "α", value: constant.SELDOM, unit: "1", source: "own-rule" }],
    limits: [
      limit("science/too-few-years-for-five-percent", "chance", "above", constant.SELDOM),
      limit(RUNS, "years", "from", at.FIELD_YEARS_FOR_RUNS),
    ],
    sources: behind["whole-years"],
  },
  "bootstrap-percentile": {
    formulas: ["q_low = α/2", "q_high = 1 − α/2"],
    constants: [{ symbol: "n_few", value: constant.FEW_TO_RESAMPLE, unit: "1", source: "own-rule" }],
    limits: [limit("science/resampled-range-too-narrow", "values", "below", constant.FEW_TO_RESAMPLE)],
    sources: behind["bootstrap-percentile"],
  },
  "bootstrap-bca": {
    formulas: [
      "Φ(z_0) = q",
      "a = ΣU^3/n^3 / (6·(ΣU²/n²)^{3/2})",
      "q_α = Φ(z_0 + (z_0 + z) / (1 − a·(z_0 + z)))",
    ],
    constants: [{ symbol: "n_few", value: constant.FEW_TO_RESAMPLE, unit: "1", source: "own-rule" }],
    limits: [limit("science/resampled-range-too-narrow", "values", "below", constant.FEW_TO_RESAMPLE)],
    sources: behind["bootstrap-bca"],
  },
} as const satisfies Readonly<Record<string, Method>>;
