import { afterEach, expect, test, vi } from "vitest";
import { type Connection, connect } from "../../src/store/connection.ts";
import { fieldToken, keepSummary, keptSummary } from "../../src/store/field-states.ts";
import { readRecord } from "../../src/store/read.ts";
import { openStore, type Store } from "../../src/store/store.ts";
import { applyCommands, update } from "../../src/store/write.ts";
import {
  fieldBody,
  freshName,
  lineCommands,
  listening,
  mark,
  need,
  newId,
  sampleLine,
  undo,
  until,
  write,
} from "./store-samples.ts";

const open: Connection[] = [];
const connected = async (name: string): Promise<Connection> => {
  const connection = need(await connect({ tell: listening().tell, name }));
  open.push(connection);
  return connection;
};
const stored = async (name: string): Promise<Store> => {
  const store = need(await openStore({ tell: listening().tell, reload: () => undefined, name }));
  open.push(store);
  return store;
};

afterEach(() => {
  vi.restoreAllMocks();
  for (const connection of open.splice(0)) connection.close();
});

test("touches are kept in the order in which they were made", async () => {
  const name = freshName();
  const store = await stored(name);
  const sample = sampleLine();
  need(await store.run(lineCommands(sample)));
  const touches = Array.from({ length: 20 }, (_, at) => mark(sample.line, at % 3 === 0 ? "bare" : "residue"));
  const answers = await Promise.all(touches.map((touch) => store.run([touch])));
  answers.forEach(need);
  const record = need(await readRecord(await connected(name), sample.line));
  expect(record?.entries.map(({ id }) => id)).toEqual(touches.map(({ at }) => at.id));
  expect(record?.entries.map((entry) => "mark" in entry && entry.mark)).toEqual(
    touches.map((_, at) => at + 1),
  );
});

test("two windows append 500 each to one line, and all 1000 are kept", async () => {
  const name = freshName();
  const [one, other] = [await connected(name), await connected(name)];
  const sample = sampleLine();
  need(await applyCommands(one, lineCommands(sample)));
  const ids: string[] = [];
  const appendAll = async (connection: Connection, actor: string): Promise<void> => {
    for (let count = 0; count < 500; count++) {
      const touch = mark(sample.line, "residue", actor);
      ids.push(touch.at.id);
      need(await applyCommands(connection, [touch]));
    }
  };
  await Promise.all([appendAll(one, "1"), appendAll(other, "2")]);
  const record = need(await readRecord(one, sample.line));
  expect(new Set(record?.entries.map(({ id }) => id))).toEqual(new Set(ids));
  expect(record?.entries.map((entry) => "mark" in entry && entry.mark)).toEqual(
    Array.from({ length: 1000 }, (_, at) => at + 1),
  );
}, 60_000);

test("a worker and the page write to one line, and the page hears of what the worker wrote", async () => {
  const name = freshName();
  const store = await stored(name);
  const sample = sampleLine();
  need(await store.run(lineCommands(sample)));
  const heard: unknown[] = [];
  store.subscribe((changed) => heard.push(changed));
  const worker = new Worker(new URL("./store-worker.ts", import.meta.url), { type: "module" });
  const touches = Array.from({ length: 50 }, () => mark(sample.line, "bare", "3"));
  const said = new Promise((resolve) => {
    worker.onmessage = ({ data }) => resolve(data);
  });
  worker.postMessage({ name, touches });
  for (let count = 0; count < 50; count++) need(await store.run([mark(sample.line, "residue", "4")]));
  expect(await said).toBe("written");
  await until(() => heard.length === 100);
  expect(need(await readRecord(store, sample.line))?.entries).toHaveLength(100);
  worker.terminate();
});

test("the next touch on a line sees what another window brought in meanwhile", async () => {
  const name = freshName();
  const [one, other] = [await connected(name), await connected(name)];
  const sample = sampleLine();
  need(await applyCommands(one, lineCommands(sample)));
  need(await applyCommands(one, [mark(sample.line, "bare")]));
  const elsewhere = need(
    await applyCommands(await connected(freshName()), [
      ...lineCommands(sample),
      mark(sample.line, "residue"),
    ]),
  );
  const brought = elsewhere.at(-1)?.record.entries ?? [];
  need(
    await update(other, [sample.line], (held) =>
      [...held.values()].map((record) => ({ ...record, entries: [...record.entries, ...brought] })),
    ),
  );
  need(await applyCommands(one, [mark(sample.line, "bare")]));
  expect(need(await readRecord(other, sample.line))?.entries).toHaveLength(3);
});

test("an update that writes what it did not ask for is a bug", async () => {
  const connection = await connected(freshName());
  const sample = sampleLine();
  need(await applyCommands(connection, lineCommands(sample)));
  const record = need(await readRecord(connection, sample.line));
  if (record === undefined) throw new Error("no record");
  await expect(update(connection, [sample.field], () => [record])).rejects.toThrow();
});

test("commands are applied all or none", async () => {
  const connection = await connected(freshName());
  const [good, bad] = [newId("field"), newId("field")];
  const answer = await applyCommands(connection, [
    write(good, fieldBody("Good")),
    write(bad, { ...fieldBody("Bad"), rowDirectionDeg: 999 }),
  ]);
  expect(answer).toMatchObject({ ok: false, problem: { code: "record/not-valid" } });
  expect(need(await readRecord(connection, good))).toBeUndefined();
});

