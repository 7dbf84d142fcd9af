import { expect, test } from "vitest";
import type { Draft } from "../../../src/record/command/command.ts";
import { endedUnread, lineFinished } from "../../../src/record/line/finished.ts";
import type { LineFrame } from "../../../src/record/line/reading.ts";
import { begun, codeOf, counted, type Doing, doing, mark, read, row, TEN, touch } from "./made-up.ts";

const flat = (number: number | "next" = "next"): Draft => ({
  type: "mark",
  mark: number,
  cover: "residue",
  stance: "flat",
});
const bare = mark("next", "bare");
const line = (...things: Doing[]) => read(counted(begun(), TEN, things));

test("mark by mark: each touch is for the next mark", () => {
  const reading = line(flat(), bare, mark("next", "green"), mark("next", "stone"), mark("next", "own"));
  expect(row(reading)).toBe("rbgso");
  expect(reading.next).toBe(6);
  expect(reading.tally).toEqual({
    residueFlat: 1,
    residueStanding: 0,
    green: 1,
    bare: 1,
    stone: 1,
    own: 1,
    notRead: 0,
    unsettled: 0,
  });
});

test("residue whose stance nobody gave lies flat", () => {
  expect(line(mark("next", "residue")).tally.residueFlat).toBe(1);
});

const MISSES: LineFrame = { way: "misses-only", ropeMarks: 10 };

test("misses only: what was not called is residue once the line has ended, and nothing before", () => {
  const called = counted(begun("misses-only"), MISSES, [mark(3, "bare"), mark(7, "green")]);
  expect(read(called, MISSES).tally).toMatchObject({ notRead: 5, residueFlat: 0, bare: 1, green: 1 });
  const flatRest = counted(called, MISSES, [{ type: "end", mark: 10, rest: "flat" }]);
  expect(read(flatRest, MISSES).tally).toMatchObject({ notRead: 0, residueFlat: 8, bare: 1, green: 1 });
  const standing = counted(called, MISSES, [{ type: "end", mark: 10, rest: "standing" }]);
  expect(read(standing, MISSES).tally).toMatchObject({ residueStanding: 8, residueFlat: 0 });
});

test("misses only: numbers called out of order end the line at the highest", () => {
  const called = counted(begun("misses-only"), MISSES, [
    mark(7, "bare"),
    mark(3, "bare"),
    { type: "end", mark: "here" },
  ]);
  expect(read(called, MISSES).endedAt).toBe(7);
  expect(read(called, MISSES).tally).toMatchObject({ bare: 2, residueFlat: 5 });
});

const sums = (bareMarks: number, green = 0): Draft => ({
  type: "totals",
  flat: 60,
  standing: 10,
  bare: bareMarks,
  green,
  stone: 3,
  own: 2,
});

test("totals: the sums as they were given, the second set in place of the first", () => {
  const reading = line(sums(20, 5), sums(25));
  expect(reading.tally).toEqual({
    residueFlat: 60,
    residueStanding: 10,
    bare: 25,
    green: 0,
    stone: 3,
    own: 2,
    notRead: 0,
    unsettled: 0,
  });
  expect(reading.living).toBe(1);
});

test("the rope says a higher number: what lies between was not read", () => {
  const reading = line(flat(), flat(), { type: "set-mark", mark: 6 }, bare);
  expect(row(reading)).toBe("rr...b");
  expect(reading.next).toBe(7);
  expect(reading.tally).toMatchObject({ residueFlat: 2, bare: 1, notRead: 3 });
});

test("the rope says a lower number: the next touches read those marks again", () => {
  const reading = line(flat(), flat(), flat(), flat(), { type: "set-mark", mark: 2 }, bare, bare);
  expect(row(reading)).toBe("rbbr");
  expect(reading.next).toBe(4);
  expect(reading.marks.get(2)?.corrected).toBe(true);
});

test("a gap that is filled in later leaves the next touch where the person stands", () => {
  const reading = line(flat(), { type: "set-mark", mark: 6 }, flat(), mark(3, "bare"));
  expect(row(reading)).toBe("r.b..r");
  expect(reading.next).toBe(7);
});

test("touching a mark corrects it, and the next touch stays where it was", () => {
  const reading = line(flat(), flat(), flat(), mark(2, "bare"));
  expect(row(reading)).toBe("rbr");
  expect(reading.next).toBe(4);
  expect(reading.marks.get(1)?.corrected).toBe(false);
  expect(reading.marks.get(2)?.corrected).toBe(true);
});

test("correcting the last mark and then the one before leaves the next touch where it was", () => {
  expect(line(flat(), flat(), flat(), mark(3, "bare"), mark(2, "bare")).next).toBe(4);
});

