/** Nitrogen, phosphate and potash in straw. */
import { failed, ok, type Result } from "../../record/result.ts";
import { K_PER_K2O, MOST_MASS_KG_PER_HA, P_PER_P2O5, SINGLE_FIGURE_SPREAD } from "../constants/straw.ts";
import type { Caution } from "../estimate.ts";
import type { ResidueCrop } from "../residue/crops.ts";
import { assumed, type Ranged, ranged, type Span, usable } from "../residue/ranged.ts";
import type { SourceId } from "../sources.ts";

/** Nitrogen as N, the others as oxides, as fertiliser is sold in Europe and America. */
export const NUTRIENTS = ["N", "P2O5", "K2O"] as const;
export type Nutrient = (typeof NUTRIENTS)[number];

interface Content extends Span {
  readonly source: SourceId;
}

const of = (source: SourceId, low: number, middle: number, high: number): Content => ({
  low,
  middle,
  high,
  source,
});
const one = (source: SourceId, value: number): Content =>
  of(source, value * (1 - SINGLE_FIGURE_SPREAD), value, value * (1 + SINGLE_FIGURE_SPREAD));

/**
 * kg per tonne of straw as it leaves the field. Wheat N, and the high ends of P₂O₅ and K₂O: Ohio and Illinois; the
 * low ends and the European straws: PDA 2020. Maize: Nebraska and Iowa. N of barley, oats, rye, peas and beans:
 * IPCC Table 11.2, on dry matter, the low end for straw of 84 % dry matter. Single figures reach a quarter to
 * either side, a rule of this product.
 */
const CONTENTS: Readonly<Partial<Record<ResidueCrop, Readonly<Partial<Record<Nutrient, Content>>>>>> = {
  "winter-wheat": {
    N: of("straw-nutrients-us", 4.5, 5.5, 6),
    P2O5: of("straw-nutrients-us", 1, 1.5, 2),
    K2O: of("straw-nutrients-us", 10, 12.5, 22.5),
  },
  "spring-wheat": {
    N: of("straw-nutrients-us", 4.5, 5.5, 6),
    P2O5: of("straw-nutrients-us", 1, 1.5, 2),
    K2O: of("straw-nutrients-us", 10, 13, 22.5),
  },
  barley: {
    N: of("ipcc-2006-table-11-2", 5.9, 6.4, 7),
    P2O5: one("pda-2020", 1),
    K2O: of("pda-2020", 10, 11.5, 13),
  },
  oats: { N: of("ipcc-2006-table-11-2", 5.9, 6.4, 7) },
  rye: { N: of("ipcc-2006-table-11-2", 4.2, 4.6, 5) },
  maize: {
    N: of("stover-nutrients-us", 6, 7.25, 8.5),
    P2O5: of("stover-nutrients-us", 2, 2.2, 2.4),
    K2O: of("stover-nutrients-us", 9, 17, 25),
  },
  sorghum: {
    N: of("stover-nutrients-us", 7, 7.75, 8.5),
    P2O5: one("stover-nutrients-us", 2),
    K2O: of("stover-nutrients-us", 17, 21, 25),
  },
  soybean: {
    N: of("stover-nutrients-us", 8, 8.25, 8.5),
    P2O5: one("stover-nutrients-us", 2.35),
    K2O: one("stover-nutrients-us", 11.5),
  },
  "oilseed-rape": { P2O5: one("pda-2020", 2), K2O: one("pda-2020", 13) },
  pea: { N: of("ipcc-2006-table-11-2", 6.7, 7.4, 8), P2O5: one("pda-2020", 4), K2O: one("pda-2020", 16) },
  "field-bean": {
    N: of("ipcc-2006-table-11-2", 6.7, 7.4, 8),
    P2O5: one("pda-2020", 2.5),
    K2O: one("pda-2020", 16),
  },
};

