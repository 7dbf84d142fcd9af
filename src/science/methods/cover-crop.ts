/** Methods of cover-crop mass, counts in quadrats and weeds. */
import * as k from "../constants/water.ts";
import { CONFIDENCE_LEVEL, FEW_HITS } from "../constants.ts";
import { type Constant, limit, type Method } from "../method.ts";
import { WATER_BEHIND as behind } from "./behind/water.ts";

const LEVEL = {
  symbol: "1−α",
  value: CONFIDENCE_LEVEL,
  unit: "1",
  source: "own-rule",
} as const satisfies Constant;

const FEW_QUADRATS = limit("science/few-quadrats", "quadrats", "below", k.QUADRATS_ADVISED, {
  source: "osu-cover-crop-sampling",
});

export const COVER_CROP_METHODS = {
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
    limits: [FEW_QUADRATS],
    sources: behind["quadrat-mass"],
  },
  "quadrat-counts": {
    formulas: ["M = Σx_i / Σa_i", "SE² = n/(n−1) · Σ(x_i − M·a_i)² / (Σa_i)²", "M·exp(± t_{n−1}·SE / M)"],
    constants: [LEVEL],
    limits: [FEW_QUADRATS, limit("science/few-plants", "plants", "below", FEW_HITS)],
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
    constants: [
      { symbol: "M_down", value: k.WEEDS_DOWN_KG_PER_HA, unit: "kg/har", source: "nichols-2020" },
      { symbol: "M_held", value: k.WEEDS_HELD_KG_PER_HA, unit: "kg/har", source: "mirsky-2013" },
      { symbol: "M_gone", value: k.WEEDS_GONE_KG_PER_HA, unit: "kg/har", source: "wells-2016" },
    ],
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
