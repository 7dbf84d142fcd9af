/** Methods of infiltration models and storms. */

import * as storm from "../constants/storms.ts";
import * as constant from "../constants.ts";
import { type Constant, limit, type Method, table } from "../method.ts";
import { STORMS_BEHIND as behind } from "./behind/storms.ts";

const LEVEL = {
  symbol: "1−α",
  value: constant.CONFIDENCE_LEVEL,
  unit: "1",
  source: "own-rule",
} as const satisfies Constant;

const ALPHA = table("α*", 4, "elrick-1989");
const BEERKAN_DEEPEST = {
  symbol: "d_most",
  value: storm.BEERKAN_DEEPEST_MM,
  unit: "mm",
  source: "own-rule",
} as const satisfies Constant;

const TOO_DEEP = limit("science/kfs-ring-too-deep", "ring-depth", "above", storm.BEERKAN_DEEPEST_MM, {
  unit: "mm",
  source: BEERKAN_DEEPEST.source,
});
const steadyRange = (of: "head" | "ring-depth", leastMm: number) =>
  limit("science/kfs-outside-steady-range", of, "below", leastMm, {
    unit: "mm",
    source: "reynolds-elrick-1990",
  });
const STEADY_RANGE = [
  steadyRange("head", storm.STEADY_RING_HEAD_MM),
  steadyRange("ring-depth", storm.STEADY_RING_DEPTH_MM),
];

