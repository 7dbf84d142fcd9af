/** view/notes.csv. */
import { stoodCells, yesNo } from "./cells.ts";
import { csvHead, csvRow } from "./csv.ts";
import type { NoteView } from "./test-view.ts";
import { utcText } from "./utc.ts";

/** First row of view/notes.csv. */
export const notesHead = csvHead([
  "note",
  "field",
  "strip",
  "example",
  "visit day",
  "written (UTC)",
  "marked spot",
  "words",
  "latitude (deg)",
  "longitude (deg)",
  "accuracy (m)",
  "accuracy means",
  "position",
  "measured latitude (deg)",
  "measured longitude (deg)",
]);

/** The row of one note. A position that was moved by hand keeps the measured one beside it. */
export const notesRow = ({ id, field, strip, example, day, spot, header }: NoteView): string => {
  const { at } = header;
  const moved = at.position?.movedFrom;
  return csvRow([
    id,
    field,
    strip,
    yesNo(example),
    day,
    utcText(header.startedAtMs),
    spot,
    header.text,
    ...stoodCells(at),
    at.position?.how ?? null,
    moved?.latitudeDeg ?? null,
    moved?.longitudeDeg ?? null,
  ]);
};
