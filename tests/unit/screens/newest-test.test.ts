import { expect, it } from "vitest";
import type { RecordId } from "../../../src/record/ids.ts";
import { failed, ok } from "../../../src/record/result.ts";
import type { Place } from "../../../src/record/shapes.ts";
import type { Caution } from "../../../src/science/estimate.ts";
import type { FieldResults } from "../../../src/science/field-results.ts";
import { newestTests, type Sources } from "../../../src/screens/findings/newest-test.ts";
import type { DayOfField } from "../../../src/screens/measure/visit/day-strips.ts";
import type { Reader } from "../../../src/screens/parts/reader.ts";
import { idOf } from "../record/made-up.ts";
import { stripWith } from "./side-samples.ts";

const [A, B, C] = [idOf("strip", 1), idOf("strip", 2), idOf("strip", 3)];
const visit = idOf("visit", 1);
// Names are read from the records; here nobody asks for them.
const noNames = { many: () => Promise.resolve([]) } as unknown as Reader;
const mean = (value: number) => ok({ value, n: 3, range: failed("science/too-few-holes") });

const worms = (
  day: string,
  strip: typeof A,
  perHole: number | null,
  { sized = true, places = ["between-rows"] as readonly Place[] } = {},
) => ({
  day,
  strip,
  visits: [visit],
  unfinished: 0,
  places,
  perHole: perHole === null ? failed("science/nothing-read") : mean(perHole),
  // A hole of 20 × 20 cm is a twenty-fifth of a square metre.
  perM2: perHole === null || !sized ? failed("science/no-hole-size") : mean(perHole * 25),
  cautions: [],
});
const soaked = (strip: typeof A, depths: Readonly<Partial<Record<30 | 60 | 180, number>>>) => ({
  day: "2026-04-07",
  strip,
  visits: [visit],
  rings: 4,
  places: ["between-rows"] as const,
  after: ([30, 60, 180] as const).map((minutes) => {
    const depth = depths[minutes];
    return { minutes, depth: depth === undefined ? failed("science/nothing-read") : mean(depth) };
  }),
  cautions: [],
});
const grassOf = ({ strip: _, ...of }: ReturnType<typeof worms>) => ({ ...of, spots: [idOf("spot", 1)] });
const found = (
  more: Partial<FieldResults>,
  dayOf: Sources["dayOf"] = () => Promise.resolve(null),
  records = noNames,
): Promise<Awaited<ReturnType<typeof newestTests>>> =>
  newestTests(
    { records, dayOf },
    {
      cover: { lines: 0, unfinished: [], onDays: [], oldGrass: [] },
      worms: [],
      soaked: [],
      oldGrass: { worms: [], soaked: [] },
      ...more,
    },
  );

it("takes the newest day on which two strips can be seen beside each other, else the newest of all", async () => {
  const begun = worms("2026-04-09", A, 7);
  const [test] = await found({ worms: [begun, worms("2026-04-07", A, 9), worms("2026-04-07", B, 4)] });
  expect(test).toMatchObject({ day: "2026-04-07", strips: [{ id: A }, { id: B }] });
});

it("names the newest day that has one strip alone, where an older day is shown in its place", async () => {
  const two = [worms("2026-04-07", A, 9), worms("2026-04-07", B, 4)];
  const named = { many: (ids: readonly string[]) => Promise.resolve(ids.map((id) => ({ id }))) } as never;
  const since = async (newer: readonly ReturnType<typeof worms>[]) =>
    (await found({ worms: [...newer, ...two] }, undefined, named))[0]?.since;
  expect(await since([])).toBeNull();
  expect(await since([worms("2026-04-12", C, 3), worms("2026-04-09", A, 7)])).toEqual({
    day: "2026-04-12",
    strip: { id: C },
  });
  // A day on which nothing has a number yet hides nothing.
  expect(await since([worms("2026-04-12", C, null)])).toBeNull();
  const [alone] = await found({ worms: [worms("2026-04-07", A, 9), worms("2026-04-01", B, 4)] });
  expect(alone).toMatchObject({ day: "2026-04-07", since: null });
});

it("takes of each test the newest day on which it found anything", async () => {
  const all = [worms("2026-04-08", A, null), worms("2026-04-07", A, 9), worms("2025-04-07", B, 4)];
  const [test, none] = await found({ worms: all });
  expect(none).toBeUndefined();
  expect(test).toMatchObject({ measure: "worms", day: "2026-04-07", strips: [{ id: A }] });
});

it("compares worms by the square metre, and by the hole only where a size is not known", async () => {
  const day = "2026-04-07";
  const sized = await found({ worms: [worms(day, A, 9), worms(day, B, 4)] });
  expect(sized[0]).toMatchObject({
    per: "m2",
    strips: [
      { found: { value: { value: 225 } }, perHole: 9 },
      { found: { value: { value: 100 } }, perHole: 4 },
    ],
  });
  const unsized = await found({ worms: [worms(day, A, 9), worms(day, B, 4, { sized: false })] });
  expect(unsized[0]).toMatchObject({
    per: "hole",
    strips: [{ perHole: null }, { found: { value: { value: 4 } } }],
  });
});

