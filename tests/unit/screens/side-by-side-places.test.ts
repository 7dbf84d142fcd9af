import { expect, it } from "vitest";
import type { Place } from "../../../src/record/shapes.ts";
import { onlyAt, writeOnlyAt } from "../../../src/screens/findings/side-by-side/at-place.ts";
import type { Measure } from "../../../src/screens/findings/side-by-side/conditions.ts";
import {
  type MeasureNow,
  measureOf,
  sideBySideOf,
} from "../../../src/screens/findings/side-by-side/model.ts";
import { guessOf } from "../../../src/screens/findings/side-by-side/sides.ts";
import type { DayOfField, DayStrip } from "../../../src/screens/measure/visit/day-strips.ts";
import { href, routeAt } from "../../../src/screens/parts/route.ts";
import { FIRST_SETTINGS } from "../../../src/screens/parts/settings.ts";
import { ringWith } from "./ring-samples.ts";
import { stripWith } from "./side-samples.ts";

const at = (only: Place | undefined, measure: Measure, ...strips: readonly DayStrip[]): MeasureNow =>
  measureOf(measure, strips, null, FIRST_SETTINGS, only);
const offers = ({ offered }: MeasureNow) =>
  offered.map(({ place, counts }) => [place, ...counts.map(({ count }) => count)]);
const compared = ({ places }: MeasureNow) => {
  const one = places[0]?.compared;
  if (one?.ok !== true) throw new Error("nothing compared");
  return one.value;
};
const T: Place = "wheel-track";
const B: Place = "between-rows";

let rings = 0;
/** Rings that took in so many millimetres within the hour. */
const soaked = (place: Place | null, ...depths: readonly number[]) =>
  depths.map((mm) => {
    rings += 1;
    return ringWith(
      [
        { type: "start", atMin: 0 },
        { type: "level", atMin: 0, mm: 150 },
        { type: "level", atMin: 60, mm: 150 - mm },
      ],
      { number: rings, mulch: "kept", place },
    );
  });
const left = () => stripWith(1, { rings: [...soaked(B, 60, 64), ...soaked(T, 10, 12, 14, 12, 12)] });
const off = () => stripWith(2, { rings: [...soaked(B, 46, 40, 50, 46, 44), ...soaked(T, 7, 9)] });

it("turns round when the tests of each place are compared by themselves", () => {
  const both = [left(), off()] as const;
  const pooled = at(undefined, "soak", ...both);
  expect(offers(pooled)).toEqual([
    [null, 7, 7],
    [B, 2, 5],
    [T, 5, 2],
  ]);
  // Geometric means by hand: (60 · 64 · 10 · 12³ · 14)^(1/7) = 19.0 against (46² · 40 · 50 · 44 · 7 · 9)^(1/7) = 27.4.
  expect(pooled.at).toBeNull();
  expect(compared(pooled).comparison.value).toBeCloseTo(19.0 / 27.4, 2);
  // √(60 · 64) = 61.97 against (46² · 40 · 50 · 44)^(1/5) = 45.08.
  const between = at(B, "soak", ...both);
  expect(between.at).toBe(B);
  expect(compared(between).comparison.value).toBeCloseTo(61.97 / 45.08, 2);
  // (10 · 12³ · 14)^(1/5) = 11.93 against √63 = 7.937.
  const tracks = at(T, "soak", ...both);
  expect(compared(tracks).comparison.value).toBeCloseTo(11.93 / 7.937, 2);
  // The numbers that are shown are of these rings alone, and means of ratios as well.
  expect(tracks.sides.map(({ estimate }) => [estimate.value, estimate.n])).toEqual([
    [expect.closeTo(11.93, 2), 5],
    [expect.closeTo(7.94, 2), 2],
  ]);
});

it("calls the places unlike while all are together, and alike at one of them", () => {
  const unlike = (now: MeasureNow) => now.likeness.flatMap((one) => one.unlike.map(({ about }) => about));
  expect(unlike(at(undefined, "soak", left(), off()))).toEqual(["places"]);
  expect(unlike(at(T, "soak", left(), off()))).toEqual([]);
});

it("says of too few tests at a place what it says of too few anywhere", () => {
  const { comparison, fewest } = compared(at(T, "soak", left(), off()));
  expect(fewest).toBe(2);
  expect(comparison.word).toBe("cannot-tell-yet");
  expect(comparison.range).toMatchObject({ ok: false, problem: { code: "science/too-few-to-compare" } });
});

it("takes lines and holes by their place as well", () => {
  const places = [B, B, T, T, null];
  const lines = (only?: Place) =>
    at(
      only,
      "cover",
      stripWith(1, { hits: [18, 16, 4, 6, 9], place: places }),
      stripWith(2, { hits: [10, 12, 5, 3, 9], place: places }),
    );
  expect(offers(lines())).toEqual([
    [null, 5, 5],
    [B, 2, 2],
    [T, 2, 2],
  ]);
  // 34 of 40 against 22 of 40, and 10 of 40 against 8 of 40.
  expect(compared(lines(B)).comparison.value).toBeCloseTo(0.3, 9);
  expect(compared(lines(T)).comparison.value).toBeCloseTo(0.05, 9);
  const holes = (only?: Place) =>
    at(
      only,
      "worms",
      stripWith(1, { worms: [8, 10, 2, 1, 7], place: places }),
      stripWith(2, { worms: [4, 5, 4, 2, 9], place: places }),
    );
  expect(offers(holes())).toHaveLength(3);
  // 18 worms against 9, and 3 against 6.
  expect(compared(holes(B)).comparison.value).toBeCloseTo(2, 9);
  expect(compared(holes(T)).comparison.value).toBeCloseTo(0.5, 9);
});

