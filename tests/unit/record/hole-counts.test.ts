import { expect, test } from "vitest";
import { readHole } from "../../../src/record/hole/reading.ts";
import { did, dug, found, type HoleDoing, put, readOf, sorted, worm, worms } from "./hole-made-up.ts";
import { union } from "./made-up.ts";

const hole = (...things: HoleDoing[]) => readOf(did(dug(), things));

test("nothing read: nothing found, nobody looked, not finished", () => {
  const reading = readHole([]);
  expect(reading).toMatchObject({ foundTotal: 0, placedTotal: 0, left: 0, settled: true, finished: false });
  expect(reading.found.soil).toMatchObject({ count: 0, looked: false, standsFor: [] });
  expect(reading.undoable).toBeNull();
});

test("what was read from a list of entries is kept as long as the list is", () => {
  const { entries } = did(dug(), worms(2));
  expect(readHole(entries)).toBe(readHole(entries));
});

test("14 found, 12 placed, 2 left", () => {
  const reading = hole(
    ...worms(4, "mulch"),
    ...worms(9),
    worm("mustard-water"),
    ...Array.from({ length: 5 }, () => put("young")),
    put("surface"),
    put("surface"),
    put("topsoil"),
    put("topsoil"),
    put("topsoil"),
    put("topsoil"),
    put("deep"),
  );
  expect(reading).toMatchObject({ foundTotal: 14, placedTotal: 12, left: 2 });
  expect(reading.found.mulch.count).toBe(4);
  expect(reading.found.soil.count).toBe(9);
  expect(reading.found["mustard-water"].count).toBe(1);
  expect(reading.placed.young.count).toBe(5);
  expect(reading.cautions).toEqual([]);
});

test("a number stands in the place of the touches before it there, and later touches add", () => {
  const reading = hole(...worms(5), worm("mulch"), found(8), worm(), worm());
  expect(reading.found.soil).toMatchObject({ count: 10, oneByOne: 2, atOnce: { count: 8 } });
  expect(reading.found.mulch).toMatchObject({ count: 1, atOnce: null });
  expect(reading.foundTotal).toBe(11);
});

test("a later number of the same phone stands in the place of the one before, also without saying so", () => {
  expect(hole(...worms(5), found(8), worm(), found(7)).found.soil).toMatchObject({ count: 7, inDoubt: [] });
});

test("a total alone is a full result", () => {
  expect(hole(found(14))).toMatchObject({ foundTotal: 14, finished: true, placedTotal: 0, left: 14 });
  expect(hole(found(0)).found.soil).toMatchObject({ count: 0, looked: true });
  expect(hole(...worms(3)).finished).toBe(false);
  expect(hole(...worms(3), { type: "closed" }).finished).toBe(true);
  expect(hole({ type: "closed" }).found.soil).toMatchObject({ count: 0, looked: true });
  expect(hole({ type: "closed" }).found.mulch.looked).toBe(false);
  expect(hole({ type: "closed" }, "undo")).toMatchObject({ closed: null, finished: false });
});

test("more placed than found is said and nothing is removed", () => {
  const reading = hole(found(2), sorted(3, "topsoil"));
  expect(reading).toMatchObject({ foundTotal: 2, placedTotal: 3, left: 0 });
  expect(reading.cautions).toEqual([
    { code: "record/more-placed-than-found", facts: { found: 2, placed: 3, more: 1 } },
  ]);
});

test("groups at once, then one by one", () => {
  const reading = hole(put("young"), put("young"), sorted(6, "young"), put("young"), put("deep"));
  expect(reading.placed.young).toMatchObject({ count: 7, oneByOne: 1, atOnce: { count: 6 } });
  expect(reading.placed.deep.count).toBe(1);
});

test("undo and redo go through touches and numbers one at a time", () => {
  const things: HoleDoing[] = [...worms(3), found(9), worm()];
  expect(hole(...things, "undo").foundTotal).toBe(9);
  expect(hole(...things, "undo", "undo").foundTotal).toBe(3);
  expect(hole(...things, "undo", "undo", "undo").foundTotal).toBe(2);
  expect(hole(...things, "undo", "undo", "redo", "redo").foundTotal).toBe(10);
  expect(hole(...things, "undo", put("deep")).redoable).toBeNull();
});

test("a corrected number: the answer stays in the record, the correction counts, its undo brings it back", () => {
  const first = did(dug(), [...worms(4), found(8)]);
  const named = readOf(first).found.soil.standsFor;
  expect(named).toHaveLength(1);
  const second = did(first, [found(9, "soil", named)]);
  expect(readOf(second).found.soil.count).toBe(9);
  expect(second.entries).toHaveLength(6);
  expect(readOf(did(second, ["undo"])).found.soil.count).toBe(8);
  expect(readOf(did(second, ["undo", "undo"])).found.soil.count).toBe(4);
});

test("two phones touch in worms of one hole: all of them count", () => {
  const begun = did(dug(), worms(2));
  const both = union(did(begun, worms(3), 1), did(begun, worms(4), 2));
  expect(readOf(both).foundTotal).toBe(9);
});

test("a number of one phone and touches of another that it did not know: added, and said", () => {
  const both = union(did(dug(), [...worms(2), found(5)], 1), did(dug(), worms(4), 2));
  expect(readOf(both).found.soil).toMatchObject({ count: 9, oneByOne: 4, fromOtherPhones: 4 });
  expect(readOf(both).cautions).toEqual([{ code: "record/counted-on-two-phones", facts: { touches: 4 } }]);
  const named = readOf(both).found.soil.standsFor;
  expect(named).toHaveLength(5);
  const chosen = did(both, [found(7, "soil", named)], 2);
  expect(readOf(chosen).found.soil).toMatchObject({ count: 7, oneByOne: 0 });
  expect(readOf(chosen).cautions).toEqual([]);
});

test("two numbers that differ: both kept, none counts until one is chosen", () => {
  const begun = did(dug(), worms(6));
  const both = union(did(begun, [found(8)], 1), did(begun, [found(9), worm()], 2));
  const doubtful = readOf(both);
  expect(doubtful.found.soil.inDoubt.map(({ count }) => count).sort()).toEqual([8, 9]);
  expect(doubtful.found.soil).toMatchObject({ atOnce: null, count: 1 });
  expect(doubtful).toMatchObject({ settled: false, finished: false });
  const chosen = readOf(did(both, [found(9, "soil", doubtful.found.soil.standsFor)], 1));
  expect(chosen.found.soil).toMatchObject({ count: 9, inDoubt: [] });
  expect(chosen).toMatchObject({ settled: true, finished: true });
});

test("two phones that agree are one answer", () => {
  const both = union(did(dug(), [found(8)], 1), did(dug(), [found(8)], 2));
  expect(readOf(both).found.soil).toMatchObject({ count: 8, inDoubt: [] });
});

test("choosing does not bring back touches that the other number stood for", () => {
  const one = did(dug(), [...worms(3), found(5)], 1);
  const other = did(dug(), [...worms(4), found(6)], 2);
  const both = union(one, other);
  const chosen = did(both, [found(6, "soil", readOf(both).found.soil.standsFor)], 3);
  expect(readOf(chosen).found.soil).toMatchObject({ count: 6, oneByOne: 0 });
});

test("groups in doubt leave the hole unsettled too", () => {
  const both = union(did(dug(), [sorted(3, "deep")], 1), did(dug(), [sorted(4, "deep")], 2));
  expect(readOf(both).placed.deep.inDoubt).toHaveLength(2);
  expect(readOf(both).settled).toBe(false);
});
