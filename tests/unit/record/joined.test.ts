import { expect, test } from "vitest";
import type { RecordId } from "../../../src/record/ids.ts";
import { joined } from "../../../src/record/joined.ts";
import type { Join } from "../../../src/record/kinds/join.ts";
import { idOf } from "./made-up.ts";

const field = (n: number): RecordId => idOf("field", n);
const joins = (...pairs: [number, number][]): Join[] =>
  pairs.map(([a, b]) => ({ from: field(a), to: field(b) }));
const standsFor = (list: readonly Join[], n: number): RecordId => joined(list)(field(n));

test("what was not joined stands for itself", () => {
  expect(standsFor([], 1)).toBe(field(1));
  expect(standsFor(joins([1, 2]), 3)).toBe(field(3));
});

test("the target of a join stands for its source, along a chain", () => {
  for (const n of [1, 2, 3, 4]) expect(standsFor(joins([3, 4], [1, 2], [2, 3]), n)).toBe(field(4));
  for (const n of [1, 2, 3, 4]) expect(standsFor(joins([4, 3], [3, 2], [2, 1]), n)).toBe(field(1));
});

test("one thing joined to two others makes all three one", () => {
  for (const n of [1, 2, 3]) expect(standsFor(joins([1, 2], [1, 3]), n)).toBe(field(3));
});

test("a circle stands under its greatest id", () => {
  for (const n of [1, 2]) expect(standsFor(joins([1, 2], [2, 1]), n)).toBe(field(2));
  for (const n of [1, 2, 3]) expect(standsFor(joins([1, 2], [2, 3], [3, 1]), n)).toBe(field(3));
  for (const n of [1, 2, 3]) expect(standsFor(joins([1, 3], [3, 2], [2, 1]), n)).toBe(field(3));
});

test("without the join both stand for themselves again", () => {
  const [first, second] = joins([1, 2], [2, 3]);
  if (first === undefined || second === undefined) throw new Error("no joins");
  expect(joined([second])(first.from)).toBe(first.from);
});

test("a chain of twenty thousand joins, in the worst order, does not hold anyone up", () => {
  const chain = Array.from({ length: 20_000 }, (_, n): [number, number] => [n + 1, n]);
  expect(standsFor(joins(...chain), 20_000)).toBe(field(0));
});
