/** Sizes of the kit in words, as finely as they were measured. */
import { inUnit, type UnitHabits } from "../../record/units.ts";
import { writeNumber } from "../parts/numbers.ts";
import { TONGUE } from "../parts/words.common.ts";

/**
 * A size of a ring or a hole. Half a millimetre across a ring of 30 cm is 0.3 % of its area: it is not
 * rounded away.
 *
 * @example
 * ringSizeWords(0.3045, { ringSize: "cm" }) // => "30.45 cm"
 */
export const ringSizeWords = (si: number, { ringSize }: Pick<UnitHabits, "ringSize">): string =>
  `${writeNumber(inUnit(si, ringSize), TONGUE, 2)} ${ringSize}`;

/**
 * The step of a ruler; a sixteenth of an inch needs four decimals.
 *
 * @example
 * stepWords(0.0015875, { level: "in" }) // => "0.0625 in"
 */
export const stepWords = (si: number, { level }: Pick<UnitHabits, "level">): string =>
  `${writeNumber(inUnit(si, level), TONGUE, 4)} ${level}`;
