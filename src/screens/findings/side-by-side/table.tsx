/** The numbers of a measure as a table: of rings a row for each of the three times. */
import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import type { Drawn } from "../drawing.tsx";
import { type Row, ValuesTable } from "../table.tsx";
import type { MeasureNow } from "./model.ts";
import { SIDE_WORDS, type SideWords } from "./words.ts";

const rowsOf = (words: SideWords, { asked, sides }: MeasureNow, drawn: readonly Drawn[]) => {
  const lacking = [words.notSoLong];
  if (asked.measure !== "soak") return drawn;
  const after = (name: string, minutes: number) => words.afterMinutes(name, writeNumber(minutes, TONGUE));
  return drawn.flatMap(({ key, name, found, beside }): readonly Row[] => {
    const side = sides.find(({ strip }) => strip.id === key);
    if (side === undefined) return [{ key, name: after(name, asked.minutes), found, beside }];
    return side.strip.soak.after.map(({ minutes, mean }) => ({
      key: `${key} ${minutes}`,
      name: after(name, minutes),
      found: mean.ok ? mean.value : null,
      // What the drawing says is said of the depth that it shows.
      beside: !mean.ok ? lacking : minutes === asked.minutes ? beside : [],
    }));
  });
};

export const StripsTable = (props: { readonly measure: MeasureNow; readonly drawn: readonly Drawn[] }) => {
  const words = useWordsOf(SIDE_WORDS);
  return (
    <ValuesTable measure={props.measure.asked.measure} rows={rowsOf(words, props.measure, props.drawn)} />
  );
};
