import { expect, test } from "vitest";
import type { Draft } from "../../../src/record/command/command.ts";
import { lineFinished } from "../../../src/record/line/finished.ts";
import { begun, counted, mark, read, row, TEN, union } from "./made-up.ts";

const bare = mark("next", "bare");
const green = mark("next", "green");

test("two phones that agree are one answer", () => {
  const both = union(counted(begun(), TEN, [bare, green], 1), counted(begun(), TEN, [bare, green], 2));
  expect(row(read(both))).toBe("bg");
  expect(read(both)).toMatchObject({ next: 3, tally: { bare: 1, green: 1, unsettled: 0 } });
});

test("residue without a stance agrees with flat residue, because both are summed as flat", () => {
  const flat: Draft = { type: "mark", mark: "next", cover: "residue", stance: "flat" };
  const both = union(counted(begun(), TEN, [flat], 1), counted(begun(), TEN, [mark("next", "residue")], 2));
  expect(read(both).tally).toMatchObject({ residueFlat: 1, unsettled: 0 });
});

const contradicting = () =>
  union(counted(begun(), TEN, [bare, bare, bare], 1), counted(begun(), TEN, [bare, green, bare], 2));

test("two answers that contradict each other stay both and count nowhere", () => {
  const reading = read(contradicting());
  expect(row(reading)).toBe("b?b");
  expect(reading.marks.get(2)?.answers.map(({ cover }) => cover)).toEqual(["bare", "green"]);
  expect(reading.tally).toMatchObject({ bare: 2, green: 0, unsettled: 1 });
});

test("choosing one settles it, the undo opens it again", () => {
  const settled = counted(contradicting(), TEN, [mark(2, "green")], 3);
  expect(row(read(settled))).toBe("bgb");
  expect(settled.entries.at(-1)).toMatchObject({ replaces: [expect.any(String), expect.any(String)] });
  expect(row(read(counted(settled, TEN, ["undo"], 3)))).toBe("b?b");
});

test("correcting a mark on which two phones agreed takes the place of both answers", () => {
  const both = union(counted(begun(), TEN, [bare], 1), counted(begun(), TEN, [bare], 2));
  expect(row(read(counted(both, TEN, [mark(1, "stone")])))).toBe("s");
});

test("both settle at once, differently: in doubt again, not summed", () => {
  const there = contradicting();
  const both = union(counted(there, TEN, [mark(2, "green")], 3), counted(there, TEN, [mark(2, "bare")], 4));
  expect(row(read(both))).toBe("b?b");
});

test("one phone takes back what the other corrected: the correction stands", () => {
  const start = counted(begun(), TEN, [bare], 1);
  const both = union(counted(start, TEN, ["undo"], 1), counted(start, TEN, [mark(1, "green")], 2));
  expect(row(read(both))).toBe("g");
});

test("two halves of one rope by two people make a whole line", () => {
  const first = counted(begun(), TEN, [bare, bare, bare, bare, bare], 1);
  const second = counted(begun(), TEN, [{ type: "set-mark", mark: 6 }, green, green, green, green, green], 2);
  const both = read(union(first, second));
  expect(row(both)).toBe("bbbbbggggg");
  expect(both.next).toBe(11);
});

const sums = (bareMarks: number): Draft => ({
  type: "totals",
  flat: 60,
  standing: 0,
  bare: bareMarks,
  green: 0,
  stone: 0,
  own: 0,
});

test("totals from two phones: the same are one, different ones count nowhere until one is chosen", () => {
  const one = counted(begun(), TEN, [sums(40)], 1);
  expect(read(union(one, counted(begun(), TEN, [sums(40)], 2)))).toMatchObject({
    totalsInDoubt: [],
    tally: { residueFlat: 60, bare: 40, unsettled: 0 },
  });
  const both = union(one, counted(begun(), TEN, [sums(30)], 2));
  expect(read(both).totalsInDoubt).toHaveLength(2);
  expect(read(both).tally).toMatchObject({ residueFlat: 0, bare: 0, unsettled: 100 });
  const settled = read(counted(both, TEN, [sums(30)], 3));
  expect(settled.totalsInDoubt).toEqual([]);
  expect(settled.tally).toMatchObject({ residueFlat: 60, bare: 30, unsettled: 0 });
});

test("two thicknesses at one mark are in doubt until one is chosen", () => {
  const thick = (value: number): Draft => ({
    type: "thickness",
    mark: 1,
    value,
    unit: "mm",
    typed: `${value}`,
  });
  const both = union(
    counted(begun(), TEN, [bare, thick(12)], 1),
    counted(begun(), TEN, [bare, thick(20)], 2),
  );
  expect(read(both).thickness.size).toBe(0);
  expect(
    read(both)
      .thicknessInDoubt.get(1)
      ?.map(({ value }) => value),
  ).toEqual([12, 20]);
  const settled = read(counted(both, TEN, [thick(20)], 3));
  expect(settled.thickness.get(1)?.value).toBe(20);
  expect(settled.thicknessInDoubt.size).toBe(0);
});

test("the same record in another order of entries reads the same", () => {
  const there = contradicting();
  const backwards = { ...there, entries: [...there.entries].reverse() };
  expect(read(backwards)).toEqual(read(there));
});

const endedAt = (marks: number, phone: number) =>
  counted(
    begun(),
    TEN,
    [...Array.from({ length: marks }, () => bare), { type: "end", mark: "here" } as const],
    phone,
  );

test("two phones that end a line at the same mark have ended it once", () => {
  expect(read(union(endedAt(4, 1), endedAt(4, 2)))).toMatchObject({ endedAt: 4, endsInDoubt: [] });
});

test("two different ends stay both, the line is not finished, and one is chosen", () => {
  const both = union(endedAt(4, 1), endedAt(6, 2));
  const open = read(both);
  expect(open.endsInDoubt.map(({ mark: last }) => last)).toEqual([4, 6]);
  expect(open.endedAt).toBeNull();
  expect(lineFinished(open, TEN)).toBe(false);
  // The shorter line is chosen, though the longer one was ended later.
  const settled = counted(both, TEN, [{ type: "end", mark: 4 }], 3);
  expect(read(settled)).toMatchObject({ endedAt: 4, endsInDoubt: [], tally: { bare: 4 } });
  expect(lineFinished(read(settled), TEN)).toBe(true);
  expect(settled.entries.filter(({ type }) => type === "end")).toHaveLength(3);
  expect(read(counted(settled, TEN, ["undo"], 3)).endsInDoubt).toHaveLength(2);
});

test("two ends at a full rope are a doubt all the same: one of them says that the line is shorter", () => {
  const full = counted(
    begun(),
    TEN,
    Array.from({ length: 10 }, () => bare),
    1,
  );
  const both = union(
    counted(full, TEN, [{ type: "end", mark: 10 }], 1),
    counted(full, TEN, [{ type: "end", mark: 8 }], 2),
  );
  expect(lineFinished(read(both), TEN)).toBe(false);
});

test("misses only: the same end with the rest lying otherwise is a doubt too", () => {
  const frame = { way: "misses-only", ropeMarks: 10 } as const;
  const ended = (rest: "flat" | "standing", phone: number) =>
    counted(begun("misses-only"), frame, [{ type: "end", mark: 10, rest }], phone);
  const both = read(union(ended("flat", 1), ended("standing", 2)), frame);
  expect(both.endsInDoubt.map(({ rest }) => rest)).toEqual(["flat", "standing"]);
  expect(both.tally.residueFlat + both.tally.residueStanding).toBe(0);
});
