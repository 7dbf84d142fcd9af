/** At which marked spot something is measured; nothing at all on a field that has none. */
import type { Position } from "../../../record/shapes.ts";
import { useHouse } from "../../parts/house.ts";
import { Choice } from "../../parts/keys.tsx";
import { lengthWords } from "../../parts/lengths.ts";
import { stripName } from "../../parts/names.ts";
import type { Listed } from "../../parts/reader.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { farFrom, type Ground, goToSpot, type SpotToChoose } from "./ground.ts";
import { SPOT_WORDS } from "./words.spots.ts";
import "./spots.css";

const NONE = "none";

export const SpotChoice = (props: {
  readonly spots: readonly SpotToChoose[];
  readonly strips: readonly Listed<"strip">[];
  readonly ground: Ground;
  /** The strip that stands there at first. */
  readonly usual: Ground["strip"];
  readonly here: Position | null;
  readonly onChoose: (ground: Ground) => void;
}) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(SPOT_WORDS);
  const { habits } = house.settings.value;
  const { spots, strips, ground, usual, here } = props;
  if (spots.length === 0) return null;
  const what = ({ oldGrass, strip }: SpotToChoose): string => {
    if (oldGrass) return words.oldGrass;
    const on = strips.find(({ id }) => id === strip);
    return on === undefined ? words.spot : words.onStrip(words.spot, stripName(catalogue, on));
  };
  const far = (spot: SpotToChoose): string => {
    if (spot.position === null) return words.nowhere;
    const found = farFrom(spot, here);
    if (found === null) return words.notYet;
    const distance = lengthWords("distance", found.metres, habits);
    return found.here ? words.here(distance) : words.away(distance);
  };
  return (
    <div class="spots">
      <Choice<string>
        question={words.question}
        column
        options={[
          ...spots.map((spot) => ({
            value: spot.id,
            label: spot.name === "" ? catalogue.common.noName : spot.name,
            hint: `${what(spot)}\n${far(spot)}`,
          })),
          { value: NONE, label: words.none },
        ]}
        chosen={spots.find(({ id }) => id === ground.spot)?.id ?? NONE}
        onChoose={(value) =>
          props.onChoose(goToSpot(ground, spots.find(({ id }) => id === value) ?? null, usual))
        }
      />
    </div>
  );
};
