/** A database that an old app left behind, opened by the app of today. What is expected was counted by hand. */
import { describe, expect, it } from "vitest";
import { KINDS, type RecordId } from "../../src/record/ids.ts";
import { joined } from "../../src/record/joined.ts";
import { readLine } from "../../src/record/line/reading.ts";
import { byShown, type RecordState, shown } from "../../src/record/record.ts";
import { counts, list, listDeleted, listJoins } from "../../src/store/list.ts";
import { getMeta } from "../../src/store/meta.ts";
import { pages } from "../../src/store/pages.ts";
import { photo } from "../../src/store/photos.ts";
import { readEntries, readRecord } from "../../src/store/read.ts";
import type { Store } from "../../src/store/store.ts";
import { need } from "../browser/store-samples.ts";
import { COUNTS, ENTRY_COUNT, IDS, LINES, RECORD_COUNT, ROPE_MARKS } from "./entered.ts";
import { frozenDatabase, laidOut, openToday, rowsIn } from "./frozen-files.ts";
import { dumpDatabase } from "./raw-database.ts";

const opened = async (): Promise<{ readonly name: string; readonly store: Store }> => {
  const name = await laidOut(frozenDatabase(1));
  return { name, store: await openToday(name) };
};

const all = async (store: Store): Promise<RecordState[]> => {
  const records: RecordState[] = [];
  for await (const page of pages(store, 5)) records.push(...need(page));
  return records;
};

const record = async <Id extends RecordId>(store: Store, id: Id): Promise<RecordState> => {
  const found = need(await readRecord(store, id));
  if (found === undefined) throw new Error(`${id} is not there`);
  return found;
};

