/** Strips of one day for comparing, put together by hand. */
import type { Entry } from "../../../src/record/entry.ts";
import { type HoleReading, readHole } from "../../../src/record/hole/reading.ts";
import type { Strip } from "../../../src/record/kinds/strip.ts";
import { readLine } from "../../../src/record/line/reading.ts";
import type { Place } from "../../../src/record/shapes.ts";
import { wormsPerHole, wormsPerM2 } from "../../../src/science/earthworms/field.ts";
import { countOfHole, type DayHole } from "../../../src/screens/measure/hole/holes-of-day.ts";
import type { DayRing } from "../../../src/screens/measure/rings/day.ts";
import type { DayStrip } from "../../../src/screens/measure/visit/day-strips.ts";
import { ringsTogether } from "../../../src/screens/measure/visit/rings-together.ts";
import { countsOf } from "../../../src/screens/parts/line-counts.ts";
import type { Listed } from "../../../src/screens/parts/reader.ts";
import { FIRST_SETTINGS } from "../../../src/screens/parts/settings.ts";
import { coverOfLines, type SummedLine } from "../../../src/screens/parts/strip-cover.ts";
import { lineOf, marksRead } from "../../bench/seed.ts";
import { entriesAt, holeOf } from "../../bench/seed-rings.ts";

const id = <K extends string>(kind: K, count: number): `${K}-${string}` =>
  `${kind}-${count.toString(16).padStart(32, "0")}`;

const on = { visit: id("visit", 1), field: id("field", 1), rope: id("kit", 1) };
let counted = 0;

const lineWith = (hits: number, place: Place | null): SummedLine => {
  counted += 1;
  const frame = { way: "mark-by-mark", ropeMarks: 20 } as const;
  const reading = readLine(marksRead("r".repeat(hits) + "b".repeat(20 - hits)), frame);
  return {
    id: id("observation", counted),
    header: lineOf({ ...on, strip: id("strip", 1) }, { place }),
    frame,
    reading,
    finished: true,
    counts: countsOf(reading.tally),
  };
};

const holeWith = (count: number, place: Place | null): DayHole => {
  counted += 1;
  const entries: readonly Entry[] = entriesAt([
    [0, { type: "found", from: "soil", count, typed: String(count) }],
    [1, { type: "closed" }],
  ]);
  const reading: HoleReading = readHole(entries);
  return {
    id: id("observation", counted),
    header: holeOf({ ...on, strip: id("strip", 1) }, { number: counted, place }),
    template: null,
    reading,
  };
};

/** What lies on a strip. */
export interface OnStrip {
  readonly hits?: readonly number[];
  readonly worms?: readonly number[];
  readonly rings?: readonly DayRing[];
  /** Of lines and holes: one for all, or one for each in turn. */
  readonly place?: Place | null | readonly (Place | null)[];
  readonly strip?: Partial<Strip>;
}

/** A strip of this number with lines of 20 marks, holes of 20 by 20 cm, and rings. */
export const stripWith = (
  number: number,
  { hits = [], worms = [], rings = [], place = "between-rows", strip = {} }: OnStrip,
): DayStrip => {
  const placeOf = (at: number): Place | null =>
    typeof place === "string" || place === null ? place : (place[at] ?? null);
  const holes = worms.map((count, at) => holeWith(count, placeOf(at)));
  const holeCounts = holes.map(countOfHole);
  const body: Strip = {
    field: on.field,
    name: `strip ${number}`,
    done: [],
    wholeField: false,
    rep: null,
    ...strip,
  };
  return {
    id: id("strip", number),
    strip: { id: id("strip", number), body, deleted: false } as Listed<"strip">,
    cover: coverOfLines(
      hits.map((count, at) => lineWith(count, placeOf(at))),
      FIRST_SETTINGS,
    ),
    holes,
    holeCounts,
    perHole: wormsPerHole(holeCounts),
    perM2: wormsPerM2(holeCounts),
    soak: ringsTogether(rings),
    guesses: {},
    notes: 0,
    photos: [],
    newestMs: number,
  };
};
