import fc from "fast-check";
import { expect, it } from "vitest";
import { addUp } from "../../../src/app/workers/line-of-field.ts";
import { packEntries } from "../../../src/record/columns.ts";
import { WAYS } from "../../../src/record/kinds/observation.ts";
import { lineFinished } from "../../../src/record/line/finished.ts";
import type { LineFrame } from "../../../src/record/line/reading.ts";
import { readLine } from "../../../src/record/line/reading.ts";
import type { RecordState } from "../../../src/record/record.ts";
import { begun, type Doing, doing, got, LINE, touch, union } from "../record/made-up.ts";

const cover = fc.constantFrom("residue", "bare", "green", "stone", "own");
const number = fc.integer({ min: 1, max: 6 });
const doings: fc.Arbitrary<Doing> = fc.oneof(
  { weight: 6, arbitrary: cover.map((what): Doing => ({ type: "mark", mark: "next", cover: what })) },
  {
    weight: 2,
    arbitrary: fc.tuple(number, cover).map(([mark, what]): Doing => ({ type: "mark", mark, cover: what })),
  },
  { weight: 1, arbitrary: number.map((mark): Doing => ({ type: "set-mark", mark })) },
  { weight: 1, arbitrary: fc.constant<Doing>({ type: "end", mark: "here" }) },
  { weight: 2, arbitrary: fc.constantFrom<Doing>("undo", "redo") },
);

/** Does what can be done and passes over what is refused. */
const tried = (record: RecordState, frame: LineFrame, things: readonly Doing[], phone: number): RecordState =>
  things.reduce((now, what, at) => {
    const done = doing(now, what, frame, touch(record.entries.length + at + 1, phone));
    return done.ok ? done.value.record : now;
  }, record);

it("adds a line up to what reading it mark by mark says, whatever was done on it by two phones", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...WAYS),
      fc.array(doings, { maxLength: 14 }),
      fc.array(doings, { maxLength: 6 }),
      fc.array(doings, { maxLength: 6 }),
      (way, together, one, two) => {
        const frame: LineFrame = { way, ropeMarks: 6 };
        const base = tried(begun(way), frame, together, 1);
        const { entries } = union(tried(base, frame, one, 1), tried(base, frame, two, 2));
        const reading = readLine(entries, frame);
        expect(got(addUp(LINE, packEntries(entries), frame))).toEqual({
          tally: reading.tally,
          finished: lineFinished(reading, frame),
          endedAt: reading.endedAt,
        });
      },
    ),
    { numRuns: 3000 },
  );
});

it("takes a line without a reading for open", () => {
  expect(got(addUp(LINE, undefined, { way: "mark-by-mark", ropeMarks: 6 })).finished).toBe(false);
});
