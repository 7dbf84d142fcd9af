import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { VIEWS } from "../../../src/exchange/format/names.ts";
import { readmeText } from "../../../src/exchange/format/readme.ts";
import {
  holeEntriesHead,
  holeEntriesRows,
  holesHead,
  holesRow,
} from "../../../src/exchange/format/views/hole-tables.ts";
import { mapFeature } from "../../../src/exchange/format/views/map.ts";
import {
  ringReadingsHead,
  ringReadingsRows,
  ringsHead,
  ringsRow,
} from "../../../src/exchange/format/views/ring-tables.ts";
import { piecesOf, VIEW_HEADS } from "../../../src/exchange/format/views/views.ts";
import { cellsOf, entry, id, nowhere, position, rowsOf, tied, viewOf } from "./view-samples.ts";

const startMs = tied.startedAtMs;
const at = (n: number, minutes: number, more: object) =>
  entry(n, {
    lookedAtMs: startMs + minutes * 60_000,
    enteredAtMs: startMs + minutes * 60_000,
    monoMs: minutes * 60_000,
    ...more,
  });

const ringHeader = {
  ...tied,
  type: "ring",
  ring: id("kit", 6),
  outer: null,
  ruler: id("kit", 7),
  bottle: null,
  way: "ruler",
  rulerReads: "down-from-rim",
  mulch: "kept",
  rimToSoilM: [0.1, 0.101],
  planMin: [1, 5, 10],
  at: position(52.5, -1.25),
  follows: null,
};
const level = (n: number, minutes: number, value: number, more: object = {}) =>
  at(n, minutes, {
    type: "level",
    ring: "inner",
    value,
    unit: "mm",
    reads: "down-from-rim",
    typed: String(value),
    timed: "now",
    ...more,
  });

const ringView = (entries: readonly object[], header: object = {}) => {
  const view = viewOf({ ...ringHeader, ...header }, entries);
  if (view?.type !== "ring") throw new Error("no ring");
  return view;
};