test("a mark corrected twice has one answer, the last, and Undo goes back one at a time", () => {
  const twice: Doing[] = [flat(), mark(1, "bare"), mark(1, "green")];
  expect(row(line(...twice))).toBe("g");
  expect(row(line(...twice, "undo"))).toBe("b");
  expect(row(line(...twice, "undo", "undo"))).toBe("r");
  expect(row(line(...twice, "undo", "undo", "undo"))).toBe("");
  expect(row(line(...twice, "undo", "undo", "redo", "redo"))).toBe("g");
});

test("the line ends here, at any mark, and the undo of it goes on", () => {
  const ended = counted(begun(), TEN, [flat(), bare, { type: "end", mark: "here" }]);
  expect(read(ended)).toMatchObject({ endedAt: 2, tally: { residueFlat: 1, bare: 1, notRead: 0 } });
  expect(codeOf(doing(ended, bare, TEN, touch(50)))).toBe("record/line-ended");
  expect(row(read(counted(ended, TEN, [mark(1, "green")])))).toBe("gb");
  const on = counted(ended, TEN, ["undo", bare]);
  expect(read(on)).toMatchObject({ endedAt: null, next: 4 });
  expect(row(read(on))).toBe("rbb");
});

test("a line that ends before its last read mark leaves the marks beyond out of every sum", () => {
  const reading = line(flat(), flat(), bare, bare, { type: "end", mark: 2 });
  expect(reading.tally).toMatchObject({ residueFlat: 2, bare: 0 });
});

test("a line ended beyond its rope ends with the rope; one ended before its first mark holds nothing", () => {
  expect(line(flat(), { type: "end", mark: 99 }).endedAt).toBe(10);
  const none = line({ type: "end", mark: "here" });
  expect(none.endedAt).toBe(0);
  expect(Object.values(none.tally).every((sum) => sum === 0)).toBe(true);
});

test("a second thickness at one mark takes the place of the first", () => {
  const thick = (value: number): Draft => ({
    type: "thickness",
    mark: 1,
    value,
    unit: "mm",
    typed: `${value}`,
  });
  const reading = line(flat(), thick(12), thick(14));
  expect([...reading.thickness.values()].map(({ value }) => value)).toEqual([14]);
  expect(reading.thicknessInDoubt.size).toBe(0);
});

test("undo goes back as far as the first touch and says when there is nothing left", () => {
  const gone = counted(begun(), TEN, [flat(), bare, "undo", "undo"]);
  expect(read(gone).next).toBe(1);
  expect(codeOf(doing(gone, "undo", TEN, touch(50)))).toBe("record/nothing-to-undo");
  const again = counted(gone, TEN, ["redo", "redo"]);
  expect(row(read(again))).toBe("rb");
  expect(codeOf(doing(again, "redo", TEN, touch(51)))).toBe("record/nothing-to-redo");
});

test("a new touch ends what could be redone, even when it is taken back itself", () => {
  const other = counted(begun(), TEN, [flat(), "undo", bare]);
  expect(read(other).redoable).toBeNull();
  expect(row(read(counted(other, TEN, ["undo", "redo"])))).toBe("b");
});

test("the full line takes no further touch, and no mark beyond the rope", () => {
  const full = counted(
    begun(),
    TEN,
    Array.from({ length: 10 }, () => bare),
  );
  expect(codeOf(doing(full, bare, TEN, touch(50)))).toBe("record/line-full");
  expect(codeOf(doing(full, mark(11, "bare"), TEN, touch(50)))).toBe("record/line-full");
  expect(codeOf(doing(full, mark(10, "green"), TEN, touch(50)))).toBe("done");
});

test("a rope that was measured again and has fewer marks leaves the rest out of the sums", () => {
  const full = counted(
    begun(),
    TEN,
    Array.from({ length: 10 }, () => bare),
  );
  expect(read(full, { ...TEN, ropeMarks: 8 }).tally.bare).toBe(8);
});

test("a line that was ended before anything was read on it is not finished, and says so", () => {
  const end: Doing = { type: "end", mark: "here" };
  const none = line(end);
  expect([lineFinished(none, TEN), endedUnread(none)]).toEqual([false, true]);
  const skipped = line({ type: "set-mark", mark: 6 }, end);
  expect(skipped.tally.notRead).toBe(5);
  expect([lineFinished(skipped, TEN), endedUnread(skipped)]).toEqual([false, true]);
  const one = line(bare, end);
  expect([lineFinished(one, TEN), endedUnread(one)]).toEqual([true, false]);
  const begunOnly = line();
  expect([lineFinished(begunOnly, TEN), endedUnread(begunOnly)]).toEqual([false, false]);
});

test("a second end takes the place of the first, and its undo brings the first back", () => {
  const twice: Doing[] = [bare, bare, bare, { type: "end", mark: 1 }, { type: "end", mark: 3 }];
  expect(line(...twice)).toMatchObject({ endedAt: 3, endsInDoubt: [] });
  expect(line(...twice, "undo").endedAt).toBe(1);
});
