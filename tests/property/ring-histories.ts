/** Random entries of one ring: any times, on up to three phones with pages of their own, some of them absurd. */
import fc from "fast-check";
import type { Entry } from "../../src/record/entry.ts";
import { HAPPENINGS, RULER_READS } from "../../src/record/ring/entries.ts";
import type { Inside, RingSet } from "../../src/science/infiltration/ring-set.ts";
import { hex, NOON_MS } from "../unit/record/made-up.ts";
import type { RingBody } from "../unit/record/ring-entries.ts";

const ring = fc.constantFrom("inner" as const, "inner" as const, "inner" as const, "outer" as const);
const timed = fc.constantFrom("now" as const, "now" as const, "minutes-ago" as const, "typed" as const);
/** Which earlier entry is meant, counted back from this one; null for none. */
const back = fc.option(fc.integer({ min: 1, max: 6 }), { freq: 3 });
const size = fc.oneof(
  fc.double({ min: 0, max: 300, noNaN: true }),
  fc.constantFrom(0, -5, 1e9, 1e-9, 5e-324),
);

interface Drawn {
  readonly body: RingBody;
  readonly of: number | null;
  readonly replaces: number | null;
}
const drawn = (body: fc.Arbitrary<RingBody>): fc.Arbitrary<Drawn> =>
  fc.record({ body, of: back, replaces: fc.option(fc.integer({ min: 1, max: 6 }), { freq: 8 }) });

const body: fc.Arbitrary<Drawn> = fc.oneof(
  { weight: 1, arbitrary: drawn(fc.record({ type: fc.constant("start" as const), timed })) },
  { weight: 2, arbitrary: drawn(fc.record({ type: fc.constant("look" as const), ring })) },
  {
    weight: 3,
    arbitrary: drawn(
      fc.record({
        type: fc.constant("pour" as const),
        ring,
        value: size,
        unit: fc.constantFrom("mL" as const, "L" as const, "fl-oz" as const, "gal" as const),
        typed: fc.constant(""),
        timed,
      }),
    ),
  },
  {
    weight: 8,
    arbitrary: drawn(
      fc.record(
        {
          type: fc.constant("level" as const),
          ring,
          value: size,
          unit: fc.constantFrom("mm" as const, "cm" as const, "in" as const),
          reads: fc.constantFrom(...RULER_READS),
          afterRefill: fc.constant(true as const),
          typed: fc.constant(""),
          timed,
        },
        { requiredKeys: ["type", "ring", "value", "unit", "reads", "typed", "timed"] },
      ),
    ),
  },
  { weight: 2, arbitrary: drawn(fc.record({ type: fc.constant("gone" as const), ring, timed })) },
  {
    weight: 2,
    arbitrary: drawn(
      fc.record({
        type: fc.constant("happened" as const),
        what: fc.constantFrom(...HAPPENINGS),
        words: fc.constant(""),
        timed,
      }),
    ),
  },
  {
    weight: 1,
    arbitrary: drawn(
      fc.record({
        type: fc.constant("stop" as const),
        why: fc.constantFrom("done" as const, "leaked" as const),
        timed,
      }),
    ),
  },
  { weight: 1, arbitrary: drawn(fc.constant({ type: "undo", takesBack: hex(0) } as const)) },
);

const offsetMs = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: -60_000, max: 4 * 3_600_000 }) },
  { weight: 2, arbitrary: fc.integer({ min: 0, max: 240 }).map((minutes) => minutes * 60_000) },
  { weight: 1, arbitrary: fc.constantFrom(-8e15, 6e15) },
);
const moment = fc.record({
  lookedAtMs: offsetMs,
  entered: fc.option(offsetMs, { freq: 3 }),
  monoMs: fc.oneof(fc.integer({ min: 0, max: 20_000_000 }), fc.constantFrom(0, 1e12, 0.5)),
  phone: fc.integer({ min: 1, max: 3 }),
  page: fc.integer({ min: 1, max: 3 }),
});

/** Entries in the order in which they were made. */
export const entriesOfRing: fc.Arbitrary<readonly Entry[]> = fc
  .array(fc.tuple(body, moment), { maxLength: 30 })
  .map((list) => {
    const ids = list.map((_, at) => hex(at + 1));
    const earlier = (at: number, steps: number | null): string | undefined =>
      steps === null ? undefined : ids[at - steps];
    return list.map(([made, when], at): Entry => {
      const of = earlier(at, made.of);
      const replaces = earlier(at, made.replaces);
      const { type } = made.body;
      const canAnswer = type === "level" || type === "gone";
      const canReplace = type !== "look" && type !== "undo";
      return {
        ...made.body,
        ...(type === "undo" ? { takesBack: earlier(at, made.of ?? 1) ?? hex(0) } : {}),
        ...(canAnswer && of !== undefined ? { of } : {}),
        ...(canReplace && replaces !== undefined ? { replaces: [replaces] } : {}),
        v: 2,
        id: ids[at] ?? hex(0),
        // Phones that were apart give the same places.
        n: Math.floor(at / 2) + 1,
        lookedAtMs: NOON_MS + when.lookedAtMs,
        enteredAtMs: NOON_MS + (when.entered ?? when.lookedAtMs),
        monoMs: when.monoMs,
        page: hex(when.phone * 10 + when.page),
        device: hex(when.phone),
        by: null,
      } as Entry;
    });
  });

const across = fc.double({ min: 0.02, max: 3, noNaN: true });
const inside: fc.Arbitrary<Inside> = fc.tuple(across, fc.option(across, { nil: null }));

/** Rings as the kit may hold them, and a little beyond. */
export const sets: fc.Arbitrary<RingSet> = fc.record({
  way: fc.constantFrom("ruler" as const, "measured-pour" as const, "kept-at-one-level" as const),
  rulerReads: fc.constantFrom(...RULER_READS),
  insideM: inside,
  outerInsideM: fc.option(inside, { nil: null }),
  innerOutsideM: fc.option(across, { nil: null }),
  stepMm: fc.constantFrom(0.5, 1, 2),
  rimToSoilM: fc.array(fc.double({ min: 0, max: 2, noNaN: true }), { maxLength: 4 }),
  heightsM: fc.array(fc.double({ min: 0.01, max: 2, noNaN: true }), { maxLength: 4 }),
});
