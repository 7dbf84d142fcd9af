import { expect, test } from "vitest";
import { applyCommand } from "../../../src/record/command/apply.ts";
import type { Command } from "../../../src/record/command/command.ts";
import { MAX_ORDER } from "../../../src/record/entry.ts";
import {
  arranged,
  byShown,
  emptyRecord,
  type RecordState,
  shown,
  supersedes,
} from "../../../src/record/record.ts";
import {
  begun,
  codeOf,
  counted,
  doing,
  got,
  idOf,
  LINE,
  lineBody,
  mark,
  play,
  sign,
  TEN,
  touch,
} from "./made-up.ts";

const FIELD = idOf("field", 1);
const body = {
  name: "Top Field",
  farm: null,
  boundary: null,
  rowDirectionDeg: null,
  soilTexture: null,
  harvestCrop: null,
};
const written = () => play(undefined, { op: "write", id: FIELD, by: sign(1), body });
const changed = (record: RecordState, n: number, patch: Partial<typeof body> | object, actor = 1) =>
  play(record, { op: "change", id: FIELD, by: sign(n, actor), patch: { ...patch } });
const together = (a: RecordState, b: RecordState) => arranged({ ...a, revs: [...a.revs, ...b.revs] });

test("a record is written once", () => {
  const record = written();
  expect(shown(record)?.body).toEqual(body);
  expect(codeOf(applyCommand(record, { op: "write", id: FIELD, by: sign(9, 9), body }))).toBe(
    "record/exists",
  );
});

test.each<Command["op"]>(["change", "delete", "restore"])("%s needs a record", (op) => {
  const command = { op, id: FIELD, by: sign(1), patch: {} } as Command;
  expect(codeOf(applyCommand(undefined, command))).toBe("record/no-such-record");
});

test("a change keeps the properties that somebody else changed before", () => {
  const one = changed(written(), 2, { soilTexture: "clay loam" }, 2);
  const two = changed(one, 1, { name: "Hill Field" }, 3);
  expect(shown(two)?.body).toEqual({ ...body, name: "Hill Field", soilTexture: "clay loam" });
});

test("a change supersedes every version that stood side by side, and each of those its base", () => {
  const base = written();
  const side = together(changed(base, 1, { name: "A" }, 2), changed(base, 1, { name: "B" }, 3));
  expect(side.revs).toHaveLength(2);
  const [a, b] = side.revs;
  const settled = changed(side, 1, { name: "C" }, 4);
  expect(settled.revs).toHaveLength(1);
  const [c] = settled.revs;
  if (a === undefined || b === undefined || c === undefined) throw new Error("a version is missing");
  expect([supersedes(c, a), supersedes(c, b), supersedes(a, b), supersedes(b, a)]).toEqual([
    true,
    true,
    false,
    false,
  ]);
  for (const old of base.revs) expect(supersedes(a, old) && supersedes(c, old)).toBe(true);
});

test("a change that is not valid changes nothing and says where", () => {
  const command: Command = { op: "change", id: FIELD, by: sign(2), patch: { rowDirectionDeg: 181 } };
  const result = applyCommand(written(), command);
  expect(result).toMatchObject({
    ok: false,
    problem: { code: "record/not-valid", facts: { where: "rowDirectionDeg" } },
  });
  const unknown: Command = { op: "change", id: FIELD, by: sign(2), patch: { colour: "red" } };
  expect(codeOf(applyCommand(written(), unknown))).toBe("record/not-valid");
});

test("a change takes away what a record may lack, and nothing that it needs", () => {
  const spot = { field: FIELD, strip: null, name: "post", position: null, oldGrass: false };
  const edge = { between: [null, null], to: null } as const;
  const id = idOf("spot", 1);
  const marked = play(undefined, { op: "write", id, by: sign(1), body: { ...spot, edge } });
  const plain: Command = { op: "change", id, by: sign(2), patch: { name: "oak" }, without: ["edge"] };
  const changedTo = play(marked, plain);
  expect(shown(changedTo)?.body).toEqual({ ...spot, name: "oak" });
  // The same command again, as it comes out of the stash, and one on a spot that is none.
  const again = JSON.parse(JSON.stringify(plain)) as Command;
  expect(got(applyCommand(changedTo, again)).already).toBe(true);
  const none: Command = { ...plain, by: sign(3) };
  expect(shown(play(changedTo, none))?.body).toEqual({ ...spot, name: "oak" });
  const needed: Command = { op: "change", id, by: sign(4), patch: {}, without: ["name"] };
  expect(applyCommand(changedTo, needed)).toMatchObject({
    ok: false,
    problem: { code: "record/not-valid", facts: { where: "name" } },
  });
});

test("a deleted record keeps its body, a change leaves it deleted, restoring brings it back", () => {
  const gone = play(written(), { op: "delete", id: FIELD, by: sign(2) });
  expect(shown(gone)).toMatchObject({ deleted: true, body });
  const renamed = changed(gone, 3, { name: "B" });
  expect(shown(renamed)).toMatchObject({ deleted: true, body: { name: "B" } });
  const back = play(renamed, { op: "restore", id: FIELD, by: sign(4) });
  expect(shown(back)).toMatchObject({ body: { name: "B" } });
  expect(shown(back)?.deleted).toBeUndefined();
});

