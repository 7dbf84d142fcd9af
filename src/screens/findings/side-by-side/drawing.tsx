/** One measure of all strips on one scale: marker, dash, words and range; colour is only the fourth thing. */
import { ok } from "../../../record/result.ts";
import type { Estimate } from "../../../science/estimate.ts";
import { useHouse } from "../../parts/house.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { Bar } from "../drawing.tsx";
import type { Measure } from "./conditions.ts";
import { rangeEnds, scaleEnd, shortUnit, valueText, withUnit } from "./numbers.ts";
import { SIDE_WORDS } from "./words.ts";

/** One line of the drawing. */
export interface Drawn {
  readonly key: string;
  readonly name: string;
  readonly estimate: Estimate;
  /** In the unit of the number; null when nobody guessed. */
  readonly guess: number | null;
}

/** Range and samples in words. */
export const useRangeWords = (): ((measure: Measure, estimate: Estimate) => string) => {
  const house = useHouse();
  const { common } = house.words.value;
  const words = useWordsOf(SIDE_WORDS);
  const { habits } = house.settings.value;
  return (measure, estimate) => {
    const ends = rangeEnds(measure, estimate, habits);
    const range = ends === null ? common.tooFew : common.range(ends[0], ends[1]);
    return `${range}, ${words.samples[measure](estimate.n)}`;
  };
};

export const ScaleDrawing = (props: { readonly measure: Measure; readonly drawn: readonly Drawn[] }) => {
  const { settings } = useHouse();
  const words = useWordsOf(SIDE_WORDS);
  const { habits } = settings.value;
  const { measure, drawn } = props;
  const rangeWords = useRangeWords();
  const end = scaleEnd(
    measure,
    drawn.map(({ estimate }) => estimate),
  );
  return (
    <div class="drawing">
      <ul>
        {drawn.map(({ key, name, estimate, guess }, series) => (
          <li key={key} class="drawn">
            <span class="drawn-label">
              <span>
                <b>{name}</b>
                <small>{rangeWords(measure, estimate)}</small>
                {guess === null ? null : <small>{words.guessed(withUnit(measure, guess, habits))}</small>}
              </span>
              <span class="drawn-value">
                {valueText(measure, estimate.value, habits)}
                <small> {shortUnit(measure, habits)}</small>
              </span>
            </span>
            <Bar
              series={series}
              found={{
                value: estimate.value / end,
                range: estimate.range.ok
                  ? ok({
                      lower: estimate.range.value.lower / end,
                      upper: estimate.range.value.upper / end,
                    })
                  : estimate.range,
              }}
              target={null}
            />
          </li>
        ))}
      </ul>
      <svg class="drawn-axis" height="26" width="100%" aria-hidden="true" focusable="false">
        <text x="4%" y="18" text-anchor="middle">
          {valueText(measure, 0, habits)}
        </text>
        <text x="100%" y="18" text-anchor="end">
          {withUnit(measure, end, habits)}
        </text>
      </svg>
    </div>
  );
};
