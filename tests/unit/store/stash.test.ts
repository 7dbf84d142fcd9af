import { expect, test } from "vitest";
import type { Touch } from "../../../src/store/queue.ts";
import { openStash, type SmallStores } from "../../../src/store/stash.ts";

class MemoryStore {
  readonly values = new Map<string, string>();
  refuses = false;
  get length(): number {
    return this.values.size;
  }
  key(at: number): string | null {
    return [...this.values.keys()][at] ?? null;
  }
  getItem(key: string): string | null {
    return this.values.get(key) ?? null;
  }
  setItem(key: string, value: string): void {
    if (this.refuses) throw new DOMException("full", "QuotaExceededError");
    this.values.set(key, value);
  }
  removeItem(key: string): void {
    this.values.delete(key);
  }
}
const touchOf = (digit: string): Touch => [{ op: "erase", id: `field-${digit.repeat(32)}` }];
const touches = (stores: SmallStores): Touch[] =>
  openStash("m", stores)
    .waiting()
    .flatMap((kept) => kept.touches);

test("touches lie in both stores, come back once and in order", () => {
  const [own, shared] = [new MemoryStore(), new MemoryStore()];
  const stash = openStash("m", [own, shared]);
  expect(stash.keep([touchOf("1"), touchOf("2")])).toBe(true);
  expect([own.length, shared.length]).toEqual([1, 1]);
  expect(touches([own, shared])).toEqual([touchOf("1"), touchOf("2")]);
  for (const { key } of stash.waiting()) stash.drop(key);
  expect([own.length, shared.length]).toEqual([0, 0]);
});

test("one of the two stores is enough; with neither it says no", () => {
  const [own, shared] = [new MemoryStore(), new MemoryStore()];
  own.refuses = true;
  expect(openStash("m", [own, shared]).keep([touchOf("1")])).toBe(true);
  expect(touches([shared])).toEqual([touchOf("1")]);
  shared.refuses = true;
  expect(openStash("m", [own, shared]).keep([touchOf("2")])).toBe(false);
  expect(openStash("m", []).keep([touchOf("2")])).toBe(false);
});

test("two windows that keep their touches at the same time do not overwrite each other", () => {
  const shared = new MemoryStore();
  openStash("m", [new MemoryStore(), shared]).keep([touchOf("1")]);
  openStash("m", [new MemoryStore(), shared]).keep([touchOf("2")]);
  expect(touches([shared])).toEqual([touchOf("1"), touchOf("2")]);
});

test("text that is cut off or not ours is left out", () => {
  const shared = new MemoryStore();
  for (const [at, text] of ["[[{", "5", "null", '[["x"]]', '[[{"op":"erase","id":"nothing"}]]'].entries())
    shared.setItem(`m-not-saved:${at}`, text);
  shared.setItem("other-not-saved:1", JSON.stringify([touchOf("1")]));
  expect(touches([shared])).toEqual([]);
});

test("a second reload is refused within a minute, whichever way the clock was moved meanwhile", () => {
  const stores = [new MemoryStore(), new MemoryStore()];
  const may = (nowMs: number): boolean => openStash("m", stores).mayReload(nowMs);
  expect(may(1_000_000)).toBe(true);
  expect(may(1_000_001)).toBe(false);
  expect(may(1_059_999)).toBe(false);
  expect(may(999_000)).toBe(false);
  expect(may(1_060_000)).toBe(true);
  expect(may(0)).toBe(true);
});

test("without a place to note the reload there is none", () => {
  const refusing = new MemoryStore();
  refusing.refuses = true;
  expect(openStash("m", [refusing]).mayReload(0)).toBe(false);
  expect(openStash("m", []).mayReload(0)).toBe(false);
});
