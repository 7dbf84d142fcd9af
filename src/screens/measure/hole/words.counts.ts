/** Counts with their word. */
import { plural, writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";

export const number = (value: number): string => writeNumber(value, TONGUE);
const counted = (count: number, one: string, other = `${one}s`): string =>
  `${number(count)} ${plural(count, TONGUE, { one, other })}`;
export const worms = (count: number): string => counted(count, "worm");
export const holes = (count: number): string => counted(count, "hole");
export const people = (count: number): string => counted(count, "person", "people");
