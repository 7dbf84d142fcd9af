/** A size typed into a form of the kit, in the person's unit; what nobody touched keeps its exact value. */
import { inUnit, toSi, type Unit } from "../../record/units.ts";
import type { Catalogue } from "../catalogue.ts";
import { type NumberDraft, type NumberState, numberState } from "../parts/number-line.tsx";
import { writeNumber } from "../parts/numbers.ts";
import { useTyped } from "../parts/typed.tsx";
import { TONGUE } from "../parts/words.common.ts";
import { UNIT_WORDS } from "../parts/words.units.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { KIT_WORDS } from "./words.ts";

/** What a size has to be, in SI: kept without asking within `usual`, refused outside `possible`, ends included. */
export interface SizeRule {
  readonly usual: readonly [low: number, high: number];
  readonly possible: readonly [low: number, high: number];
  /** The sentence for what is not possible. */
  readonly refused: string;
}

/** A size as it was put into the form, and the text that stands for it there. */
export interface KnownSize {
  readonly si: number;
  readonly text: string;
}

/** A size as it is written into a form: short enough to read, fine enough for a sixteenth of an inch. */
export const sizeText = (si: number, unit: Unit): string => String(Number(inUnit(si, unit).toPrecision(4)));

/**
 * The size to keep. A text that nobody touched stands for the exact value behind it: else 30 cm shown as
 * 11.81 inches would be kept as 29.997 cm.
 */
export const sizeToKeep = (known: KnownSize | null, typed: string, value: number, unit: Unit): number =>
  known !== null && known.text === typed ? known.si : toSi(value, unit);

// A hair wider, so that the ends themselves are kept without asking whatever the unit.
const HAIR = 1e-9;

/** Three digits, inside the bounds: what the sentence names is never refused. */
const inside = (value: number, round: (value: number) => number): number => {
  const one = 10 ** (Math.floor(Math.log10(value)) - 2);
  // A size that is short in SI may end in a hair in this unit.
  const count = value / one;
  return (Math.abs(count - Math.round(count)) < HAIR * 1000 ? Math.round(count) : round(count)) * one;
};

/**
 * What is possible, from the least to the most, as numbers in a unit.
 *
 * @example
 * possibleIn("in", [0.02, 3]) // => ["0.788", "118"]
 */
export const possibleIn = (
  unit: Unit,
  [least, most]: SizeRule["possible"],
): [least: string, most: string] => [
  writeNumber(inside(inUnit(least, unit), Math.ceil), TONGUE, 5),
  writeNumber(inside(inUnit(most, unit), Math.floor), TONGUE, 5),
];

/** `possibleIn` in words. */
export const usePossible = (unit: Unit): ((possible: SizeRule["possible"]) => string) => {
  const { between } = useWordsOf(KIT_WORDS);
  const inFull = useWordsOf(UNIT_WORDS)[unit];
  return (possible) => between(...possibleIn(unit, possible), inFull);
};

/** Reads a typed size by its rule. */
export const sizeState = (words: Catalogue, draft: NumberDraft, unit: Unit, rule: SizeRule): NumberState => {
  const [low, high] = rule.usual;
  return numberState(words, draft, {
    bounds: { min: inUnit(low, unit) - HAIR, max: inUnit(high, unit) + HAIR },
    refuse: (value) => {
      const si = toSi(value, unit);
      return si >= rule.possible[0] && si <= rule.possible[1] ? null : rule.refused;
    },
  });
};

/** A line of the form with what stands on it. */
export interface Measured {
  readonly draft: NumberDraft;
  readonly onDraft: (draft: NumberDraft) => void;
  readonly state: NumberState;
  /** In SI; null when the line was left empty and may be; undefined while it holds nothing to keep. */
  readonly si: number | null | undefined;
  /** Puts a size into the line. */
  readonly put: (si: number) => void;
}

const known = (si: number, unit: Unit): KnownSize => ({ si, text: sizeText(si, unit) });

/**
 * One size of a form; it begins with `before` or empty.
 *
 * @param name once in its form
 */
export const useMeasured = (
  name: string,
  words: Catalogue,
  unit: Unit,
  rule: SizeRule,
  before: number | null,
  mayBeEmpty: boolean,
): Measured => {
  const first = before === null ? null : known(before, unit);
  // What was typed in another unit is another size.
  const [{ exact, draft }, setLine] = useTyped<{
    readonly exact: KnownSize | null;
    readonly draft: NumberDraft;
  }>(`${name}, ${unit}`, { exact: first, draft: { typed: first?.text ?? "", confirmed: first !== null } });
  const empty = mayBeEmpty && draft.typed.trim() === "";
  const state: NumberState = empty ? { is: "good", value: 0 } : sizeState(words, draft, unit, rule);
  return {
    draft,
    onDraft: (typed) => setLine((line) => ({ ...line, draft: typed })),
    state,
    si: empty ? null : state.is === "good" ? sizeToKeep(exact, draft.typed, state.value, unit) : undefined,
    put: (si) => {
      const size = known(si, unit);
      setLine({ exact: size, draft: { typed: size.text, confirmed: true } });
    },
  };
};
