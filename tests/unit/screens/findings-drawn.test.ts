import { expect, it } from "vitest";
import { failed, ok } from "../../../src/record/result.ts";
import { english } from "../../../src/screens/catalogue.ts";
import { drawnOf } from "../../../src/screens/findings/drawn-of.ts";
import type { StripFound, TestFound } from "../../../src/screens/findings/newest-test.ts";
import { FINDINGS_WORDS } from "../../../src/screens/findings/words.ts";
import type { Listed } from "../../../src/screens/parts/reader.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { idOf } from "../record/made-up.ts";

const trade = TRADE_WORDS["uk-ie"];
const words = { ...english(trade), ...FINDINGS_WORDS.en(trade) };
const strip = (number: number, found: StripFound["found"], more: Partial<StripFound> = {}): StripFound => ({
  id: idOf("strip", number),
  strip: { body: { name: `strip ${number}` }, deleted: false } as Listed<"strip">,
  visits: [idOf("visit", 1)],
  found,
  perHole: null,
  stood: null,
  cautions: [],
  chance: null,
  ...more,
});
const test = (
  measure: TestFound["measure"],
  strips: readonly StripFound[],
  more: Partial<TestFound> = {},
): TestFound => ({
  measure,
  per: "m2",
  minutes: 60,
  day: "2026-04-07",
  since: null,
  strips,
  grass: null,
  unlike: [],
  ...more,
});
const beside = (of: TestFound): readonly (readonly string[])[] =>
  drawnOf(words, of, ({ code }) => `the sentence of ${code}`).map((one) => one.beside);

it("says that there is no line, hole or ring yet where that is why there is no number", () => {
  expect(beside(test("cover", [strip(1, failed("science/no-marks-read"))]))).toEqual([
    ["no finished line yet"],
  ]);
  expect(beside(test("worms", [strip(1, failed("science/nothing-read"))]))).toEqual([["no closed hole yet"]]);
  expect(beside(test("soak", [strip(1, failed("science/nothing-read"))], { minutes: 180 }))).toEqual([
    ["no ring was read for 180 min"],
  ]);
});

it("says any other reason by its own sentence: holes were closed, and their size is not known", () => {
  const sized = strip(1, ok({ value: 225, n: 3, range: failed("science/no-number") }), { perHole: 9 });
  expect(beside(test("worms", [sized, strip(2, failed("science/no-hole-size"))]))).toEqual([
    ["9 per hole"],
    ["the sentence of science/no-hole-size"],
  ]);
  expect(beside(test("cover", [strip(1, failed("science/not-a-count"))]))).toEqual([
    ["the sentence of science/not-a-count"],
  ]);
});

it("says how many rings stood there where the number does not rest on all of them", () => {
  const rings = (n: number, stood: number) =>
    strip(n, ok({ value: 41, n, range: failed("science/no-number") }), { stood });
  expect(beside(test("soak", [rings(5, 6), rings(4, 4)]))).toEqual([["6 rings stood there"], []]);
});
