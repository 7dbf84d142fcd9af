/** Methods of positions and plans. */
import * as plans from "../constants/plans.ts";
import { WGS84_INVERSE_FLATTENING, WGS84_SEMI_MAJOR_M } from "../constants.ts";
import type { Constant, Method } from "../method.ts";
import { PLANS_BEHIND as behind } from "./behind/plans.ts";

const ELLIPSOID = [
  { symbol: "a", value: WGS84_SEMI_MAJOR_M, unit: "m", source: "nima-tr8350-2" },
  { symbol: "1/f", value: WGS84_INVERSE_FLATTENING, unit: "1", source: "nima-tr8350-2" },
] as const satisfies readonly Constant[];

export const PLANS_METHODS = {
  "field-area": {
    formulas: [
      "q = (1−e²)·(sin φ/(1−e²·sin² φ) − ln((1−e·sin φ)/(1+e·sin φ))/(2·e))",
      "sin β = q/q_p",
      "R² = a²·q_p/2",
      "B = R·√(2/(1 + sin β_1·sin β + cos β_1·cos β·cos Δλ))",
      "x = B·D·cos β·sin Δλ",
      "y = (B/D)·(cos β_1·sin β − sin β_1·cos β·cos Δλ)",
      "A = Σ(x_i·y_j − x_j·y_i)/2",
    ],
    constants: ELLIPSOID,
    sources: behind["field-area"],
  },
  geodesic: {
    formulas: [
      "tan U = (1−f)·tan φ",
      "λ = L + (1−C)·f·sin α·(σ + C·sin σ·(m + C·cos σ·(2·m² − 1)))",
      "C = f·cos² α·(4 + f·(4 − 3·cos² α))/16",
      "s = b·A·(σ − Δσ)",
      "tan θ = cos U_2·sin λ/(cos U_1·sin U_2 − sin U_1·cos U_2·cos λ)",
    ],
    constants: ELLIPSOID,
    sources: behind.geodesic,
  },
  "true-magnetic": {
    formulas: ["T = M + D", "M = T − D"],
    constants: [],
    sources: behind["true-magnetic"],
  },
  headland: {
    formulas: ["d_k ≥ h"],
    constants: [],
    sources: behind.headland,
  },
  "fields-near": {
    formulas: ["d ≤ d_0"],
    constants: [{ symbol: "d_0", value: plans.FIELD_NEAR_M, unit: "m", source: "own-rule" }],
    sources: behind["fields-near"],
  },
  "random-points": {
    formulas: ["P(x) = 1/A", "d_ij ≥ s"],
    constants: [{ symbol: "rounds", value: plans.POINT_ROUNDS, unit: "1", source: "own-rule" }],
    sources: behind["random-points"],
  },
  "w-walk": {
    formulas: ["u_k = k/4", "s_j = (j − 1/2)·L/n"],
    constants: [],
    sources: behind["w-walk"],
  },
  "pairs-along-edge": {
    formulas: ["s_j = e + (r + j − 1)·(L − 2·e)/n", "d_left = d_right"],
    constants: [],
    sources: behind["pairs-along-edge"],
  },
  "walking-order": {
    formulas: ["L = Σd_j"],
    constants: [{ symbol: "n_exact", value: plans.EXACT_PLACES, unit: "1", source: "own-rule" }],
    sources: behind["walking-order"],
  },
  "day-plan": {
    formulas: ["Σ S·n_t·(m_t + w) ≤ 60·H·P", "S·n_r·V ≤ W", "k·(m_r + r) ≤ 60·H", "S·n_r ≤ k·R"],
    constants: [
      { symbol: "m_line", value: plans.LINE_MINUTES, unit: "min", source: "field-minutes" },
      { symbol: "m_hole", value: plans.HOLE_MINUTES, unit: "min", source: "field-minutes" },
      { symbol: "m_r", value: plans.RING_HANDS_MINUTES, unit: "min", source: "field-minutes" },
      { symbol: "r", value: plans.RING_RUN_MINUTES, unit: "min", source: "field-minutes" },
      { symbol: "w", value: plans.WALK_MINUTES, unit: "min", source: "field-minutes" },
      { symbol: "n_most", value: plans.MOST_RINGS, unit: "1", source: "own-rule" },
    ],
    sources: behind["day-plan"],
  },
} as const satisfies Readonly<Record<string, Method>>;
