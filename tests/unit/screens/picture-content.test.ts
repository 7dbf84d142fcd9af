import { expect, it } from "vitest";
import { demoId } from "../../../src/record/demo-ids.ts";
import { CATALOGUES } from "../../../src/screens/catalogue.ts";
import { SENTENCES } from "../../../src/screens/findings/sentences.ts";
import { SIDE_WORDS } from "../../../src/screens/findings/side-by-side/words.ts";
import { BESIDE_WORDS } from "../../../src/screens/findings/words.beside.ts";
import type { DayOfField, DayStrip, Yardstick } from "../../../src/screens/measure/visit/day-strips.ts";
import type { Listed } from "../../../src/screens/parts/reader.ts";
import { FIRST_SETTINGS } from "../../../src/screens/parts/settings.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { contentOf, fileName, textOf } from "../../../src/screens/send/picture/content.ts";
import { type Chosen, pictureOf } from "../../../src/screens/send/picture/model.ts";
import { PICTURE_WORDS } from "../../../src/screens/send/picture/words.ts";
import { ringWith } from "./ring-samples.ts";
import { stripWith } from "./side-samples.ts";

const trade = TRADE_WORDS["uk-ie"];
const with_ = {
  catalogue: CATALOGUES.en(trade),
  picture: PICTURE_WORDS.en(trade),
  side: SIDE_WORDS.en(trade),
  beside: BESIDE_WORDS.en(trade),
  sentences: SENTENCES.en(trade),
  habits: FIRST_SETTINGS.habits,
};
const visit = { body: { day: "2024-05-07" } } as Listed<"visit">;
const ownField = `field-${"1".repeat(32)}`;
let fieldId = ownField;
const dayWith = (...strips: readonly DayStrip[]) =>
  ({
    same: { field: { id: fieldId, body: { name: "Long Bottom" } }, ids: [] },
    strips,
    photos: [],
    yardstick: null,
  }) as unknown as DayOfField;
const yardstickOf = (of: DayStrip, line: string): Yardstick => ({
  ...of,
  spots: [],
  days: { line, hole: null, ring: null },
  today: { lines: [], holes: [], rings: [] },
});
const textFor = (day: DayOfField, chosen: Chosen = {}): string => {
  const now = pictureOf(day, visit, FIRST_SETTINGS, chosen);
  return now === null ? "" : textOf(contentOf(now, with_));
};

it("says two numbers with samples, ranges, day, field, and what it does not show", () => {
  const left = stripWith(1, { hits: [16, 17, 18, 15], strip: { name: "straw left" } });
  const text = textFor(
    dayWith(
      { ...left, guesses: { "ground-cover-percent": 60 } },
      stripWith(2, { hits: [7, 9, 8, 6], strip: { name: "carried off" } }),
    ),
  );
  expect(text).toContain("Long Bottom, 7 May 2024");
  expect(text).toMatch(/straw left: 83 % \(range \d+ to \d+, 4 lines\); guessed before: 60 %/);
  expect(text).toMatch(/carried off: 38 % \(range \d+ to \d+, 4 lines\)/);
  expect(text).toContain("Straw left: 45 points more ground cover than carried off.");
  expect(text).toContain("These two places differ clearly on this day.");
  expect(text).toContain("Ground and treatment cannot be told apart");
  expect(text).toContain("Mulchmark · ");
});

it("says that places are unlike before it says any number", () => {
  const text = textFor(
    dayWith(
      stripWith(1, { hits: [16, 17, 18] }),
      stripWith(2, { hits: [7, 9, 8], place: "wheel-track", strip: { name: "carried off" } }),
    ),
  );
  const at = text.indexOf("Not like with like: the places against the row differ, or their shares do.");
  expect(at).toBeGreaterThan(0);
  expect(at).toBeLessThan(text.indexOf(" % ("));
});

it("says the day of old grass that was measured on another one, and names no day of its own", () => {
  const grass = stripWith(3, { hits: [20, 19] });
  const textOn = (line: string): string =>
    textFor(
      { ...dayWith(stripWith(1, { hits: [16, 17] })), yardstick: yardstickOf(grass, line) },
      { second: "old-grass" },
    );
  // 39 of 40 marks.
  expect(textOn("2024-05-07")).toContain("old-grass spot: 98 % (too few to give a range, 2 lines)");
  expect(textOn("2023-05-03")).toContain("old-grass spot, 3 May 2023: 98 % (");
});

it("compares nothing when one strip alone was measured", () => {
  const text = textFor(dayWith(stripWith(1, { hits: [16, 17] })));
  expect(text).toContain("too few to give a range, 2 lines");
  expect(text).toContain("One day, one place.");
  expect(text).not.toContain("differ");
});

it("proposes a number that two strips have, and takes the one that was chosen", () => {
  const day = dayWith(
    stripWith(1, { hits: [16, 17, 18], worms: [4, 6, 3] }),
    stripWith(2, { worms: [14, 11, 17] }),
  );
  expect(pictureOf(day, visit, FIRST_SETTINGS, {})?.measure).toBe("worms");
  const chosen = pictureOf(day, visit, FIRST_SETTINGS, { measure: "cover" });
  expect(chosen?.halves).toHaveLength(1);
});

it("makes nothing of a day on which nothing was finished", () => {
  expect(pictureOf(dayWith(stripWith(1, {})), visit, FIRST_SETTINGS, {})).toBeNull();
});

it.each([
  ["Long Bottom", "mulchmark-long-bottom-2024-05-07.png"],
  ["Überm Bach / süd", "mulchmark-uberm-bach-sud-2024-05-07.png"],
  ["…", "mulchmark-2024-05-07.png"],
])("names the file of %s as every system takes it", (field, name) => {
  expect(fileName(field, "2024-05-07", "png")).toBe(name);
});

it("says right under the field that an example farm is invented, and of no other field", () => {
  const strips = [stripWith(1, { hits: [16, 17, 18], strip: { name: "straw left" } })];
  expect(textFor(dayWith(...strips))).not.toContain("invented");
  fieldId = demoId("field", { edition: 1, round: 0 }, 1);
  const text = textFor(dayWith(...strips));
  fieldId = ownField;
  expect(text.split("\n").slice(0, 2)).toEqual([
    "Long Bottom, 7 May 2024",
    "Example farm: this field is invented, and so is what was measured on it.",
  ]);
});

it("says of rings that all read the same why they have no range", () => {
  const ring = (number: number) =>
    ringWith(
      [
        { type: "start", atMin: 0 },
        { type: "level", atMin: 0, mm: 150 },
        { type: "level", atMin: 60, mm: 110 },
      ],
      { number },
    );
  const text = textFor(dayWith(stripWith(1, { rings: [ring(1), ring(2), ring(3)] })));
  expect(text).toContain("40 mm (no range: all rings read the same, 3 rings)");
});