describe("database 1", () => {
  it("is laid out as it was written down, byte for byte", async () => {
    const text = frozenDatabase(1);
    expect(await dumpDatabase(await laidOut(text))).toBe(text);
  });

  it("keeps every row while it is opened", async () => {
    const before = await rowsIn(await laidOut(frozenDatabase(1)));
    const { name, store } = await opened();
    store.close();
    expect(await rowsIn(name)).toMatchObject(before);
  });

  it("has the records of each kind that were entered, living and other", async () => {
    const { store } = await opened();
    expect(need(await counts(store))).toEqual(COUNTS);
    const records = await all(store);
    expect(records).toHaveLength(RECORD_COUNT);
    expect(records.map(({ id }) => id).sort()).toEqual(Object.values<string>(IDS).sort());
    expect(records.reduce((sum, { entries }) => sum + entries.length, 0)).toBe(ENTRY_COUNT);
  });

  it.each(Object.entries(LINES))("reads %s as it was counted", async (id, entered) => {
    const { store } = await opened();
    const line = id as RecordId<"observation">;
    const { entries } = await record(store, line);
    const { way } = entered;
    const reading = readLine(entries, { way, ropeMarks: ROPE_MARKS });
    expect(entries).toHaveLength(entered.entries);
    expect(need(await readEntries(store, [line])).get(line)).toEqual(entries);
    expect(reading.tally).toEqual(entered.tally);
    expect(reading.endedAt).toBe(entered.endedAt);
    if (entered.next !== null) expect(reading.next).toBe(entered.next);
  });

  it("has the mulch thickness as it was typed, and the corrected mark", async () => {
    const { store } = await opened();
    const { entries } = await record(store, IDS.finished);
    const { marks, thickness } = readLine(entries, { way: "mark-by-mark", ropeMarks: ROPE_MARKS });
    expect(thickness.get(10)).toMatchObject({ value: 12.5, unit: "mm", typed: "12,5", mark: 10 });
    expect(marks.get(7)).toMatchObject({ cover: "green", corrected: true });
    expect(entries[0]).toMatchObject({ by: IDS.person, page: "b1".repeat(8), device: "d1".repeat(8) });
    // The clock counted on by one second a step, and each answer was entered 200 ms after the look.
    for (const { lookedAtMs, enteredAtMs } of entries) expect(enteredAtMs - lookedAtMs).toBe(200);
  });

  it("goes on with the half-finished line where it stood", async () => {
    const { store } = await opened();
    const applied = await store.run([
      {
        op: "append",
        id: IDS.half,
        frame: { way: "mark-by-mark", ropeMarks: ROPE_MARKS },
        at: {
          id: "9".repeat(16),
          lookedAtMs: 1_800_000_000_000,
          enteredAtMs: 1_800_000_000_000,
          monoMs: 1000,
          page: "9".repeat(16),
          device: "9".repeat(16),
          by: null,
        },
        draft: { type: "mark", mark: "next", cover: "bare" },
      },
    ]);
    expect(need(applied)[0]?.added).toMatchObject([{ mark: 5, n: 7, cover: "bare" }]);
    const { entries } = await record(store, IDS.half);
    expect(entries).toHaveLength(7);
  });

  it("shows the deleted as deleted and nothing of the forgotten", async () => {
    const { store } = await opened();
    const deleted = need(await listDeleted(store)).map(({ id }) => id);
    expect(deleted.sort()).toEqual([IDS.deletedLine, IDS.deletedStrip, IDS.undoneJoin].sort());
    const line = await record(store, IDS.deletedLine);
    expect(shown(line)).toMatchObject({ deleted: true, body: { type: "line", rope: IDS.rope } });
    expect(await record(store, IDS.forgotten)).toEqual({
      id: IDS.forgotten,
      erased: true,
      revs: [],
      entries: [],
    });
  });

  it("has both versions of the strip, and both answers of two phones", async () => {
    const { store } = await opened();
    const names = byShown(await record(store, IDS.twoVersions)).map(({ body }) => Reflect.get(body, "name"));
    expect(names.sort()).toEqual(["straw baled", "straw carried off"]);
    const { entries } = await record(store, IDS.twoPhones);
    const { marks } = readLine(entries, { way: "mark-by-mark", ropeMarks: ROPE_MARKS });
    expect(
      marks
        .get(2)
        ?.answers.map(({ cover }) => cover)
        .sort(),
    ).toEqual(["bare", "green"]);
  });

  it("joins what was joined, and no longer what was parted again", async () => {
    const { store } = await opened();
    const same = joined(need(await listJoins(store)));
    expect(same(IDS.sameField)).toBe(IDS.field);
    expect(same(IDS.unnamed)).toBe(IDS.unnamed);
  });

  it("has every body as it was entered", async () => {
    const { store } = await opened();
    const body = async (id: RecordId) => shown(await record(store, id))?.body;
    expect(await body(IDS.person)).toEqual({ name: "One who counts" });
    expect(await body(IDS.rope)).toEqual({ type: "rope", name: "R1", marks: 20, spacingM: 0.5 });
    expect(await body(IDS.visit)).toEqual({ field: IDS.field, day: "2024-05-07", harvestYear: 2024 });
    expect(await body(IDS.otherVisit)).toMatchObject({ day: "2024-02-29", harvestYear: null });
    expect(await body(IDS.field)).toMatchObject({
      name: "Long Bottom",
      farm: IDS.farm,
      rowDirectionDeg: 12.5,
      soilTexture: "silt loam",
    });
    expect(await body(IDS.unnamed)).toMatchObject({ name: "", boundary: null });
    expect(await body(IDS.finished)).toMatchObject({
      strip: IDS.strip,
      angleToRowsDeg: 45,
      rowSpacingM: 0.125,
      passWidthM: 6,
      fifthKey: "dung",
      start: { position: { latitudeDeg: 52.1005, longitudeDeg: -1.2995, accuracyM: 4.5, fixes: 12 } },
      end: { position: null, why: "denied" },
    });
    expect(await body(IDS.spot)).toMatchObject({ name: "by the old gate", oldGrass: true });
    expect(await body(IDS.event)).toMatchObject({ words: "chopped, “well spread” – mostly" });
    expect(await body(IDS.rain)).toMatchObject({ depthMm: 12.4, day: "2024-05-06" });
    expect(await body(IDS.guess)).toMatchObject({ value: 60, what: "ground-cover-percent" });
    expect(await body(IDS.earlier)).toMatchObject({ value: 45, origin: "a sheet from the drawer" });
  });

  it("has the photo with the bytes that its digest names", async () => {
    const { store } = await opened();
    const body = shown(await record(store, IDS.photo))?.body;
    const sha256 = String(Reflect.get(body ?? {}, "sha256"));
    const kept = need(await photo(store, sha256));
    const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", kept?.bytes ?? new ArrayBuffer()));
    expect([...digest].map((byte) => byte.toString(16).padStart(2, "0")).join("")).toBe(sha256);
    expect(body).toMatchObject({
      of: IDS.finished,
      byteCount: kept?.bytes.byteLength,
      widthPx: 4,
      heightPx: 3,
    });
  });

  it("still knows what the person chose", async () => {
    const { store } = await opened();
    const settings = await getMeta(store, {
      name: "settings",
      durability: "relaxed",
      read: (stored) => stored,
    });
    expect(need(settings)).toMatchObject({ welcomed: true });
  });

  it("lists every kind without one record too many", async () => {
    const { store } = await opened();
    for (const kind of KINDS)
      expect(need(await list(store, { kind })).length, kind).toBe(COUNTS[kind].living);
  });
});
