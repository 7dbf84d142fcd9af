import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { photoDigest, photoName, volumeFileName } from "../../../src/exchange/format/names.ts";
import { csvHead, csvRow } from "../../../src/exchange/format/views/csv.ts";
import { linesHead, linesRow, marksHead, marksRows } from "../../../src/exchange/format/views/line-tables.ts";
import { mapFeature } from "../../../src/exchange/format/views/map.ts";
import type { LineView } from "../../../src/exchange/format/views/test-view.ts";
import { utcText } from "../../../src/exchange/format/views/utc.ts";
import { NO_STRIP } from "../../../src/record/ground.ts";
import { cellsOf, entry, id, nowhere, position, tied, viewOf as viewOfTest } from "./view-samples.ts";

describe("cells of a table", () => {
  // The beginnings that OWASP's page "CSV Injection" lists; the line feed is common practice, no source.
  test.each(["=", "+", "-", "@", "\t", "\r", "\n"])("a text that begins with %j is no formula", (start) => {
    const row = csvRow([`${start}cmd|' /C calc'!A0`]);
    expect(row.replace(/^"/, "").startsWith(`'${start}`)).toBe(true);
  });

  test("a number is never changed: western longitudes stay numbers", () => {
    expect(csvRow([-1.25, 0, 1e-7, -3])).toBe("-1.25,0,1e-7,-3\r\n");
  });

  test("commas, quotes and line breaks are quoted (RFC 4180, section 2)", () => {
    expect(csvRow(["a,b", 'say "so"', "two\r\nlines", null, ""])).toBe(
      '"a,b","say ""so""","two\r\nlines",,\r\n',
    );
  });

  test("a table begins with the byte order mark", () => {
    expect([...new TextEncoder().encode(csvHead(["field"]))].slice(0, 3)).toEqual([0xef, 0xbb, 0xbf]);
  });
});

test("moments are written as ECMAScript's own Date writes them, to the second", () => {
  fc.assert(
    fc.property(fc.integer({ min: Date.UTC(0, 0, 1), max: Date.UTC(9999, 11, 31) }), (ms) => {
      expect(utcText(ms)).toBe(`${new Date(ms).toISOString().slice(0, 19)}Z`);
    }),
    { numRuns: 5000 },
  );
  expect(utcText(Date.UTC(2024, 1, 29, 23, 59, 59, 999))).toBe("2024-02-29T23:59:59Z");
  expect(utcText(8.64e15)).toBe("");
});

test("names of files", () => {
  const digest = "a".repeat(64);
  expect(photoDigest(photoName(digest))).toBe(digest);
  expect(photoDigest("photos/../x.jpg")).toBeUndefined();
  expect(volumeFileName("2024-05-01", 2, 3)).toBe("mulchmark-2024-05-01-02-of-03.zip");
});

const lineBody = {
  type: "line",
  ...tied,
  rope: id("kit", 4),
  way: "mark-by-mark",
  angleToRowsDeg: 45,
  start: position(52.5, -1.25),
  end: position(52.6, -1.35),
  fifthKey: null,
  askThickness: false,
  rowSpacingM: null,
  passWidthM: null,
};
const mark = (n: number, at: number, cover: string, more: object = {}) =>
  entry(n, { type: "mark", mark: at, cover, ...more });

const viewOf = (header: object, entries: readonly object[], more: object = {}): LineView | undefined => {
  const view = viewOfTest(header, entries, more);
  return view?.type === "line" ? view : undefined;
};

describe("a line in the views", () => {
  const entries = [
    mark(1, 1, "residue", { stance: "standing" }),
    mark(2, 2, "bare"),
    mark(3, 4, "green"),
    mark(4, 5, "residue"),
    entry(5, { type: "thickness", mark: 4, value: 12, unit: "mm", typed: "12" }),
  ];

  test("has its counts, names, units and position", () => {
    const view = viewOf(lineBody, entries);
    if (view === undefined) throw new Error("no view");
    expect(cellsOf(linesHead, linesRow(view))).toMatchObject({
      field: "'=Top Field",
      strip: "A, north",
      "visit day": "2024-05-01",
      "begun (UTC)": "2024-05-01T10:00:00Z",
      "marks on the rope": "5",
      "spacing (m)": "0.3",
      "marks read": "4",
      "residue flat": "1",
      "residue standing": "1",
      bare: "1",
      green: "1",
      stone: "0",
      "not read": "1",
      "two answers": "0",
      "start latitude (deg)": "52.5",
      "start longitude (deg)": "-1.25",
      "end accuracy (m)": "4",
      "end accuracy means": "68-percent",
    });
    const rows = marksRows(view).trimEnd().split("\r\n");
    expect(rows).toHaveLength(4);
    expect(cellsOf(marksHead, rows[2] ?? "")).toMatchObject({
      mark: "4",
      "what lay there": "green",
      "mulch thickness": "12",
      "unit of thickness": "mm",
    });
  });

  test("shows two answers of two phones as two rows, in no sum", () => {
    const view = viewOf(lineBody, [mark(1, 1, "bare"), { ...mark(1, 1, "green"), id: "000000000000000f" }]);
    if (view === undefined) throw new Error("no view");
    expect(cellsOf(linesHead, linesRow(view))).toMatchObject({ "two answers": "1", bare: "0", green: "0" });
    expect(marksRows(view).trimEnd().split("\r\n")).toHaveLength(2);
  });

  test("names the marked spot, and on old grass no strip, whatever strip it was written down under", () => {
    const said = (more: object) => {
      const view = viewOf({ ...lineBody, ...more }, entries);
      if (view === undefined) throw new Error("no view");
      const { strip, "marked spot": spot, "old grass": grass } = cellsOf(linesHead, linesRow(view));
      const { properties } = JSON.parse(mapFeature(view) ?? "null");
      expect(properties).toMatchObject({ strip, markedSpot: spot, oldGrass: grass === "yes" });
      return [strip, spot, grass];
    };
    expect(said({})).toEqual(["A, north", "", "no"]);
    expect(said({ spot: id("spot", 5) })).toEqual(["A, north", "oak stake", "no"]);
    expect(said({ spot: id("spot", 4) })).toEqual(["", "old pasture", "yes"]);
    expect(said({ spot: id("spot", 4), strip: NO_STRIP })).toEqual(["", "old pasture", "yes"]);
    // Of a spot that is not in the file the missing strip says that it is old grass.
    expect(said({ spot: id("spot", 9), strip: NO_STRIP })).toEqual(["", "", "yes"]);
  });

  test("lies on the map as a line, a point, or not at all (RFC 7946: longitude first)", () => {
    const featureOf = (body: object): unknown => {
      const view = viewOf(body, entries);
      const text = view === undefined ? undefined : mapFeature(view);
      return text === undefined ? undefined : JSON.parse(text);
    };
    expect(featureOf(lineBody)).toMatchObject({
      type: "Feature",
      geometry: {
        type: "LineString",
        coordinates: [
          [-1.25, 52.5],
          [-1.35, 52.6],
        ],
      },
    });
    expect(featureOf({ ...lineBody, start: nowhere })).toMatchObject({
      geometry: { type: "Point", coordinates: [-1.35, 52.6] },
    });
    expect(featureOf({ ...lineBody, start: nowhere, end: nowhere })).toBeUndefined();
  });

  test("stays out when it was deleted", () => {
    expect(viewOf(lineBody, entries, { deleted: true })).toBeUndefined();
  });
});
