/** Random histories of one line counted on up to three phones, with the product's own commands. */
import fc from "fast-check";
import type { Draft } from "../../src/record/command/command.ts";
import { COVERS } from "../../src/record/entry.ts";
import { WAYS } from "../../src/record/kinds/observation.ts";
import type { LineFrame } from "../../src/record/line/reading.ts";
import type { RecordState } from "../../src/record/record.ts";
import { begun, type Doing, doing, touch, union } from "../unit/record/made-up.ts";

export const ROPE_MARKS = 8;
const markNumber = fc.integer({ min: 1, max: ROPE_MARKS });
const stance = fc.constantFrom("flat" as const, "standing" as const);
const cover = fc.constantFrom(...COVERS);
const sum = fc.integer({ min: 0, max: 40 });
const next = fc.constant("next" as const);
const here = fc.constant("here" as const);

const marked: fc.Arbitrary<Draft> = fc.oneof(
  fc.record({ type: fc.constant("mark" as const), mark: fc.oneof(next, markNumber), cover }),
  fc.record({
    type: fc.constant("mark" as const),
    mark: fc.oneof(next, markNumber),
    cover: fc.constant("residue" as const),
    stance,
  }),
);
/** Readings without totals, which would hide every mark. */
const reading: fc.Arbitrary<Draft> = fc.oneof(
  { weight: 10, arbitrary: marked },
  { weight: 1, arbitrary: fc.record({ type: fc.constant("set-mark" as const), mark: markNumber }) },
  {
    weight: 1,
    arbitrary: fc
      .record({
        mark: markNumber,
        value: fc.integer({ min: 0, max: 3 }),
        unit: fc.constantFrom("mm" as const, "in" as const),
      })
      .map((given) => ({ type: "thickness" as const, ...given, typed: String(given.value) })),
  },
  {
    weight: 1,
    arbitrary: fc.record(
      {
        type: fc.constant("end" as const),
        mark: fc.oneof(here, fc.integer({ min: 0, max: ROPE_MARKS })),
        rest: stance,
      },
      { requiredKeys: ["type", "mark"] },
    ),
  },
);
const totals: fc.Arbitrary<Draft> = fc.record({
  type: fc.constant("totals" as const),
  flat: sum,
  standing: sum,
  bare: sum,
  green: sum,
  stone: sum,
  own: sum,
});
const step = fc.constantFrom("undo" as const, "undo" as const, "redo" as const);

export const doings = fc.array(fc.oneof({ weight: 6, arbitrary: reading }, { weight: 2, arbitrary: step }), {
  maxLength: 25,
});
export const doingsWithTotals = fc.array(
  fc.oneof(
    { weight: 6, arbitrary: reading },
    { weight: 1, arbitrary: totals },
    { weight: 2, arbitrary: step },
  ),
  { maxLength: 25 },
);
export const readings = fc.array(
  fc.oneof({ weight: 9, arbitrary: reading }, { weight: 1, arbitrary: totals }),
  {
    minLength: 1,
    maxLength: 15,
  },
);
export const frames: fc.Arbitrary<LineFrame> = fc.record({
  way: fc.constantFrom(...WAYS),
  ropeMarks: fc.constantFrom(ROPE_MARKS, ROPE_MARKS, ROPE_MARKS - 2),
});

/** Does one thing after another; what is refused (a full line, nothing to undo) is left out. */
export const played = (
  start: RecordState,
  frame: LineFrame,
  things: readonly Doing[],
  phone: number,
): RecordState =>
  things.reduce<RecordState>((record, what, at) => {
    const done = doing(record, what, frame, touch(at + 1, phone));
    return done.ok ? done.value.record : record;
  }, start);

/** Two phones go on from a common beginning, are brought together, and a third goes on from there. */
export const historyOf = (
  things: fc.Arbitrary<readonly Doing[]>,
): fc.Arbitrary<readonly [LineFrame, RecordState]> =>
  fc.tuple(frames, things, things, things, things).map(([frame, first, one, other, last]) => {
    const start = played(begun(frame.way), frame, first, 1);
    const both = union(played(start, frame, one, 2), played(start, frame, other, 3));
    return [frame, played(both, frame, last, 4)] as const;
  });
