import { afterEach, expect, test } from "vitest";
import { ENTRY_VERSION } from "../../../src/record/entry.ts";
import { KINDS, kindOf } from "../../../src/record/ids.ts";
import { KIND } from "../../../src/record/kinds/all.ts";
import { MAX_DEPTH, parseRecord } from "../../../src/record/parse.ts";
import type { RecordState } from "../../../src/record/record.ts";
import { UPCASTERS } from "../../../src/record/upcast.ts";
import * as z from "../../../src/record/zod.ts";
import { begun, codeOf, counted, got, hex, idOf, mark, play, sign, TEN } from "./made-up.ts";

const line = () => counted(begun(), TEN, [mark("next", "bare"), mark("next", "green"), "undo"]);
const asText = (record: unknown): Record<string, unknown> => JSON.parse(JSON.stringify(record));
/** A line as it lies in a file, with something changed by its path. */
const spoilt = (path: readonly (string | number)[], value: unknown): unknown => {
  const whole = asText(line());
  const key = path.at(-1) ?? "";
  const holder = path
    .slice(0, -1)
    .reduce<Record<string, unknown>>((at, step) => at[step] as Record<string, unknown>, whole);
  if (value === undefined) delete holder[key];
  else holder[key] = value;
  return whole;
};
const person = (name: unknown): Record<string, unknown> => {
  const record = play(undefined, { op: "write", id: idOf("person", 1), by: sign(1), body: { name: "A" } });
  return { ...record, revs: record.revs.map((revision) => ({ ...revision, body: { name } })) };
};

test("what was written is read back the same", () => {
  expect(got(parseRecord(asText(line())))).toEqual(line());
});

test.each<[string, unknown]>([
  ["nothing", null],
  ["a number", 1],
  ["a list", []],
  ["an empty object", {}],
  ["an unknown property", spoilt(["more"], 1)],
  ["no id", spoilt(["id"], undefined)],
  ["an id of no kind", spoilt(["id"], `field2-${hex(1, 32)}`)],
  ["an id of another kind than the body", spoilt(["id"], idOf("spot", 1))],
  ["a reference to another kind", spoilt(["revs", 0, "body", "field"], idOf("visit", 1))],
  ["an author who is no person", spoilt(["revs", 0, "author"], idOf("field", 1))],
  ["a reader who is no person", spoilt(["entries", 0, "by"], idOf("field", 1))],
  ["minus zero in a body", spoilt(["revs", 0, "body", "angleToRowsDeg"], -0)],
  ["minus zero in an entry", spoilt(["entries", 0, "monoMs"], -0)],
  ["minus zero in a stamp", spoilt(["revs", 0, "stamp", "counter"], -0)],
  ["an endless number", spoilt(["revs", 0, "stamp", "wallMs"], JSON.parse("1e999"))],
  ["half of a character in a body", person("\ud800")],
  ["half of a character among others", person("ok \udc00 ok")],
  ["a name that is too long", person("x".repeat(201))],
  ["version 0", spoilt(["revs", 0, "v"], 0)],
  ["a deleted mark that is false", spoilt(["revs", 0, "deleted"], false)],
  ["a short revision id", spoilt(["revs", 0, "rev"], "1")],
  ["an actor's number 0", spoilt(["revs", 0, "dot", 1], 0)],
  ["an actor's number too high to go on from", spoilt(["revs", 0, "dot", 1], 2 ** 41)],
  ["an entry without a place in the order", spoilt(["entries", 0, "n"], undefined)],
  ["an entry of an unknown type", spoilt(["entries", 0, "type"], "poem")],
  ["the same entry twice", spoilt(["entries", 1, "id"], line().entries[0]?.id)],
  ["the same revision twice", spoilt(["revs", 1], asText(line().revs[0]))],
  [
    "the same actor seen twice",
    spoilt(
      ["revs", 0, "seen"],
      [
        [hex(7), 1],
        [hex(7), 2],
      ],
    ),
  ],
  ["erased with revisions", spoilt(["erased"], true)],
  ["erased with entries", { ...asText(line()), erased: true, revs: [] }],
  ["entries of something that is not measured", { ...person("A"), entries: asText(line())["entries"] }],
])("%s is not valid", (_, value) => {
  expect(codeOf(parseRecord(value))).toBe("record/not-valid");
});

test("a well-formed pair of surrogates is text", () => {
  expect(codeOf(parseRecord(person("😀")))).toBe("done");
});

test.each(["__proto__", "constructor", "prototype"])("the key %s is refused at any depth", (key) => {
  const evil: unknown = JSON.parse(`{"${key}":{"polluted":1}}`);
  for (const value of [evil, { ...asText(line()), more: [evil] }, spoilt(["revs", 0, "body"], evil)])
    expect(codeOf(parseRecord(value))).toBe("record/forbidden-key");
  expect(({} as Record<string, unknown>)["polluted"]).toBeUndefined();
});

const nested = (depth: number, open: string, close: string): unknown =>
  JSON.parse(`${open.repeat(depth)}1${close.repeat(depth)}`);

test("nesting of twenty thousand is refused without a fall", () => {
  for (const value of [nested(20_000, "[", "]"), nested(20_000, '{"a":', "}")]) {
    expect(codeOf(parseRecord(value))).toBe("record/too-deep");
    expect(codeOf(parseRecord(spoilt(["revs", 0, "body"], value)))).toBe("record/too-deep");
  }
  expect(codeOf(parseRecord(nested(MAX_DEPTH, "[", "]")))).toBe("record/not-valid");
});

