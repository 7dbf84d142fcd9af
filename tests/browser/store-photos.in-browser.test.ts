/** Bytes of photos that no record names. */
import { afterEach, expect, test } from "vitest";
import { missingPhotos, putPhoto, sweepPhotos } from "../../src/store/photos.ts";
import { removeImport, setImport } from "../../src/store/staging.ts";
import { openStore, type Store } from "../../src/store/store.ts";
import { freshName, listening, need, newId, signature, write } from "./store-samples.ts";

const DAY_MS = 86_400_000;
const open: Store[] = [];
const opened = async () => {
  const store = need(await openStore({ tell: listening().tell, reload: () => undefined, name: freshName() }));
  open.push(store);
  return store;
};
afterEach(() => {
  for (const store of open.splice(0)) store.close();
});

const shaOf = (digit: string): string => digit.repeat(64);
const put = async (store: Store, digit: string) =>
  need(await putPhoto(store, { sha256: shaOf(digit), type: "image/jpeg", bytes: new ArrayBuffer(100) }));
const record = async (store: Store, digit: string) => {
  const id = newId("photo");
  need(
    await store.run([
      write(id, {
        of: newId("field"),
        sha256: shaOf(digit),
        byteCount: 100,
        widthPx: 10,
        heightPx: 10,
        takenAtMs: 0,
      }),
    ]),
  );
  return id;
};
const sweep = async (store: Store, nowMs: number) => need(await sweepPhotos(store, nowMs));
const gone = async (store: Store, ...digits: readonly string[]) =>
  need(await missingPhotos(store, digits.map(shaOf)));

test("bytes that no record names go a day after that was first seen; those that one names stay", async () => {
  const store = await opened();
  await put(store, "a");
  await put(store, "b");
  await record(store, "b");
  expect(await sweep(store, 1_000)).toBe(0);
  expect(await sweep(store, 1_000 + DAY_MS)).toBe(0);
  expect(await gone(store, "a", "b")).toEqual([]);
  expect(await sweep(store, 1_001 + DAY_MS)).toBe(1);
  expect(await gone(store, "a", "b")).toEqual([shaOf("a")]);
});

test("bytes of a deleted photo stay, for it can be brought back", async () => {
  const store = await opened();
  await put(store, "a");
  const id = await record(store, "a");
  need(await store.run([{ op: "delete", id, by: signature() }]));
  await sweep(store, 0);
  expect(await sweep(store, 40 * DAY_MS)).toBe(0);
  expect(await gone(store, "a")).toEqual([]);
});

test("nothing is dropped while a file is being brought in", async () => {
  const store = await opened();
  await put(store, "a");
  await sweep(store, 0);
  for (const state of ["staged", "accepted"] as const) {
    need(await setImport(store, { id: "one", state, about: null }));
    expect(await sweep(store, 10 * DAY_MS)).toBe(0);
  }
  need(await removeImport(store, "one"));
  expect(await sweep(store, 10 * DAY_MS)).toBe(1);
});

test("bytes that are wanted again after a day begin a new one: their record comes next", async () => {
  const store = await opened();
  await put(store, "a");
  await sweep(store, 0);
  await put(store, "a");
  expect(await sweep(store, 10 * DAY_MS)).toBe(0);
  await record(store, "a");
  expect(await sweep(store, 20 * DAY_MS)).toBe(0);
  expect(await gone(store, "a")).toEqual([]);
});

test("a clock that was set back makes them stay, not go", async () => {
  const store = await opened();
  await put(store, "a");
  await sweep(store, 100 * DAY_MS);
  expect(await sweep(store, 50 * DAY_MS)).toBe(0);
  expect(await sweep(store, 50 * DAY_MS + 1)).toBe(0);
  expect(await sweep(store, 52 * DAY_MS)).toBe(1);
});

test("with no photos at all nothing is written", async () => {
  const store = await opened();
  expect(await sweep(store, 0)).toBe(0);
});
