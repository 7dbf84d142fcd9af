import { expect, it } from "vitest";
import { readingsToCome, tellWhen } from "../../../src/app/next-reading-model.ts";
import type { RunningRing } from "../../../src/app/running-rings.ts";
import type { Moment } from "../../../src/record/command/command.ts";
import { ENTRY_VERSION, type Entry } from "../../../src/record/entry.ts";
import { readRing } from "../../../src/record/ring/reading.ts";

const MINUTE_MS = 60_000;
const startedMs = 1_700_000_000_000;

type Told = Moment & { readonly v: typeof ENTRY_VERSION; readonly n: number };

const moment = (n: number, afterMs: number): Told => ({
  v: ENTRY_VERSION,
  id: n.toString(16).padStart(16, "0"),
  n,
  lookedAtMs: startedMs + afterMs,
  enteredAtMs: startedMs + afterMs,
  monoMs: 5000 + afterMs,
  page: "a".repeat(16),
  device: "d".repeat(16),
  by: null,
});
const start: Entry = { ...moment(1, 0), type: "start", timed: "now" };
const lookAt = (n: number, afterMin: number): Entry => ({
  ...moment(n, afterMin * MINUTE_MS),
  type: "look",
  ring: "inner",
});
const ring = (...entries: readonly Entry[]): RunningRing => ({
  id: `observation-${"1".repeat(32)}`,
  visit: `visit-${"2".repeat(32)}`,
  letter: "A",
  planMin: [5, 10, 20],
  reading: readRing(entries),
});
const after = (minutes: number) => ({
  wallMs: startedMs + minutes * MINUTE_MS,
  monoMs: 5000 + minutes * MINUTE_MS,
  pageId: "a".repeat(16),
});
const minutesOf = (one: RunningRing, minutes: number): number[] =>
  readingsToCome(one, after(minutes)).map(({ inMs }) => inMs / MINUTE_MS);

it("knows the reading that is due and all behind it", () => {
  expect(minutesOf(ring(start), 2)).toEqual([3, 8, 18]);
  expect(minutesOf(ring(start, lookAt(2, 5)), 6)).toEqual([4, 14]);
  // Missed at 5 and late at 10: only the later one can still be read.
  expect(minutesOf(ring(start), 11)).toEqual([-1, 9]);
});

it("knows none before the start and behind the last one", () => {
  expect(minutesOf(ring(), 1)).toEqual([]);
  expect(minutesOf(ring(start, lookAt(2, 20)), 21)).toEqual([]);
});

it("names a reading by its ring, its start and its minute, whenever it is asked", () => {
  const [first] = readingsToCome(ring(start), after(1));
  const [again] = readingsToCome(ring(start), after(4));
  expect(again?.id).toBe(first?.id);
  const other: Entry = { ...moment(3, 60_000), type: "start", timed: "typed", replaces: [start.id] };
  expect(readingsToCome(ring(start, other), after(4))[0]?.id).not.toBe(first?.id);
});

it("says begun minutes before and full minutes after", () => {
  expect(tellWhen(5 * MINUTE_MS)).toEqual({ when: "in", minutes: 5 });
  expect(tellWhen(MINUTE_MS + 1)).toEqual({ when: "in", minutes: 2 });
  expect(tellWhen(MINUTE_MS - 1)).toEqual({ when: "soon", minutes: 0 });
  expect(tellWhen(0)).toEqual({ when: "now", minutes: 0 });
  expect(tellWhen(-MINUTE_MS + 1)).toEqual({ when: "now", minutes: 0 });
  expect(tellWhen(-2 * MINUTE_MS)).toEqual({ when: "late", minutes: 2 });
});