/**
 * What a tonne of straw holds.
 *
 * @returns kg of N, P₂O₅ or K₂O per tonne as it leaves the field; `science/no-figure-for-crop` where none is known
 *
 * Source: PDA 2020; Nebraska, Iowa, Ohio and Illinois extension; IPCC 2006, Table 11.2. A laboratory's own figure is
 * better.
 *
 * @example
 * nutrientPerTonne("winter-wheat", "K2O").value // => { low: 10, middle: 12.5, high: 22.5 }
 */
export const nutrientPerTonne = (crop: ResidueCrop, nutrient: Nutrient): Result<Ranged> => {
  const known = CONTENTS[crop]?.[nutrient];
  return known === undefined
    ? failed("science/no-figure-for-crop", { crop })
    : ok(assumed("nutrient", known, "kg/t", known.source));
};

const CONTENT = { unit: "kg/t", least: 0, most: 100 } as const;
const KG_PER_T = 1000;

/**
 * Content after rain on the swath: potash washes out, up to 80 % of it (Illinois).
 *
 * @param washedOut share that is gone, 0 to 1
 * @returns kg per tonne; `science/not-a-range` for a content outside 0 to 100 kg/t or a share outside 0 to 1
 *
 * @example
 * import { assumed } from "../residue/ranged.ts";
 * const rain = assumed("washed-out", { low: 0, middle: 0.4, high: 0.8 }, "1", "straw-nutrients-us");
 * afterRain(nutrientPerTonne("winter-wheat", "K2O").value, rain).value.low // => ≈ 2
 */
export const afterRain = (content: Ranged, washedOut: Ranged): Result<Ranged> => {
  const good = usable([
    [content, CONTENT],
    [washedOut, { unit: "1", least: 0, most: 1 }],
  ]);
  if (!good.ok) return good;
  return ok(
    ranged(
      [
        content.low * (1 - washedOut.high),
        content.middle * (1 - washedOut.middle),
        content.high * (1 - washedOut.low),
      ],
      "kg/t",
      { from: [content, washedOut], method: "straw-nutrients" },
    ),
  );
};

const POTASH_WASHES_OUT: Caution = { code: "science/nutrients-vary", facts: {} };

/**
 * What straw takes off the field: content times mass.
 *
 * @param straw kg/ha as it leaves the field
 * @returns kg of the nutrient per ha; 0 for no straw. `science/not-a-range` for a content outside 0 to 100 kg/t or
 * straw below 0 or above 200 t/ha
 *
 * @example
 * import { assumed, exactly } from "../residue/ranged.ts";
 * const straw = assumed("mass", exactly(4000), "kg/har", "yours");
 * nutrientTaken(nutrientPerTonne("winter-wheat", "K2O").value, straw).value // => { low: 40, middle: 50, high: 90 }
 */
export const nutrientTaken = (content: Ranged, straw: Ranged): Result<Ranged> => {
  const good = usable([
    [content, CONTENT],
    [straw, { unit: "kg/har", least: 0, most: MOST_MASS_KG_PER_HA }],
  ]);
  if (!good.ok) return good;
  const taken = (end: keyof Span): number => (content[end] * straw[end]) / KG_PER_T;
  return ok(
    ranged([taken("low"), taken("middle"), taken("high")], "kg/har", {
      from: [content, straw],
      method: "straw-nutrients",
      cautions: [POTASH_WASHES_OUT],
    }),
  );
};

const ELEMENT: Readonly<Record<Nutrient, number>> = { N: 1, P2O5: P_PER_P2O5, K2O: K_PER_K2O };

/**
 * Kilograms of the element in kilograms of the oxide: P in P₂O₅, K in K₂O.
 *
 * @param kg of N, P₂O₅ or K₂O
 * @returns `science/no-number` when it is negative or not finite
 *
 * Source: standard atomic weights.
 *
 * @example
 * asElement("P2O5", 100).value // => ≈ 43.6
 */
export const asElement = (nutrient: Nutrient, kg: number): Result<number> =>
  kg >= 0 && Number.isFinite(kg) ? ok(kg * ELEMENT[nutrient]) : failed("science/no-number");
