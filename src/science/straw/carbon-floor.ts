/** Residue that has to stay so that soil carbon does not fall, only where it was published. */
import { failed, ok, type Result } from "../../record/result.ts";
import { SINGLE_FIGURE_SPREAD } from "../constants/straw.ts";
import { assumed, type Ranged, type Span } from "../residue/ranged.ts";
import type { SourceId } from "../sources.ts";

/** What grows after what, and how the ground is worked. */
export interface CarbonSystem {
  readonly rotation: "continuous-maize" | "maize-soybean" | "other";
  readonly tillage: "no-till-or-chisel" | "mouldboard" | "other";
}

interface Floor extends CarbonSystem {
  readonly kgPerHa: Span;
  readonly source: SourceId;
}

const single = (value: number): Span => ({
  low: value * (1 - SINGLE_FIGURE_SPREAD),
  middle: value,
  high: value * (1 + SINGLE_FIGURE_SPREAD),
});

/**
 * Dry stover per hectare. Conservation tillage: 2.3 and 3.5 short tons per acre (Karlen) beside 5.25 and 7.90 Mg/ha
 * (Wilhelm et al. 2007), and as high end the 3.6 tons per acre that a later summary gives on average, saying that no
 * single number fits (Johnson et al. 2014). Mouldboard: 7.58 and 12.50 Mg/ha, one figure each, from memory.
 */
const FLOORS: readonly Floor[] = [
  {
    rotation: "continuous-maize",
    tillage: "no-till-or-chisel",
    kgPerHa: { low: 5156, middle: 5250, high: 8070 },
    source: "carbon-floor-maize",
  },
  {
    rotation: "maize-soybean",
    tillage: "no-till-or-chisel",
    kgPerHa: { low: 7846, middle: 7900, high: 8070 },
    source: "carbon-floor-maize",
  },
  {
    rotation: "continuous-maize",
    tillage: "mouldboard",
    kgPerHa: single(7580),
    source: "carbon-floor-mouldboard",
  },
  {
    rotation: "maize-soybean",
    tillage: "mouldboard",
    kgPerHa: single(12_500),
    source: "carbon-floor-mouldboard",
  },
];

/**
 * The dry stover that has to stay each year to hold soil carbon.
 *
 * @returns kg/ha; `science/no-carbon-floor` for any other crop or system: a floor of maize says nothing of wheat
 *
 * Source: Wilhelm et al. 2007 (which figure is for which system from memory); Karlen (USDA-ARS); Johnson et al. 2014;
 * the mouldboard figures from memory, a quarter to either side (own rule).
 *
 * @example
 * carbonFloor({ rotation: "continuous-maize", tillage: "no-till-or-chisel" }).value.middle // => 5250
 */
export const carbonFloor = ({ rotation, tillage }: CarbonSystem): Result<Ranged> => {
  const known = FLOORS.find((floor) => floor.rotation === rotation && floor.tillage === tillage);
  if (known === undefined) return failed("science/no-carbon-floor");
  const floor = assumed("carbon-floor", known.kgPerHa, "kg/har", known.source);
  return ok({ ...floor, cautions: [{ code: "science/carbon-floor-varies", facts: {} }] });
};
