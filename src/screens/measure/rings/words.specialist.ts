/** Words of what stands behind the sheet of a ring, for the specialist. */
import type { SoilKind } from "../../../science/infiltration/kfs/alpha.ts";
import type { PermeabilityName } from "../../../science/infiltration/kfs/permeability-class.ts";
import type { WordsOf } from "../../parts/words-of.ts";

const english = {
  title: "For the specialist",
  waiting: "Laying the curves …",
  stated: "What you state of the ground",
  soil: "What is the soil like?",
  soils: {
    "compacted-clay": "compacted clay without structure",
    "fine-without-structure": "clayey, without structure",
    "structured-or-medium-sand": "structured soil, clay to loam; medium or fine sand",
    "coarse-or-cracked": "coarse sand or gravel; large cracks, many burrows",
  } satisfies Record<SoilKind, string>,
  alpha: (value: string) => `α* ${value} per mm`,
  soilHint:
    "Stands in every conductivity below that says so. The entry next to it in this list changes one by up to about two times, and no reading shows which is right.",
  water: (unit: string) => `How warm was the water, in ${unit}?`,
  waterHint: "May stay empty: then there is no value for 20 °C.",
  gap: "Room for water in the soil, in % of its volume",
  gapHint:
    "Wet less dry, from a sample before the first pour. Only the falling head needs it. May stay empty.",
  again: "Work it out with these",
  refused: {
    water: "The temperature of the water lies between 0 and 60 °C (32 and 140 °F).",
    gap: "The room for water is a share between 0 and 100 %.",
  },
  curves: "Curves through the depths",
  curvesHint: "Hours and millimetres. No curve is right; differences of AICc below 2 say nothing.",
  chosen: (name: string) => `These readings speak most for: ${name}.`,
  criterion: (aicc: string, above: string | null) =>
    above === null ? `AICc ${aicc}, the lowest.` : `AICc ${aicc}, ${above} above the lowest.`,
  unknown: "unknown",
  value: "value",
  error: "standard error",
  held: "at its bound",
  leftOver: (spread: string, readings: string) =>
    `Left over at a reading, on average: ${spread} mm, of ${readings} readings.`,
  kfs: "Conductivity of the soil full of water",
  conductivity: (value: string) => `${value} mm/h`,
  at20: (value: string) => `${value} mm/h with water of 20 °C`,
  twoHeadsNeeds: "Needs two steady rates at two depths of water in the same ring. This test was read at one.",
  permeability: "Permeability class",
  classes: {
    "very-slow": "very slow",
    slow: "slow",
    "moderately-slow": "moderately slow",
    moderate: "moderate",
    "moderately-rapid": "moderately rapid",
    rapid: "rapid",
    "very-rapid": "very rapid",
  } satisfies Record<PermeabilityName, string>,
  classFromTo: (name: string, from: string, below: string | null) =>
    below === null ? `${name}: from ${from} mm/h on` : `${name}: ${from} to ${below} mm/h`,
  classTable:
    "By the NRCS classes for the permeability of saturated soil. The rate of a ring is more than that permeability, so this is a name of that table and no more.",
  share: "Hand over as a table (CSV)",
  save: "Save as a table (CSV)",
};

/** What every language says to the specialist at a ring. */
export type SpecialistWords = typeof english;

/** The words by language. */
export const SPECIALIST_WORDS = { en: () => english } satisfies WordsOf<SpecialistWords>;