describe("a ring test in the views", () => {
  const entries = [
    at(1, 0, { type: "start", timed: "now" }),
    level(2, 0, 20),
    at(3, 4, { type: "happened", what: "burrow", words: "=at the edge, near", timed: "now" }),
    level(4, 5, 31),
    at(5, 10, { type: "look", ring: "inner" }),
    at(6, 12, { type: "stop", why: "done", timed: "now" }),
  ];

  test("has the sizes of its ring and how it was read, and no result", () => {
    expect(cellsOf(ringsHead, ringsRow(ringView(entries)))).toMatchObject({
      field: "'=Top Field",
      strip: "A, north",
      "visit day": "2024-05-01",
      "marked spot": "",
      "old grass": "no",
      ring: "'+A",
      "inside 1 (m)": "0.3",
      "inside 2 (m)": "0.302",
      "outside (m)": "",
      "height 2 (m)": "0.201",
      "height 3 (m)": "",
      "ruler step (m)": "0.001",
      "rim to ground 2 (m)": "0.101",
      "readings due after (min)": "1 5 10",
      "clock began (UTC)": "2024-05-01T10:00:00Z",
      "clock ended (UTC)": "2024-05-01T10:12:00Z",
      "why it ended": "done",
      readings: "2",
      "looks without a number": "1",
      "two answers": "0",
      "latitude (deg)": "52.5",
    });
    expect(ringsHead).not.toMatch(/mm\/h|rate|soaked/);
  });

  test("on old grass names no strip, and neither does a hole there", () => {
    const grass = { spot: id("spot", 4) };
    const there = { strip: "", "marked spot": "old pasture", "old grass": "yes" };
    expect(cellsOf(ringsHead, ringsRow(ringView(entries, grass)))).toMatchObject(there);
    expect(cellsOf(holesHead, holesRow(holeView([], grass)))).toMatchObject(there);
    for (const view of [ringView(entries, grass), holeView([], grass)])
      expect(JSON.parse(mapFeature(view) ?? "null")).toMatchObject({
        properties: { strip: "", markedSpot: "old pasture", oldGrass: true },
      });
  });

  test("has its readings as they were read, in order, a text never a formula", () => {
    const rows = rowsOf(ringReadingsHead, ringReadingsRows(ringView(entries)));
    expect(rows.map(({ what }) => what)).toEqual(["start", "level", "burrow", "level", "look", "stop"]);
    expect(rows[2]).toMatchObject({ words: "'=at the edge, near", "since the start (s)": "240" });
    expect(rows[3]).toMatchObject({
      value: "31",
      unit: "mm",
      "the ruler shows": "down-from-rim",
      "looked at (UTC)": "2024-05-01T10:05:00Z",
      "since the start (s)": "300",
      "entered later": "no",
      corrected: "no",
    });
  });

  test("shows a correction as one row and two answers of two phones as two", () => {
    const corrected = ringView([
      ...entries.slice(0, 4),
      level(7, 5, 13, { replaces: ["0000000000000004"], lookedAtMs: startMs + 300_000 }),
    ]);
    const rows = rowsOf(ringReadingsHead, ringReadingsRows(corrected));
    expect(rows.filter(({ what }) => what === "level").map(({ value }) => value)).toEqual(["20", "13"]);
    expect(rows.at(-1)).toMatchObject({ corrected: "yes" });
    const doubtful = ringView([
      ...entries.slice(0, 5),
      level(7, 10, 40, { of: "0000000000000005" }),
      level(8, 10, 45, { of: "0000000000000005", device: "00000000000000d2" }),
    ]);
    const both = rowsOf(ringReadingsHead, ringReadingsRows(doubtful));
    expect(both.filter((row) => row["two answers"] === "yes").map(({ value }) => value)).toEqual([
      "40",
      "45",
    ]);
    expect(cellsOf(ringsHead, ringsRow(doubtful))).toMatchObject({ readings: "2", "two answers": "1" });
  });

  test("is shown without a start, and with a kit that is not there", () => {
    const view = ringView([level(1, 0, 20)], { ring: id("kit", 99) });
    expect(cellsOf(ringsHead, ringsRow(view))).toMatchObject({
      ring: "",
      "inside 1 (m)": "",
      "clock began (UTC)": "",
    });
    expect(rowsOf(ringReadingsHead, ringReadingsRows(view))[0]).toMatchObject({ "since the start (s)": "" });
  });
});

const holeHeader = {
  ...tied,
  type: "hole",
  template: id("kit", 8),
  sidesM: null,
  depthM: 0.2,
  method: null,
  landUse: "cropland",
  minutes: 5,
  mustardMin: null,
  at: position(-33.5, 151.25),
  number: 3,
};
const holeView = (entries: readonly object[], header: object = {}) => {
  const view = viewOf({ ...holeHeader, ...header }, entries);
  if (view?.type !== "hole") throw new Error("no hole");
  return view;
};

