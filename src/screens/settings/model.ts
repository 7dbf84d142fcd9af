/** What Settings works out: which preset stands, what a taught key changes, which target is aimed at. */
import { answerOf, type KeyPress } from "../../device/keys.ts";
import { HABITS, type HabitsName, type Quantity, type UnitHabits } from "../../record/units.ts";
import { TARGETS } from "../../science/ground-cover/targets.ts";
import type { LineAnswer, Settings } from "../parts/settings.ts";

/** Answers in the order in which they are listed. */
export const ANSWERS: readonly LineAnswer[] = ["residue", "bare", "green", "stone", "own", "undo"];

const alike = (a: UnitHabits, b: UnitHabits): boolean =>
  (Object.keys(a) as Quantity[]).every((quantity) => a[quantity] === b[quantity]);

/** The preset that habits are; any others are mixed. */
export const presetOf = (habits: UnitHabits): HabitsName => {
  if (alike(habits, HABITS.metric)) return "metric";
  return alike(habits, HABITS.us) ? "us" : "uk-mixed";
};

/**
 * Keys after one was taught. One key has one answer: another answer that had it is left without.
 *
 * @returns the keys, and which answers lost theirs
 */
export const taught = (
  clicker: Settings["clicker"],
  answer: LineAnswer,
  press: KeyPress,
): { readonly clicker: Settings["clicker"]; readonly lost: readonly LineAnswer[] } => {
  const others = clicker.filter((meaning) => meaning.answer !== answer);
  const lost = others.filter((meaning) => answerOf([meaning], press) !== null);
  return {
    clicker: [
      ...others.filter((meaning) => !lost.includes(meaning)),
      { answer, key: press.key, code: press.code },
    ],
    lost: lost.map((meaning) => meaning.answer),
  };
};

/** The name of a key as it is written on it. */
export const keyName = (press: KeyPress, names: Readonly<Record<string, string>>): string => {
  const written = press.key === "" || press.key === "Unidentified" ? press.code : press.key;
  return names[written] ?? ([...written].length === 1 ? written.toUpperCase() : written);
};

/** A target that is offered, none, or a number of one's own. */
export type TargetName = (typeof TARGETS)[number]["id"] | "none" | "own";

/** Percent of an offered target. */
export const percentOf = (id: (typeof TARGETS)[number]["id"]): number =>
  Math.round((TARGETS.find((target) => target.id === id)?.share ?? 0) * 100);

/** Which target a percentage is. */
export const targetOf = (percent: number | null): TargetName => {
  if (percent === null) return "none";
  return TARGETS.find(({ id }) => percentOf(id) === percent)?.id ?? "own";
};
