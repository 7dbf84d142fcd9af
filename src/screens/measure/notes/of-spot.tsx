/** The notes of a marked spot, with the key that writes one there today. */
import type { RecordId } from "../../../record/ids.ts";
import { fromHere } from "../../parts/from-here.ts";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { useLastShown } from "../../parts/last-shown.ts";
import { useLive } from "../../parts/live.ts";
import { dayOf, writeClock, writeDay } from "../../parts/numbers.ts";
import { useOnce } from "../../parts/once.ts";
import type { SameField } from "../../parts/same-field.ts";
import { todaysVisit } from "../../parts/visits.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { readNotesAt } from "./model.ts";
import { NoteRows } from "./rows.tsx";
import { NOTE_WORDS } from "./words.ts";

export const NotesOfSpot = (props: { readonly same: SameField; readonly spot: RecordId<"spot"> }) => {
  const house = useHouse();
  const { tongue } = house.words.value.common;
  const { notes: words } = useWordsOf(NOTE_WORDS);
  const { spot } = props;
  const { field, ids } = props.same;
  const [busy, once] = useOnce();
  const notes = useLastShown(useLive(() => readNotesAt(house.records, ids, spot), [ids.join(" "), spot]));
  const write = async () => {
    const go = fromHere(house.go);
    const visit = await todaysVisit(house, ids);
    if (visit !== null) go({ at: "note-new", visit, spot });
  };
  return (
    <section class="ruled">
      <h2>{words.heading}</h2>
      <NoteRows
        notes={notes ?? []}
        when={(atMs) => `${writeDay(dayOf(atMs), tongue)}, ${writeClock(atMs, tongue)}`}
      />
      {field.deleted ? null : (
        <div class="beside">
          <Key off={busy} onPress={() => once(write)}>
            {words.writeHere}
          </Key>
        </div>
      )}
    </section>
  );
};