it("shows the depth after the time for which most strips can say, an hour before half an hour", async () => {
  const hour = await found({ soaked: [soaked(A, { 30: 12, 60: 20 }), soaked(B, { 30: 9, 60: 15 })] });
  expect(hour[0]).toMatchObject({ minutes: 60, strips: [{ stood: 4 }, { stood: 4 }] });
  const half = await found({ soaked: [soaked(A, { 30: 12 }), soaked(B, { 30: 9, 60: 15 })] });
  expect(half[0]).toMatchObject({ minutes: 30 });
});

const [TRACK, BETWEEN] = ["wheel-track", "between-rows"] as const;
/** A day on which each strip has one hole at each of its places. */
const dayWith =
  (...places: readonly (readonly Place[])[]): Sources["dayOf"] =>
  () =>
    Promise.resolve({
      strips: places.map((of, at) => stripWith(at + 1, { worms: of.map(() => 5), place: of })),
      stripOf: (id: RecordId<"strip">) => id,
    } as unknown as DayOfField);
const day = "2026-04-07";
const both = { places: [TRACK, BETWEEN] };

it("takes strips with the same places in like shares for alike", async () => {
  const mixed = dayWith([TRACK, TRACK, BETWEEN, BETWEEN], [BETWEEN, TRACK, BETWEEN, TRACK]);
  const [test] = await found({ worms: [worms(day, A, 9, both), worms(day, B, 4, both)] }, mixed);
  expect(test?.unlike).toEqual([]);
});

it("names the places of each strip where their shares are unlike, or the places", async () => {
  const shares = [
    [TRACK, TRACK, TRACK, BETWEEN],
    [BETWEEN, BETWEEN, TRACK, BETWEEN],
  ] as const;
  const [test] = await found({ worms: [worms(day, A, 9, both), worms(day, B, 4, both)] }, dayWith(...shares));
  expect(test?.unlike).toEqual([
    { strip: A, places: shares[0] },
    { strip: B, places: shares[1] },
  ]);
  const [apart] = await found(
    { worms: [worms(day, A, 9), worms(day, B, 4, { places: [TRACK] })] },
    dayWith([BETWEEN], [TRACK]),
  );
  expect(apart?.unlike.map(({ places }) => places)).toEqual([[BETWEEN], [TRACK]]);
});

it("leaves strips without a number out, and old grass, and reads no day where all lie at one place", async () => {
  const [test] = await found(
    {
      worms: [worms(day, A, 9), worms(day, B, 4), worms(day, C, null, { places: [TRACK] })],
      oldGrass: { worms: [grassOf(worms(day, A, 20, { places: [TRACK] }))], soaked: [] },
    },
    () => Promise.reject(new Error("nobody has to look")),
  );
  expect(test?.unlike).toEqual([]);
});

it("takes old grass of the day, else of the newest day before it, never of a day after it", async () => {
  const days = ["2026-04-09", "2026-04-01", "2025-04-01"].map((day) => grassOf(worms(day, A, 20)));
  const [test] = await found({ worms: [worms("2026-04-07", A, 9)], oldGrass: { worms: days, soaked: [] } });
  expect(test?.grass).toMatchObject({ day: "2026-04-01", found: { value: { value: 500 } } });
});

it("keeps with a number what has to be borne in mind, and nothing of a depth or a strip that has no number", async () => {
  const day = "2026-04-07";
  const cold: Caution = { code: "science/soil-cold", facts: { holes: 2 } };
  const holes = await found({
    worms: [
      { ...worms(day, A, 9), cautions: [cold] },
      { ...worms(day, B, null), cautions: [cold] },
    ],
    oldGrass: { worms: [{ ...grassOf(worms(day, A, 20)), cautions: [cold] }], soaked: [] },
  });
  expect(holes[0]?.strips.map(({ cautions }) => cautions)).toEqual([[cold], []]);
  expect(holes[0]?.grass?.cautions).toEqual([cold]);

  const burrow: Caution = { code: "science/rings-with-burrow", facts: { rings: 1 } };
  const lacking = (minutes: number): Caution => ({
    code: "science/rings-not-read-so-long",
    facts: { minutes, rings: 1, of: 4 },
  });
  const rings = await found({
    soaked: [
      { ...soaked(A, { 60: 20, 180: 41 }), cautions: [burrow, lacking(60), lacking(180)] },
      soaked(B, { 60: 15 }),
    ],
  });
  expect(rings[0]).toMatchObject({ minutes: 60 });
  expect(rings[0]?.strips[0]?.cautions).toEqual([burrow, lacking(60)]);
});
