import { openDB } from "idb";
import { afterEach, expect, test, vi } from "vitest";
import { type Connection, connect } from "../../src/store/connection.ts";
import { list } from "../../src/store/list.ts";
import { MIGRATIONS } from "../../src/store/migrations/all.ts";
import type { Migration } from "../../src/store/migrations/migration.ts";
import { pages } from "../../src/store/pages.ts";
import { readRecord } from "../../src/store/read.ts";
import { applyCommands } from "../../src/store/write.ts";
import { fieldBody, freshName, listening, need, newId, until, write } from "./store-samples.ts";

const open: { close: () => void }[] = [];
const connected = async (name: string, migrations?: readonly Migration[]) => {
  const { said, tell } = listening();
  const connection: Connection = need(
    await connect({ tell, name, ...(migrations === undefined ? {} : { migrations }) }),
  );
  open.push(connection);
  return { connection, said };
};
const nextVersion: Migration = {
  version: MIGRATIONS.length + 1,
  up: (db) => {
    (db as unknown as IDBDatabase).createObjectStore("added");
    return Promise.resolve();
  },
};

afterEach(() => {
  vi.restoreAllMocks();
  for (const one of open.splice(0)) one.close();
});

test("an older window closes itself for an upgrade and says so; what it wrote is there", async () => {
  const name = freshName();
  const older = await connected(name);
  const id = newId("field");
  need(await applyCommands(older.connection, [write(id, fieldBody("Kept"))]));
  const newer = await connected(name, [...MIGRATIONS, nextVersion]);
  expect(older.said).toEqual([{ type: "newer-window" }]);
  expect(newer.said).toEqual([]);
  expect(need(await readRecord(newer.connection, id))?.revs).toHaveLength(1);
  expect(await readRecord(older.connection, id)).toMatchObject({ problem: { code: "store/newer-window" } });
});

/** A window whose code does not close for an upgrade. */
const holdOpen = async (name: string) => {
  need(await connect({ tell: listening().tell, name })).close();
  const holding = await openDB(name);
  open.push(holding);
  return holding;
};

test("a window that does not let go is said after a second, and the upgrade goes on when it does", async () => {
  const name = freshName();
  const holding = await holdOpen(name);
  const { said, tell } = listening();
  const waiting = connect({ tell, name, migrations: [...MIGRATIONS, nextVersion] });
  await until(() => said.length > 0);
  expect(said).toEqual([{ type: "blocked" }]);
  holding.close();
  open.push(need(await waiting));
});

test("a short wait for another window is not said", async () => {
  const name = freshName();
  const holding = await holdOpen(name);
  const { said, tell } = listening();
  setTimeout(() => holding.close(), 200);
  open.push(need(await connect({ tell, name, migrations: [...MIGRATIONS, nextVersion] })));
  await new Promise((resolve) => setTimeout(resolve, 1200));
  expect(said).toEqual([]);
});

test("a database from the future is refused by number, and nothing in it is touched", async () => {
  const name = freshName();
  const future = await openDB(name, 7, {
    upgrade: (db) => void db.createObjectStore("records").put({ id: "x" }, "key"),
  });
  future.close();
  const { said, tell } = listening();
  expect(await connect({ tell, name })).toEqual({
    ok: false,
    problem: { code: "store/from-the-future", facts: { has: 7, knows: MIGRATIONS.length } },
  });
  expect(said).toEqual([]);
  const after = await openDB(name);
  open.push(after);
  expect([after.version, [...after.objectStoreNames], await after.get("records", "key")]).toEqual([
    7,
    ["records"],
    { id: "x" },
  ]);
});

test.each([
  ["rejects", () => Promise.reject(new Error("half way"))],
  [
    "throws",
    () => {
      throw new Error("half way");
    },
  ],
])("an upgrade that %s is undone as a whole", async (_how, fail) => {
  const name = freshName();
  const before = await connected(name);
  const id = newId("field");
  need(await applyCommands(before.connection, [write(id, fieldBody("Kept"))]));
  before.connection.close();
  const breaking: Migration = {
    version: 2,
    up: async (db, tx) => {
      await nextVersion.up(db, tx);
      await fail();
    },
  };
  const answer = await connect({ tell: listening().tell, name, migrations: [...MIGRATIONS, breaking] });
  expect(answer).toMatchObject({
    ok: false,
    problem: { code: "store/upgrade-failed", facts: { from: 1, to: 2, what: "Error: half way" } },
  });
  const after = await connected(name);
  expect(need(await readRecord(after.connection, id))?.revs).toHaveLength(1);
  const names = await after.connection.use(async (db) => ({
    ok: true,
    value: [...db.objectStoreNames] as string[],
  }));
  expect(need(names)).not.toContain("added");
});

test("a record of a newer app is refused wherever it is read, and a write leaves it as it is", async () => {
  const name = freshName();
  const { connection } = await connected(name);
  const id = newId("field");
  need(await applyCommands((await connected(name)).connection, [write(id, fieldBody("Now"))]));
  const newer = await connection.use(async (db) => {
    const row = await db.get("records", id);
    if (row === undefined) throw new Error("no row");
    const changed = { ...row, revs: row.revs.map((revision) => ({ ...revision, v: 2 })) };
    await db.put("records", changed);
    return { ok: true, value: changed };
  });
  const refused = {
    ok: false,
    problem: { code: "record/from-the-future", facts: { kind: "field", needs: 2, knows: 1 } },
  };
  expect(await readRecord(connection, id)).toEqual(refused);
  expect(await list(connection, { kind: "field" })).toEqual(refused);
  for await (const page of pages(connection, 10)) expect(page).toEqual(refused);
  const change = {
    op: "change",
    id,
    by: { ...sign, rev: "f".repeat(16) },
    patch: { name: "Other" },
  } as const;
  expect(await applyCommands(connection, [change])).toEqual(refused);
  const row = await connection.use(async (db) => ({ ok: true, value: await db.get("records", id) }));
  expect(need(row)).toEqual(need(newer));
});

const sign = {
  actor: "e".repeat(16),
  n: 1,
  stamp: { wallMs: 0, counter: 0, device: "d".repeat(16) },
  author: null,
};
