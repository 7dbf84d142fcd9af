import { expect, test } from "vitest";
import { ENTRY_VERSION, type Entry, fatesOf, inOrder, livingIds } from "../../../src/record/entry.ts";
import { hex, touch } from "./made-up.ts";

const base = (n: number) => ({ v: ENTRY_VERSION, n, ...touch(n) }) as const;
const idAt = (n: number): string => touch(n).id;
const bare = (n: number, ...replaces: number[]): Entry => ({
  ...base(n),
  type: "mark",
  mark: 1,
  cover: "bare",
  ...(replaces.length > 0 ? { replaces: replaces.map(idAt) } : {}),
});
const back = (n: number, of: number): Entry => ({ ...base(n), type: "undo", takesBack: idAt(of) });
/** Places of the entries that count. */
const living = (...entries: Entry[]): number[] => {
  const ids = livingIds(entries);
  return entries.filter(({ id }) => ids.has(id)).map(({ n }) => n);
};

test("an undo takes an entry back and a redo brings it again", () => {
  expect(living(bare(1), back(2, 1))).toEqual([2]);
  expect(living(bare(1), back(2, 1), back(3, 2))).toEqual([1, 3]);
  expect(living(bare(1), back(2, 1), back(3, 2), back(4, 3))).toEqual([2, 4]);
});

test("a correction takes the place of an answer, its undo gives the answer back", () => {
  expect(living(bare(1), bare(2, 1))).toEqual([2]);
  expect(living(bare(1), bare(2, 1), back(3, 2))).toEqual([1, 3]);
});

test("a correction of a correction does not bring the first answer back", () => {
  expect(living(bare(1), bare(2, 1), bare(3, 2))).toEqual([3]);
  expect(living(bare(1), bare(2, 1), bare(3, 2), back(4, 3))).toEqual([2, 4]);
});

test("an undo of an entry that is not here yet does nothing until it comes", () => {
  expect(living(bare(1), back(3, 2))).toEqual([1, 3]);
  expect(living(bare(1), bare(2), back(3, 2))).toEqual([1, 3]);
});

test("entries that point at each other in a circle come to an end, and only later ones act", () => {
  expect(living(back(1, 2), back(2, 1))).toEqual([2]);
  expect(living(bare(1, 2), bare(2, 1))).toEqual([2]);
  expect(living(back(1, 1))).toEqual([1]);
  expect(living(bare(1, 2), bare(2, 3), bare(3, 1))).toEqual([2, 3]);
});

test("an earlier entry cannot take back a later one", () => {
  expect(living(back(1, 2), bare(2))).toEqual([1, 2]);
});

test("order is by place, then id, never by a clock", () => {
  const clockWrong = { ...bare(2), enteredAtMs: -1e15, lookedAtMs: -1e15 };
  const twin = { ...bare(2), id: hex(0) };
  expect(inOrder([clockWrong, bare(1), twin]).map(({ id }) => id)).toEqual([idAt(1), hex(0), idAt(2)]);
});

test("twenty thousand corrections of one mark, each of the one before", () => {
  const chain = Array.from({ length: 20_000 }, (_, at) => (at === 0 ? bare(1) : bare(at + 1, at)));
  expect(fatesOf(chain).filter((fate) => fate === "counts")).toHaveLength(1);
});
