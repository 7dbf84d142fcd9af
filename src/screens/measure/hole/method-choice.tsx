/** Which worm method a hole is dug by, or its own sizes. */
import { LAND_USES, type LandUse } from "../../../record/kinds/observation.ts";
import type { Hemisphere } from "../../../science/earthworms/protocol.ts";
import { type WormMethod, wormMethod, wormMethodsFor } from "../../../science/earthworms/worm-methods.ts";
import { useHouse } from "../../parts/house.ts";
import { Choice } from "../../parts/keys.tsx";
import { writeNumber } from "../../parts/numbers.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { type Choices, type Dig, seasonBeside } from "./new-model.ts";
import { OwnSizes } from "./own-sizes.tsx";
import { sizeWords } from "./sizes.ts";
import { HOLE_WORDS } from "./words.ts";

const OWN = "own";

/** The worm method first: it sets size, depth, minutes and season, per land use. */
export const MethodChoice = (props: {
  readonly dig: Dig;
  readonly choices: Choices;
  readonly hemisphere: Hemisphere | null;
  readonly onChoose: (patch: Partial<Choices>) => void;
  /** What the lines of own sizes say; they keep by themselves what is typed. */
  readonly onOwn: (own: Choices["own"]) => void;
}) => {
  const { choices, dig, onChoose } = props;
  const house = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const { habits } = house.settings.value;
  const methods = wormMethodsFor(choices.landUse);
  const chosen = choices.method === null ? undefined : wormMethod(choices.method);
  const hint = ({ name, minutes, mustard, holes, mark }: WormMethod): string =>
    [
      ...(minutes === null ? [] : [words.dig.minutes(writeNumber(minutes, TONGUE, 1))]),
      ...(mustard === null ? [] : [words.dig.mustard]),
      ...(holes === null ? [] : [words.dig.perField(holes)]),
      name,
      ...(mark === "not-checked" ? [words.dig.memory] : []),
    ].join(" · ");
  const season =
    chosen === undefined ? null : seasonBeside(chosen.season, dig.visit.body.day, props.hemisphere);
  const months = season === null ? "" : words.months(season.months);
  return (
    <>
      <Choice<LandUse>
        question={words.dig.landUse}
        options={LAND_USES.map((landUse) => ({ value: landUse, label: words.dig.landUses[landUse] }))}
        chosen={choices.landUse}
        onChoose={(landUse) => {
          const fits = wormMethodsFor(landUse);
          const stays = choices.method === null || fits.some(({ id }) => id === choices.method);
          onChoose({ landUse, method: stays ? choices.method : (fits[0]?.id ?? null) });
        }}
      />
      <Choice
        column
        question={words.dig.method}
        options={[
          ...methods.map((method) => ({
            value: method.id,
            label: sizeWords(words, method, habits),
            hint: hint(method),
          })),
          { value: OWN, label: words.dig.own, hint: words.dig.ownHint },
        ]}
        chosen={choices.method ?? OWN}
        onChoose={(method) => onChoose({ method: method === OWN ? null : method })}
      />
      {season === null ? null : (
        <p class={season.known ? "hole-caution" : "season"} role="status">
          {season.known ? words.dig.offSeason(months) : words.dig.season(months)}
        </p>
      )}
      {chosen !== undefined && chosen.mustard !== null ? (
        <p class="hole-caution">{words.mustardEyes}</p>
      ) : null}
      {choices.method === null ? (
        <OwnSizes templates={dig.templates} first={choices.own} onChange={props.onOwn} />
      ) : null}
    </>
  );
};
