import fc from "fast-check";
import { expect, test } from "vitest";
import { applyCommand } from "../../src/record/command/apply.ts";
import type { Moment } from "../../src/record/command/command.ts";
import type { Entry } from "../../src/record/entry.ts";
import { LAYERS, WORM_GROUPS } from "../../src/record/hole/entries.ts";
import { type HoleReading, readHole } from "../../src/record/hole/reading.ts";
import { personMinutesOf, sortedSoFarNow } from "../../src/record/hole/sorting.ts";
import type { RecordState } from "../../src/record/record.ts";
import { dug, found, type HoleDoing, put, sorted, sorting, worm } from "../unit/record/hole-made-up.ts";
import { hex, LINE, NOON_MS, union } from "../unit/record/made-up.ts";

const RUNS = { numRuns: 400 };
const layer = fc.constantFrom(...LAYERS);
const group = fc.constantFrom(...WORM_GROUPS);
const few = fc.integer({ min: 0, max: 5 });

const thing: fc.Arbitrary<HoleDoing> = fc.oneof(
  { weight: 6, arbitrary: layer.map((from) => worm(from)) },
  { weight: 4, arbitrary: group.map((one) => put(one)) },
  { weight: 2, arbitrary: fc.tuple(few, layer).map(([count, from]) => found(count, from)) },
  { weight: 2, arbitrary: fc.tuple(few, group).map(([count, one]) => sorted(count, one)) },
  { weight: 2, arbitrary: fc.tuple(few, layer).map(([people, from]) => sorting(people, from)) },
  { weight: 1, arbitrary: fc.constant<HoleDoing>({ type: "mustard", litres: 2 }) },
  { weight: 1, arbitrary: fc.constant<HoleDoing>({ type: "closed" }) },
  { weight: 1, arbitrary: fc.constant<HoleDoing>({ type: "wetness", is: "dry" }) },
  { weight: 3, arbitrary: fc.constantFrom<HoleDoing>("undo", "undo", "redo") },
);
/** Things with the seconds that passed before each. */
const things = fc.array(fc.tuple(thing, fc.integer({ min: 0, max: 300 })), { maxLength: 25 });
type Things = readonly (readonly [HoleDoing, number])[];

interface Phone {
  readonly number: number;
  /** How far the wall clock is off at a moment, in seconds. */
  readonly wallOffS?: (second: number) => number;
}

const playedOn = (start: RecordState, doings: Things, { number, wallOffS = () => 0 }: Phone): RecordState => {
  let second = 0;
  let made = 0;
  return doings.reduce<RecordState>((record, [what, passed]) => {
    second += passed;
    const wallMs = NOON_MS + (second + wallOffS(second)) * 1000;
    const at: Moment = {
      id: hex(number * 2 ** 32 + ++made),
      lookedAtMs: wallMs,
      enteredAtMs: wallMs,
      monoMs: second * 1000,
      page: hex(number + 100),
      device: hex(number),
      by: null,
    };
    const done = applyCommand(
      record,
      typeof what === "string"
        ? { op: what, id: LINE, at }
        : { op: "append", id: LINE, frame: null, at, draft: what },
    );
    return done.ok ? done.value.record : record;
  }, start);
};

/** Two phones go on from a common beginning and are brought together. */
const history = fc.tuple(things, things, things).map(([first, one, other]) => {
  const start = playedOn(dug(), first, { number: 1 });
  return union(playedOn(start, one, { number: 2 }), playedOn(start, other, { number: 3 }));
});
const shuffled = history.chain(({ entries }) =>
  fc.tuple(
    fc.constant(entries),
    fc.shuffledSubarray<Entry>([...entries], { minLength: entries.length, maxLength: entries.length }),
  ),
);

const saidOf = ({ undoable: _undoable, redoable: _redoable, clock: _clock, ...said }: HoleReading) => said;

test("the order in which entries lie does not matter", () => {
  fc.assert(
    fc.property(shuffled, ([entries, other]) => {
      expect(readHole(other)).toEqual(readHole(entries));
    }),
    RUNS,
  );
});

test("which phone is brought to which does not matter", () => {
  fc.assert(
    fc.property(things, things, things, (first, one, other) => {
      const start = playedOn(dug(), first, { number: 1 });
      const a = playedOn(start, one, { number: 2 });
      const b = playedOn(start, other, { number: 3 });
      expect(readHole(union(a, b).entries)).toEqual(readHole(union(b, a).entries));
    }),
    RUNS,
  );
});

