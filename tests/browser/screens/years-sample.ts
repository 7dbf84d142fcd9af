/** A field of three harvest years with lines, holes, rings and an earlier result from paper. */
import type { RecordId } from "../../../src/record/ids.ts";
import type { Ring } from "../../../src/record/kinds/kit.ts";
import {
  beginSample,
  fieldOf,
  lineOf,
  marksRead,
  type Rows,
  type Sample,
  sampleStartMs,
} from "../../bench/seed.ts";
import { entriesAt, holeOf, levelAt, ringOf, startAt } from "../../bench/seed-rings.ts";

export interface YearsSample {
  readonly rows: Rows;
  readonly field: RecordId<"field">;
  readonly strips: readonly RecordId<"strip">[];
}

const DAY_MS = 86_400_000;
const RING: Ring = {
  type: "ring",
  name: "A",
  insideM: [0.1524, null],
  heightsM: [0.15],
  outsideM: null,
};

/** So many of 20 marks are residue. */
const letters = (residue: number): string => "r".repeat(residue) + "b".repeat(20 - residue);

/**
 * Three visits, one in each year: three lines, three holes and three rings on each of two strips. Worms and
 * drops of the ruler are told apart by strip and year so that the numbers can be worked out by hand.
 */
export const yearsSample = ({ add, rows }: Sample = beginSample()): YearsSample => {
  const field = add("field", fieldOf("Long Bottom"));
  const rope = add("kit", { type: "rope", name: "R1", marks: 20, spacingM: 0.5 });
  const ring = add("kit", RING);
  const strips = ["Straw left", "Straw carried off"].map((name) =>
    add("strip", { field, name, done: [], wholeField: false, rep: null }),
  );
  for (const [year, said] of [
    [2022, 2022],
    [2023, 2023],
    [2024, null],
  ] as const) {
    const visit = add("visit", { field, day: `${year}-05-07`, harvestYear: said });
    const firstMs = sampleStartMs - (2024 - year) * 365 * DAY_MS;
    for (const [at, strip] of strips.entries())
      for (let one = 0; one < 3; one++) {
        const startedAtMs = firstMs + (at * 3 + one) * 3_600_000;
        const on = { visit, field, strip };
        add("observation", lineOf({ ...on, rope }, { startedAtMs }), {
          entries: marksRead(letters(8 + (year - 2022) * 3 - at * 4 + one), startedAtMs),
        });
        const worms = 6 + (year - 2022) * 4 - at * 3 + one * 2;
        add("observation", holeOf(on, { startedAtMs, number: one + 1 }), {
          entries: entriesAt(
            [
              [0, { type: "found", from: "soil", count: worms, typed: String(worms) }],
              [5, { type: "closed" }],
            ],
            startedAtMs,
          ),
        });
        const perMin = 0.5 + one * 0.1 - at * 0.2 + (year - 2022) * 0.1;
        add("observation", ringOf({ ...on, ring }, { startedAtMs }), {
          entries: entriesAt(
            [
              [0, startAt],
              [0, levelAt(100)],
              [30, levelAt(100 - perMin * 30)],
              [60, levelAt(100 - perMin * 60)],
            ],
            startedAtMs,
          ),
        });
      }
  }
  add("earlier", {
    field,
    strip: strips[0] ?? "strip-",
    day: "2019-05-01",
    what: "ground-cover-percent",
    value: 22,
    samples: 4,
    origin: "notebook of 2019",
  });
  return { rows: rows(), field, strips };
};
