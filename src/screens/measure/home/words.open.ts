/** Words of what was begun today and of what is not over. */
import { plural, writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import type { WordsOf } from "../../parts/words-of.ts";

/** How many of each were begun. */
export interface Counts {
  readonly lines: number;
  readonly holes: number;
  readonly rings: number;
}

const counted = (count: number, one: string): string =>
  `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one, other: `${one}s` })}`;

const all = ({ lines, holes, rings }: Counts): string =>
  (
    [
      [lines, "line"],
      [holes, "hole"],
      [rings, "ring"],
    ] as const
  )
    .flatMap(([count, one]) => (count === 0 ? [] : [counted(count, one)]))
    .join(", ");

const english = () => ({
  today: (counts: Counts) => (all(counts) === "" ? "nothing measured yet today" : `${all(counts)} today`),
  begunOn: (day: string, counts: Counts) =>
    `visit of ${day}, still going on: ${all(counts) === "" ? "nothing measured yet" : all(counts)}`,
  hole: (index: number) => `hole ${writeNumber(index, TONGUE)}`,
  worms: (count: number) => `${counted(count, "worm")} so far`,
  rings: (letters: readonly string[]) =>
    `${plural(letters.length, TONGUE, { one: "ring", other: "rings" })} ${new Intl.ListFormat(TONGUE).format(letters)}`,
  running: (count: number) => `${writeNumber(count, TONGUE)} running`,
  waiting: (count: number) => `${writeNumber(count, TONGUE)} waiting to start`,
});

export const OPEN_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
