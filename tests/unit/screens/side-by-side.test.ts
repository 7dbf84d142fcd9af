import { expect, it } from "vitest";
import { failed } from "../../../src/record/result.ts";
import type { Place } from "../../../src/record/shapes.ts";
import { measureOf } from "../../../src/screens/findings/side-by-side/model.ts";
import {
  moreText,
  pairsText,
  seenText,
  versusOf,
  versusRangeText,
} from "../../../src/screens/findings/side-by-side/say.ts";
import { SIDE_WORDS } from "../../../src/screens/findings/side-by-side/words.ts";
import { FIRST_SETTINGS } from "../../../src/screens/parts/settings.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { ringWith } from "./ring-samples.ts";
import { stripWith } from "./side-samples.ts";

const words = SIDE_WORDS.en(TRADE_WORDS["uk-ie"]);
const two = (measure: Parameters<typeof measureOf>[0], ...strips: readonly ReturnType<typeof stripWith>[]) =>
  measureOf(measure, strips, null, FIRST_SETTINGS);
const only = (now: ReturnType<typeof two>) => {
  const place = now.places[0];
  if (place === undefined || !place.compared.ok) throw new Error("nothing compared");
  return place.compared.value;
};

it("sees points of cover between two places, and says that they differ clearly", () => {
  const now = two("cover", stripWith(1, { hits: [16, 17, 18, 15] }), stripWith(2, { hits: [7, 9, 8, 6] }));
  const compared = only(now);
  const versus = versusOf("cover", compared, "straw left", "carried off");
  // 66 of 80 against 30 of 80: 82.5 − 37.5 = 45 points by hand.
  expect(seenText(words, versus)).toBe("Straw left: 45 points more ground cover than carried off.");
  expect(words.places[compared.comparison.word]).toBe("These two places differ clearly on this day.");
  expect(moreText(words, "cover", compared)).toBe("");
});

it("names the larger one first, whichever was chosen, with its range turned as well", () => {
  const now = two("cover", stripWith(1, { hits: [7, 9, 8, 6] }), stripWith(2, { hits: [16, 17, 18, 15] }));
  const versus = versusOf("cover", only(now), "carried off", "straw left");
  expect(seenText(words, versus)).toContain("Straw left: 45 points more");
  expect(versusRangeText(words, versus)).toMatch(/^The difference lies between [1-9]\d* and \d+ points/);
});

it("cannot tell from two lines each, and says how many more give a range", () => {
  const now = two("cover", stripWith(1, { hits: [16, 17] }), stripWith(2, { hits: [7] }));
  const compared = only(now);
  expect(compared.comparison.word).toBe("cannot-tell-yet");
  expect(moreText(words, "cover", compared)).toBe("2 more lines where there are fewest would give a range.");
});

it("cannot tell lines apart that scatter widely, and says what it would take", () => {
  const now = two("cover", stripWith(1, { hits: [4, 12, 18] }), stripWith(2, { hits: [3, 10, 16] }));
  const compared = only(now);
  expect(compared.comparison.word).toBe("cannot-tell-yet");
  expect(moreText(words, "cover", compared)).toMatch(/^About \d+ to \d+ more lines on each would show/);
});

it("compares worms as a ratio of counts, and none at all without dividing by it", () => {
  const some = two("worms", stripWith(1, { worms: [4, 6, 3] }), stripWith(2, { worms: [8, 12, 6] }));
  // 26 worms against 13: twice as many.
  expect(seenText(words, versusOf("worms", only(some), "carried off", "straw left"))).toBe(
    "Straw left: about twice as many worms as on carried off.",
  );
  for (const [a, b] of [
    [
      [0, 0, 0],
      [8, 12, 6],
    ],
    [
      [8, 12, 6],
      [0, 0, 0],
    ],
  ] as const) {
    const names = a[0] === 0 ? (["bare", "mulched"] as const) : (["mulched", "bare"] as const);
    const none = only(two("worms", stripWith(1, { worms: a }), stripWith(2, { worms: b })));
    const versus = versusOf("worms", none, names[0], names[1]);
    expect(seenText(words, versus)).toBe("Mulched: worms there, and none on bare.");
    expect(versusRangeText(words, versus)).toMatch(/^The ratio lies below \d/);
  }
});

const fallen = (
  mm: number,
  number: number,
  mulch: "kept" | "removed" = "kept",
  place: Place | null = "between-rows",
) =>
  ringWith(
    [
      { type: "start", atMin: 0 },
      { type: "level", atMin: 0, mm: 150 },
      { type: "level", atMin: 60, mm: 150 - mm },
    ],
    { number, mulch, place },
  );

