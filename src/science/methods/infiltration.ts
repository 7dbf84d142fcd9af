/** Methods of ring tests. */
import * as at from "../constants/cautions.ts";
import * as constant from "../constants.ts";
import { type Constant, limit, type Method } from "../method.ts";
import { INFILTRATION_BEHIND as behind } from "./behind/infiltration.ts";

const LEVEL = {
  symbol: "1−α",
  value: constant.CONFIDENCE_LEVEL,
  unit: "1",
  source: "own-rule",
} as const satisfies Constant;

const FEWEST = {
  symbol: "n_least",
  value: constant.SAMPLES_FOR_A_RANGE,
  unit: "1",
  source: "own-rule",
} as const satisfies Constant;

export const INFILTRATION_METHODS = {
  "ring-area": {
    formulas: ["A = π·d_1·d_2 / 4", "A_b = A_o − A_w"],
    constants: [{ symbol: "e", value: constant.OUT_OF_ROUND, unit: "1", source: "own-rule" }],
    sources: behind["ring-area"],
  },
  "ring-measured-pour": {
    formulas: ["F = V / A", "r = (F − h) / t"],
    constants: [{ symbol: "t_dry", value: constant.JOINED_MIN, unit: "min", source: "own-rule" }],
    sources: behind["ring-measured-pour"],
  },
  "ring-ruler": {
    formulas: ["F = Σ(h_i − h_j)"],
    constants: [
      { symbol: "t_fill", value: constant.JOINED_MIN, unit: "min", source: "own-rule" },
      { symbol: "e", value: constant.RULER_STEP_MM, unit: "mm", source: "own-rule" },
      { symbol: "k", value: constant.STEPS_OF_NOISE, unit: "1", source: "own-rule" },
      { symbol: "r_up", value: constant.RATE_ROSE, unit: "1", source: "own-rule" },
      { symbol: "t_gap", value: constant.START_GAP_MIN, unit: "min", source: "own-rule" },
    ],
    sources: behind["ring-ruler"],
  },
  "ring-kept-level": {
    formulas: ["F = ΣV_i / A"],
    constants: [{ symbol: "t_top", value: constant.TOGETHER_MIN, unit: "min", source: "own-rule" }],
    sources: behind["ring-kept-level"],
  },
  "ring-depth-after": {
    formulas: ["F = F_1 + (F_2 − F_1)·(t − t_1) / (t_2 − t_1)"],
    constants: [],
    sources: behind["ring-depth-after"],
  },
  "ring-last-half-hour": {
    formulas: ["r = ΔF / Δt"],
    constants: [{ symbol: "t_last", value: constant.LAST_MIN, unit: "min", source: "own-rule" }],
    sources: behind["ring-last-half-hour"],
  },
  "ring-levelled-off": {
    formulas: [
      "r_j = ΔF_j / Δt_j",
      "(r_max − r_min) / r̄ ≤ q",
      "t_3 − t_0 ≥ g·t_3",
      "Δt_max ≤ u·Δt_min",
      "ΔF_j ≥ k·e",
      "r = ΣΔF_j / ΣΔt_j",
    ],
    constants: [
      { symbol: "q", value: constant.LEVEL_SPREAD, unit: "1", source: "minnesota-percolation" },
      { symbol: "g", value: constant.LEVEL_SPAN, unit: "1", source: "own-rule" },
      { symbol: "k", value: constant.LEVEL_STEPS, unit: "1", source: "own-rule" },
      { symbol: "u", value: constant.LEVEL_UNEVEN, unit: "1", source: "own-rule" },
    ],
    sources: behind["ring-levelled-off"],
  },
  "ring-until-level": {
    formulas: ["F = S·√t + B·t", "T = (c·S / B)²"],
    constants: [
      { symbol: "c", value: constant.ROOT_TIME_SHARE, unit: "1", source: "own-rule" },
      { symbol: "T_most", value: constant.LONGEST_MIN, unit: "min", source: "own-rule" },
    ],
    sources: behind["ring-until-level"],
  },
  "ring-side-flow": {
    formulas: ["q = r_b / r_i"],
    constants: [{ symbol: "q_max", value: constant.SIDE_FLOW_RATIO, unit: "1", source: "own-rule" }],
    sources: behind["ring-side-flow"],
  },
  "ring-water": {
    formulas: ["V = ΣV_i", "V = A·h", "V = A·r·Δt / 60"],
    constants: [],
    sources: behind["ring-water"],
  },
  "finish-first": {
    formulas: ["V_j ≤ W − ΣV_i"],
    constants: [],
    sources: behind["finish-first"],
  },
  "rings-geometric-mean": {
    formulas: ["ḡ = exp(Σ ln(x_i) / n)"],
    constants: [],
    sources: behind["rings-geometric-mean"],
  },
  "rings-log-t": {
    formulas: ["y_i = ln(x_i)", "exp(ȳ ± t_{n−1}·s/√n)"],
    constants: [LEVEL, FEWEST],
    limits: [limit("science/few-rings-may-miss-burrows", "rings", "below", at.ENOUGH_RINGS)],
    sources: behind["rings-log-t"],
  },
  "smallest-ratio": {
    formulas: ["s² = ln(1 + c²)", "ν = 2(n−1)", "R = exp((t_{ν; 1−α/2} + t_{ν; w})·s·√(2/n))"],
    constants: [
      { symbol: "c", value: constant.PLANNING_RING_CV, unit: "1", source: "radinja-2019" },
      { symbol: "w", value: constant.POWER, unit: "1", source: "own-rule" },
      LEVEL,
    ],
    sources: behind["smallest-ratio"],
  },
} as const satisfies Readonly<Record<string, Method>>;
