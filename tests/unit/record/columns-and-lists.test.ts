import { expect, test } from "vitest";
import { packEntries, unpackEntries, valuesOf } from "../../../src/record/columns.ts";
import { ENTRY_VERSION } from "../../../src/record/entry.ts";
import { fieldOf, listKeys } from "../../../src/record/list-keys.ts";
import { emptyRecord, erasedRecord } from "../../../src/record/record.ts";
import { begun, counted, idOf, LINE, mark, NOON_MS, play, sign, TEN } from "./made-up.ts";

const line = () =>
  counted(begun(), TEN, [
    { type: "mark", mark: "next", cover: "residue", stance: "flat" },
    mark("next", "bare"),
    mark(1, "green"),
    "undo",
    { type: "end", mark: "here" },
  ]);

test("packed and unpacked entries are the same, in the same order, also through JSON", () => {
  const { entries } = line();
  const packed = packEntries(entries);
  expect(unpackEntries(packed)).toEqual(entries);
  expect(unpackEntries(JSON.parse(JSON.stringify(packed)))).toEqual(entries);
  expect(unpackEntries(packEntries([]))).toEqual([]);
});

test("what is the same for all entries is written once", () => {
  const { columns } = packEntries(line().entries);
  expect(columns["device"]).toHaveProperty("all");
  expect(columns["by"]).toEqual({ all: null });
  expect(columns["id"]).toHaveProperty("each");
  expect(columns["stance"]).toEqual({ at: [0], of: ["flat"] });
});

test("one property of all entries can be read without the others", () => {
  const packed = packEntries(line().entries);
  expect(valuesOf(packed, "type")).toEqual(["mark", "mark", "mark", "undo", "end"]);
  expect(valuesOf(packed, "cover")).toEqual(["residue", "bare", "green", undefined, undefined]);
  expect(valuesOf(packed, "v")).toEqual(new Array(5).fill(ENTRY_VERSION));
  expect(valuesOf(packed, "value")).toEqual([]);
});

test("a list finds a line by its field, visit and strip, and by when it was begun", () => {
  expect(listKeys(begun())).toEqual({
    kind: "observation",
    living: 1,
    field: idOf("field", 1),
    visit: idOf("visit", 1),
    strip: idOf("strip", 1),
    atMs: NOON_MS,
  });
  expect(listKeys(play(begun(), { op: "delete", id: LINE, by: sign(2) })).living).toBe(0);
  expect(fieldOf(begun())).toBe(idOf("field", 1));
});

test("a record that has no key of a list is not listed by it", () => {
  const farm = play(undefined, { op: "write", id: idOf("farm", 1), by: sign(1, 1, 5), body: { name: "F" } });
  expect(listKeys(farm)).toEqual({ kind: "farm", living: 1, atMs: 5 });
  expect(fieldOf(farm)).toBeUndefined();
  const rain = { field: idOf("field", 2), day: "2024-05-01", depthMm: 3 };
  const gauge = play(undefined, { op: "write", id: idOf("rain", 1), by: sign(1), body: rain });
  expect(listKeys(gauge)).not.toHaveProperty("strip");
  const noStrip = { ...rain, strip: null, what: "drilled", words: "" };
  const { depthMm: _, ...eventBody } = noStrip;
  const drilled = play(undefined, { op: "write", id: idOf("event", 1), by: sign(1), body: eventBody });
  expect(listKeys(drilled)).not.toHaveProperty("strip");
});

test("an erased record, and one that is not there, stand in no list of living ones", () => {
  expect(listKeys(erasedRecord(LINE))).toEqual({ kind: "observation", living: 0, atMs: 0 });
  expect(listKeys(emptyRecord(LINE)).living).toBe(0);
  expect(fieldOf(erasedRecord(idOf("field", 3)))).toBe(idOf("field", 3));
});
