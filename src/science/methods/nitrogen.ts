/** Methods of nitrogen tied up and released. */
import * as k from "../constants/water.ts";
import { type Method, table } from "../method.ts";
import { WATER_BEHIND as behind } from "./behind/water.ts";

export const NITROGEN_METHODS = {
  "mixture-c-n": {
    formulas: ["C/N = Σ(m_i·c_i) / Σ(m_i·c_i / r_i)"],
    constants: [
      { symbol: "q", value: k.SINGLE_FIGURE, unit: "1", source: "own-rule" },
      table("r_i", 13, "nrcs-c-to-n-2011"),
      { symbol: "c_least", value: k.CARBON_SHARE, unit: "1", source: "carbon-share" },
      { symbol: "c_mid", value: k.MIDDLE_CARBON_SHARE, unit: "1", source: "carbon-share" },
      { symbol: "c_most", value: k.MOST_CARBON_SHARE, unit: "1", source: "carbon-share" },
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
} as const satisfies Readonly<Record<string, Method>>;
