/** The key of the first run that brings the example farm in and shows it. */
import { useState } from "preact/hooks";
import { fromHere } from "../parts/from-here.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { useWordsOf } from "../parts/words-of.ts";
import { bringDemo } from "./model.ts";
import { DEMO_WORDS } from "./words.ts";
import { Working } from "./working.tsx";
import "./demo.css";

/** `begin` keeps the answers of the first run; false when they could not be kept, and the reason was shown. */
export const LookAtDemo = (props: { readonly begin: () => Promise<boolean> }) => {
  const house = useHouse();
  const words = useWordsOf(DEMO_WORDS);
  const [share, setShare] = useState<number | null>(null);
  const look = async () => {
    const goInstead = fromHere(house.goInstead);
    setShare(0);
    if ((await props.begin()) && (await bringDemo(house, setShare))) goInstead({ at: "fields" });
    else setShare(null);
  };
  return (
    <section>
      <h2>{words.title}</h2>
      <p>{words.about}</p>
      {share === null ? (
        <div class="keys">
          <Key onPress={() => void look()}>{words.look}</Key>
        </div>
      ) : (
        <Working words={words.bringing} share={share} />
      )}
    </section>
  );
};
