import { expect, test } from "vitest";
import { ENTRY_VERSION, type Entry } from "../../../src/record/entry.ts";
import type { RecordState } from "../../../src/record/record.ts";
import { entriesRow, headerRow, recordOf } from "../../../src/store/rows.ts";

const moment = {
  v: ENTRY_VERSION,
  lookedAtMs: 0,
  enteredAtMs: 0,
  monoMs: 0,
  page: "0".repeat(16),
  device: "0".repeat(16),
  by: null,
} as const;
const entries: Entry[] = [
  { ...moment, id: "1".repeat(16), n: 1, type: "mark", mark: 1, cover: "residue", stance: "flat" },
  { ...moment, id: "2".repeat(16), n: 2, type: "set-mark", mark: 9 },
  { ...moment, id: "3".repeat(16), n: 3, type: "undo", takesBack: "2".repeat(16) },
];
const record: RecordState = { id: `observation-${"0".repeat(32)}`, erased: false, revs: [], entries };

test("a record comes back from its rows as it was", () => {
  expect(recordOf(headerRow(record), entriesRow(record))).toEqual({ ok: true, value: record });
  expect(recordOf(headerRow(record), undefined)).toEqual({ ok: true, value: { ...record, entries: [] } });
  expect(recordOf(undefined, undefined)).toEqual({ ok: true, value: undefined });
});

test("one entry of a newer app among many refuses the record, with the version that it needs", () => {
  const newer = entries.map((entry, at) =>
    at === 1 ? { ...entry, v: ENTRY_VERSION + 1 } : entry,
  ) as unknown as Entry[];
  expect(recordOf(headerRow(record), entriesRow({ ...record, entries: newer }))).toEqual({
    ok: false,
    problem: {
      code: "record/from-the-future",
      facts: { kind: "observation", needs: ENTRY_VERSION + 1, knows: ENTRY_VERSION },
    },
  });
});
