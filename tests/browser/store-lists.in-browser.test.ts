import { afterEach, expect, test } from "vitest";
import type { RecordState } from "../../src/record/record.ts";
import { type Connection, connect } from "../../src/store/connection.ts";
import { counts, list, listDeleted, listJoins } from "../../src/store/list.ts";
import { getMeta, type MetaKey, setMeta, settleMeta } from "../../src/store/meta.ts";
import { pages } from "../../src/store/pages.ts";
import { readColumns, readEntries, readHeaders } from "../../src/store/read.ts";
import {
  countStaged,
  dropStaged,
  listImports,
  readStaged,
  removeImport,
  setImport,
  stage,
} from "../../src/store/staging.ts";
import { applyCommands } from "../../src/store/write.ts";
import {
  fieldBody,
  freshName,
  lineBody,
  lineCommands,
  listening,
  mark,
  need,
  newId,
  sampleLine,
  signature,
  write,
} from "./store-samples.ts";

const open: Connection[] = [];
const connected = async (): Promise<Connection> => {
  const connection = need(await connect({ tell: listening().tell, name: freshName() }));
  open.push(connection);
  return connection;
};
const idsOf = (rows: readonly { readonly id: string }[]): string[] => rows.map(({ id }) => id);

afterEach(() => {
  for (const connection of open.splice(0)) connection.close();
});

test("holds one kind of what belongs to a visit: a guess does as well as a test", async () => {
  const connection = await connected();
  const here = sampleLine();
  const guess = newId("guess");
  const { field, strip, visit } = here;
  const guessed = {
    field,
    strip,
    visit,
    person: null,
    what: "ground-cover-percent",
    value: 40,
    atMs: 9,
  } as const;
  need(await applyCommands(connection, [...lineCommands(here), write(guess, guessed)]));
  const tests = { visit, kind: "observation" } as const;
  expect(idsOf(need(await list(connection, tests)))).toEqual([here.line]);
  expect(idsOf(need(await list(connection, tests, { limit: 1 })))).toEqual([here.line]);
  expect(idsOf(need(await list(connection, tests, { newestFirst: true })))).toEqual([here.line]);
  expect(idsOf(need(await list(connection, tests, { newestFirst: true, limit: 1 })))).toEqual([here.line]);
  expect(idsOf(need(await list(connection, { visit, kind: "guess" })))).toEqual([guess]);
});

test("a touch on a line does not wait until the entries of a thousand lines are read", async () => {
  const connection = await connected();
  const sample = sampleLine();
  const lines = Array.from({ length: 1000 }, () => newId("observation"));
  need(await applyCommands(connection, lineCommands(sample)));
  for (let at = 0; at < lines.length; at += 250)
    need(
      await applyCommands(
        connection,
        lines.slice(at, at + 250).flatMap((line) => [write(line, lineBody(sample)), mark(line, "bare")]),
      ),
    );
  const order: string[] = [];
  const read = readColumns(connection, lines).then((columns) => {
    order.push("read");
    return need(columns);
  });
  need(await applyCommands(connection, [mark(sample.line, "residue")]));
  order.push("touch");
  expect([...(await read).keys()].sort()).toEqual([...lines].sort());
  expect(order).toEqual(["touch", "read"]);
});

test("lists by kind, field, visit and strip hold what belongs there, in the order of time", async () => {
  const connection = await connected();
  const [here, there] = [sampleLine(), sampleLine()];
  const second = { ...here, line: newId("observation") };
  need(await applyCommands(connection, [...lineCommands(here), ...lineCommands(there)]));
  need(await applyCommands(connection, [write(second.line, lineBody(second, -5))]));
  const both = [second.line, here.line];
  expect(idsOf(need(await list(connection, { field: here.field, kind: "observation" })))).toEqual(both);
  expect(idsOf(need(await list(connection, { visit: here.visit, kind: "observation" })))).toEqual(both);
  expect(
    idsOf(need(await list(connection, { strip: here.strip, kind: "observation" }, { newestFirst: true }))),
  ).toEqual([...both].reverse());
  expect(idsOf(need(await list(connection, { kind: "observation" })))).toHaveLength(3);
  expect(idsOf(need(await list(connection, { field: there.field, kind: "strip" })))).toEqual([there.strip]);
  expect(need(await counts(connection)).observation).toEqual({ living: 3, other: 0 });
});

test("a long list comes in parts without a gap, also where many began in one millisecond", async () => {
  const connection = await connected();
  const ids = Array.from({ length: 25 }, () => newId("field"));
  need(
    await applyCommands(
      connection,
      ids.map((id, at) => write(id, fieldBody(`${at}`), Math.floor(at / 10))),
    ),
  );
  const whole = idsOf(need(await list(connection, { kind: "field" }, { newestFirst: true })));
  const parts: string[] = [];
  let part = need(await list(connection, { kind: "field" }, { newestFirst: true, limit: 4 }));
  while (part.length > 0) {
    parts.push(...idsOf(part));
    const after = part.at(-1);
    if (after === undefined) break;
    part = need(await list(connection, { kind: "field" }, { newestFirst: true, limit: 4, after }));
  }
  expect(parts).toEqual(whole);
  expect(new Set(whole)).toEqual(new Set(ids));
});

