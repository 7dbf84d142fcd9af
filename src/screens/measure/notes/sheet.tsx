/** The sheet that a note is written on. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { MAX_TEXT } from "../../../record/shapes.ts";
import { AskOnce } from "../../parts/ask-once.tsx";
import { fromHere } from "../../parts/from-here.ts";
import { useHouse } from "../../parts/house.ts";
import { Choice, Key, LinkKey } from "../../parts/keys.tsx";
import { fieldName, stripName } from "../../parts/names.ts";
import { writeDay } from "../../parts/numbers.ts";
import { useOnce } from "../../parts/once.ts";
import { Page } from "../../parts/page.tsx";
import { PhotoKey } from "../../parts/photos/photo-key.tsx";
import { Photos } from "../../parts/photos/photos.tsx";
import type { Listed } from "../../parts/reader.ts";
import { href } from "../../parts/route.ts";
import { useStanding } from "../../parts/standing.tsx";
import { useWordsOf } from "../../parts/words-of.ts";
import { type Draft, newDraft } from "./draft.ts";
import { type NotePlace, setNoteDeleted } from "./model.ts";
import { WhereItIs } from "./where.tsx";
import { NOTE_WORDS } from "./words.ts";
import "./notes.css";

interface SheetProps {
  readonly place: NotePlace;
  readonly onBegun: (id: RecordId<"observation">) => void;
}

/** The strip that a spot lies on, while there is one; old grass lies on none. */
const stripAt = ({ strips, stripOf }: NotePlace, { body }: Listed<"spot">): RecordId<"strip"> | null => {
  const { strip, oldGrass } = body;
  if (strip === null || oldGrass) return null;
  return strips.find(({ id }) => id === stripOf(strip))?.id ?? null;
};

/** The draft of this sheet, from the moment it is opened until it is left. */
const useDraft = ({ place, onBegun }: SheetProps, stood: Parameters<typeof newDraft>[0]["stood"]): Draft => {
  const house = useHouse();
  const draft = useRef<Draft | null>(null);
  draft.current ??= newDraft({
    house,
    on: {
      visit: place.visit.id,
      field: place.visit.body.field,
      spot: place.spot?.id ?? null,
      strip: place.spot === null ? null : stripAt(place, place.spot),
    },
    note:
      place.note === null
        ? null
        : { id: place.note.id, text: place.note.header.text, strip: place.note.header.strip },
    stood,
    onBegun,
  });
  const mine = draft.current;
  useEffect(() => {
    const hidden = () => {
      if (document.visibilityState === "hidden") void mine.flush();
    };
    const away = () => void mine.flush();
    document.addEventListener("visibilitychange", hidden);
    addEventListener("pagehide", away);
    return () => {
      document.removeEventListener("visibilitychange", hidden);
      removeEventListener("pagehide", away);
      void mine.leave();
    };
  }, [mine]);
  const header = place.note?.header;
  useEffect(() => {
    if (header !== undefined) mine.heard(header);
  }, [mine, header?.text, header?.strip]);
  return mine;
};

