/** A note: words as they come, photos, which strip, and where it is. There is nothing to press to keep it. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { useHouse } from "../../parts/house.ts";
import { useLive } from "../../parts/live.ts";
import { Page } from "../../parts/page.tsx";
import { href } from "../../parts/route.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { type NoteAt, readNotePlace } from "./model.ts";
import { NoteSheet } from "./sheet.tsx";
import { NOTE_WORDS } from "./words.ts";

/** The screen of a note, and of one that does not exist yet. It stays the same when the note begins to exist. */
export const NoteScreen = ({ at }: { readonly at: NoteAt }) => {
  // Drawn anew when the note begins to exist, the screen would take the keyboard away in mid-word.
  const begun = useRef<RecordId<"observation"> | null>(null);
  const [sheet, setSheet] = useState(0);
  const isBegun = "note" in at && at.note === begun.current;
  const key = "note" in at ? at.note : `${at.visit} ${at.spot ?? ""}`;
  const before = useRef(key);
  useEffect(() => {
    if (before.current === key) return;
    before.current = key;
    if (isBegun) return;
    begun.current = null;
    setSheet((n) => n + 1);
  }, [key, isBegun]);
  return (
    <NoteHere
      key={sheet}
      at={at}
      onBegun={(id) => {
        begun.current = id;
      }}
    />
  );
};

const NoteHere = (props: {
  readonly at: NoteAt;
  readonly onBegun: (id: RecordId<"observation">) => void;
}) => {
  const house = useHouse();
  const { notes: words } = useWordsOf(NOTE_WORDS);
  const { at, onBegun } = props;
  const place = useLive(
    () => readNotePlace(house.records, at),
    ["note" in at ? at.note : at.visit, "note" in at ? "" : at.spot],
  );
  if (place === undefined) return <div class="frame" aria-busy="true" />;
  if (place === null)
    return (
      <Page
        title={"note" in at ? words.gone : house.words.value.visit.gone}
        back={href({ at: "measure" })}
        area="measure"
      >
        {null}
      </Page>
    );
  return (
    <NoteSheet
      place={place}
      onBegun={(id) => {
        onBegun(id);
        // Loaded again, the address leads to the note and not to another new one.
        house.goInstead({ at: "note", note: id });
      }}
    />
  );
};