test("deleted records stand in their own list until they are brought back; erased ones in none", async () => {
  const connection = await connected();
  const [deleted, erased, living] = [newId("field"), newId("field"), newId("field")];
  const all = [deleted, erased, living].map((id) => write(id, fieldBody("F")));
  need(
    await applyCommands(connection, [
      ...all,
      { op: "delete", id: deleted, by: signature() },
      { op: "erase", id: erased },
    ]),
  );
  expect(idsOf(need(await list(connection, { kind: "field" })))).toEqual([living]);
  expect(idsOf(need(await list(connection, { kind: "field" }, { deleted: true })))).toEqual([deleted]);
  expect(idsOf(need(await listDeleted(connection)))).toEqual([deleted]);
  need(await applyCommands(connection, [{ op: "restore", id: deleted, by: signature() }]));
  expect(idsOf(need(await listDeleted(connection)))).toEqual([]);
  expect(idsOf(need(await list(connection, { kind: "field" })))).toEqual([deleted, living]);
});

test("joinings that stand are read", async () => {
  const connection = await connected();
  const join = newId("join");
  const body = { from: newId("field"), to: newId("field") };
  need(await applyCommands(connection, [write(join, body)]));
  expect(need(await listJoins(connection))).toEqual([body]);
  need(await applyCommands(connection, [{ op: "delete", id: join, by: signature() }]));
  expect(need(await listJoins(connection))).toEqual([]);
});

test("pages hold every record once, with its entries, by kind and id, deleted and erased ones too", async () => {
  const connection = await connected();
  const samples = Array.from({ length: 7 }, sampleLine);
  for (const sample of samples)
    need(
      await applyCommands(connection, [
        ...lineCommands(sample),
        mark(sample.line, "bare"),
        mark(sample.line, "residue"),
      ]),
    );
  const [first, second] = samples;
  if (first === undefined || second === undefined) throw new Error("no samples");
  need(
    await applyCommands(connection, [
      { op: "erase", id: first.line },
      { op: "delete", id: second.line, by: signature() },
    ]),
  );
  const read: RecordState[] = [];
  for await (const page of pages(connection, 5)) read.push(...need(page));
  const inOrder = (["field", "strip", "visit", "line"] as const).flatMap((kind) =>
    samples.map((sample) => sample[kind]).sort(),
  );
  expect(idsOf(read)).toEqual(inOrder);
  const entries = need(await readEntries(connection, idsOf(read) as never));
  for (const record of read) expect(record.entries).toEqual(entries.get(record.id) ?? []);
  expect(entries.size).toBe(6);
  expect(idsOf(need(await readHeaders(connection, [second.line, newId("field"), first.line])))).toEqual([
    second.line,
    first.line,
  ]);
});

test("many entries are read the same whether asked for one by one or in a row", async () => {
  const connection = await connected();
  const sample = sampleLine();
  const lines = Array.from({ length: 250 }, () => newId("observation"));
  need(
    await applyCommands(
      connection,
      lines.map((line) => write(line, lineBody({ ...sample, line }))),
    ),
  );
  need(
    await applyCommands(
      connection,
      lines.map((line) => mark(line, "bare")),
    ),
  );
  const together = need(await readEntries(connection, lines.slice(0, 230)));
  expect(new Set(together.keys())).toEqual(new Set(lines.slice(0, 230)));
  for (const line of lines.slice(0, 3))
    expect(need(await readEntries(connection, [line])).get(line)).toEqual(together.get(line));
});

test("a small value is what it was set to, and what an older app left behind is not misread", async () => {
  const connection = await connected();
  const where: MetaKey<string> = {
    name: "where",
    durability: "relaxed",
    read: (stored) => (typeof stored === "string" ? stored : undefined),
  };
  const older: MetaKey<number> = {
    name: "where",
    durability: "relaxed",
    read: (stored) => (typeof stored === "number" ? stored : undefined),
  };
  need(await setMeta(connection, older, 5));
  expect(need(await getMeta(connection, where))).toBeUndefined();
  expect(
    await Promise.all([settleMeta(connection, where, "one"), settleMeta(connection, where, "two")]),
  ).toEqual([
    { ok: true, value: "one" },
    { ok: true, value: "one" },
  ]);
  need(await setMeta(connection, where, undefined));
  expect(need(await getMeta(connection, where))).toBeUndefined();
});

test("a file on its way in stays apart, is read in batches, and goes without a trace", async () => {
  const connection = await connected();
  const rows = (id: string) => Array.from({ length: 30 }, (_, n) => ({ import: id, n, value: { row: n } }));
  need(await stage(connection, [...rows("one"), ...rows("other")]));
  need(await stage(connection, rows("one").slice(0, 5)));
  need(await setImport(connection, { id: "one", state: "staged", about: { rows: 30 } }));
  expect(need(await countStaged(connection, "one"))).toBe(30);
  expect(need(await readStaged(connection, "one", 20, 4)).map(({ n }) => n)).toEqual([20, 21, 22, 23]);
  need(await setImport(connection, { id: "one", state: "accepted", about: { rows: 30 } }));
  expect(need(await listImports(connection))).toEqual([
    { id: "one", state: "accepted", about: { rows: 30 } },
  ]);
  need(await dropStaged(connection, "one", 10));
  expect(need(await readStaged(connection, "one", 0, 1)).map(({ n }) => n)).toEqual([10]);
  need(await removeImport(connection, "one"));
  expect([need(await countStaged(connection, "one")), need(await countStaged(connection, "other"))]).toEqual([
    0, 30,
  ]);
  expect(need(await listImports(connection))).toEqual([]);
});
