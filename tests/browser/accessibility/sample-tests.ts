/** Tests in the states that no screen opens in by itself: every way to read a ring, two answers, and water. */
import type { Entry } from "../../../src/record/entry.ts";
import type { RecordId } from "../../../src/record/ids.ts";
import type { LineHeader, RingHeader } from "../../../src/record/kinds/observation.ts";
import { href } from "../../../src/screens/parts/route.ts";
import { lineOf, marksRead, type Sample, sampleStartMs } from "../../bench/seed.ts";
import { entriesAt, holeOf, levelAt, lookAt, type On, ringOf, startAt } from "../../bench/seed-rings.ts";

/** What the tests lie on. */
export interface Ground extends On {
  readonly rope: RecordId<"kit">;
  readonly ring: RecordId<"kit">;
  readonly person: RecordId<"person">;
}

/** The same entries as another phone wrote them. */
const elsewhere = (entries: readonly Entry[]): Entry[] =>
  entries.map((entry) => ({ ...entry, id: `f${entry.id.slice(1)}`, device: "f".repeat(16) }));

const linesIn = (add: Sample["add"], { visit, field, strip, rope }: Ground) => {
  const line = (more: Partial<LineHeader>, entries: readonly Entry[]): string =>
    href({
      at: "line",
      line: add(
        "observation",
        lineOf({ visit, field, strip, rope }, { startedAtMs: sampleStartMs + 5_000_000, ...more }),
        {
          entries,
        },
      ),
    });
  const met = marksRead("rrrbg");
  return {
    "line, every kind of mark": line({ fifthKey: "dung" }, marksRead("rfbgsrfbgs")),
    "line, a thickness to come": line({ askThickness: true }, marksRead("rrrrrrrrr")),
    "line, two answers": line({}, [...met, ...elsewhere(marksRead("rrrgb").slice(3))]),
  };
};

const ringsIn = (add: Sample["add"], { visit, field, strip, ring, person }: Ground) => {
  const one = (entries: readonly Entry[], more: Partial<RingHeader> = {}): string =>
    href({ at: "ring", ring: add("observation", ringOf({ visit, field, strip, ring }, more), { entries }) });
  const begun = entriesAt([
    [0, startAt],
    [0, levelAt(80)],
    [5, levelAt(71)],
  ]);
  const [look] = entriesAt([[10, lookAt]], sampleStartMs, "a");
  if (look === undefined) throw new Error("nobody looked");
  const read = (value: number, letter: string): Entry[] =>
    entriesAt(
      [
        [
          10,
          {
            type: "level",
            ring: "inner",
            value,
            unit: "mm",
            reads: "water-depth",
            typed: String(value),
            timed: "now",
            of: look.id,
          },
        ],
      ],
      sampleStartMs,
      letter,
    );
  return {
    "ring, waiting": one([], { person }),
    "ring, its keys": one(begun),
    "ring, double": one(begun, { outer: ring }),
    "ring, one pour": one(entriesAt([[0, startAt]]), { way: "measured-pour" }),
    "ring, one level": one(
      entriesAt([
        [0, startAt],
        [0, { type: "pour", ring: "inner", value: 1, unit: "L", typed: "1", timed: "now" }],
      ]),
      { way: "kept-at-one-level" },
    ),
    "ring, it leaked": one([
      ...begun,
      ...entriesAt([[8, { type: "happened", what: "leaked", words: "", timed: "now" }]], sampleStartMs, "c"),
    ]),
    "ring, water rose": one([...begun, ...entriesAt([[9, levelAt(79)]], sampleStartMs, "c")]),
    "ring, two answers": one([...begun, look, ...read(66, "b"), ...elsewhere(read(61, "c"))]),
    "ring, stopped": one([
      ...begun,
      look,
      ...entriesAt([[12, { type: "stop", why: "done", timed: "now" }]], sampleStartMs, "c"),
    ]),
  };
};

const holesIn = (add: Sample["add"], { visit, field, strip }: On) => {
  const found = (count: number): Entry[] =>
    entriesAt([[1, { type: "found", from: "soil", count, typed: String(count) }]]);
  const one = (number: number, entries: readonly Entry[], mustardMin: number | null = null): string =>
    href({
      at: "hole",
      hole: add("observation", holeOf({ visit, field, strip }, { number, mustardMin }), { entries }),
    });
  return {
    "hole, two answers": one(3, [...found(4), ...elsewhere(found(7))]),
    "hole, mustard water": one(4, found(2), 10),
    "hole, mustard poured": one(
      5,
      entriesAt([
        [1, { type: "found", from: "soil", count: 3, typed: "3" }],
        [2, { type: "mustard", litres: 2 }],
      ]),
      10,
    ),
  };
};

/** Adds them, and returns the address of each. */
export const testsIn = (add: Sample["add"], ground: Ground): Readonly<Record<string, string>> => ({
  ...linesIn(add, ground),
  ...ringsIn(add, ground),
  ...holesIn(add, ground),
});