export const NoteSheet = (props: SheetProps) => {
  const { place } = props;
  const house = useHouse();
  const catalogue = house.words.value;
  const { notes: words } = useWordsOf(NOTE_WORDS);
  const isNew = useRef(place.note === null);
  const standing = useStanding();
  const stood = useRef(() => standing.stood);
  stood.current = () => standing.stood;
  const draft = useDraft(props, () => stood.current());
  const { note } = place;
  const back = href({ at: "visit", visit: place.visit.id });
  const title = isNew.current ? words.newTitle : words.title;
  const under = `${fieldName(catalogue, place.same.field)} · ${writeDay(
    place.visit.body.day,
    catalogue.common.tongue,
  )}`;
  if (note?.deleted === true)
    return (
      <Page title={words.title} under={under} back={back}>
        <p class="notice">{words.deleted}</p>
        <Key onPress={() => void setNoteDeleted(house, note.id, false)}>{words.bringBack}</Key>
      </Page>
    );
  // Writing on would choose one of two versions in silence.
  if (note !== null && note.versions > 1)
    return (
      <Page title={words.title} under={under} back={back}>
        <p class="note-text">{note.header.text}</p>
        <p class="notice">{words.twoVersions}</p>
        <LinkKey to={href({ at: "two-versions" })}>{words.chooseVersion}</LinkKey>
        <Photos of={note.id} caption={note.header.text} />
      </Page>
    );
  return (
    <Page title={title} under={under} back={back} foot={<UndoRedo draft={draft} />}>
      {place.spot === null ? null : (
        <p>{words.atSpot(place.spot.body.name === "" ? catalogue.common.noName : place.spot.body.name)}</p>
      )}
      <Words draft={draft} first={isNew.current} />
      <PhotoKey
        of={draft.ensure}
        before={draft.rest}
        onKept={(photo) => {
          draft.photoCame(photo, false);
        }}
      />
      {note === null ? null : <Photos of={note.id} caption={draft.text.value} onDeleted={draft.photoCame} />}
      <StripOfNote place={place} draft={draft} />
      <WhereItIs place={place} draft={draft} standing={standing} begunHere={isNew.current} />
      {note === null ? null : (
        <section class="ruled keys">
          <AskOnce
            label={words.delete}
            question={words.deleteAsk}
            hint={words.deleteHint}
            yes={catalogue.common.delete}
            onYes={async () => {
              const go = fromHere(house.go);
              await draft.flush();
              if (await setNoteDeleted(house, note.id, true)) go({ at: "visit", visit: place.visit.id });
            }}
          />
        </section>
      )}
    </Page>
  );
};

const Words = ({ draft, first }: { readonly draft: Draft; readonly first: boolean }) => {
  const { notes: words } = useWordsOf(NOTE_WORDS);
  const area = useRef<HTMLTextAreaElement>(null);
  useEffect(() => {
    if (first) area.current?.focus({ preventScroll: true });
  }, [first]);
  const said = (): string => {
    if (!draft.onRecord.value) return words.typing;
    return draft.note.value === null ? words.begins : words.onRecord;
  };
  return (
    <label class="write note-words">
      {words.label}
      <textarea
        ref={area}
        rows={5}
        maxLength={MAX_TEXT}
        autocapitalize="sentences"
        value={draft.text.value}
        onInput={(event) => draft.type(event.currentTarget.value)}
        onBlur={() => void draft.flush()}
      />
      <span class="aside">{said()}</span>
    </label>
  );
};

const UndoRedo = ({ draft }: { readonly draft: Draft }) => {
  const house = useHouse();
  const { common } = house.words.value;
  const { notes: words } = useWordsOf(NOTE_WORDS);
  const [busy, once] = useOnce();
  const [said, setSaid] = useState("");
  const { done, undone } = draft.steps.value;
  const step = (way: "undo" | "redo") =>
    once(async () => {
      const what = await draft.step(way);
      if (what !== null) setSaid(way === "undo" ? words.undone[what] : words.redone[what]);
    });
  const pending = !draft.onRecord.value;
  return (
    <>
      <p class="note-said" role="status">
        {pending ? "" : said}
      </p>
      <div class="keys two">
        <Key off={busy || (done.length === 0 && !pending)} onPress={() => step("undo")}>
          {common.undo}
        </Key>
        <Key off={busy || undone.length === 0 || pending} onPress={() => step("redo")}>
          {common.redo}
        </Key>
      </div>
    </>
  );
};

const WHOLE_FIELD = "whole-field";

const StripOfNote = ({ place, draft }: { readonly place: NotePlace; readonly draft: Draft }) => {
  const catalogue = useHouse().words.value;
  const { notes: words } = useWordsOf(NOTE_WORDS);
  const strips = place.strips.filter(({ body }) => !body.wholeField);
  const { value } = draft.strip;
  const chosen = value === null ? undefined : strips.find(({ id }) => id === place.stripOf(value));
  if (strips.length === 0) return null;
  return (
    <Choice<string>
      question={words.strip}
      options={[
        { value: WHOLE_FIELD, label: words.wholeField },
        ...strips.map((one) => ({ value: one.id, label: stripName(catalogue, one) })),
      ]}
      chosen={chosen?.id ?? WHOLE_FIELD}
      onChoose={(id) => void draft.chooseStrip(strips.find((one) => one.id === id)?.id ?? null)}
    />
  );
};
