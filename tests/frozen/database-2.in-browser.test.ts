/** Rings and holes that an old app left behind, read by the app of today. What is expected was counted by hand. */
import { describe, expect, it } from "vitest";
import { fileJobs } from "../../src/exchange/archive/jobs.ts";
import { digestOfRecords } from "../../src/exchange/format/line.ts";
import { readHole } from "../../src/record/hole/reading.ts";
import type { RecordId } from "../../src/record/ids.ts";
import { type RecordState, shown } from "../../src/record/record.ts";
import { readRing } from "../../src/record/ring/reading.ts";
import { pages } from "../../src/store/pages.ts";
import { readRecord } from "../../src/store/read.ts";
import type { Store } from "../../src/store/store.ts";
import { need } from "../browser/store-samples.ts";
import { HOLE, IDS_2, POURED, RECORD_COUNT_2, RUNNING } from "./entered-2.ts";
import { frozenArchive, frozenDatabase, laidOut, openToday } from "./frozen-files.ts";

const opened = async (): Promise<Store> => openToday(await laidOut(frozenDatabase(2)));

const all = async (store: Store): Promise<RecordState[]> => {
  const records: RecordState[] = [];
  for await (const page of pages(store, 5)) records.push(...need(page));
  return records;
};

const record = async (store: Store, id: RecordId): Promise<RecordState> => {
  const found = need(await readRecord(store, id));
  if (found === undefined) throw new Error(`${id} is not there`);
  return found;
};

describe("database 2", () => {
  it("has every record that was entered", async () => {
    const records = await all(await opened());
    expect(records).toHaveLength(RECORD_COUNT_2);
    expect(records.map(({ id }) => id).sort()).toEqual(Object.values<string>(IDS_2).sort());
  });

  it("reads the running ring as it was read", async () => {
    const { entries } = await record(await opened(), IDS_2.running);
    expect(entries).toHaveLength(RUNNING.entries);
    const ring = readRing(entries);
    const levels = ring.events.flatMap((one) => (one.type === "level" ? [one] : []));
    expect(levels.map(({ levelM }) => Math.round(levelM * 1000))).toEqual(RUNNING.levelsMm);
    expect(levels.map(({ moment }) => moment.sinceStartMs / 60_000)).toEqual(RUNNING.minutes);
    expect(levels.map(({ corrected }) => corrected)).toEqual([false, true, false]);
    expect(ring.openLooks).toHaveLength(RUNNING.openLooks);
    expect(ring.happenings.map(({ what }) => what)).toEqual(RUNNING.happenings);
    expect(ring.stop).toBeNull();
  });

  it("reads the poured ring and the hole as they were", async () => {
    const store = await opened();
    const poured = readRing((await record(store, IDS_2.poured)).entries);
    expect(poured.events.map(({ type }) => type)).toEqual(["pour", "gone"]);
    expect(poured.events[0]).toMatchObject({ cubicMetres: POURED.cubicMetres });
    expect(poured.events[1]?.moment.sinceStartMs).toBe(POURED.goneAfterMin * 60_000);
    const { entries } = await record(store, IDS_2.hole);
    expect(entries).toHaveLength(HOLE.entries);
    const hole = readHole(entries);
    for (const [layer, count] of Object.entries(HOLE.found))
      expect(hole.found[layer as keyof typeof HOLE.found].count, layer).toBe(count);
    for (const [group, count] of Object.entries(HOLE.placed))
      expect(hole.placed[group as keyof typeof HOLE.placed].count, group).toBe(count);
    expect(hole.soilTemperature?.value).toBe(9.5);
  });

  it("has the kit, the note and the spots as they were entered", async () => {
    const store = await opened();
    const body = async (id: RecordId) => shown(await record(store, id))?.body;
    expect(await body(IDS_2.ring)).toMatchObject({ type: "ring", name: "A", insideM: [0.15, 0.151] });
    expect(await body(IDS_2.bottle)).toMatchObject({ type: "bottle", volumeM3: 0.001 });
    expect(await body(IDS_2.note)).toMatchObject({ text: "Middens along the headland." });
    expect(await body(IDS_2.spot)).toMatchObject({ position: { movedFrom: { latitudeDeg: 52.2001 } } });
    expect(await body(IDS_2.edge)).toMatchObject({ edge: { between: [IDS_2.strip, IDS_2.other] } });
    expect(await body(IDS_2.line)).toMatchObject({ spot: IDS_2.spot });
  });

  it("holds the very records of archive 2", async () => {
    const there = await opened();
    const here = await openToday(`frozen-${crypto.randomUUID()}`);
    const files = fileJobs(here);
    const id = crypto.randomUUID().replaceAll("-", "").slice(0, 16);
    const watch = { onProgress: () => undefined, signal: new AbortController().signal };
    const { import: staged } = need(await files.stage(id, await frozenArchive(2), watch));
    need(await files.bringIn(staged, () => undefined));
    expect(digestOfRecords(await all(here))).toBe(digestOfRecords(await all(there)));
  });
});
