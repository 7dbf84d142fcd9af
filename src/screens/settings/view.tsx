/** Settings: what a person chose for this device. Stored values never change with it. */

import { useState } from "preact/hooks";
import { canSound } from "../../device/sound.ts";
import { canVibrate, vibrateFor } from "../../device/vibrate.ts";
import { HABITS, type HabitsName } from "../../record/units.ts";
import { DemoPart } from "../demo/demo-part.tsx";
import { useHouse } from "../parts/house.ts";
import { Choice, Tick } from "../parts/keys.tsx";
import { Page } from "../parts/page.tsx";
import { href } from "../parts/route.ts";
import type { Theme } from "../parts/settings.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { ClickerSettings } from "./clicker.tsx";
import { CountingSettings } from "./counting.tsx";
import { EachUnit, TradeChoice, UnitsChoice } from "./language-units.tsx";
import { presetOf } from "./model.ts";
import { People } from "./people.tsx";
import { ThisDevice } from "./this-device.tsx";
import { SETTINGS_WORDS } from "./words.ts";
import "./settings.css";

const THEMES: readonly Theme[] = ["auto", "daylight", "dusk"];

/** The screen. */
export const SettingsScreen = () => {
  const house = useHouse();
  const words = useWordsOf(SETTINGS_WORDS);
  return (
    <Page title={words.title} back={href({ at: "send" })} area="send">
      <People />
      <LanguageUnits />
      <section class="settings-part">
        <Choice
          question={words.themeQuestion}
          column
          options={THEMES.map((theme) => ({
            value: theme,
            label: words.themes[theme],
            hint: words.themeHints[theme],
          }))}
          chosen={house.settings.value.theme}
          onChoose={(theme) => house.changeSettings({ theme })}
        />
      </section>
      <CountingSettings />
      <FeltAndHeard />
      <ClickerSettings />
      <DemoPart />
      <ThisDevice />
    </Page>
  );
};

const LanguageUnits = () => {
  const house = useHouse();
  const words = useWordsOf(SETTINGS_WORDS);
  const { trade, habits } = house.settings.value;
  // Stays open when the single units happen to be those of a preset.
  const [mixed, setMixed] = useState(presetOf(habits) === "uk-mixed");
  const choose = (name: HabitsName) => {
    setMixed(name === "uk-mixed");
    house.changeSettings({ habits: HABITS[name] });
  };
  return (
    <section class="settings-part">
      <h2>{words.languageUnits}</h2>
      <TradeChoice chosen={trade} onChoose={(chosen) => house.changeSettings({ trade: chosen })} />
      <UnitsChoice chosen={mixed ? "uk-mixed" : presetOf(habits)} onChoose={choose} />
      {mixed ? (
        <>
          <h3>{words.eachUnit}</h3>
          <EachUnit habits={habits} onHabits={(chosen) => house.changeSettings({ habits: chosen })} />
        </>
      ) : null}
      <p>{words.unitsNote}</p>
    </section>
  );
};

const FeltAndHeard = () => {
  const house = useHouse();
  const words = useWordsOf(SETTINGS_WORDS);
  const { alarm, vibrate, sound } = house.settings.value;
  return (
    <section class="settings-part">
      <h2>{words.felt}</h2>
      <div class="keys">
        {canVibrate() ? (
          <Tick
            label={words.vibrate}
            hint={words.vibrateHint}
            on={vibrate}
            onChange={(on) => {
              house.changeSettings({ vibrate: on });
              if (on) vibrateFor("residue");
            }}
          />
        ) : null}
        {canSound() ? (
          <Tick
            label={words.sound}
            hint={words.soundHint}
            on={sound}
            onChange={(on) => house.changeSettings({ sound: on })}
          />
        ) : null}
        {canSound() ? (
          <Tick
            label={words.alarm}
            hint={words.alarmHint}
            on={alarm}
            onChange={(on) => house.changeSettings({ alarm: on })}
          />
        ) : null}
        {canVibrate() || canSound() ? null : <p>{words.noneFelt}</p>}
      </div>
    </section>
  );
};