describe("a hole in the views", () => {
  const entries = [
    at(1, 0, { type: "sorting", people: 2, from: "soil" }),
    at(2, 1, { type: "worm", from: "soil" }),
    at(3, 2, { type: "worm", from: "soil" }),
    at(4, 3, { type: "placed", group: "young" }),
    at(5, 4, { type: "temperature", of: "soil", value: 54, unit: "F", typed: "54" }),
    at(6, 5, { type: "closed" }),
  ];

  test("has its counts and sizes; a layer that nobody looked at is empty and not nought", () => {
    expect(cellsOf(holesHead, holesRow(holeView(entries)))).toMatchObject({
      number: "3",
      "hole template": "frame",
      "side 1 (m)": "0.2",
      "side 2 (m)": "0.25",
      "depth (m)": "0.2",
      "worms in the mulch": "",
      "worms in the soil": "2",
      "worms from mustard water": "",
      "placed: young": "1",
      "placed: deep": "0",
      "left in the pot": "1",
      finished: "yes",
      "longitude (deg)": "151.25",
    });
    // 54 °F is (54 - 32)·5/9 = 12.2 °C (NIST Special Publication 811, appendix B.8).
    expect(Number(cellsOf(holesHead, holesRow(holeView(entries)))["soil temperature (degC)"])).toBeCloseTo(
      12.222,
      3,
    );
    expect(holesHead).not.toContain("m2");
  });

  test("takes own sizes when there is no template", () => {
    const view = holeView(entries, { template: null, sidesM: [0.5, 0.5] });
    expect(cellsOf(holesHead, holesRow(view))).toMatchObject({ "hole template": "", "side 2 (m)": "0.5" });
  });

  test("has one row an entry that counts, as it was written down", () => {
    const undone = [...entries.slice(0, 3), at(7, 6, { type: "undo", takesBack: "0000000000000003" })];
    const rows = rowsOf(holeEntriesHead, holeEntriesRows(holeView(undone)));
    expect(rows.map(({ what }) => what)).toEqual(["sorting", "worm"]);
    expect(rows[0]).toMatchObject({ "people sorting": "2", layer: "soil", number: "3" });
    const warm = rowsOf(holeEntriesHead, holeEntriesRows(holeView(entries)))[4];
    expect(warm).toMatchObject({ what: "temperature of the soil", value: "54", unit: "F" });
  });

  test("counts nothing where two phones contradict each other, and shows both", () => {
    const total = (n: number, count: number, more: object = {}) =>
      at(n, n, { type: "found", from: "soil", count, typed: String(count), ...more });
    const view = holeView([
      total(1, 12),
      { ...total(1, 14), id: "000000000000000f", device: "00000000000000d2" },
    ]);
    expect(cellsOf(holesHead, holesRow(view))).toMatchObject({
      "worms in the soil": "",
      "left in the pot": "",
      "numbers with two answers": "1",
    });
    const rows = rowsOf(holeEntriesHead, holeEntriesRows(view));
    expect(rows.map((row) => [row["worms"], row["two answers"]])).toEqual([
      ["12", "yes"],
      ["14", "yes"],
    ]);
  });
});

test("rings and holes lie on the map as points (RFC 7946: longitude first), or not at all", () => {
  const featureOf = (view: Parameters<typeof mapFeature>[0]): unknown => {
    const text = mapFeature(view);
    return text === undefined ? undefined : JSON.parse(text);
  };
  expect(featureOf(ringView([]))).toMatchObject({
    type: "Feature",
    geometry: { type: "Point", coordinates: [-1.25, 52.5] },
    properties: { test: "ring", ring: "+A", field: "=Top Field", mulchInTheRing: "kept" },
  });
  expect(featureOf(holeView([]))).toMatchObject({
    geometry: { type: "Point", coordinates: [151.25, -33.5] },
    properties: { test: "hole", hole: 3 },
  });
  expect(featureOf(ringView([], { at: nowhere }))).toBeUndefined();
  expect(piecesOf(ringView([], { at: nowhere })).map(([name]) => name)).toEqual(["rings", "ringReadings"]);
});

test("every row has as many cells as its table has columns", () => {
  const cells = (text: string): number =>
    text
      .trimEnd()
      .replaceAll(/"(?:[^"]|"")*"/g, "")
      .split(",").length;
  for (const view of [ringView([level(1, 0, 20)]), holeView([at(1, 0, { type: "closed" })])])
    for (const [name, piece] of piecesOf(view))
      if (name !== "points") expect([name, cells(piece)]).toEqual([name, cells(VIEW_HEADS[name])]);
});

test("a deleted ring or hole stays out", () => {
  expect(viewOf(ringHeader, [], { deleted: true })).toBeUndefined();
  expect(viewOf(holeHeader, [], { deleted: true })).toBeUndefined();
});

test("every view is named in the specification and in the text for whoever opens the zip", () => {
  const format = join(import.meta.dirname, "../../../src/exchange/format/archive-format.md");
  const specification = readFileSync(format, "utf8");
  for (const name of Object.values(VIEWS)) {
    expect(specification.split(`\`${name}\``).length).toBeGreaterThan(2);
    expect(readmeText("1.0.0", "2024-05-01", false)).toContain(name);
  }
});
