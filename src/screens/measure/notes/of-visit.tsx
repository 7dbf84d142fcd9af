/** The notes of a visit, with the key that begins one. */
import type { RecordId } from "../../../record/ids.ts";
import { useHouse } from "../../parts/house.ts";
import { LinkKey } from "../../parts/keys.tsx";
import { useLastShown } from "../../parts/last-shown.ts";
import { useLive } from "../../parts/live.ts";
import { writeClock } from "../../parts/numbers.ts";
import { href } from "../../parts/route.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { readNotes } from "./model.ts";
import { NoteRows } from "./rows.tsx";
import { NOTE_WORDS } from "./words.ts";

/** Notes of these visits; a new one is begun on the first of them. */
export const NotesOfVisit = (props: {
  readonly visits: readonly RecordId<"visit">[];
  /** A field that was deleted takes no new note. */
  readonly closed?: boolean;
}) => {
  const house = useHouse();
  const { common } = house.words.value;
  const { notes: words } = useWordsOf(NOTE_WORDS);
  const [visit] = props.visits;
  const notes = useLastShown(useLive(() => readNotes(house.records, props.visits), [props.visits.join(" ")]));
  return (
    <section class="ruled">
      <h2>{words.heading}</h2>
      <NoteRows notes={notes ?? []} when={(atMs) => writeClock(atMs, common.tongue)} withSpot />
      {visit === undefined || props.closed === true ? null : (
        <div class="beside">
          <LinkKey to={href({ at: "note-new", visit, spot: null })}>{words.write}</LinkKey>
        </div>
      )}
    </section>
  );
};
