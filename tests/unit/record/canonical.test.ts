import { expect, test } from "vitest";
import { canonicalJson } from "../../../src/record/canonical.ts";

// RFC 8785 (JSON Canonicalization Scheme, 2020), Appendix B: IEEE 754 bits and their JSON text.
const NUMBERS = [
  ["0000000000000000", "0"],
  ["8000000000000000", "0"],
  ["0000000000000001", "5e-324"],
  ["8000000000000001", "-5e-324"],
  ["7fefffffffffffff", "1.7976931348623157e+308"],
  ["4340000000000000", "9007199254740992"],
  ["c340000000000000", "-9007199254740992"],
  ["4430000000000000", "295147905179352830000"],
  ["44b52d02c7e14af5", "9.999999999999997e+22"],
  ["44b52d02c7e14af6", "1e+23"],
  ["444b1ae4d6e2ef4f", "999999999999999900000"],
  ["444b1ae4d6e2ef50", "1e+21"],
  ["3eb0c6f7a0b5ed8c", "9.999999999999997e-7"],
  ["3eb0c6f7a0b5ed8d", "0.000001"],
  ["41b3de4355555555", "333333333.3333333"],
  ["becbf647612f3696", "-0.0000033333333333333333"],
  ["43143ff3c1cb0959", "1424953923781206.2"],
] as const;

test.each(NUMBERS)("RFC 8785 Appendix B: bits %s are written %s", (bits, text) => {
  expect(canonicalJson(Buffer.from(bits, "hex").readDoubleBE())).toBe(text);
});

test("RFC 8785 section 3.2.3: keys are sorted by UTF-16 code units", () => {
  const given = {
    "€": "Euro Sign",
    "\r": "Carriage Return",
    "\ufb33": "Hebrew Letter Dalet With Dagesh",
    1: "One",
    "😀": "Emoji: Grinning Face",
    "\u0080": "Control",
    ö: "Latin Small Letter O With Diaeresis",
  };
  const order = [...canonicalJson(given).matchAll(/:"([^"]+)"/g)].map(([, name]) => name);
  expect(order).toEqual([
    "Carriage Return",
    "One",
    "Control",
    "Latin Small Letter O With Diaeresis",
    "Euro Sign",
    "Emoji: Grinning Face",
    "Hebrew Letter Dalet With Dagesh",
  ]);
});

test("the order in which properties were set does not matter, at any depth", () => {
  const one = { b: [{ y: 1, x: 2 }], a: null };
  const other = { a: null, b: [{ x: 2, y: 1 }] };
  expect(canonicalJson(one)).toBe(canonicalJson(other));
  expect(canonicalJson(one)).toBe('{"a":null,"b":[{"x":2,"y":1}]}');
});

test.each([
  ["undefined", undefined],
  ["a property that is undefined", { a: undefined }],
  ["an item that is undefined", [undefined]],
  ["a hole", new Array(1)],
  ["NaN", Number.NaN],
  ["an endless number", { a: [Number.POSITIVE_INFINITY] }],
  ["a date", new Date(0)],
  ["a map", new Map([["a", 1]])],
  ["a function", () => 1],
  ["a big integer", 1n],
])("%s is refused", (_, value) => {
  expect(() => canonicalJson(value)).toThrow(TypeError);
});
