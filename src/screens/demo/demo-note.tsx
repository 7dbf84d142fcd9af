/** Says on a screen that what stands there belongs to the example farm. */
import { isDemoId } from "../../record/demo-mark.ts";
import { href } from "../parts/route.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { DEMO_NOTE_WORDS } from "./words.note.ts";
import "./demo.css";

interface Of {
  readonly id: string | null | undefined;
}

/** A line under the heading; nothing where the record is a person's own. */
export const DemoNote = ({ id }: Of) => {
  const words = useWordsOf(DEMO_NOTE_WORDS);
  if (id === null || id === undefined || !isDemoId(id)) return null;
  return (
    <p class="demo-note">
      <a href={href({ at: "settings" })}>{words.note}</a>
    </p>
  );
};

/** In a row of a list where one's own stands beside it. */
export const DemoTag = ({ id }: Of) => {
  const words = useWordsOf(DEMO_NOTE_WORDS);
  if (id === null || id === undefined || !isDemoId(id)) return null;
  return <span class="demo-tag">{words.tag}</span>;
};
