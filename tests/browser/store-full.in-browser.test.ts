import { afterEach, expect, test, vi } from "vitest";
import { ballastCache, layBallast } from "../../src/store/ballast.ts";
import { missingPhotos, photo, putPhoto } from "../../src/store/photos.ts";
import { readRecord } from "../../src/store/read.ts";
import { openStore, type Store } from "../../src/store/store.ts";
import {
  freshName,
  lineCommands,
  listening,
  mark,
  need,
  newId,
  sampleLine,
  shortId,
  write,
} from "./store-samples.ts";

const open: Store[] = [];
const opened = async () => {
  const { said, tell } = listening();
  const store = need(await openStore({ tell, reload: () => undefined, name: freshName() }));
  open.push(store);
  return { store, said };
};
const picture = (digit: string) => ({
  sha256: digit.repeat(64),
  type: "image/jpeg",
  bytes: new ArrayBuffer(1000),
});

/** As on a full device: the puts seem to work, and the transaction ends with the error. */
const makeFull = (isFull: () => Promise<boolean>): void => {
  const real = IDBDatabase.prototype.transaction;
  vi.spyOn(IDBDatabase.prototype, "transaction").mockImplementation(function (this: IDBDatabase, ...args) {
    const tx = real.apply(this, args as Parameters<typeof real>);
    if (tx.mode !== "readwrite") return tx;
    tx.commit = () => {
      void isFull().then((full) => {
        if (!full) return;
        Object.defineProperty(tx, "error", { value: new DOMException("full", "QuotaExceededError") });
        tx.abort();
      });
    };
    // Keeps the transaction open until that is known.
    const keepAlive = tx.objectStore(tx.objectStoreNames[0] ?? "");
    const spin = (left: number): void => {
      if (left > 0) keepAlive.count().onsuccess = () => spin(left - 1);
    };
    spin(200);
    return tx;
  });
};

afterEach(async () => {
  vi.restoreAllMocks();
  for (const store of open.splice(0)) {
    await caches.delete(ballastCache(store.name));
    store.close();
  }
});

test("a full device: the ballast is given up, the same mark is taken, photos are refused, and it is said", async () => {
  const { store, said } = await opened();
  const sample = sampleLine();
  need(await store.run(lineCommands(sample)));
  expect(await layBallast(store)).toBe(true);
  // Held open as another window might: room is only there once the ballast itself is gone.
  const cache = await caches.open(ballastCache(store.name));
  makeFull(async () => (await cache.keys()).length > 0);
  const touch = mark(sample.line, "bare");
  need(await store.run([touch]));
  vi.restoreAllMocks();
  expect(need(await readRecord(store, sample.line))?.entries.map(({ id }) => id)).toEqual([touch.at.id]);
  expect(said).toEqual([{ type: "storage-full" }]);
  expect(await putPhoto(store, picture("a"))).toEqual({
    ok: false,
    problem: { code: "store/quota", facts: {} },
  });
  // Once there is room again the ballast is laid again and photos are taken.
  expect(await layBallast(store)).toBe(true);
  need(await putPhoto(store, picture("a")));
});

test("a device that stays full refuses the mark with its reason, and takes it when there is room", async () => {
  const { store, said } = await opened();
  const sample = sampleLine();
  need(await store.run(lineCommands(sample)));
  makeFull(() => Promise.resolve(true));
  const touch = mark(sample.line, "bare");
  expect(await store.run([touch])).toEqual({ ok: false, problem: { code: "store/quota", facts: {} } });
  expect(said).toEqual([{ type: "storage-full" }]);
  vi.restoreAllMocks();
  need(await store.run([touch]));
  expect(need(await readRecord(store, sample.line))?.entries).toHaveLength(1);
});

test("photos leave room for readings", async () => {
  const { store } = await opened();
  vi.spyOn(StorageManager.prototype, "estimate").mockResolvedValue({ quota: 100_000_000, usage: 95_000_000 });
  expect(await putPhoto(store, picture("a"))).toMatchObject({ problem: { code: "store/quota" } });
  expect(await layBallast(store)).toBe(false);
});

test("photo bytes are kept once and go with the last photo that speaks of them", async () => {
  const { store } = await opened();
  const photoRecord = (sha256: string) => {
    const id = newId("photo");
    return {
      id,
      command: write(id, {
        of: newId("field"),
        sha256,
        byteCount: 1000,
        widthPx: 10,
        heightPx: 10,
        takenAtMs: 0,
      }),
    };
  };
  const [one, same] = [photoRecord("a".repeat(64)), photoRecord("a".repeat(64))];
  need(await putPhoto(store, picture("a")));
  need(await putPhoto(store, { ...picture("a"), type: "other" }));
  need(await store.run([one.command, same.command]));
  need(await store.run([{ op: "delete", id: same.id, by: { ...signed, rev: shortId() } }]));
  need(await store.run([{ op: "erase", id: one.id }]));
  expect(need(await photo(store, "a".repeat(64)))?.type).toBe("image/jpeg");
  need(await store.run([{ op: "erase", id: same.id }]));
  expect(need(await missingPhotos(store, ["a".repeat(64)]))).toEqual(["a".repeat(64)]);
});

const signed = {
  actor: "c".repeat(16),
  n: 1,
  stamp: { wallMs: 0, counter: 0, device: "d".repeat(16) },
  author: null,
};
