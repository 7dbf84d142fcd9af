/** What a stated radius stands for, in records from before it was written down. */
import { expect, test } from "vitest";
import type { Json } from "../../../src/record/canonical.ts";
import { parseRecord } from "../../../src/record/parse.ts";
import { type RecordState, shown } from "../../../src/record/record.ts";
import { got, idOf, LINE, lineBody, play, sign } from "./made-up.ts";

const before = {
  latitudeDeg: 52,
  longitudeDeg: 5,
  accuracyM: 4,
  spreadM: null,
  fixes: 1,
  how: "standing-still",
  atMs: 0,
} as const;
const byHand = { ...before, accuracyM: null, fixes: 0, how: "by-hand", movedFrom: before } as const;
const stood = (position: Json) => ({ position, why: null });

const SPOT = idOf("spot", 1);
const spot = { field: idOf("field", 1), strip: null, name: "", oldGrass: false };

/** A body that stands in a record as an old version wrote it. */
const old = (record: RecordState, v: number, body: Json): unknown => ({
  ...record,
  revs: record.revs.map((revision) => ({ ...revision, v, body })),
});
const line = () => play(undefined, { op: "write", id: LINE, by: sign(1), body: lineBody() });
const spotWith = (position: Json) =>
  play(undefined, { op: "write", id: SPOT, by: sign(1), body: { ...spot, position } });
const readAs = (record: RecordState, v: number, body: Json) =>
  shown(got(parseRecord(JSON.parse(JSON.stringify(old(record, v, body))))))?.body;

test.each([1, 2])(
  "is not known of a line of version %d, and nothing is said where there is no radius",
  (v) => {
    expect(readAs(line(), v, { ...lineBody(), start: stood(before), end: stood(byHand) })).toMatchObject({
      start: { position: { ...before, accuracyMeans: "not-known" } },
      end: {
        position: {
          how: "by-hand",
          accuracyMeans: null,
          movedFrom: { ...before, accuracyMeans: "not-known" },
        },
      },
    });
  },
);

test.each([1, 2])("is not known of a marked spot of version %d and of the end of its edge", (v) => {
  const edge = { between: [null, null], to: before };
  expect(
    readAs(spotWith(null), v, { ...spot, position: before, ...(v === 1 ? {} : { edge }) }),
  ).toMatchObject({
    position: { accuracyMeans: "not-known" },
    ...(v === 1 ? {} : { edge: { to: { accuracyMeans: "not-known" } } }),
  });
  expect(readAs(spotWith(null), v, { ...spot, position: null })).toEqual({ ...spot, position: null });
});

test("stays as it was said in a record of today", () => {
  const said = { ...before, accuracyMeans: "68-percent" as const };
  expect(shown(spotWith(said))?.body).toMatchObject({ position: said });
  expect(got(parseRecord(JSON.parse(JSON.stringify(spotWith(said)))))).toEqual(spotWith(said));
});

test("is not known in a command that waited while the app was updated", () => {
  expect(shown(spotWith(before))?.body).toMatchObject({ position: { accuracyMeans: "not-known" } });
  const moved = play(spotWith(null), { op: "change", id: SPOT, by: sign(2), patch: { position: byHand } });
  expect(shown(moved)?.body).toMatchObject({
    position: { accuracyMeans: null, movedFrom: { accuracyMeans: "not-known" } },
  });
});
