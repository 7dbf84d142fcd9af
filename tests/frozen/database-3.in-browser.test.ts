/** Positions that an old app left behind, read by the app of today. What is expected was counted by hand. */
import { describe, expect, it } from "vitest";
import { fileJobs } from "../../src/exchange/archive/jobs.ts";
import { digestOfRecords } from "../../src/exchange/format/line.ts";
import type { RecordId } from "../../src/record/ids.ts";
import { type RecordState, shown } from "../../src/record/record.ts";
import { pages } from "../../src/store/pages.ts";
import { readRecord } from "../../src/store/read.ts";
import type { Store } from "../../src/store/store.ts";
import { need } from "../browser/store-samples.ts";
import { IDS } from "./entered.ts";
import { IDS_2 } from "./entered-2.ts";
import { IDS_3, RECORD_COUNT_3, STATED } from "./entered-3.ts";
import { frozenArchive, frozenDatabase, laidOut, openToday } from "./frozen-files.ts";

const opened = async (number: number): Promise<Store> => openToday(await laidOut(frozenDatabase(number)));

const all = async (store: Store): Promise<RecordState[]> => {
  const records: RecordState[] = [];
  for await (const page of pages(store, 5)) records.push(...need(page));
  return records;
};

const body = async (store: Store, id: RecordId) => {
  const found = need(await readRecord(store, id));
  if (found === undefined) throw new Error(`${id} is not there`);
  return shown(found)?.body;
};

describe("database 3", () => {
  it("has every record that was entered", async () => {
    const records = await all(await opened(3));
    expect(records).toHaveLength(RECORD_COUNT_3);
    expect(records.map(({ id }) => id).sort()).toEqual(Object.values<string>(IDS_3).sort());
  });

  it("says of every position what its radius stands for", async () => {
    const store = await opened(3);
    const moved = { ...STATED.byHand, movedFrom: STATED.phone };
    expect(await body(store, IDS_3.line)).toMatchObject({
      start: { position: STATED.phone },
      end: { position: STATED.unsaid },
    });
    expect(await body(store, IDS_3.running)).toMatchObject({ at: { position: STATED.kept } });
    expect(await body(store, IDS_3.hole)).toMatchObject({ at: { position: moved } });
    expect(await body(store, IDS_3.note)).toMatchObject({ at: { position: STATED.byHand } });
    expect(await body(store, IDS_3.spot)).toMatchObject({ position: moved, edge: { to: STATED.kept } });
  });

  it("holds the very records of archive 3", async () => {
    const there = await opened(3);
    const here = await openToday(`frozen-${crypto.randomUUID()}`);
    const files = fileJobs(here);
    const id = crypto.randomUUID().replaceAll("-", "").slice(0, 16);
    const watch = { onProgress: () => undefined, signal: new AbortController().signal };
    const { import: staged } = need(await files.stage(id, await frozenArchive(3), watch));
    need(await files.bringIn(staged, () => undefined));
    expect(digestOfRecords(await all(here))).toBe(digestOfRecords(await all(there)));
  });
});

describe("a position from before", () => {
  it("has a radius of unknown meaning, and none where there is no radius", async () => {
    const first = await opened(1);
    expect(await body(first, IDS.finished)).toMatchObject({
      start: { position: { accuracyM: 4.5, accuracyMeans: "not-known" } },
    });
    expect(await body(first, IDS.spot)).toMatchObject({ position: { accuracyM: null, accuracyMeans: null } });
    const second = await opened(2);
    expect(await body(second, IDS_2.spot)).toMatchObject({
      position: { accuracyMeans: null, movedFrom: { accuracyM: null, accuracyMeans: null } },
    });
    expect(await body(second, IDS_2.edge)).toMatchObject({ edge: { to: { accuracyMeans: null } } });
  });
});
