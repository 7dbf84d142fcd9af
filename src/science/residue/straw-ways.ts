/** Figures per crop for working straw out from the yield of grain. */
import { failed, ok, type Result } from "../../record/result.ts";
import { SINGLE_FIGURE_SPREAD } from "../constants/straw.ts";
import type { ResidueCrop } from "./crops.ts";
import { assumed, exactly, type Ranged, type Span } from "./ranged.ts";

/** A way of working straw out from grain. The ways differ by up to 1.8 times, so each answer says its own. */
export type StrawWay =
  | { readonly way: "harvest-index"; readonly harvestIndex: Ranged }
  | { readonly way: "straw-per-grain"; readonly ratio: Ranged }
  | { readonly way: "line"; readonly slope: Ranged; readonly interceptKgPerHa: Ranged };

const span = (low: number, middle: number, high: number): Span => ({ low, middle, high });

/** Grain over all that grew above ground, both dry: the commonest value with the lowest and the highest seen. */
const HARVEST_INDEX: Readonly<Partial<Record<ResidueCrop, Span>>> = {
  rice: span(0.17, 0.42, 0.56),
  "winter-wheat": span(0.31, 0.39, 0.53),
  "spring-wheat": span(0.31, 0.39, 0.53),
  maize: span(0.25, 0.53, 0.58),
  soybean: span(0.4, 0.42, 0.65),
  barley: span(0.32, 0.46, 0.63),
  "oilseed-rape": span(0.18, 0.3, 0.32),
};

/**
 * Kilograms of dry residue per kilogram of grain as weighed. Wheat: 51.9 lb dry per bushel of 60 lb (Illinois)
 * up to a straw:grain of 2.00 (Wysocki 1989), the middle between the rules of 1.1 to 1.5 in use. Maize: 45 and
 * 47.3 lb dry per bushel of 56 lb (Nebraska, Illinois). Sorghum: 45 of 56 (Nebraska). Soybean: 66.7 lb per
 * bushel of 60 lb (Nebraska). Oilseed rape: straw and chaff 65 to 70 lb per bushel of 50 lb (prairie figures),
 * up to the 1:2 of European rules. Spring wheat: 85 to 90 lb straw and chaff per bushel of 60 lb. Sorghum and
 * soybean have one figure each: their ends are a quarter to either side, a rule of this product.
 */
const STRAW_PER_GRAIN: Readonly<Partial<Record<ResidueCrop, Span>>> = {
  "winter-wheat": span(0.87, 1.25, 2),
  "spring-wheat": span(1.16, 1.45, 1.5),
  maize: span(0.8, 0.82, 0.85),
  sorghum: span(0.6, 0.8, 1),
  soybean: span(0.83, 1.11, 1.39),
  "oilseed-rape": span(1.3, 1.4, 2),
};

interface Line {
  /** Dry share of the grain as weighed. */
  readonly dry: number;
  readonly slope: number;
  /** Mg/ha. */
  readonly intercept: number;
}

/** IPCC 2006 Guidelines, volume 4, chapter 11, Table 11.2. */
const LINES: Readonly<Partial<Record<ResidueCrop, Line>>> = {
  maize: { dry: 0.87, slope: 1.03, intercept: 0.61 },
  "winter-wheat": { dry: 0.89, slope: 1.61, intercept: 0.4 },
  "spring-wheat": { dry: 0.89, slope: 1.29, intercept: 0.75 },
  barley: { dry: 0.89, slope: 0.98, intercept: 0.59 },
  oats: { dry: 0.89, slope: 0.91, intercept: 0.89 },
  rye: { dry: 0.88, slope: 1.09, intercept: 0.88 },
  rice: { dry: 0.89, slope: 0.95, intercept: 2.46 },
  sorghum: { dry: 0.89, slope: 0.88, intercept: 1.33 },
  millet: { dry: 0.9, slope: 1.43, intercept: 0.14 },
  soybean: { dry: 0.91, slope: 0.93, intercept: 1.35 },
  "dry-bean": { dry: 0.9, slope: 0.36, intercept: 0.68 },
  pea: { dry: 0.91, slope: 1.13, intercept: 0.85 },
  "field-bean": { dry: 0.91, slope: 1.13, intercept: 0.85 },
  peanut: { dry: 0.94, slope: 1.07, intercept: 1.54 },
  potato: { dry: 0.22, slope: 0.1, intercept: 1.06 },
};

const aside = (value: number): Span =>
  span(value * (1 - SINGLE_FIGURE_SPREAD), value, value * (1 + SINGLE_FIGURE_SPREAD));

/**
 * Dry share of the grain as it is weighed.
 *
 * @returns `science/no-figure-for-crop` where none is known
 *
 * Source: IPCC 2006, Table 11.2.
 *
 * @example
 * dryShareOf("maize").value.middle // => 0.87
 */
export const dryShareOf = (crop: ResidueCrop): Result<Ranged> => {
  const line = LINES[crop];
  return line === undefined
    ? failed("science/no-figure-for-crop", { crop })
    : ok(assumed("dry-matter", exactly(line.dry), "1", "ipcc-2006-table-11-2"));
};

/**
 * The ways that have figures for a crop, best known first. Peas and field beans use the line for beans and
 * pulses. A straight line is published without a range for its use in one field: a quarter to either side
 * stands in, a rule of this product.
 *
 * @returns none for a crop without figures: the person's own harvest index or ratio does as well
 *
 * @example
 * strawWaysOf("barley").map(({ way }) => way).join(" ") // => "harvest-index line"
 */
export const strawWaysOf = (crop: ResidueCrop): readonly StrawWay[] => {
  const ways: StrawWay[] = [];
  const index = HARVEST_INDEX[crop];
  if (index !== undefined)
    ways.push({
      way: "harvest-index",
      harvestIndex: assumed("harvest-index", index, "1", "harvest-index-table-s3"),
    });
  const ratio = STRAW_PER_GRAIN[crop];
  if (ratio !== undefined)
    ways.push({ way: "straw-per-grain", ratio: assumed("straw-per-grain", ratio, "1", "straw-per-bushel") });
  const line = LINES[crop];
  if (line !== undefined)
    ways.push({
      way: "line",
      slope: assumed("residue-line", aside(line.slope), "1", "ipcc-2006-table-11-2"),
      interceptKgPerHa: assumed(
        "residue-line",
        aside(line.intercept * 1000),
        "kg/har",
        "ipcc-2006-table-11-2",
      ),
    });
  return ways;
};
