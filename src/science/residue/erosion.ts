/** What cover does against rain and wind: soil lost as a share of what bare ground loses. */
import { failed, ok, type Result } from "../../record/result.ts";
import {
  ROUGHNESS_POWER,
  SMOOTH_MM,
  WIND_FACTOR,
  WIND_FLAT_RATE,
  WIND_FROM,
  WIND_RATE,
  WIND_TO,
} from "../constants/straw.ts";
import type { Caution } from "../estimate.ts";
import { assumed, type Limits, type Ranged, ranged, usable } from "./ranged.ts";

const SHARE: Limits = { unit: "1", least: 0, most: 1 };
const EXPONENT: Limits = { unit: "1", least: 0.001, most: 0.2 };
const PERCENT = 100;
const LOCAL_FIRST: Caution = { code: "science/local-rules-first", facts: {} };

/**
 * How steeply soil loss falls with each percent of cover: 0.025 where rain splash and sheets of water take the
 * soil, 0.035 typical of cropland, 0.050 where rills do.
 *
 * The ends are those of one published list, which prints "over 0.05" for the upper one: it is no limit, and ground that
 * mostly rills may lose less under cover than the low end says. Single figures in print lie on both sides: 20 % of cover
 * taken to halve the loss (0.0347) near the middle, 30 % taken to halve it (0.0231, Wisconsin A3533) just below the lower
 * end, which says 0.472 there instead of 0.5; that figure is a round one, and no range that reaches it is at hand, so the
 * list stands as it is. Anyone who knows a smaller exponent for a place puts it in.
 *
 * Source: RUSLE (Renard et al. 1997) for 0.035; training slides of RUSLE2 for the ends.
 *
 * @example
 * erosionExponent() // => { low: 0.025, middle: 0.035, high: 0.05 }
 */
export const erosionExponent = (): Ranged =>
  assumed("erosion-exponent", { low: 0.025, middle: 0.035, high: 0.05 }, "1", "rusle2-training");

/**
 * Soil that rain takes from covered ground, as a share of what it takes from the same ground bare:
 * `S = exp(−b·C·(R_s/R_u)^p)` with C in percent. It speaks of cover alone: slope, soil, rain and crop are no part
 * of it, and it is no rate of erosion. More cover never means more loss.
 *
 * @param cover share of the ground under residue and stone that touches it
 * @param exponent b, per percent of cover
 * @param roughnessMm random roughness, in mm; smoother than 6.096 mm (0.24 in) counts as smooth
 * @returns a share of the loss, 1 for bare ground; `science/not-a-range` for a cover outside 0 to 1 or an exponent
 * outside 0.001 to 0.2, `science/no-number` for a roughness that is 0, negative or not finite
 *
 * Source: RUSLE, Agriculture Handbook 703 (Renard et al. 1997), chapter 5.
 *
 * @example
 * import { assumed, exactly } from "./ranged.ts";
 * lossByRain(assumed("cover", exactly(0.2), "1", "yours"), erosionExponent(), 6.096).value.middle // => ≈ 0.4966
 */
export const lossByRain = (cover: Ranged, exponent: Ranged, roughnessMm: number): Result<Ranged> => {
  if (!(roughnessMm > 0 && Number.isFinite(roughnessMm))) return failed("science/no-number");
  const good = usable([
    [cover, SHARE],
    [exponent, EXPONENT],
  ]);
  if (!good.ok) return good;
  const rough = (SMOOTH_MM / Math.max(SMOOTH_MM, roughnessMm)) ** ROUGHNESS_POWER;
  const loss = (share: number, b: number): number => Math.exp(-b * PERCENT * share * rough);
  return ok(
    ranged(
      [loss(cover.high, exponent.high), loss(cover.middle, exponent.middle), loss(cover.low, exponent.low)],
      "1",
      { from: [cover, exponent], method: "rain-erosion", cautions: [LOCAL_FIRST] },
    ),
  );
};

const fryrear = (share: number): number =>
  Math.min(1, WIND_FACTOR * Math.exp(-WIND_RATE * PERCENT * Math.min(share, WIND_TO)));
const flat = (share: number): number => Math.exp(-WIND_FLAT_RATE * PERCENT * Math.min(share, WIND_TO));

/**
 * Soil that wind takes from covered ground, as a share of what it takes from the same ground bare. Two curves
 * make the band, one published and one from memory: `S = min(1, a·exp(−b·C))`, which is the middle, and
 * `S = exp(−c·C)`, C in percent. The first was measured from 8 to 80 %: below 8.2 % it would say more than bare
 * ground and is held at 1, above 80 % both are held at what they say there (`science/outside-published-range`).
 * Standing stubble does more than this says.
 *
 * @param cover share of the ground under residue or stone, lying flat
 * @returns a share of the loss; `science/not-a-range` for a cover outside 0 to 1
 *
 * Source: Fryrear 1985; the second curve from the wind erosion equation of 1998, from memory.
 *
 * @example
 * import { assumed, exactly } from "./ranged.ts";
 * lossByWind(assumed("cover", exactly(0.2), "1", "yours")).value.middle // => ≈ 0.4288
 */
export const lossByWind = (cover: Ranged): Result<Ranged> => {
  const good = usable([[cover, SHARE]]);
  if (!good.ok) return good;
  const cautions: Caution[] = [LOCAL_FIRST];
  if (cover.low < WIND_FROM || cover.high > WIND_TO)
    cautions.push({
      code: "science/outside-published-range",
      facts: { from: WIND_FROM * PERCENT, to: WIND_TO * PERCENT },
    });
  return ok(
    ranged(
      [
        Math.min(fryrear(cover.high), flat(cover.high)),
        fryrear(cover.middle),
        Math.max(fryrear(cover.low), flat(cover.low)),
      ],
      "1",
      { from: [cover], method: "wind-erosion", cautions },
    ),
  );
};
