/** Sizes, temperatures and times of a hole in the person's own units. */
import { fromShown, inUnit, toShown, type UnitHabits } from "../../../record/units.ts";
import { lengthWords } from "../../parts/lengths.ts";
import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import type { HoleWords } from "./words.ts";

/** "20 × 20 cm"; empty when the sides are not known. */
export const sidesWords = (
  words: HoleWords,
  sidesM: readonly [number, number] | null,
  habits: UnitHabits,
): string => {
  if (sidesM === null) return "";
  const [a, b] = sidesM.map((side) => toShown("ringSize", side, habits));
  return a === undefined || b === undefined
    ? ""
    : words.sides(writeNumber(a.value, TONGUE, 1), writeNumber(b.value, TONGUE, 1), a.unit);
};

/** "20 × 20 cm, 20 cm deep". */
export const sizeWords = (
  words: HoleWords,
  hole: { readonly sidesM: readonly [number, number] | null; readonly depthM: number },
  habits: UnitHabits,
): string => words.size(sidesWords(words, hole.sidesM, habits), lengthWords("ringSize", hole.depthM, habits));

/** Litres as the person carries water. */
export const litresWords = (litres: number, habits: UnitHabits): string =>
  lengthWords("waterCarried", litres / 1000, habits);

/** Litres of a number in the person's unit. */
export const litresFrom = (value: number, habits: UnitHabits): number =>
  inUnit(fromShown("waterCarried", value, habits), "L");

/** Litres of mustard water for one hole that are taken without asking (own choice, no source). */
const USUAL_LITRES = 15;

/** As much mustard water as is taken without asking, in the person's unit. */
export const usualWater = (habits: UnitHabits): number => USUAL_LITRES / litresFrom(1, habits);

/** The person's degrees; whoever measures distances in feet reads Fahrenheit. */
export const degreesOf = (habits: UnitHabits): "C" | "F" => (habits.distance === "ft" ? "F" : "C");

/** A temperature as it was read. */
export const readDegrees = (entry: { readonly value: number; readonly unit: "C" | "F" }): string =>
  `${writeNumber(entry.value, TONGUE, 1)} °${entry.unit}`;

/** Minutes and seconds, "6:05". */
export const minutesSeconds = (minutes: number): string => {
  const seconds = Math.floor(minutes * 60 + 1e-6);
  return `${writeNumber(Math.floor(seconds / 60), TONGUE)}:${String(seconds % 60).padStart(2, "0")}`;
};