export const STORMS_METHODS = {
  "fit-kostiakov": {
    formulas: ["F = a·t^b"],
    constants: [],
    sources: behind["fit-kostiakov"],
  },
  "fit-kostiakov-lewis": {
    formulas: ["F = a·t^b + c·t", "c ≥ 0"],
    constants: [],
    sources: behind["fit-kostiakov-lewis"],
  },
  "fit-philip": {
    formulas: ["F = S·√t + A·t", "S ≥ 0 , A ≥ 0"],
    constants: [],
    sources: behind["fit-philip"],
  },
  "fit-horton": {
    formulas: ["F = f_c·t + (f_0 − f_c)·(1 − exp(−k·t)) / k", "0 ≤ f_c < f_0"],
    constants: [],
    sources: behind["fit-horton"],
  },
  "fit-green-ampt": {
    formulas: ["F − M·ln(1 + F/M) = K·t", "M = (ψ + h)·θ_d", "S = √(2·K·M)"],
    constants: [],
    sources: behind["fit-green-ampt"],
  },
  "variable-projection": {
    formulas: ["Σ(F_i − F)²"],
    constants: [],
    sources: behind["variable-projection"],
  },
  "curve-errors": {
    formulas: ["s² = SSE / (n − p)", "V = s²·(J_T·J)^(−1)"],
    constants: [],
    sources: behind["curve-errors"],
  },
  "curve-aicc": {
    formulas: ["AIC_c = n·ln(SSE/n) + 2·κ + 2·κ·(κ + 1) / (n − κ − 1)", "κ = p + 1"],
    constants: [],
    sources: behind["curve-aicc"],
  },
  "kfs-falling-head": {
    formulas: [
      "K = θ_d / ((1 − θ_d)·t) · (D/θ_d − (D + 1/α*)/(1 − θ_d) · ln(1 + (1 − θ_d)·D / (θ_d·(D + 1/α*))))",
    ],
    constants: [ALPHA],
    sources: behind["kfs-falling-head"],
  },
  "kfs-steady-ring": {
    formulas: ["K = q / (H/g + 1/(α*·g) + 1)", "g = C_1·d + C_2·a"],
    constants: [
      { symbol: "C_1", value: storm.RING_SHAPE_DEPTH, unit: "1", source: "reynolds-elrick-1990" },
      { symbol: "C_2", value: storm.RING_SHAPE_RADIUS, unit: "1", source: "reynolds-elrick-1990" },
      ALPHA,
      { symbol: "H_least", value: storm.STEADY_RING_HEAD_MM, unit: "mm", source: "reynolds-elrick-1990" },
      { symbol: "d_least", value: storm.STEADY_RING_DEPTH_MM, unit: "mm", source: "reynolds-elrick-1990" },
    ],
    limits: STEADY_RANGE,
    sources: behind["kfs-steady-ring"],
  },
  "kfs-two-heads": {
    formulas: [
      "K = g·(q_2 − q_1) / (H_2 − H_1)",
      "φ = g·q_1 − K·(H_1 + g)",
      "α* = K / φ",
      "g = C_1·d + C_2·a",
    ],
    constants: [
      { symbol: "C_1", value: storm.RING_SHAPE_DEPTH, unit: "1", source: "reynolds-elrick-1990" },
      { symbol: "C_2", value: storm.RING_SHAPE_RADIUS, unit: "1", source: "reynolds-elrick-1990" },
    ],
    limits: STEADY_RANGE,
    sources: behind["kfs-two-heads"],
  },
  "kfs-beerkan-steady": {
    formulas: ["K = q / (γ·γ_w / (a·α*) + 1)"],
    constants: [
      { symbol: "γ", value: storm.BEERKAN_GAMMA, unit: "1", source: "ssbi-2017" },
      { symbol: "γ_w", value: storm.BEERKAN_GAMMA_W, unit: "1", source: "ssbi-2017" },
      ALPHA,
      BEERKAN_DEEPEST,
    ],
    limits: [TOO_DEEP],
    sources: behind["kfs-beerkan-steady"],
  },
  "kfs-beerkan-transient": {
    formulas: ["F/√t = b_0 + b_1·√t", "K = b_1 / (B·(C/(a·α*) + 1))"],
    constants: [
      { symbol: "B", value: storm.TRANSIENT_BEERKAN_SLOPE, unit: "1", source: "sbi-2014" },
      { symbol: "C", value: storm.TRANSIENT_BEERKAN_EDGE, unit: "1", source: "sbi-2014" },
      ALPHA,
      BEERKAN_DEEPEST,
    ],
    limits: [TOO_DEEP],
    sources: behind["kfs-beerkan-transient"],
  },
  "kfs-at-20": {
    formulas: ["K_20 = K·μ / μ_20", "x = (T + T_0) / T_1", "μ = Σ a_i·x^b_i"],
    constants: [
      { symbol: "T_0", value: storm.KELVIN_AT_0_C, unit: "K", source: "iapws-2008" },
      { symbol: "T_1", value: storm.VISCOSITY_SCALE_K, unit: "K", source: "iapws-2008" },
      table("a_i", 4, "iapws-2008"),
      table("b_i", 4, "iapws-2008"),
    ],
    sources: behind["kfs-at-20"],
  },
  "permeability-class": {
    formulas: ["K ≥ K_class"],
    constants: [table("K_class", 6, "epa-1981"), table("K_soil", 9, "fao-basic-rates")],
    sources: behind["permeability-class"],
  },
  "time-compression": {
    formulas: ["f(F_p) = i", "t_p = F_p / i", "F_2 = F(t(F_1) + Δt)", "R = P − F"],
    constants: [],
    sources: behind["time-compression"],
  },
  "green-ampt-ponding": {
    formulas: ["F_p = K·M / (i − K)", "F − F_p − M·ln((F + M) / (F_p + M)) = K·(t − t_p)"],
    constants: [table("K", 11, "rawls-1983"), table("M", 22, "rawls-1983")],
    sources: behind["green-ampt-ponding"],
  },
  "storm-triangular": {
    formulas: ["i_p = 2·P / D", "t_r = r·D"],
    constants: [{ symbol: "n_s", value: storm.TRIANGLE_SLICES, unit: "1", source: "own-rule" }],
    sources: behind["storm-triangular"],
  },
  "storm-24-h-shape": {
    formulas: ["P(t) = P·s(t)"],
    constants: [table("s", 310, "scs-shapes")],
    sources: behind["storm-24-h-shape"],
  },
  "storm-rings-mean": {
    formulas: ["x̄ = Σx_i / n", "x̄ ± t_{n−1}·s/√n"],
    constants: [LEVEL],
    sources: behind["storm-rings-mean"],
  },
  "storm-order": {
    formulas: ["t_s = median(t_i)", "q = Σ w_ij / (n_1·n_2)"],
    constants: [{ symbol: "q_sure", value: storm.SURE_OF_ORDER, unit: "1", source: "own-rule" }],
    sources: behind["storm-order"],
  },
  "curve-number": {
    formulas: ["Q = (P − λ·S)² / (P + (1 − λ)·S)", "S = S_1/CN − S_0"],
    constants: [
      { symbol: "λ", value: storm.INITIAL_SHARE, unit: "1", source: "neh-630-10" },
      { symbol: "S_1", value: storm.RETENTION_SCALE_MM, unit: "mm", source: "neh-630-10" },
      { symbol: "S_0", value: storm.RETENTION_SHIFT_MM, unit: "mm", source: "neh-630-10" },
      table("CN", 136, "tr-55"),
    ],
    sources: behind["curve-number"],
  },
  "curve-number-of-ground": {
    formulas: [
      "CN = Σ(A_i·CN_i) / ΣA_i",
      "CN_dry = d_1·CN / (10 − d_2·CN)",
      "CN_wet = w_1·CN / (10 + w_2·CN)",
    ],
    constants: [
      { symbol: "d_1", value: storm.DRY_CURVE_SCALE, unit: "1", source: "chow-1988" },
      { symbol: "d_2", value: storm.DRY_CURVE_BEND, unit: "1", source: "chow-1988" },
      { symbol: "w_1", value: storm.WET_CURVE_SCALE, unit: "1", source: "chow-1988" },
      { symbol: "w_2", value: storm.WET_CURVE_BEND, unit: "1", source: "chow-1988" },
    ],
    sources: behind["curve-number-of-ground"],
  },
} as const satisfies Readonly<Record<string, Method>>;
