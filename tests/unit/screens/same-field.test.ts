import { expect, it } from "vitest";
import type { Kind, RecordId } from "../../../src/record/ids.ts";
import type { Join } from "../../../src/record/kinds/join.ts";
import type { Listed, Reader } from "../../../src/screens/parts/reader.ts";
import { allFields, sameField } from "../../../src/screens/parts/same-field.ts";
import { fieldsNamed } from "../../../src/screens/parts/same-name.ts";
import { idOf, sign } from "../record/made-up.ts";

const field = (n: number, name: string, deleted = false): Listed<"field"> => {
  const body = {
    name,
    farm: null,
    boundary: null,
    rowDirectionDeg: null,
    soilTexture: null,
    harvestCrop: null,
  };
  const { rev, stamp, author } = sign(n);
  const id = idOf("field", n);
  const revision = { rev, dot: ["a".repeat(16), n] as const, seen: [], stamp, author, v: 1, body };
  const keys = { kind: "field", living: deleted ? 0 : 1, atMs: n } as const;
  return { id, revision, body, deleted, versions: 1, row: { id, erased: false, revs: [revision], keys } };
};

/** A reader over a few fields and joins; it knows nothing else. */
const reader = (fields: readonly Listed<"field">[], joins: readonly Join[]): Reader => {
  const refuse = () => Promise.reject(new Error("not asked for here"));
  const of = (kind: Kind) => (kind === "field" ? fields.filter(({ deleted }) => !deleted) : []);
  return {
    connection: {} as Reader["connection"],
    subscribe: () => () => undefined,
    one: refuse,
    many: ((ids: readonly RecordId[]) =>
      Promise.resolve(fields.filter(({ id }) => ids.includes(id)))) as unknown as Reader["many"],
    list: ((what: { kind: Kind }) => Promise.resolve(of(what.kind))) as unknown as Reader["list"],
    deleted: refuse,
    joins: () => Promise.resolve(joins),
    entries: refuse,
  };
};

const join = (from: number, to: number): Join => ({ from: idOf("field", from), to: idOf("field", to) });

it("shows a field that was joined as the one it was joined to, with the ids of both", async () => {
  const records = reader([field(1, "Low Ridge"), field(2, "")], [join(2, 1)]);
  const same = await sameField(records, idOf("field", 2));
  expect(same?.field.body.name).toBe("Low Ridge");
  expect(same?.ids).toEqual([idOf("field", 1), idOf("field", 2)]);
});

it("lists joined fields once", async () => {
  const records = reader([field(1, "Low Ridge"), field(2, ""), field(3, "Top Field")], [join(2, 1)]);
  expect((await allFields(records)).map(({ ids }) => ids.length)).toEqual([2, 1]);
});

it("keeps what was joined to a deleted field in the list", async () => {
  const records = reader([field(1, "Low Ridge", true), field(2, "")], [join(2, 1)]);
  expect((await allFields(records)).map((same) => same.field.id)).toEqual([idOf("field", 2)]);
  expect((await sameField(records, idOf("field", 1)))?.field.id).toBe(idOf("field", 2));
});

it("finds a field of the same name whatever the case, and never itself", async () => {
  const records = reader([field(1, "Low Ridge"), field(2, " low ridge ")], []);
  expect((await fieldsNamed(records, "LOW RIDGE", idOf("field", 2))).map((one) => one.field.id)).toEqual([
    idOf("field", 1),
  ]);
});
