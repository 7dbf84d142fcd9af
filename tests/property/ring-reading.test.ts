import fc from "fast-check";
import { expect, test } from "vitest";
import { type Entry, entry as entrySchema } from "../../src/record/entry.ts";
import { elapsedNow, nextDue } from "../../src/record/ring/due.ts";
import { readRing } from "../../src/record/ring/reading.ts";
import * as z from "../../src/record/zod.ts";
import { hex, NOON_MS } from "../unit/record/made-up.ts";
import { entriesOfRing } from "./ring-histories.ts";

const RUNS = { numRuns: 500 };

const nowhere = { wallMs: NOON_MS, monoMs: 0, page: hex(99) };

/** Every number in a value, however deep. */
const numbersIn = (value: unknown): number[] => {
  if (typeof value === "number") return [value];
  if (value instanceof Map) return [...value.values()].flatMap(numbersIn);
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
};

test("most of what is drawn here the record takes", () => {
  const drawn = fc.sample(entriesOfRing, 100).flat();
  const taken = drawn.filter((one) => z.safeParse(entrySchema, one).success);
  expect(taken.length).toBeGreaterThan(drawn.length / 2);
});

test("the order in which entries lie does not matter, nor that some lie there twice", () => {
  const shuffled = entriesOfRing.chain((entries) =>
    fc.tuple(
      fc.constant(entries),
      fc.shuffledSubarray([...entries], { minLength: entries.length }),
      fc.subarray([...entries]),
    ),
  );
  fc.assert(
    fc.property(shuffled, ([entries, other, again]) => {
      expect(readRing([...other, ...again])).toEqual(readRing(entries));
    }),
    RUNS,
  );
});

test("two phones brought together read the same, whichever comes first", () => {
  const halves = entriesOfRing.chain((entries) => fc.tuple(fc.constant(entries), fc.subarray([...entries])));
  const union = (a: readonly Entry[], b: readonly Entry[]): Entry[] => [
    ...new Map([...a, ...b].map((one) => [one.id, one])).values(),
  ];
  fc.assert(
    fc.property(halves, ([entries, one]) => {
      const other = entries.filter((entry) => !one.includes(entry) || entry.n % 2 === 0);
      const there = readRing(union(one, other));
      expect(readRing(union(other, one))).toEqual(there);
      expect(there).toEqual(readRing(entries));
    }),
    RUNS,
  );
});

test("whatever stands in a file, nothing throws and every number is one", () => {
  fc.assert(
    fc.property(entriesOfRing, fc.array(fc.double(), { maxLength: 5 }), (entries, plan) => {
      const reading = readRing(entries);
      expect(numbersIn(reading).every(Number.isFinite)).toBe(true);
      const runs = elapsedNow(reading, nowhere);
      expect(runs === null || Number.isFinite(runs)).toBe(true);
      const due = nextDue(plan, reading, nowhere);
      expect(numbersIn(due).every(Number.isFinite)).toBe(true);
      const { events } = reading;
      const times = events.map(({ moment }) => moment.sinceStartMs);
      expect(times).toEqual([...times].sort((a, b) => a - b));
    }),
    RUNS,
  );
});

/** Entries on the pages of one phone, with clocks that agree, and the moments at which they were made. */
const onePhone = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 60_000 }), fc.boolean()), { minLength: 2, maxLength: 20 })
  .map((steps) => {
    let atMs = 0;
    let page = 1;
    let beganMs = -5000;
    return steps.map(([stepMs, hidden], at): Entry => {
      atMs += at === 0 ? 0 : stepMs;
      if (hidden) {
        page++;
        beganMs = atMs - 10;
      }
      const shared = {
        v: 2,
        id: hex(at + 1),
        n: at + 1,
        lookedAtMs: NOON_MS + atMs,
        enteredAtMs: NOON_MS + atMs,
        monoMs: atMs - beganMs,
        page: hex(page),
        device: hex(1),
        by: null,
      } as const;
      return at === 0
        ? { ...shared, type: "start", timed: "now" }
        : {
            ...shared,
            type: "level",
            ring: "inner",
            value: 100 - at,
            unit: "mm",
            reads: "water-depth",
            typed: "",
            timed: "now",
          };
    });
  });

const timesOf = (entries: readonly Entry[]): number[] =>
  readRing(entries).events.map(({ moment }) => Math.round(moment.sinceStartMs));

test("a wall clock that is wrong by any time from the beginning on changes nothing", () => {
  fc.assert(
    fc.property(onePhone, fc.integer({ min: -1e12, max: 1e12 }), (entries, offMs) => {
      const off = entries.map((one) => ({
        ...one,
        lookedAtMs: one.lookedAtMs + offMs,
        enteredAtMs: one.enteredAtMs + offMs,
      }));
      expect(timesOf(off)).toEqual(timesOf(entries));
      expect(readRing(off).events.some(({ moment }) => moment.clocksApart)).toBe(false);
    }),
    RUNS,
  );
});

test("a wall clock that is set while a page is open changes no time of the whole test", () => {
  const jumped = fc.tuple(onePhone, fc.nat(), fc.integer({ min: -3_600_000, max: 3_600_000 }));
  fc.assert(
    fc.property(jumped, ([entries, pick, offMs]) => {
      // From one entry on; the entry before it stands on the same page, so the page saw the clock being set.
      const from = entries.findIndex(
        (one, at) => at > 0 && at >= pick % entries.length && one.page === entries[at - 1]?.page,
      );
      fc.pre(from > 0);
      const off = entries.map((one, at) =>
        at < from
          ? one
          : { ...one, lookedAtMs: one.lookedAtMs + offMs, enteredAtMs: one.enteredAtMs + offMs },
      );
      expect(timesOf(off)).toEqual(timesOf(entries));
      const said = readRing(off).events.some(({ moment }) => moment.clocksApart);
      expect(said).toBe(Math.abs(offMs) > 2000);
    }),
    RUNS,
  );
});
