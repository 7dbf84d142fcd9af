/** The numbers of a measure as a table, in place of the drawing. */
import type { Estimate } from "../../../science/estimate.ts";
import { useHouse } from "../../parts/house.ts";
import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { type Drawn, useRangeWords } from "./drawing.tsx";
import type { MeasureNow } from "./model.ts";
import { withUnit } from "./numbers.ts";
import { SIDE_WORDS } from "./words.ts";

/** The rows of the table: of rings one for each of the three times. */
const rowsOf = ({ asked, sides }: MeasureNow, drawn: readonly Drawn[]) => {
  if (asked.measure !== "soak")
    return drawn.map(({ key, name, estimate }): TableRow => ({ key, name, minutes: null, estimate }));
  return drawn.flatMap(({ key, name, estimate }): readonly TableRow[] => {
    const side = sides.find(({ strip }) => strip.id === key);
    if (side === undefined) return [{ key, name, minutes: asked.minutes, estimate }];
    return side.strip.soak.after.map(({ minutes, mean }) => ({
      key: `${key} ${minutes}`,
      name,
      minutes,
      estimate: mean.ok ? mean.value : null,
    }));
  });
};

interface TableRow {
  readonly key: string;
  readonly name: string;
  readonly minutes: number | null;
  readonly estimate: Estimate | null;
}

/** A row for each strip, with its range and samples. */
export const StripsTable = (props: { readonly measure: MeasureNow; readonly drawn: readonly Drawn[] }) => {
  const { measure, drawn } = props;
  const { settings } = useHouse();
  const words = useWordsOf(SIDE_WORDS);
  const { habits } = settings.value;
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
        {rowsOf(measure, drawn).map(({ key, name, minutes, estimate }) => (
          <tr key={key}>
            <th scope="row">
              {minutes === null ? name : words.afterMinutes(name, writeNumber(minutes, TONGUE))}
            </th>
            <td class="number">
              {estimate === null ? "\u2013" : withUnit(measure.asked.measure, estimate.value, habits)}
            </td>
            <td class="number range-cell">
              {estimate === null ? words.notSoLong : rangeWords(measure.asked.measure, estimate)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};
