import { expect, it } from "vitest";
import { failed, ok } from "../../../src/record/result.ts";
import { besidesOf } from "../../../src/screens/findings/model.ts";
import type { TestFound } from "../../../src/screens/findings/newest-test.ts";
import { idOf } from "../record/made-up.ts";

/** A test of one day: strips with a number, and strips without one. */
const test = (day: string, visit: number, numbers: number, none = 0): TestFound => ({
  measure: "worms",
  per: "m2",
  minutes: 60,
  day,
  since: null,
  grass: null,
  unlike: [],
  strips: Array.from({ length: numbers + none }, (_, at) => ({
    id: idOf("strip", at),
    strip: undefined,
    visits: [idOf("visit", visit)],
    found:
      at < numbers
        ? ok({ value: 9, n: 3, range: failed("science/no-number") })
        : failed("science/nothing-read"),
    perHole: null,
    stood: null,
    cautions: [],
    chance: null,
  })),
});

it("leads once to each day that has two strips with a number, the newest first", () => {
  const tests = [test("2026-04-07", 1, 2), test("2026-04-12", 2, 3), test("2026-04-07", 1, 2)];
  expect(besidesOf(tests)).toEqual([
    { day: "2026-04-12", visit: idOf("visit", 2) },
    { day: "2026-04-07", visit: idOf("visit", 1) },
  ]);
});

it("leads to no day on which one strip alone has a number", () => {
  expect(besidesOf([test("2026-04-07", 1, 1, 2)])).toEqual([]);
});
