/** The section of Settings that brings the example farm in and takes it away. */
import { useState } from "preact/hooks";
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
  const here = state?.here;
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
      {doing !== null ? <Working words={words[doing.is]} share={doing.share} /> : null}
      {idle && here !== undefined ? (
        <Keys here={here} isTaken={taken !== null} onBring={() => void bring()} onTake={() => void take()} />
      ) : null}
      <p role="status">{taken === null ? "" : takenWords(words, taken)}</p>
      {idle && here !== undefined && here !== "none" ? <p>{words.here[here]}</p> : null}
    </section>
  );
};

const takenWords = (words: DemoWords, { own, needed }: TakenAway): string =>
  own === 0 ? words.gone : words.goneBut(own, needed);

/** The first key brings the farm in, takes it away and brings it back: always at the same place, in one touch. */
const Keys = (props: {
  readonly here: DemoHere;
  /** It was taken away just now. */
  readonly isTaken: boolean;
  readonly onBring: () => void;
  readonly onTake: () => void;
}) => {
  const words = useWordsOf(DEMO_WORDS);
  const { here, isTaken, onBring, onTake } = props;
  const takeAway = (
    <Key look="danger" onPress={onTake}>
      {words.take}
    </Key>
  );
  const bring = (
    <Key onPress={onBring}>{isTaken ? words.back : here === "part" ? words.bringRest : words.bring}</Key>
  );
  if (here === "none") return <div class="keys">{bring}</div>;
  return (
    <div class="keys">
      {here === "whole" ? takeAway : bring}
      {here === "whole" ? <LinkKey to={href({ at: "fields" })}>{words.show}</LinkKey> : takeAway}
    </div>
  );
};
