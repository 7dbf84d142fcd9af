/** How lines are added up: stones, give or take, the ground cover aimed at. */

import { useState } from "preact/hooks";
import { TARGETS } from "../../science/ground-cover/targets.ts";
import { SOURCES } from "../../science/sources.ts";
import { useHouse } from "../parts/house.ts";
import { Choice, Key, Tick } from "../parts/keys.tsx";
import { NumberLine, type NumberRule, numberState } from "../parts/number-line.tsx";
import { useWordsOf } from "../parts/words-of.ts";
import { percentOf, type TargetName, targetOf } from "./model.ts";
import { SETTINGS_WORDS } from "./words.ts";

/** A number of the settings; it counts once its key was touched. */
const SettingNumber = (props: {
  readonly label: string;
  readonly hint?: string;
  readonly unit: string;
  readonly value: number | null;
  readonly rule: NumberRule;
  readonly onKeep: (value: number) => void;
}) => {
  const words = useHouse().words.value;
  const stands = props.value === null ? "" : String(props.value);
  const [draft, setDraft] = useState({ typed: stands, confirmed: false });
  const [tried, setTried] = useState(false);
  const state = numberState(words, draft, props.rule);
  const keep = () => {
    if (state.is === "good") {
      props.onKeep(state.value);
      // Shows what was understood: "7,5" stands as 7.5 from now on.
      setDraft({ typed: String(state.value), confirmed: true });
    }
    setTried(state.is !== "good");
  };
  return (
    <div class="keys">
      <NumberLine
        label={props.label}
        unit={props.unit}
        draft={draft}
        onDraft={setDraft}
        state={state}
        tried={tried}
        {...(props.hint === undefined ? {} : { hint: props.hint })}
      />
      <Key off={draft.typed.trim() === stands} onPress={keep}>
        {useWordsOf(SETTINGS_WORDS).keepNumber}
      </Key>
    </div>
  );
};

/** The section of Settings. */
export const CountingSettings = () => {
  const house = useHouse();
  const words = useWordsOf(SETTINGS_WORDS);
  const { stonesCount, marginPoints, targetPercent } = house.settings.value;
  const [own, setOwn] = useState(targetOf(targetPercent) === "own");
  const choose = (name: TargetName) => {
    setOwn(name === "own");
    if (name === "none") house.changeSettings({ targetPercent: null });
    else if (name !== "own") house.changeSettings({ targetPercent: percentOf(name) });
  };
  return (
    <section class="settings-part">
      <h2>{words.counting}</h2>
      <Tick
        label={words.stones}
        hint={words.stonesHint}
        on={stonesCount}
        onChange={(on) => house.changeSettings({ stonesCount: on })}
      />
      <SettingNumber
        label={words.margin}
        hint={words.marginHint}
        unit={words.marginUnit}
        value={marginPoints}
        rule={{
          // Plausible half widths; own choice, no source.
          bounds: { min: 0.99, max: 20 },
          refuse: (value) => (value > 0 && value <= 50 ? null : words.marginRefused),
        }}
        onKeep={(value) => house.changeSettings({ marginPoints: value })}
      />
      <Choice<TargetName>
        question={words.target}
        column
        options={[
          ...TARGETS.map(({ id, purposes, source }) => ({
            value: id as TargetName,
            label: words.targets[id],
            hint: words.targetHint(
              purposes.map((purpose) => words.purposes[purpose]).join(", "),
              words.marks[SOURCES[source].mark],
            ),
          })),
          { value: "own", label: words.targetOwn },
          { value: "none", label: words.targetNone },
        ]}
        chosen={own ? "own" : targetOf(targetPercent)}
        onChoose={choose}
      />
      {own ? (
        <SettingNumber
          label={words.targetOwnLabel}
          unit="%"
          value={targetPercent}
          rule={{
            bounds: { min: 0, max: 100 },
            refuse: (value) => (value > 0 && value < 100 ? null : words.targetRefused),
          }}
          onKeep={(value) => {
            house.changeSettings({ targetPercent: value });
            // An aim that is offered is that aim: what it is a share of comes with it, and is shown.
            setOwn(targetOf(value) === "own");
          }}
        />
      ) : null}
      <p>{words.targetNote}</p>
    </section>
  );
};
