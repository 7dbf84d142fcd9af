/** Sentences of results, with metric facts in the person's own units. */
import type { Problem } from "../../record/result.ts";
import { inUnit, type UnitHabits } from "../../record/units.ts";
import { type Catalogue, sentenceFor } from "../catalogue.ts";
import { lengthWords } from "./lengths.ts";
import { writeNumber } from "./numbers.ts";
import { TONGUE } from "./words.common.ts";

/** 5280 feet. */
const METRES_PER_MILE = 1609.344;

/**
 * A distance that nobody paces out.
 *
 * @example
 * farWords(50, { distance: "m" }) // => "50 km"
 */
export const farWords = (km: number, { distance }: Pick<UnitHabits, "distance">): string =>
  distance === "m"
    ? `${writeNumber(km, TONGUE, 1)} km`
    : `${writeNumber((km * 1000) / METRES_PER_MILE, TONGUE, 1)} miles`;

const GAP_WITH_UNIT = /\{(\w+)\} (mm|m|km)\b/g;

const measured = (value: number, unit: string, habits: UnitHabits): string => {
  if (unit === "km") return farWords(value, habits);
  if (unit === "m") return lengthWords("distance", value, habits);
  return habits.depthSoaked === "mm"
    ? `${writeNumber(value, TONGUE, 1)} mm`
    : `${writeNumber(inUnit(value / 1000, "in"), TONGUE, 2)} in`;
};

/**
 * The sentence for a reason or a caution. What stands in it as a gap and a metric unit, such as `{mm} mm`, is said
 * in the person's own units.
 *
 * @param more sentences by code
 */
export const ownSentence = (
  words: Catalogue,
  habits: UnitHabits,
  problem: Problem,
  more: Readonly<Record<string, string>>,
): string => {
  const { code, facts } = problem;
  const said = more[code]?.replace(GAP_WITH_UNIT, (gap, key: string, unit: string) => {
    const fact = facts[key];
    return typeof fact === "number" ? measured(fact, unit, habits) : gap;
  });
  return sentenceFor(words, problem, said === undefined ? {} : { [code]: said });
};