it("offers nothing where all tests lie at one place, or no place has tests of both", () => {
  const one = at(B, "cover", stripWith(1, { hits: [9, 8] }), stripWith(2, { hits: [5, 6] }));
  expect([one.offered, one.at]).toEqual([[], null]);
  const apart = at(B, "cover", stripWith(1, { hits: [9, 8] }), stripWith(2, { hits: [5, 6], place: T }));
  expect([apart.offered, apart.at]).toEqual([[], null]);
  expect(apart.sides.map(({ estimate }) => estimate.n)).toEqual([2, 2]);
});

it("offers a place that leaves out tests whose place nobody wrote down", () => {
  const now = at(
    undefined,
    "cover",
    stripWith(1, { hits: [9, 8] }),
    stripWith(2, { hits: [5, 6, 7], place: [B, null, B] }),
  );
  expect(offers(now)).toEqual([
    [null, 2, 3],
    [B, 2, 2],
  ]);
});

it("sets the chosen strip against those that have tests there, and offers no place that it has none at", () => {
  const now = at(
    T,
    "cover",
    stripWith(1, { hits: [9, 8, 5], place: [B, B, T] }),
    stripWith(2, { hits: [5, 6], place: B }),
    stripWith(3, { hits: [5, 6, 7], place: [T, T, "swath"] }),
  );
  expect(offers(now)).toEqual([
    [null, 3, 2, 3],
    [B, 2, 2],
    [T, 1, 2],
  ]);
  expect(now.places.map(({ a, b }) => [a.strip.id, b.strip.id].map((id) => id.slice(-1)))).toEqual([
    ["1", "3"],
  ]);
});

it("compares treatments over those reps that have tests of each at the place, and two of them at least", () => {
  const rep = (number: number, done: "straw-left" | "straw-carried-off", hits: number[], place: Place[]) =>
    stripWith(number * 100 + done.length, { hits, place, strip: { rep: number, done: [done] } });
  const strips = [
    rep(1, "straw-left", [15, 9], [B, T]),
    rep(1, "straw-carried-off", [7, 11], [B, T]),
    rep(2, "straw-left", [16, 8], [B, T]),
    rep(2, "straw-carried-off", [6, 12], [B, T]),
    rep(3, "straw-left", [17, 3], [B, "swath"]),
    rep(3, "straw-carried-off", [8, 2], [B, "swath"]),
  ];
  const now = at(T, "cover", ...strips);
  expect(offers(now).map(([place]) => place)).toEqual([null, B, T]);
  expect(now.reps).toMatchObject({ design: "pairs", reps: 2 });
  // 9 − 11 and 8 − 12 of 20 marks: −10 and −20 points.
  const each = now.reps?.design === "pairs" && now.reps.compared.ok ? now.reps.compared.value.each : [];
  expect(each.map(({ value }) => Math.round(value * 100))).toEqual([-10, -20]);
});

it("leaves what was guessed of the whole strip away from the number of one place", () => {
  const guessed = { ...left(), guesses: { "soaked-in-60-min-mm": 25 } };
  const guess = (only?: Place) => {
    const { sides, asked } = at(only, "soak", guessed, off());
    return sides[0] === undefined ? undefined : guessOf(sides[0].strip, asked);
  };
  expect(guess()).toBe(25);
  expect(guess(T)).toBeNull();
});

it("counts every comparison that can be looked at, also at places that are not chosen", () => {
  const day = {
    same: { field: { id: "", body: {} }, ids: [] },
    visits: [{ body: { day: "2024-05-07" } }],
    strips: [left(), off()],
    stripOf: (id: string) => id,
    yardstick: null,
  } as unknown as DayOfField;
  expect(sideBySideOf(day, FIRST_SETTINGS, null, {})?.looks).toBe(3);
  expect(sideBySideOf(day, FIRST_SETTINGS, null, { soak: T })?.looks).toBe(3);
});

it("stands in the address, of several measures each by itself", () => {
  const visit = `visit-${"1".repeat(32)}` as const;
  const strip = `strip-${"2".repeat(32)}` as const;
  const address = href({ at: "side-by-side", visit, strip, only: writeOnlyAt({ soak: T, worms: B }) });
  expect(address).toBe(`#/visit/${visit}/side-by-side/${strip}/soak.wheel-track+worms.between-rows`);
  const back = routeAt(address);
  expect(back).toMatchObject({ at: "side-by-side", visit, strip });
  expect(onlyAt(back.at === "side-by-side" ? back.only : "")).toEqual({ soak: T, worms: B });
  expect(href({ at: "side-by-side", visit, strip, only: writeOnlyAt({ soak: undefined }) })).toBe(
    `#/visit/${visit}/side-by-side/${strip}`,
  );
});

it("passes over a choice in an address that means nothing", () => {
  for (const junk of [undefined, "", "+", "soak", "soak.moon", "moon.wheel-track", "soak.__proto__"]) {
    const now = at(onlyAt(junk)["soak"] as Place | undefined, "soak", left(), off());
    expect(now.at).toBeNull();
  }
});
