import { describe, expect, test } from "vitest";
import { notesHead, notesRow } from "../../../src/exchange/format/views/note-table.ts";
import { piecesOf } from "../../../src/exchange/format/views/views.ts";
import { cellsOf, id, nowhere, position, tied, viewOf } from "./view-samples.ts";

const { place: _, ...where } = tied;
const header = { ...where, type: "note", text: '=SUM(A1), "slaked"\nat the gate', at: position(52.5, -1.25) };
const noteView = (more: object = {}) => {
  const view = viewOf({ ...header, ...more }, []);
  if (view?.type !== "note") throw new Error("no note");
  return view;
};
const rowOf = (more: object = {}) => cellsOf(notesHead, notesRow(noteView(more)));

describe("a note in the views", () => {
  test("stands in the table of notes alone, with names, day and position", () => {
    expect(piecesOf(noteView()).map(([name]) => name)).toEqual(["notes"]);
    expect(rowOf()).toMatchObject({
      note: id("observation", 9),
      field: "'=Top Field",
      strip: "A, north",
      "visit day": "2024-05-01",
      "written (UTC)": "2024-05-01T10:00:00Z",
      "latitude (deg)": "52.5",
      "longitude (deg)": "-1.25",
      "accuracy (m)": "4",
      "accuracy means": "68-percent",
      position: "standing-still",
      "measured latitude (deg)": "",
    });
  });

  test("keeps its words, and no spreadsheet takes them for a formula", () => {
    expect(notesRow(noteView())).toContain('"\'=SUM(A1), ""slaked""\nat the gate"');
  });

  test("is of the whole field when no strip is named, and may have no position", () => {
    expect(rowOf({ strip: null, at: nowhere })).toMatchObject({
      strip: "",
      "latitude (deg)": "",
      "accuracy (m)": "",
      "accuracy means": "",
      position: "",
    });
  });

  test("keeps the measured position beside one that was moved by hand", () => {
    const measured = position(52.5, -1.25).position;
    const moved = {
      ...position(52.6, -1.2).position,
      how: "by-hand",
      accuracyM: null,
      accuracyMeans: null,
      movedFrom: measured,
    };
    expect(rowOf({ at: { position: moved, why: null } })).toMatchObject({
      "latitude (deg)": "52.6",
      "accuracy (m)": "",
      "accuracy means": "",
      position: "by-hand",
      "measured latitude (deg)": "52.5",
      "measured longitude (deg)": "-1.25",
    });
  });

  test("leaves a deleted note out", () => {
    expect(viewOf(header, [], { deleted: true })).toBeUndefined();
  });
});
