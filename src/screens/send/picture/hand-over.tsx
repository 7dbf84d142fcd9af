/** A finished file, handed over in one touch: shared where the browser can, else saved, with words where it lies. */
import { useState } from "preact/hooks";
import { howToDeliver, saveFile, shareFile } from "../../../device/share.ts";
import { sentenceFor } from "../../catalogue.ts";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { useWordsOf } from "../../parts/words-of.ts";
import { PICTURE_WORDS } from "./words.ts";

export const HandOver = (props: {
  readonly file: File;
  /** The file is made still, and this one only of its type: its key keeps the room, and cannot be touched yet. */
  readonly waits?: boolean;
  readonly share: string;
  readonly save: string;
  readonly look: "straw" | "plain";
}) => {
  const house = useHouse();
  const words = useWordsOf(PICTURE_WORDS);
  const { file, waits = false } = props;
  const [refused, setRefused] = useState(false);
  const [said, setSaid] = useState("");
  const [wrong, setWrong] = useState("");
  const way = refused ? "save" : howToDeliver(file);
  const done = (sentence: string) => {
    setSaid(sentence);
    setWrong("");
    house.say(sentence);
  };
  const deliver = async () => {
    if (way === "save") {
      const saved = saveFile(file);
      if (saved.ok) done(words.saved(file.name));
      else setWrong(sentenceFor(house.words.value, saved.problem));
      return;
    }
    const shared = await shareFile(file);
    if (!shared.ok) {
      // Saved at the next touch: this one is spent.
      setRefused(true);
      setWrong(sentenceFor(house.words.value, shared.problem));
    } else if (shared.value === "shared") done(words.shared);
  };
  return (
    <div class="hand-over">
      <Key look={props.look} off={waits} onPress={() => void deliver()}>
        {way === "save" ? props.save : props.share}
      </Key>
      {said === "" ? way === "save" ? <p class="aside">{words.cannotShare}</p> : null : <p>{said}</p>}
      <p role="alert" class="wrong">
        {wrong}
      </p>
    </div>
  );
};
