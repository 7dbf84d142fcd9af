/** The first run: one short page, then straight to the ground. */

import { useState } from "preact/hooks";
import { isIosTab } from "../../device/install.ts";
import { LookAtDemo } from "../demo/look-at-demo.tsx";
import { fromHere } from "../parts/from-here.ts";
import { useHouse } from "../parts/house.ts";
import { Key, WriteLine } from "../parts/keys.tsx";
import { useOnce } from "../parts/once.ts";
import { Page } from "../parts/page.tsx";
import { useWordsOf } from "../parts/words-of.ts";
import { TradeChoice, UnitsChoice } from "../settings/language-units.tsx";
import { firstChoice } from "./first-choice.ts";
import { WELCOME_WORDS } from "./words.ts";
import "./welcome.css";
import { type Answers, begin } from "./model.ts";

/** The first page that anybody sees. */
export const WelcomeScreen = () => {
  const house = useHouse();
  const { common } = house.words.value;
  const welcome = useWordsOf(WELCOME_WORDS);
  const [answers, setAnswers] = useState<Answers>(() => ({ ...firstChoice(navigator.languages), name: "" }));
  const [busy, once] = useOnce();
  const start = async (measureNow: boolean) => {
    const goInstead = fromHere(house.goInstead);
    const visit = await begin(house, answers, measureNow);
    if (visit === undefined) return;
    // Takes the place of this page: Back must not lead to questions that were answered.
    if (!measureNow || visit === null) goInstead({ at: "field-new" });
    else goInstead(visit === "elsewhere" ? { at: "measure" } : { at: "visit", visit });
  };
  return (
    <Page
      title={common.product}
      under={common.tagline}
      foot={
        <>
          <Key look="straw" off={busy} onPress={() => once(() => start(true))}>
            {welcome.now}
          </Key>
          <Key off={busy} onPress={() => once(() => start(false))}>
            {welcome.field}
          </Key>
        </>
      }
    >
      <p class="welcome-stays">{welcome.stays}</p>
      {isIosTab() ? (
        <section>
          <h2>{welcome.iosTitle}</h2>
          <p>{welcome.ios}</p>
        </section>
      ) : null}
      <TradeChoice chosen={answers.trade} onChoose={(trade) => setAnswers({ ...answers, trade })} />
      <UnitsChoice chosen={answers.habits} onChoose={(habits) => setAnswers({ ...answers, habits })} />
      <h2>{welcome.who}</h2>
      <WriteLine
        label={welcome.name}
        hint={welcome.nameHint}
        value={answers.name}
        onWrite={(name) => setAnswers({ ...answers, name })}
      />
      <p class="welcome-later">{welcome.later}</p>
      <LookAtDemo begin={async () => (await begin(house, answers, false)) !== undefined} />
    </Page>
  );
};