test("a later command of one touch sees what an earlier one did", async () => {
  const connection = await connected(freshName());
  const sample = sampleLine();
  const touch = mark(sample.line, "bare");
  const applied = need(await applyCommands(connection, [...lineCommands(sample), touch, undo(sample.line)]));
  expect(applied.at(-1)?.touched?.id).toBe(touch.at.id);
});

test("a touch is written by one strict transaction and leaves the header alone", async () => {
  const connection = await connected(freshName());
  const sample = sampleLine();
  need(await applyCommands(connection, lineCommands(sample)));
  const transactions = vi.spyOn(IDBDatabase.prototype, "transaction");
  const puts = vi.spyOn(IDBObjectStore.prototype, "put");
  need(await applyCommands(connection, [mark(sample.line, "bare")]));
  const made = transactions.mock.results.map(({ value }) => value as IDBTransaction);
  expect(made.map(({ durability, mode }) => [durability, mode])).toEqual([["strict", "readwrite"]]);
  expect(puts.mock.contexts.map((store) => (store as IDBObjectStore).name).sort()).toEqual([
    "entries",
    "fieldStates",
  ]);
});

test("the same commands once more change nothing and write nothing", async () => {
  const connection = await connected(freshName());
  const sample = sampleLine();
  const commands = [...lineCommands(sample), mark(sample.line, "bare"), undo(sample.line)];
  need(await applyCommands(connection, commands));
  const before = need(await readRecord(connection, sample.line));
  const heard: unknown[] = [];
  connection.subscribe((changed) => heard.push(changed));
  const again = need(await applyCommands(connection, commands));
  expect(again.every(({ already }) => already)).toBe(true);
  expect(need(await readRecord(connection, sample.line))).toEqual(before);
  expect(heard).toEqual([]);
});

test("another window hears which records changed, after they can be read", async () => {
  const name = freshName();
  const [one, other] = [await connected(name), await connected(name)];
  const id = newId("field");
  const heard: unknown[] = [];
  const read: Promise<unknown>[] = [];
  other.subscribe((changed) => {
    heard.push(changed);
    read.push(readRecord(other, id).then((record) => need(record)?.id));
  });
  need(await applyCommands(one, [write(id, fieldBody("Heard"))]));
  await until(() => heard.length > 0);
  expect(heard).toEqual([[id]]);
  expect(await Promise.all(read)).toEqual([id]);
});

test("erasing takes the entries and leaves id and kind", async () => {
  const connection = await connected(freshName());
  const sample = sampleLine();
  need(await applyCommands(connection, [...lineCommands(sample), mark(sample.line, "bare")]));
  need(await applyCommands(connection, [{ op: "erase", id: sample.line }]));
  expect(need(await readRecord(connection, sample.line))).toEqual({
    id: sample.line,
    erased: true,
    revs: [],
    entries: [],
  });
  const rows = await connection.use(async (db) => ({ ok: true, value: await db.getAllKeys("entries") }));
  expect(need(rows)).toEqual([]);
});

test("an update writes what differs and nothing else", async () => {
  const connection = await connected(freshName());
  const sample = sampleLine();
  need(await applyCommands(connection, lineCommands(sample)));
  const written = need(
    await update(connection, [sample.line, sample.field], (held) => [
      ...[...held.values()].map((record) =>
        record.id === sample.line ? { ...record, erased: true, revs: [] } : record,
      ),
    ]),
  );
  expect(written).toEqual([sample.line]);
});

test("a field's token changes with every write that its results rest on, and only then", async () => {
  const connection = await connected(freshName());
  const [sample, elsewhere] = [sampleLine(), sampleLine()];
  const token = async (): Promise<string> => need(await fieldToken(connection, [sample.field]));
  const tokens = [await token()];
  const write1 = async (commands: Parameters<typeof applyCommands>[1]): Promise<void> => {
    need(await applyCommands(connection, commands));
    tokens.push(await token());
  };
  await write1(lineCommands(sample));
  const kept = async (question: string) =>
    need(await keptSummary(connection, sample.field, "1", { question, state: await token() }));
  const state = tokens.at(-1) ?? "";
  need(await keepSummary(connection, sample.field, "1", { question: "75", state }, { cover: 60 }));
  expect(await kept("75")).toEqual({ value: { cover: 60 }, upToDate: true });
  await write1([mark(sample.line, "bare")]);
  expect(await kept("75")).toEqual({ value: { cover: 60 }, upToDate: false });
  // Not even the beginning of another question is the same question.
  for (const other of ["7", "75 80", ""]) expect(await kept(other)).toBeUndefined();
  // A rope lies in no field, and its spacing enters every field's results.
  await write1([write(newId("kit"), { type: "rope", name: "A", marks: 100, spacingM: 0.3 })]);
  await write1([{ op: "erase", id: sample.line }]);
  expect(new Set(tokens).size).toBe(tokens.length);
  const before = await token();
  need(await applyCommands(connection, lineCommands(elsewhere)));
  expect(await token()).toBe(before);
});
