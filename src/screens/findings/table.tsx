/** The numbers of a measure as a table, in place of the drawing. */
import type { MeanFound } from "../../science/earthworms/worms-of-field.ts";
import { useHouse } from "../parts/house.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { useRangeWords } from "./drawing.tsx";
import type { Measure } from "./side-by-side/conditions.ts";
import { withUnit } from "./side-by-side/numbers.ts";
import { SIDE_WORDS } from "./side-by-side/words.ts";

/** One row. */
export interface Row {
  readonly key: string;
  readonly name: string;
  readonly found: MeanFound | null;
  /** Lines under the range; without a number, what stands in its place. */
  readonly beside: readonly string[];
}

/** A row for each strip, with its range and samples. */
export const ValuesTable = (props: { readonly measure: Measure; readonly rows: readonly Row[] }) => {
  const { measure, rows } = props;
  const words = useWordsOf(SIDE_WORDS);
  const { habits } = useHouse().settings.value;
  const rangeWords = useRangeWords();
  return (
    <table class="figures strips-table">
      <thead>
        <tr>
          <th scope="col">{words.strip}</th>
          <th scope="col" class="number">
            {words.value}
          </th>
          <th scope="col" class="number">
            {words.range}
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ key, name, found, beside }) => (
          <tr key={key}>
            <th scope="row">{name}</th>
            <td class="number">{found === null ? "\u2013" : withUnit(measure, found.value, habits)}</td>
            <td class="number range-cell">
              {found === null ? (
                beside.join(", ")
              ) : (
                <>
                  {rangeWords(measure, found)}
                  {beside.map((line) => (
                    <small key={line}>{line}</small>
                  ))}
                </>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};
