/** What the specialist states of the ground and the water, because no reading of a ring says it. */
import { useState } from "preact/hooks";
import type { TemperatureEntry } from "../../../record/conditions.ts";
import { ALPHA_PER_MM, SOIL_KINDS, type SoilKind } from "../../../science/infiltration/kfs/alpha.ts";
import { useHouse } from "../../parts/house.ts";
import { Choice, Key } from "../../parts/keys.tsx";
import { type NumberDraft, NumberLine, type NumberState, numberState } from "../../parts/number-line.tsx";
import { writeNumber } from "../../parts/numbers.ts";
import { useTried } from "../../parts/tried.ts";
import { TONGUE } from "../../parts/words.common.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { degreesOf } from "../hole/sizes.ts";
import { celsiusOf } from "./conditions.ts";
import type { GroundSaid } from "./specialist-model.ts";
import { SPECIALIST_WORDS } from "./words.specialist.ts";

/** Degrees of water that are taken without asking (own choice, no source). */
const USUAL_WATER = { C: { min: -0.1, max: 35 }, F: { min: 31.9, max: 95 } } as const;
/** Per cent of the volume that are taken without asking (own choice, no source). */
const USUAL_GAP = { min: 1, max: 60 } as const;

/** A temperature as it was typed, to be written down. */
export type WaterRead = Pick<TemperatureEntry, "value" | "unit" | "typed">;

const draftOf = (typed: string): NumberDraft => ({ typed, confirmed: typed !== "" });

/** A number that may stay empty. */
const orEmpty = (draft: NumberDraft, state: NumberState): number | null | undefined =>
  draft.typed.trim() === "" ? null : state.is === "good" ? state.value : undefined;

export const GroundForm = (props: {
  readonly said: GroundSaid;
  readonly water: TemperatureEntry | null;
  /** `read` is a temperature that was not on record yet. */
  readonly onSaid: (said: GroundSaid, read: WaterRead | null) => void;
}) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(SPECIALIST_WORDS);
  const unit = props.water?.unit ?? degreesOf(house.settings.value.habits);
  const [water, setWater] = useState(draftOf(props.water?.typed ?? ""));
  const [gap, setGap] = useState(
    draftOf(props.said.moistureGap === null ? "" : String(props.said.moistureGap * 100)),
  );
  const [tried, triedNow] = useTried();
  const sentences = words.refused;
  const waterNow = numberState(catalogue, water, {
    bounds: USUAL_WATER[unit],
    refuse: (value) => {
      const celsius = celsiusOf({ value, unit });
      return celsius >= 0 && celsius <= 60 ? null : sentences.water;
    },
  });
  const gapNow = numberState(catalogue, gap, {
    bounds: USUAL_GAP,
    refuse: (value) => (value > 0 && value < 100 ? null : sentences.gap),
  });
  const again = (soil: SoilKind) => {
    const degrees = orEmpty(water, waterNow);
    const percent = orEmpty(gap, gapNow);
    if (degrees === undefined || percent === undefined) {
      triedNow();
      return;
    }
    const typed = water.typed.trim();
    const isNew = degrees !== null && typed !== props.water?.typed;
    props.onSaid(
      {
        soil,
        waterC: degrees === null ? null : celsiusOf({ value: degrees, unit }),
        moistureGap: percent === null ? null : percent / 100,
      },
      isNew ? { value: degrees, unit, typed } : null,
    );
  };
  return (
    <>
      <Choice
        question={words.soil}
        options={SOIL_KINDS.map((soil) => ({
          value: soil,
          label: words.soils[soil],
          hint: words.alpha(writeNumber(ALPHA_PER_MM[soil], TONGUE, 3)),
        }))}
        chosen={props.said.soil}
        onChoose={again}
        column
      />
      <p class="aside">{words.soilHint}</p>
      <NumberLine
        label={words.water(`°${unit}`)}
        unit={`°${unit}`}
        hint={words.waterHint}
        draft={water}
        onDraft={setWater}
        state={waterNow}
        tried={tried && water.typed.trim() !== ""}
      />
      <NumberLine
        label={words.gap}
        unit="%"
        hint={words.gapHint}
        draft={gap}
        onDraft={setGap}
        state={gapNow}
        tried={tried && gap.typed.trim() !== ""}
      />
      <div class="keys beside">
        <Key onPress={() => again(props.said.soil)}>{words.again}</Key>
      </div>
    </>
  );
};
