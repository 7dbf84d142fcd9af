/** Which English, and which units: asked at the first run and changed under Settings. */
import { HABITS, type HabitsName, type Quantity, UNITS_OF, type UnitHabits } from "../../record/units.ts";
import { useHouse } from "../parts/house.ts";
import { Choice, Halves } from "../parts/keys.tsx";
import { TRADES, type Trade } from "../parts/trade.ts";

/** The three sets of trade words, each with two words of its own. */
export const TradeChoice = (props: { readonly chosen: Trade; readonly onChoose: (trade: Trade) => void }) => {
  const words = useHouse().words.value.welcome;
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
  const words = useHouse().words.value.welcome;
  return (
    <Choice
      question={words.units}
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
  const words = useHouse().words.value.settings;
  return (
    <ul class="rows">
      {PAIRS.map(({ quantity, metric, other }) => (
        <li class="setting" key={quantity}>
          <span>{words.quantities[quantity]}</span>
          <Halves
            label={words.quantities[quantity]}
            options={[
              { value: metric, label: words.units[metric] },
              { value: other, label: words.units[other] },
            ]}
            chosen={habits[quantity]}
            onChoose={(unit) => onHabits({ ...habits, [quantity]: unit })}
          />
        </li>
      ))}
    </ul>
  );
};