it("says before any number that the mulch in the rings was not alike", () => {
  const now = two(
    "soak",
    stripWith(1, { rings: [fallen(70, 1), fallen(80, 2), fallen(60, 3)] }),
    stripWith(2, { rings: [fallen(30, 4, "removed"), fallen(20, 5, "removed")] }),
  );
  expect(now.likeness.flatMap(({ unlike }) => unlike.map(({ about }) => about))).toEqual(["mulchInRing"]);
  expect(now.asked.minutes).toBe(60);
});

it("says before any number that one strip lies mostly in wheel tracks and the other mostly between rows", () => {
  const rings = (between: number, from: number) =>
    Array.from({ length: 7 }, (_, at) =>
      fallen(40 + at, from + at, "kept", at < between ? "between-rows" : "wheel-track"),
    );
  // Both have some of each: 2 of 7 and 5 of 7 between rows.
  const now = two("soak", stripWith(1, { rings: rings(2, 1) }), stripWith(2, { rings: rings(5, 8) }));
  expect(now.likeness.flatMap(({ unlike }) => unlike.map(({ about }) => about))).toEqual(["places"]);
  const alike = two("soak", stripWith(1, { rings: rings(4, 1) }), stripWith(2, { rings: rings(5, 8) }));
  expect(alike.likeness.flatMap(({ unlike }) => unlike)).toEqual([]);
});

it("says that a place was written down on one side only", () => {
  const now = two("cover", stripWith(1, { hits: [9, 9, 9] }), stripWith(2, { hits: [5, 5, 5], place: null }));
  expect(now.likeness[0]?.unlike).toMatchObject([{ about: "places", notKnown: true }]);
});

const inReps = (rep: number, done: "straw-left" | "straw-carried-off" | "cover-crop", hits: number[]) =>
  stripWith(rep * 10 + done.length, { hits, strip: { rep, done: [done] } });

it("compares two treatments over pairs when their strips stand in reps", () => {
  const now = two(
    "cover",
    ...[1, 2, 3, 4].flatMap((rep) => [
      inReps(rep, "straw-left", [15, 16, 14 + rep]),
      inReps(rep, "straw-carried-off", [6, 7, 5 + rep]),
    ]),
  );
  expect(now.places).toEqual([]);
  expect(now.reps).toMatchObject({ design: "pairs", reps: 4, incomplete: [] });
  const compared = now.reps?.compared;
  // Every pair differs by 27 of 60 marks: 45 points, and pairs that all differ by the same show no spread.
  expect(compared?.ok === true && compared.value.n).toBe(4);
});

it("compares three treatments over blocks, and leaves an incomplete block out by name", () => {
  const now = two(
    "cover",
    ...[1, 2, 3].flatMap((rep) => [
      inReps(rep, "straw-left", [15, 16, 13 + rep]),
      inReps(rep, "straw-carried-off", [6, 8 - rep, 7]),
      ...(rep === 3 ? [] : [inReps(rep, "cover-crop", [18, 19, 17])]),
    ]),
  );
  expect(now.reps).toMatchObject({ design: "blocks", reps: 2, incomplete: [3] });
});

it("takes strips of one rep as places", () => {
  const now = two("cover", inReps(1, "straw-left", [15, 16, 14]), inReps(1, "straw-carried-off", [6, 7, 5]));
  expect(now.reps).toBeNull();
  expect(now.places).toHaveLength(1);
});

it("sets each pair the way round of the sentence over all of them", () => {
  const words = SIDE_WORDS.en(TRADE_WORDS["uk-ie"]);
  const of = { first: "none", second: "cover crop", range: failed("science/too-few-pairs") };
  const cover = { ...of, measure: "cover", scale: "difference", value: -0.35 } as const;
  const each = [-0.4, -0.35, 0.05].map((value, at) => ({ label: String(at + 1), value }));
  expect(seenText(words, cover)).toBe("Cover crop: 35 points more ground cover than none.");
  expect(pairsText(words, cover, each)).toEqual({
    heading: "Each pair by itself: cover crop against none",
    rows: [
      { rep: "rep 1", value: "40 points" },
      { rep: "rep 2", value: "35 points" },
      // Less than nothing by the sign for it, not by a hyphen.
      { rep: "rep 3", value: "\u22125 points" },
    ],
  });
  const worms = { ...of, measure: "worms", scale: "ratio", value: 0.5 } as const;
  expect(pairsText(words, worms, [{ label: "1", value: 0.4 }]).rows).toEqual([
    { rep: "rep 1", value: "2.5 times" },
  ]);
});

it("writes one point as one", () => {
  const words = SIDE_WORDS.en(TRADE_WORDS["uk-ie"]);
  expect(["1", "\u22121", "11", "0"].map(words.pointsOf)).toEqual([
    "1 point",
    "\u22121 point",
    "11 points",
    "0 points",
  ]);
});
