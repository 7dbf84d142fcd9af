/** An archive that an old app wrote, read and brought in by the app of today. */
import { describe, expect, it } from "vitest";
import { fileJobs } from "../../src/exchange/archive/jobs.ts";
import { openVolume } from "../../src/exchange/archive/open.ts";
import { digestOfRecords } from "../../src/exchange/format/line.ts";
import { KINDS } from "../../src/record/ids.ts";
import type { RecordState } from "../../src/record/record.ts";
import { counts } from "../../src/store/list.ts";
import { pages } from "../../src/store/pages.ts";
import { missingPhotos } from "../../src/store/photos.ts";
import type { Store } from "../../src/store/store.ts";
import { need } from "../browser/store-samples.ts";
import { COUNTS, ENTRY_COUNT, RECORD_COUNT } from "./entered.ts";
import { frozenArchive, frozenDatabase, laidOut, openToday } from "./frozen-files.ts";

const all = async (store: Store): Promise<RecordState[]> => {
  const records: RecordState[] = [];
  for await (const page of pages(store, 500)) records.push(...need(page));
  return records;
};

/** Each file waits under an id of its own: whoever may still say yes to one holds a lock on its id. */
const freshId = (): string => crypto.randomUUID().replaceAll("-", "").slice(0, 16);
const watch = { onProgress: () => undefined, signal: new AbortController().signal };

describe("archive 1", () => {
  it("says what was entered", async () => {
    const { manifest, files, read } = need(await openVolume(await frozenArchive(1)));
    expect(manifest).toMatchObject({ formatVersion: 1, entryCount: ENTRY_COUNT, madeBy: "One who counts" });
    expect(Object.fromEntries(manifest.kinds.map(({ kind, count }) => [kind, count]))).toEqual(
      Object.fromEntries(KINDS.map((kind) => [kind, COUNTS[kind].living + COUNTS[kind].other])),
    );
    for (const listed of files) need(await read(listed, () => undefined));
  });

  it("brings everything onto a device that has nothing", async () => {
    const store = await openToday(`frozen-${crypto.randomUUID()}`);
    const files = fileJobs(store);
    const preview = need(await files.stage(freshId(), await frozenArchive(1), watch));
    expect(preview).toMatchObject({
      records: { new: RECORD_COUNT, changed: 0, same: 0 },
      photos: { new: 1, same: 0 },
      sideBySide: 1,
      twoAnswers: { marks: 1, lines: 1 },
      refusedCount: 0,
    });
    expect(await all(store)).toEqual([]);
    need(await files.bringIn(preview.import, () => undefined));
    expect(need(await counts(store))).toEqual(COUNTS);
    const { manifest } = need(await openVolume(await frozenArchive(1)));
    const digests = manifest.files.filter(({ name }) => name.startsWith("photos/"));
    expect(
      need(
        await missingPhotos(
          store,
          digests.map(({ sha256 }) => sha256),
        ),
      ),
    ).toEqual([]);
  });

  it("holds the very records of database 1, which was frozen at the same moment", async () => {
    const there = await openToday(await laidOut(frozenDatabase(1)));
    const here = await openToday(`frozen-${crypto.randomUUID()}`);
    const files = fileJobs(here);
    const { import: id } = need(await files.stage(freshId(), await frozenArchive(1), watch));
    need(await files.bringIn(id, () => undefined));
    expect(digestOfRecords(await all(here))).toBe(digestOfRecords(await all(there)));
  });
});
