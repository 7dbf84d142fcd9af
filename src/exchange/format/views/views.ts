/** All views of an archive: which file each row of a test goes to. */
import type { VIEWS } from "../names.ts";
import { holeEntriesHead, holeEntriesRows, holesHead, holesRow } from "./hole-tables.ts";
import { linesHead, linesRow, marksHead, marksRows } from "./line-tables.ts";
import { mapFeature, mapFoot, mapGlue, mapHead } from "./map.ts";
import { notesHead, notesRow } from "./note-table.ts";
import { ringReadingsHead, ringReadingsRows, ringsHead, ringsRow } from "./ring-tables.ts";
import type { TestView } from "./test-view.ts";

/** Which view. */
export type ViewName = keyof typeof VIEWS;

/** What each view begins with. */
export const VIEW_HEADS: Readonly<Record<ViewName, string>> = {
  lines: linesHead,
  marks: marksHead,
  map: mapHead,
  rings: ringsHead,
  ringReadings: ringReadingsHead,
  holes: holesHead,
  holeEntries: holeEntriesHead,
  points: mapHead,
  notes: notesHead,
};

/** What a view ends with. */
export const VIEW_FEET: Partial<Readonly<Record<ViewName, string>>> = { map: mapFoot, points: mapFoot };

/** What stands between two pieces of a view. */
export const VIEW_GLUE: Partial<Readonly<Record<ViewName, string>>> = { map: mapGlue, points: mapGlue };

/** The pieces of one test, by view; a feature is left out when no position is known. */
export const piecesOf = (view: TestView): readonly (readonly [ViewName, string])[] => {
  const feature = mapFeature(view);
  const onMap = (name: ViewName): [ViewName, string][] => (feature === undefined ? [] : [[name, feature]]);
  switch (view.type) {
    case "line":
      return [["lines", linesRow(view)], ["marks", marksRows(view)], ...onMap("map")];
    case "ring":
      return [["rings", ringsRow(view)], ["ringReadings", ringReadingsRows(view)], ...onMap("points")];
    case "hole":
      return [["holes", holesRow(view)], ["holeEntries", holeEntriesRows(view)], ...onMap("points")];
    case "note":
      return [["notes", notesRow(view)]];
  }
};
