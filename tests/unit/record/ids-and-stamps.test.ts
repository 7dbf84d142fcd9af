import { expect, test } from "vitest";
import { isRecordId, KINDS, kindOf, newRecordId, newShortId } from "../../../src/record/ids.ts";
import { compareStamps, compareText } from "../../../src/record/stamp.ts";
import { hex } from "./made-up.ts";

const chance = (bytes: number): string => "5a".repeat(bytes);

test("an id names its kind and is well formed, for every kind", () => {
  for (const kind of KINDS) {
    const id = newRecordId(kind, chance);
    expect(isRecordId(id)).toBe(true);
    expect(kindOf(id)).toBe(kind);
  }
  expect(newShortId(chance)).toBe("5a5a5a5a5a5a5a5a");
});

test.each([
  "",
  "field",
  `field-${hex(1, 31)}`,
  `field-${hex(1, 33)}`,
  `field-${"A".repeat(32)}`,
  `Field-${hex(1, 32)}`,
  `field-${hex(1, 32)}\n`,
  ` field-${hex(1, 32)}`,
  `constructor-${hex(1, 32)}`,
  `__proto__-${hex(1, 32)}`,
  `subfield-${hex(1, 32)}`,
])("%j is no record id", (text) => {
  expect(isRecordId(text)).toBe(false);
});

const stamp = (wallMs: number, counter: number, device: string) => ({ wallMs, counter, device });

test("stamps sort by wall clock, then counter, then device", () => {
  const inOrder = [
    stamp(-8.64e15, 9, "b"),
    stamp(0, 0, "b"),
    stamp(1, 0, "a"),
    stamp(1, 0, "b"),
    stamp(1, 2, "a"),
    stamp(1, 10, "a"),
    stamp(8.64e15, 0, "a"),
  ];
  expect([...inOrder].reverse().sort(compareStamps)).toEqual(inOrder);
  for (const [at, one] of inOrder.entries()) expect(compareStamps(one, one), String(at)).toBe(0);
});

test("clocks decades apart keep one order that can be turned round", () => {
  const past = stamp(Date.UTC(1970, 0, 1), 0, "a");
  const future = stamp(Date.UTC(2099, 0, 1), 0, "a");
  expect(compareStamps(past, future)).toBe(-1);
  expect(compareStamps(future, past)).toBe(1);
});

test("texts sort by code units whatever the language", () => {
  expect(["ä", "b", "Z", "a", "😀", "\ufb33"].sort(compareText)).toEqual([
    "Z",
    "a",
    "b",
    "ä",
    "😀",
    "\ufb33",
  ]);
});