test("shown first is the living version, then the later stamp, whatever the clocks did", () => {
  const base = written();
  const past = play(base, {
    op: "change",
    id: FIELD,
    by: sign(1, 2, Date.UTC(1970, 0, 1)),
    patch: { name: "past" },
  });
  const ahead = play(base, { op: "delete", id: FIELD, by: sign(1, 3, Date.UTC(2099, 0, 1)) });
  expect(byShown(together(past, ahead)).map(({ deleted }) => deleted === true)).toEqual([false, true]);
  const later = play(base, {
    op: "change",
    id: FIELD,
    by: sign(1, 4, Date.UTC(2050, 0, 1)),
    patch: { name: "later" },
  });
  expect(shown(together(past, later))?.body).toMatchObject({ name: "later" });
  expect(shown(together(later, past))?.body).toMatchObject({ name: "later" });
  // A settling version stands although its clock is the most wrong of all.
  const settled = play(together(past, later), {
    op: "change",
    id: FIELD,
    by: sign(1, 5, -8.64e15),
    patch: { name: "settled" },
  });
  expect(shown(settled)?.body).toMatchObject({ name: "settled" });
});

test("erasing leaves id and kind, absorbs everything and can be repeated", () => {
  const line = counted(begun(), TEN, [mark("next", "bare")]);
  const erased = play(line, { op: "erase", id: LINE });
  expect(erased).toEqual({ id: LINE, erased: true, revs: [], entries: [] });
  expect(got(applyCommand(erased, { op: "erase", id: LINE })).already).toBe(true);
  expect(codeOf(doing(erased, mark("next", "bare"), TEN, touch(9)))).toBe("record/erased");
  expect(codeOf(applyCommand(erased, { op: "write", id: LINE, by: sign(5), body: lineBody() }))).toBe(
    "record/erased",
  );
  expect(play(undefined, { op: "erase", id: LINE }).erased).toBe(true);
});

test("every command that is played again changes nothing", () => {
  const commands: Command[] = [
    { op: "write", id: LINE, by: sign(1), body: lineBody() },
    { op: "append", id: LINE, frame: TEN, at: touch(1), draft: mark("next", "bare") },
    { op: "change", id: LINE, by: sign(2), patch: { place: "in-row" } },
    { op: "append", id: LINE, frame: TEN, at: touch(2), draft: mark("next", "green") },
    { op: "undo", id: LINE, at: touch(3) },
    { op: "redo", id: LINE, at: touch(4) },
    { op: "delete", id: LINE, by: sign(3) },
    { op: "restore", id: LINE, by: sign(4) },
  ];
  let record: RecordState | undefined;
  for (const [at, command] of commands.entries()) {
    record = play(record, command);
    for (const before of commands.slice(0, at + 1)) {
      const again = got(applyCommand(record, before));
      expect(again).toMatchObject({ already: true, added: [] });
      expect(again.record).toEqual(record);
    }
  }
});

test("an undo and a redo name the entry that they concern", () => {
  const line = counted(begun(), TEN, [mark("next", "bare")]);
  const undone = got(doing(line, "undo", TEN, touch(2)));
  expect(undone.touched).toMatchObject({ type: "mark", mark: 1, cover: "bare" });
  expect(got(doing(undone.record, "redo", TEN, touch(3))).touched).toEqual(undone.touched);
});

test("a reading needs its line: without one nobody would find it again", () => {
  expect(codeOf(doing(emptyRecord(LINE), mark("next", "bare"), TEN, touch(1)))).toBe("record/no-such-record");
});

test.each([
  ["a mark that is no number", mark(Number.NaN, "bare")],
  ["mark 0", mark(0, "bare")],
  ["half a mark", mark(1.5, "bare")],
  ["a thickness that is no number", { type: "thickness", mark: 1, value: -0, unit: "mm", typed: "-0" }],
] as const)("%s is refused, because a backup that held it could not be read", (_, draft) => {
  expect(codeOf(doing(begun(), draft, TEN, touch(1)))).toBe("record/not-valid");
});

test("behind the highest place no entry is added: its undo could not come after it", () => {
  const line = counted(begun(), TEN, [mark("next", "bare")]);
  const high = { ...line, entries: line.entries.map((one) => ({ ...one, n: MAX_ORDER })) };
  expect(codeOf(doing(high, "undo", TEN, touch(2)))).toBe("record/full");
});

test("a command leaves the record it was given as it was", () => {
  const line = counted(begun(), TEN, [mark("next", "bare")]);
  const copy = structuredClone(line);
  play(line, { op: "undo", id: LINE, at: touch(2) });
  play(line, { op: "delete", id: LINE, by: sign(2) });
  expect(line).toEqual(copy);
});
