/** Says on a screen that what stands there belongs to the example farm. */
import { isDemoId } from "../../record/demo-ids.ts";
import { href } from "../parts/route.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { DEMO_NOTE_WORDS } from "./words.note.ts";
import "./demo.css";

/** A line under the heading; nothing where the record is a person's own. */
export const DemoNote = (props: { readonly id: string | null | undefined }) => {
  const words = useWordsOf(DEMO_NOTE_WORDS);
  if (props.id === null || props.id === undefined || !isDemoId(props.id)) return null;
  return (
    <p class="demo-note">
      <a href={href({ at: "settings" })}>{words.note}</a>
    </p>
  );
};
