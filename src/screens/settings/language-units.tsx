/** Which English, and which units: asked at the first run and changed under Settings. */

import { HABITS, type HabitsName, type Quantity, UNITS_OF, type UnitHabits } from "../../record/units.ts";
import { Choice, Halves } from "../parts/keys.tsx";
import { TRADES, type Trade } from "../parts/trade.ts";
import { UNIT_WORDS } from "../parts/words.units.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { WELCOME_WORDS } from "../welcome/words.ts";
import { SETTINGS_WORDS } from "./words.ts";

/** The three sets of trade words, each with two words of its own. */
export const TradeChoice = (props: { readonly chosen: Trade; readonly onChoose: (trade: Trade) => void }) => {
  const words = useWordsOf(WELCOME_WORDS);
  return (
    <Choice
      question={words.language}
      column
      options={TRADES.map((trade) => ({
        value: trade,
        label: words.trades[trade],
        hint: words.tradeHints[trade],
      }))}
      chosen={props.chosen}
      onChoose={props.onChoose}
    />
  );
};

const NAMES = Object.keys(HABITS) as readonly HabitsName[];

/** Metric, US customary or mixed. */
export const UnitsChoice = (props: {
  readonly chosen: HabitsName;
  readonly onChoose: (name: HabitsName) => void;
}) => {
  const words = useWordsOf(WELCOME_WORDS);
  return (
    <Choice
      question={words.units}
      column
      options={NAMES.map((name) => ({
        value: name,
        label: words.habits[name],
        hint: words.habitHints[name],
      }))}
      chosen={props.chosen}
      onChoose={props.onChoose}
    />
  );
};

/** Quantities that have two units to choose from. */
const PAIRS = (Object.keys(UNITS_OF) as readonly Quantity[]).flatMap((quantity) => {
  const [metric, other] = UNITS_OF[quantity] as readonly UnitHabits[Quantity][];
  return metric === undefined || other === undefined || quantity === "share"
    ? []
    : [{ quantity, metric, other }];
});

/** Every quantity alone. */
export const EachUnit = (props: {
  readonly habits: UnitHabits;
  readonly onHabits: (habits: UnitHabits) => void;
}) => {
  const { habits, onHabits } = props;
  const words = useWordsOf(SETTINGS_WORDS);
  const unitWords = useWordsOf(UNIT_WORDS);
  return (
    <ul class="rows">
      {PAIRS.map(({ quantity, metric, other }) => (
        <li class="setting" key={quantity}>
          <span>{words.quantities[quantity]}</span>
          <Halves
            label={words.quantities[quantity]}
            options={[
              { value: metric, label: unitWords[metric] },
              { value: other, label: unitWords[other] },
            ]}
            chosen={habits[quantity]}
            onChoose={(unit) => onHabits({ ...habits, [quantity]: unit })}
          />
        </li>
      ))}
    </ul>
  );
};
