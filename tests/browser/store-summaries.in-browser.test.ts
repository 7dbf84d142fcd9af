import { afterEach, expect, test, vi } from "vitest";
import { FIELD_COVER_VERSION, HOLES_AND_RINGS_VERSION } from "../../src/science/constants.ts";
import { connect } from "../../src/store/connection.ts";
import { keepSummary, sweepSummaries } from "../../src/store/field-states.ts";
import { applyCommands } from "../../src/store/write.ts";
import { freshName, lineCommands, listening, mark, need, newId, sampleLine } from "./store-samples.ts";

afterEach(() => vi.restoreAllMocks());

const connected = async () => need(await connect({ tell: listening().tell, name: freshName() }));
type Connected = Awaited<ReturnType<typeof connected>>;

const UNDER = { question: "75", state: "1" };

const keep = async (connection: Connected, science: string, count = 1): Promise<void> => {
  for (let n = 0; n < count; n++)
    need(await keepSummary(connection, newId("field"), science, UNDER, { value: n }));
};

/** How many rows there are of each version. */
const keptOf = async (connection: Connected): Promise<Record<string, number>> => {
  const keys = need(
    await connection.use(async (db) => ({ ok: true, value: await db.getAllKeys("summaries") })),
  );
  const counts: Record<string, number> = {};
  for (const [, science] of keys) counts[science] = (counts[science] ?? 0) + 1;
  return counts;
};

test("results of earlier versions go, whatever field they are of, and all others stay", async () => {
  const connection = await connected();
  await keep(connection, "cover-9", 30);
  await keep(connection, "cover-1", 25);
  await keep(connection, "cover-10", 3);
  await keep(connection, "rings-2", 2);
  // What a newer app in another window keeps, and what nobody here knows.
  await keep(connection, "cover-11");
  await keep(connection, "cover-storm-1");
  await keep(connection, "1");
  expect(need(await sweepSummaries(connection, ["cover-10", "rings-2"]))).toBe(55);
  const stay = { "cover-10": 3, "rings-2": 2, "cover-11": 1, "cover-storm-1": 1, "1": 1 };
  expect(await keptOf(connection)).toEqual(stay);
  expect(need(await sweepSummaries(connection, ["cover-10", "rings-2"]))).toBe(0);
  expect(await keptOf(connection)).toEqual(stay);
  connection.close();
});

test("the versions of the app are of the form that can be told apart", async () => {
  const connection = await connected();
  for (const version of [FIELD_COVER_VERSION, HOLES_AND_RINGS_VERSION]) {
    await keep(connection, version);
    await keep(connection, version.replace(/\d+$/, "0"));
  }
  expect(need(await sweepSummaries(connection, [FIELD_COVER_VERSION, HOLES_AND_RINGS_VERSION]))).toBe(2);
  expect(await keptOf(connection)).toEqual({ [FIELD_COVER_VERSION]: 1, [HOLES_AND_RINGS_VERSION]: 1 });
  connection.close();
});

test("goes by small steps that no touch waits for", async () => {
  const connection = await connected();
  const sample = sampleLine();
  need(await applyCommands(connection, lineCommands(sample)));
  await keep(connection, "cover-1", 110);
  const removed = new Map<IDBTransaction, number>();
  const remove = IDBObjectStore.prototype.delete;
  vi.spyOn(IDBObjectStore.prototype, "delete").mockImplementation(function (this: IDBObjectStore, key) {
    const tx = this.transaction;
    removed.set(tx, (removed.get(tx) ?? 0) + 1);
    return remove.call(this, key);
  });
  const order: string[] = [];
  const swept = sweepSummaries(connection, ["cover-2"]).then((result) => {
    order.push("swept");
    return need(result);
  });
  need(await applyCommands(connection, [mark(sample.line, "bare")]));
  order.push("touch");
  expect(await swept).toBe(110);
  expect(order).toEqual(["touch", "swept"]);
  expect(Math.max(...removed.values())).toBeLessThanOrEqual(20);
  expect([...removed.keys()].map(({ objectStoreNames }) => [...objectStoreNames])).toEqual(
    [...removed.keys()].map(() => ["summaries"]),
  );
  connection.close();
});
