import { unwrap } from "idb";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { RecordId } from "../../src/record/ids.ts";
import type { Connection } from "../../src/store/connection.ts";
import type { Notice } from "../../src/store/notice.ts";
import { readRecord } from "../../src/store/read.ts";
import { openStore, type Store } from "../../src/store/store.ts";
import { applyCommands } from "../../src/store/write.ts";
import {
  freshName,
  lineCommands,
  listening,
  mark,
  need,
  sampleLine,
  signature,
  until,
} from "./store-samples.ts";

const open: Connection[] = [];
interface Opened {
  readonly store: Store;
  readonly said: Notice[];
  readonly reload: () => void;
}
const opened = async (name: string): Promise<Opened> => {
  const { said, tell } = listening();
  const reload = vi.fn();
  const store = need(await openStore({ tell, reload, name }));
  open.push(store);
  return { store, said, reload };
};
const lineIn = async (store: Store) => {
  const sample = sampleLine();
  need(await store.run(lineCommands(sample)));
  return sample;
};
/** The database stays away: what is open fails, and opening fails as it does when its process died. */
const takeDatabaseAway = (): void => {
  vi.spyOn(IDBDatabase.prototype, "transaction").mockImplementation(() => {
    throw new DOMException("gone", "InvalidStateError");
  });
  vi.spyOn(IDBFactory.prototype, "open").mockImplementation(() => {
    throw new DOMException("gone", "UnknownError");
  });
};

beforeEach(() => {
  sessionStorage.clear();
  localStorage.clear();
});
afterEach(() => {
  vi.restoreAllMocks();
  for (const connection of open.splice(0)) connection.close();
});

test("a connection that was closed is opened once more, and the same touch is written", async () => {
  const { store, reload } = await opened(freshName());
  const sample = await lineIn(store);
  await store.use(async (db) => ({ ok: true, value: db.close() }));
  need(await store.run([mark(sample.line, "bare")]));
  expect(need(await readRecord(store, sample.line))?.entries).toHaveLength(1);
  expect(reload).not.toHaveBeenCalled();
});

test.each(["AbortError", "UnknownError", "InvalidStateError"])(
  "a transaction that ends with %s is tried once more",
  async (name) => {
    const { store } = await opened(freshName());
    const sample = await lineIn(store);
    vi.spyOn(IDBDatabase.prototype, "transaction").mockImplementationOnce(() => {
      throw new DOMException("once", name);
    });
    need(await store.run([mark(sample.line, "bare")]));
    expect(need(await readRecord(store, sample.line))?.entries).toHaveLength(1);
  },
);

test("after the browser closed the connection by itself it is opened again and all is read again", async () => {
  const { store } = await opened(freshName());
  const heard: unknown[] = [];
  store.subscribe((changed) => heard.push(changed));
  const opening = vi.spyOn(IDBFactory.prototype, "open");
  await store.use(async (db) => {
    unwrap(db).close();
    unwrap(db).dispatchEvent(new Event("close"));
    return { ok: true, value: undefined };
  });
  await until(() => heard.length > 0 && opening.mock.calls.length > 0);
  expect(heard).toEqual(["everything"]);
  await lineIn(store);
});

test("touches that cannot be written wait for the reload and are then written in order, once", async () => {
  const name = freshName();
  const first = await opened(name);
  const sample = await lineIn(first.store);
  const touches = Array.from({ length: 5 }, () => mark(sample.line, "residue"));
  takeDatabaseAway();
  const answers = await Promise.all(touches.map((touch) => first.store.run([touch])));
  expect(answers.map((answer) => !answer.ok && answer.problem.code)).toEqual(touches.map(() => "store/gone"));
  expect(first.reload).toHaveBeenCalledTimes(1);
  expect(first.said).toEqual([]);
  // A touch after that would overtake those that wait.
  expect(await first.store.run([mark(sample.line, "bare")])).toMatchObject({ ok: false });
  vi.restoreAllMocks();
  const second = await opened(name);
  const record = need(await readRecord(second.store, sample.line));
  expect(record?.entries.map(({ id }) => id)).toEqual(touches.map(({ at }) => at.id));
  expect(
    [...Object.keys(localStorage), ...Object.keys(sessionStorage)].filter((key) => key.includes("not-saved")),
  ).toEqual([]);
  const third = await opened(name);
  expect(need(await readRecord(third.store, sample.line))).toEqual(record);
});

