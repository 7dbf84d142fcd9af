/** Methods of shelter behind rows. */
import * as k from "../constants/water.ts";
import { type Method, table } from "../method.ts";
import { WATER_BEHIND as behind } from "./behind/water.ts";

export const SHELTER_METHODS = {
  "shelter-wind": {
    formulas: ["w = w_1 + (w_2 − w_1)·(x − x_1) / (x_2 − x_1)"],
    constants: [table("w", 6, "farmstead-windbreaks"), table("w_other", 5, "how-windbreaks-work")],
    sources: behind["shelter-wind"],
  },
  "shelter-zones": {
    formulas: ["A = L·(k_2 − k_1)·H·sin β", "β > β_0"],
    constants: [
      { symbol: "β_0", value: k.ALONG_ROW_DEG, unit: "deg", source: "own-rule" },
      { symbol: "β_slant", value: k.SLANTING_DEG, unit: "deg", source: "own-rule" },
      table("k_1", 3, "minnesota-yield-monitors"),
      table("k_2", 3, "own-rule"),
    ],
    sources: behind["shelter-zones"],
  },
  "shelter-net": {
    formulas: ["ΔY = (z·g − c·l − w) / W", "g_0 = (w + l·c) / z"],
    constants: [
      { symbol: "g_least", value: k.LEAST_GAIN, unit: "1", source: "minnesota-yield-monitors" },
      table("g", 3, "kort-1988"),
      table("g_other", 5, "kort-1988-from-memory"),
      table("l", 3, "own-rule"),
    ],
    sources: behind["shelter-net"],
  },
} as const satisfies Readonly<Record<string, Method>>;
