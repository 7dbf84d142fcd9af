/** The section of Settings that brings the example farm in and takes it away. */
import { useState } from "preact/hooks";
import { AskOnce } from "../parts/ask-once.tsx";
import { useHouse } from "../parts/house.ts";
import { Key, LinkKey } from "../parts/keys.tsx";
import { useLive } from "../parts/live.ts";
import { href } from "../parts/route.ts";
import { useWordsOf } from "../parts/words-of.ts";
import type { DemoHere } from "./here.ts";
import { bringDemo, readDemo, type TakenAway, takeDemoAway } from "./model.ts";
import { DEMO_WORDS, type DemoWords } from "./words.ts";
import { Working } from "./working.tsx";
import "./demo.css";

type Doing = { readonly is: "bringing" | "taking"; readonly share: number } | null;

/** The keys and what they did. */
export const DemoPart = () => {
  const house = useHouse();
  const words = useWordsOf(DEMO_WORDS);
  const [doing, setDoing] = useState<Doing>(null);
  const [taken, setTaken] = useState<TakenAway | null>(null);
  const idle = doing === null;
  // While it is being written every batch is a change: asked again only when it is over.
  const state = useLive(
    async () => (idle ? await readDemo(house) : null),
    [idle],
    () => idle,
  );
  const bring = async () => {
    setTaken(null);
    setDoing({ is: "bringing", share: 0 });
    await bringDemo(house, (share) => setDoing({ is: "bringing", share }));
    setDoing(null);
  };
  const take = async () => {
    setDoing({ is: "taking", share: 0 });
    setTaken(await takeDemoAway(house, (share) => setDoing({ is: "taking", share })));
    setDoing(null);
  };
  return (
    <section class="settings-part">
      <h2>{words.title}</h2>
      <p>{words.about}</p>
      <p role="status">{taken === null ? "" : takenWords(words, taken)}</p>
      {doing !== null ? <Working words={words[doing.is]} share={doing.share} /> : null}
      {idle && state !== undefined && state !== null ? (
        <Keys here={state.here} onBring={() => void bring()} onTake={take} />
      ) : null}
    </section>
  );
};

const takenWords = (words: DemoWords, { own, needed }: TakenAway): string =>
  own === 0 ? words.gone : words.goneBut(own, needed);

const Keys = (props: {
  readonly here: DemoHere;
  readonly onBring: () => void;
  readonly onTake: () => Promise<void>;
}) => {
  const words = useWordsOf(DEMO_WORDS);
  const { here, onBring, onTake } = props;
  const takeAway = (
    <AskOnce
      label={words.take}
      question={words.takeAsk}
      hint={words.takeHint}
      yes={words.takeYes}
      onYes={onTake}
    />
  );
  if (here === "none")
    return (
      <div class="keys">
        <Key onPress={onBring}>{words.bring}</Key>
      </div>
    );
  return (
    <>
      <p>{words.here[here]}</p>
      <div class="keys">
        {here === "whole" ? (
          <LinkKey to={href({ at: "fields" })}>{words.show}</LinkKey>
        ) : (
          <Key onPress={onBring}>{here === "part" ? words.bringRest : words.bring}</Key>
        )}
        {takeAway}
      </div>
    </>
  );
};