test("what a newer version wrote is refused whole, with the version that is needed", () => {
  const v = KIND.observation.version + 1;
  expect(parseRecord(spoilt(["revs", 0, "v"], v))).toMatchObject({
    problem: { code: "record/from-the-future", facts: { kind: "observation", needs: v } },
  });
  expect(parseRecord(spoilt(["entries", 1, "v"], 7))).toMatchObject({
    problem: { code: "record/from-the-future", facts: { needs: 7, knows: ENTRY_VERSION } },
  });
});

test("rows are put in their one order, however a file holds them", () => {
  const farm = (actor: number, seen: [string, number][]) => ({
    ...play(undefined, { op: "write", id: idOf("farm", 1), by: sign(1, actor), body: { name: "F" } }).revs[0],
    seen,
  });
  const seen: [string, number][] = [
    [hex(3), 1],
    [hex(9), 4],
  ];
  const file = {
    id: idOf("farm", 1),
    erased: false,
    revs: [farm(2, [...seen].reverse()), farm(1, seen)],
    entries: [],
  };
  const record = got(parseRecord(file));
  expect(record.revs.map(({ rev }) => rev)).toEqual([sign(1, 1).rev, sign(1, 2).rev]);
  expect(record.revs.map((one) => one.seen)).toEqual([seen, seen]);
  expect(got(parseRecord({ ...asText(line()), entries: [...line().entries].reverse() }))).toEqual(line());
});

test.each([
  ["2024-02-29", "done"],
  ["2000-02-29", "done"],
  ["1900-02-29", "record/not-valid"],
  ["2023-02-29", "record/not-valid"],
  ["2024-04-31", "record/not-valid"],
  ["2024-12-31", "done"],
  ["2024-13-01", "record/not-valid"],
  ["2024-1-01", "record/not-valid"],
])("the day %s is %s", (day, code) => {
  const id = idOf("visit", 1);
  const visit = play(undefined, {
    op: "write",
    id,
    by: sign(1),
    body: { field: idOf("field", 1), day: "2024-05-01", harvestYear: null },
  });
  const [revision] = asText(visit)["revs"] as { body: object }[];
  expect(codeOf(parseRecord({ ...visit, revs: [{ ...revision, body: { ...revision?.body, day } }] }))).toBe(
    code,
  );
});

test("every kind has as many steps as its version is ahead of the first", () => {
  for (const kind of KINDS) expect((UPCASTERS[kind] ?? []).length, kind).toBe(KIND[kind].version - 1);
});

const kinds = KIND as unknown as Record<string, { version: number; body: unknown }>;
const steps = UPCASTERS as Record<string, unknown>;
const farmAsReleased = kinds["farm"];
afterEach(() => {
  if (farmAsReleased !== undefined) kinds["farm"] = farmAsReleased;
  delete steps["farm"];
});
const newFarm = z.strictObject({ name: z.string(), country: z.nullable(z.string()), rep: z.number() });
const withSteps = () => {
  kinds["farm"] = { version: 3, body: newFarm };
  steps["farm"] = [
    (body: { name: string }) => ({ ...body, country: null, upper: body.name.toUpperCase() }),
    ({ upper, ...body }: { upper: string }) => ({ ...body, rep: upper.length }),
  ];
};
const farmFile = (v: number, body: unknown): RecordState => ({
  ...play(undefined, { op: "write", id: idOf("farm", 1), by: sign(1), body: { name: "Long Acre" } }),
  revs: [
    {
      ...play(undefined, { op: "write", id: idOf("farm", 1), by: sign(1), body: { name: "x" } }).revs[0],
      v,
      body,
    },
  ] as unknown as RecordState["revs"],
});

test("an old body is lifted step by step, from the version it has, and nothing else changes", () => {
  const fileOld = farmFile(1, { name: "Long Acre" });
  const fileMid = farmFile(2, { name: "Long Acre", country: "IE", upper: "LONG" });
  const fileNew = farmFile(3, { name: "Long Acre", country: null, rep: 2 });
  withSteps();
  const lifted = got(parseRecord(fileOld));
  expect(kindOf(lifted.id)).toBe("farm");
  expect(lifted.revs[0]).toEqual({
    ...fileOld.revs[0],
    v: 3,
    body: { name: "Long Acre", country: null, rep: 9 },
  });
  expect(got(parseRecord(fileMid)).revs[0]?.body).toEqual({ name: "Long Acre", country: "IE", rep: 4 });
  expect(got(parseRecord(fileNew)).revs[0]).toEqual(fileNew.revs[0]);
  expect(got(parseRecord(fileOld))).toEqual(lifted);
});

test.each([null, 1, "x", [], {}, { name: 7 }])("the old body %j that no step can read is refused", (body) => {
  const file = farmFile(1, body);
  withSteps();
  expect(codeOf(parseRecord(file))).toBe("record/not-valid");
});

test("a line of the first version is lifted, entries too, and stays what it was", () => {
  const now = line();
  const then = {
    ...asText(now),
    revs: now.revs.map((revision) => ({ ...revision, v: 1 })),
    entries: now.entries.map((one) => ({ ...one, v: 1 })),
  };
  expect(got(parseRecord(JSON.parse(JSON.stringify(then))))).toEqual(now);
});
