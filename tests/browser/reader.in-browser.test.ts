import { afterEach, expect, test, vi } from "vitest";
import { newReader } from "../../src/screens/parts/reader.ts";
import { type Connection, connect } from "../../src/store/connection.ts";
import { applyCommands } from "../../src/store/write.ts";
import { fieldBody, freshName, listening, need, newId, signature, write } from "./store-samples.ts";

const open: Connection[] = [];
const connected = async (name: string): Promise<Connection> => {
  const connection = need(await connect({ tell: listening().tell, name }));
  open.push(connection);
  return connection;
};

afterEach(() => {
  for (const connection of open.splice(0)) connection.close();
});

const joining = () => ({ from: newId("field"), to: newId("field") });

test("joinings are read once, and again after one of them changed", async () => {
  const connection = await connected(freshName());
  const asked = vi.spyOn(connection, "use");
  const { joins } = newReader(connection);
  const times = async (): Promise<number> => {
    asked.mockClear();
    await Promise.all([joins(), joins()]);
    await joins();
    return asked.mock.calls.length;
  };
  expect(await times()).toBe(1);
  expect(await times()).toBe(0);
  // Other records have nothing to do with them.
  need(await applyCommands(connection, [write(newId("field"), fieldBody("F"))]));
  expect(await times()).toBe(0);
  const [join, body] = [newId("join"), joining()];
  need(await applyCommands(connection, [write(join, body)]));
  expect(await joins()).toEqual([body]);
  need(await applyCommands(connection, [{ op: "delete", id: join, by: signature() }]));
  expect(await joins()).toEqual([]);
});

test("whoever reads again because of a change finds the joinings as they are now", async () => {
  const connection = await connected(freshName());
  const { joins, subscribe } = newReader(connection);
  expect(await joins()).toEqual([]);
  const found = new Promise((resolve) => subscribe(() => resolve(joins())));
  const body = joining();
  need(await applyCommands(connection, [write(newId("join"), body)]));
  expect(await found).toEqual([body]);
});

test("a joining made in another window is heard of", async () => {
  const name = freshName();
  const [here, there] = [await connected(name), await connected(name)];
  const { joins } = newReader(here);
  expect(await joins()).toEqual([]);
  const body = joining();
  need(await applyCommands(there, [write(newId("join"), body)]));
  await expect.poll(joins).toEqual([body]);
});

test("joinings that could not be read are asked for again", async () => {
  const connection = await connected(freshName());
  const refused = vi
    .spyOn(connection, "use")
    .mockResolvedValueOnce({ ok: false, problem: { code: "store/lost", facts: {} } });
  const { joins } = newReader(connection);
  await expect(joins()).rejects.toThrow("store/lost");
  expect(await joins()).toEqual([]);
  expect(refused).toHaveBeenCalledTimes(2);
});