test("a change that takes something away waits for the reload as well", async () => {
  const name = freshName();
  const { store } = await opened(name);
  const { line } = await lineIn(store);
  const spot: RecordId = `spot-${"1".repeat(32)}`;
  need(await store.run([{ op: "change", id: line, by: signature(), patch: { spot } }]));
  takeDatabaseAway();
  await store.run([{ op: "change", id: line, by: signature(), patch: {}, without: ["spot"] }]);
  vi.restoreAllMocks();
  const again = need(await readRecord((await opened(name)).store, line));
  expect(again?.revs[0]?.body).not.toHaveProperty("spot");
});

test("a touch that reached the disk after all is not written a second time", async () => {
  const name = freshName();
  const first = await opened(name);
  const sample = await lineIn(first.store);
  const touch = mark(sample.line, "residue");
  need(await applyCommands(first.store, [touch]));
  takeDatabaseAway();
  await first.store.run([touch]);
  vi.restoreAllMocks();
  const second = await opened(name);
  expect(need(await readRecord(second.store, sample.line))?.entries).toHaveLength(1);
});

test("twice within a minute: no second reload, the values are told and stay kept", async () => {
  const name = freshName();
  const first = await opened(name);
  const sample = await lineIn(first.store);
  const touch = mark(sample.line, "residue");
  takeDatabaseAway();
  await first.store.run([touch]);
  expect(first.reload).toHaveBeenCalledTimes(1);
  const { said, tell } = listening();
  const reload = vi.fn();
  const again = await openStore({ tell, reload, name });
  expect(again).toMatchObject({ ok: false, problem: { code: "store/gone" } });
  expect(reload).not.toHaveBeenCalled();
  expect(said).toEqual([{ type: "gone", commands: [JSON.parse(JSON.stringify(touch))] }]);
  vi.restoreAllMocks();
  const later = await opened(name);
  expect(need(await readRecord(later.store, sample.line))?.entries).toHaveLength(1);
});

test("where neither small store takes the touches there is no reload: the values are told", async () => {
  const { store, said, reload } = await opened(freshName());
  const sample = await lineIn(store);
  const touch = mark(sample.line, "bare");
  takeDatabaseAway();
  vi.spyOn(Storage.prototype, "setItem").mockImplementation(() => {
    throw new DOMException("full", "QuotaExceededError");
  });
  await store.run([touch]);
  expect(reload).not.toHaveBeenCalled();
  expect(said).toEqual([{ type: "gone", commands: [touch] }]);
});

test("what is refused for its own sake is told once and does not come back at every start", async () => {
  const name = freshName();
  const first = await opened(name);
  const sample = await lineIn(first.store);
  need(await first.store.run([{ op: "erase", id: sample.line }]));
  takeDatabaseAway();
  await first.store.run([mark(sample.line, "bare")]);
  localStorage.setItem(`${name}-not-saved:broken`, JSON.stringify([[{ op: "change", id: sample.field }]]));
  localStorage.setItem(`${name}-not-saved:cut-off`, '[[{"op":');
  vi.restoreAllMocks();
  const second = await opened(name);
  expect(second.said.map((notice) => notice.type === "refused" && notice.problem.code).sort()).toEqual([
    "record/erased",
    "record/not-valid",
  ]);
  expect((await opened(name)).said).toEqual([]);
});

test("a reading that cannot reach the database asks for the reload too", async () => {
  const { store, reload } = await opened(freshName());
  takeDatabaseAway();
  expect(await readRecord(store, sampleLine().line)).toMatchObject({ problem: { code: "store/gone" } });
  expect(reload).toHaveBeenCalledTimes(1);
});

test("a page that rests lets go of the database, and hears everything when it comes back", async () => {
  const name = freshName();
  const { store } = await opened(name);
  const sample = await lineIn(store);
  const heard: unknown[] = [];
  store.subscribe((changed) => heard.push(changed));
  dispatchEvent(new PageTransitionEvent("pagehide", { persisted: true }));
  const deleted = indexedDB.deleteDatabase(name);
  let blocked = false;
  deleted.onblocked = () => (blocked = true);
  await new Promise((resolve) => (deleted.onsuccess = resolve));
  expect(blocked).toBe(false);
  dispatchEvent(new PageTransitionEvent("pageshow", { persisted: true }));
  expect(heard).toEqual(["everything"]);
  expect(need(await readRecord(store, sample.line))).toBeUndefined();
});
