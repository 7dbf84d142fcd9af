/** Lengths in the person's own units. */
import { type Quantity, toShown, type UnitHabits } from "../../record/units.ts";
import { writeNumber } from "./numbers.ts";
import { TONGUE } from "./words.common.ts";

const DECIMALS = {
  mm: 0,
  cm: 1,
  m: 0,
  in: 1,
  ft: 0,
  ha: 2,
  ac: 2,
  mL: 0,
  L: 1,
  "fl-oz": 1,
  gal: 1,
  "%": 0,
} as const;

/**
 * A quantity with its unit, as the person writes it.
 *
 * @param si the value in SI units
 */
export const lengthWords = (quantity: Quantity, si: number, habits: UnitHabits): string => {
  const { value, unit } = toShown(quantity, si, habits);
  return `${writeNumber(value, TONGUE, DECIMALS[unit])} ${unit}`;
};
