/** Notes in a list: their first words, and what tells them apart. */
import { useHouse } from "../../parts/house.ts";
import { href } from "../../parts/route.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { firstWords, type NoteRow } from "./model.ts";
import { NOTE_WORDS } from "./words.ts";

export const NoteRows = (props: {
  readonly notes: readonly NoteRow[];
  readonly when: (atMs: number) => string;
  /** Says at which marked spot each is; left out where all are at the same one. */
  readonly withSpot?: boolean;
}) => {
  const { common } = useHouse().words.value;
  const { notes: words } = useWordsOf(NOTE_WORDS);
  const spotOf = ({ spot }: NoteRow): readonly string[] => {
    if (props.withSpot !== true || spot === undefined) return [];
    const { name, oldGrass } = spot.body;
    if (oldGrass) return [common.oldGrass(name)];
    return [name === "" ? words.noSpotName : name];
  };
  return (
    <ul class="rows">
      {props.notes.map((note) => (
        <li key={note.id}>
          <a class="row" href={href({ at: "note", note: note.id })}>
            <span>
              <b>{note.header.text.trim() === "" ? words.wordless : firstWords(note.header.text)}</b>
              <small>
                {[
                  props.when(note.header.startedAtMs),
                  ...spotOf(note),
                  ...(note.photos === 0 ? [] : [words.photos(note.photos)]),
                ].join(" · ")}
              </small>
            </span>
          </a>
        </li>
      ))}
    </ul>
  );
};