test("counts are whole and add up, and the pot is never less than empty", () => {
  fc.assert(
    fc.property(history, ({ entries }) => {
      const reading = readHole(entries);
      const sum = (counts: readonly { readonly count: number }[]) =>
        counts.reduce((total, { count }) => total + count, 0);
      expect(reading.foundTotal).toBe(sum(Object.values(reading.found)));
      expect(reading.placedTotal).toBe(sum(Object.values(reading.placed)));
      expect(reading.left).toBe(Math.max(0, reading.foundTotal - reading.placedTotal));
      for (const count of [...Object.values(reading.found), ...Object.values(reading.placed)]) {
        expect(count.count).toBe((count.atOnce?.count ?? 0) + count.oneByOne);
        expect(count.inDoubt.length).not.toBe(1);
        if (count.inDoubt.length > 0) expect(count.atOnce).toBeNull();
      }
    }),
    RUNS,
  );
});

test("one more worm is one more worm, whatever came before", () => {
  fc.assert(
    fc.property(history, layer, (record, from) => {
      const before = readHole(record.entries);
      const after = readHole(playedOn(record, [[worm(from), 1]], { number: 4 }).entries);
      expect(after.found[from].count).toBe(before.found[from].count + 1);
      expect(after.foundTotal).toBe(before.foundTotal + 1);
      expect(after.placed).toEqual(before.placed);
    }),
    RUNS,
  );
});

test("a number that names what it stands for settles its layer and is the count", () => {
  fc.assert(
    fc.property(history, layer, few, (record, from, count) => {
      const { standsFor } = readHole(record.entries).found[from];
      const after = readHole(playedOn(record, [[found(count, from, standsFor), 1]], { number: 4 }).entries);
      expect(after.found[from]).toMatchObject({ count, oneByOne: 0, inDoubt: [], fromOtherPhones: 0 });
      const undone = playedOn(
        record,
        [
          [found(count, from, standsFor), 1],
          ["undo", 1],
        ],
        { number: 4 },
      );
      expect(readHole(undone.entries).found[from]).toEqual(readHole(record.entries).found[from]);
    }),
    RUNS,
  );
});

test("on one phone nothing is ever in doubt and no worm is another phone's", () => {
  fc.assert(
    fc.property(things, (doings) => {
      const reading = readHole(playedOn(dug(), doings, { number: 1 }).entries);
      expect(reading.settled).toBe(true);
      expect(reading.cautions.map(({ code }) => code)).not.toContain("record/counted-on-two-phones");
    }),
    RUNS,
  );
});

test("everything undone and redone again reads as before, and each step back as it was then", () => {
  fc.assert(
    fc.property(things, (doings) => {
      const readings = doings.filter(([what]) => typeof what !== "string");
      const states = readings.map((_, at) =>
        saidOf(readHole(playedOn(dug(), readings.slice(0, at + 1), { number: 1 }).entries)),
      );
      const back = (steps: number, again: number): HoleReading => {
        const undo = Array.from({ length: steps }, () => ["undo", 1] as const);
        const redo = Array.from({ length: again }, () => ["redo", 1] as const);
        return readHole(playedOn(dug(), [...readings, ...undo, ...redo], { number: 1 }).entries);
      };
      for (const [at, state] of states.entries()) {
        expect(saidOf(back(states.length - 1 - at, 0))).toEqual(state);
        expect(saidOf(back(states.length, at + 1))).toEqual(state);
      }
    }),
    { numRuns: 100 },
  );
});

test("setting the wall clock while a page is open changes no time and no count", () => {
  fc.assert(
    fc.property(
      things,
      fc.integer({ min: -90_000, max: 90_000 }),
      fc.integer({ min: 0, max: 2000 }),
      (doings, byS, fromS) => {
        const right = readHole(playedOn(dug(), doings, { number: 1 }).entries);
        const wallOffS = (second: number) => (second >= fromS ? byS : 0);
        const set = readHole(playedOn(dug(), doings, { number: 1, wallOffS }).entries);
        expect(personMinutesOf(set) ?? -1).toBeCloseTo(personMinutesOf(right) ?? -1, 6);
        expect(set.foundTotal).toBe(right.foundTotal);
        const now = { monoMs: 9e6, page: hex(101) };
        const times = (reading: HoleReading, wallMs: number) =>
          LAYERS.map((one) => sortedSoFarNow(reading, { ...now, wallMs })[one].personMinutes);
        const [a, b] = [times(right, NOON_MS + 9e6), times(set, NOON_MS + 9e6 + byS * 1000)];
        for (const [at, minutes] of a.entries()) expect(b[at]).toBeCloseTo(minutes, 6);
      },
    ),
    RUNS,
  );
});

test("time that passes never takes time back", () => {
  fc.assert(
    fc.property(
      history,
      fc.integer({ min: 0, max: 1e7 }),
      fc.integer({ min: 0, max: 1e7 }),
      (record, a, b) => {
        const reading = readHole(record.entries);
        const at = (ms: number) =>
          sortedSoFarNow(reading, { wallMs: NOON_MS + ms, monoMs: ms, page: hex(101) }).soil.personMinutes;
        expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)));
        expect(at(a)).toBeGreaterThanOrEqual(0);
      },
    ),
    RUNS,
  );
});
