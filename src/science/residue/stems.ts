/** Stems that still stand after harvest. */
import { ok, type Result } from "../../record/result.ts";
import { SINGLE_FIGURE_SPREAD, STEMS_STAND_DAYS } from "../constants/straw.ts";
import type { ResidueCrop } from "./crops.ts";
import { assumed, type Ranged, ranged, usable } from "./ranged.ts";

/** Per decomposition day, beyond the 17.5th. */
const STEM_RATES = {
  oats: 0.284,
  barley: 0.176,
  "winter-wheat": 0.169,
  "spring-wheat": 0.116,
} as const satisfies Partial<Record<ResidueCrop, number>>;

/**
 * Share of the stems that still stand: all until 17.5 decomposition days, then `exp(−k·(D − 17.5))`.
 *
 * @param crop oats, barley, winter or spring wheat
 * @param days decomposition days since harvest, as `decompositionDays` gives them
 * @returns a share: its low end with the most days and the fastest fall. `science/not-a-range` for days outside 0 to
 * 100 000
 *
 * Source: Steiner et al. 1994; one figure a crop is known, so its ends are a quarter to either side (own rule).
 *
 * @example
 * import { assumed, exactly } from "./ranged.ts";
 * stemsStanding("winter-wheat", assumed("decay-rate", exactly(20), "d", "yours")).value.middle // => ≈ 0.6554
 */
export const stemsStanding = (crop: keyof typeof STEM_RATES, days: Ranged): Result<Ranged> => {
  const good = usable([[days, { unit: "d", least: 0, most: 100_000 }]]);
  if (!good.ok) return good;
  const middle = STEM_RATES[crop];
  const [low, high] = [middle * (1 - SINGLE_FIGURE_SPREAD), middle * (1 + SINGLE_FIGURE_SPREAD)];
  const rate = assumed("stem-rate", { low, middle, high }, "/d", "steiner-1994");
  const after = (falls: number, day: number): number =>
    Math.exp(-falls * Math.max(0, day - STEMS_STAND_DAYS));
  return ok(
    ranged([after(high, days.high), after(middle, days.middle), after(low, days.low)], "1", {
      from: [rate, days],
      method: "stems-standing",
    }),
  );
};
