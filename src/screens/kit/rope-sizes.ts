/** Ropes: usual sizes and bounds. */
import { inUnit, toSi, type UnitHabits } from "../../record/units.ts";
import type { NumberRule } from "../parts/number-line.tsx";

/**
 * Two usual sizes. 15 cm: a tape of 15.2 m with 100 points, Journal of Soil and Water Conservation 76(5):
 * 403 (2021). 1 ft: a tape of 100 ft with a mark at every foot, University of Missouri Extension G1570
 * (1993); University of Nebraska, faculty publication 254.
 */
export const USUAL = {
  metric: { marks: 100, spacingM: toSi(15, "cm") },
  foot: { marks: 100, spacingM: toSi(1, "ft") },
} as const;

type SpacingUnit = UnitHabits["spacing"];

/** A spacing as it is written into the form, short enough to read. */
export const spacingText = (spacingM: number, unit: SpacingUnit): string =>
  String(Number(inUnit(spacingM, unit).toFixed(2)));

/** Marks that a rope may have; what is asked about is own choice, no source. */
export const marksRule = (refused: string): NumberRule => ({
  bounds: { min: 9, max: 501 },
  refuse: (value) => (Number.isInteger(value) && value >= 1 && value <= 10_000 ? null : refused),
});

/** Spacings that a rope may have: 1 cm to 3 m are kept without asking (own choice, no source). */
export const spacingRule = (unit: SpacingUnit, refused: string): NumberRule => ({
  bounds: { min: inUnit(0.0099, unit), max: inUnit(3.001, unit) },
  refuse: (value) => {
    const spacingM = toSi(value, unit);
    return spacingM >= 0.001 && spacingM <= 100 ? null : refused;
  },
});
