import { expect, test } from "vitest";
import type { Moment } from "../../../src/record/command/command.ts";
import { readHole } from "../../../src/record/hole/reading.ts";
import { mustardNow, personMinutesOf, sortedSoFarNow } from "../../../src/record/hole/sorting.ts";
import type { RecordState } from "../../../src/record/record.ts";
import { doAt, dug, type HoleDoing, readOf, sorting } from "./hole-made-up.ts";
import { hex, NOON_MS, union } from "./made-up.ts";

const MINUTE = 60_000;

interface At {
  readonly minute: number;
  /** How far the wall clock was set forward by then, in minutes. */
  readonly wallSet?: number;
  readonly phone?: number;
  readonly page?: number;
  /** Minutes after which the page began. */
  readonly pageBegan?: number;
  /** Entered so many minutes after it was looked at. */
  readonly late?: number;
}

let count = 0;
const moment = ({ minute, wallSet = 0, phone = 1, page = phone, pageBegan = 0, late = 0 }: At): Moment => ({
  id: hex(7 * 2 ** 32 + ++count),
  lookedAtMs: NOON_MS + (minute + wallSet) * MINUTE,
  enteredAtMs: NOON_MS + (minute + late + wallSet) * MINUTE,
  monoMs: (minute + late - pageBegan) * MINUTE,
  page: hex(page + 100),
  device: hex(phone),
  by: null,
});
const played = (record: RecordState, things: readonly (readonly [HoleDoing, At])[]): RecordState =>
  things.reduce((now, [what, at]) => doAt(now, what, moment(at)), record);
const nowAt = (minute: number, wallSet = 0, page = 1, pageBegan = 0) => ({
  wallMs: NOON_MS + (minute + wallSet) * MINUTE,
  monoMs: (minute - pageBegan) * MINUTE,
  page: hex(page + 100),
});

test("people × minutes with a pause, per layer", () => {
  const reading = readOf(
    played(dug(), [
      [sorting(1, "mulch"), { minute: 0 }],
      [sorting(0, "mulch"), { minute: 2 }],
      [sorting(2), { minute: 2 }],
      [sorting(0), { minute: 5 }],
      [sorting(3), { minute: 10 }],
      [{ type: "closed" }, { minute: 12 }],
    ]),
  );
  expect(reading.sorting.soil.map(({ people, lastedMs }) => [people, lastedMs])).toEqual([
    [2, 3 * MINUTE],
    [3, 2 * MINUTE],
  ]);
  expect(personMinutesOf(reading)).toBeCloseTo(2 + 6 + 6, 9);
  expect(reading.cautions).toEqual([]);
  expect(sortedSoFarNow(reading, nowAt(60)).soil).toEqual({
    people: 0,
    personMinutes: 12,
    clocksApart: false,
  });
});

test("running: people now and time so far; another layer runs by itself", () => {
  const reading = readOf(
    played(dug(), [
      [sorting(2), { minute: 0 }],
      [sorting(1, "mulch"), { minute: 1 }],
    ]),
  );
  const now = sortedSoFarNow(reading, nowAt(3));
  expect(now.soil).toEqual({ people: 2, personMinutes: 6, clocksApart: false });
  expect(now.mulch).toEqual({ people: 1, personMinutes: 2, clocksApart: false });
  expect(now["mustard-water"]).toEqual({ people: 0, personMinutes: 0, clocksApart: false });
  expect(personMinutesOf(reading)).toBeNull();
});

test("a wall clock that is set by an hour while the page is open changes nothing and is said", () => {
  const reading = readOf(
    played(dug(), [
      [sorting(1), { minute: 0 }],
      [sorting(0), { minute: 5, wallSet: -60 }],
    ]),
  );
  expect(personMinutesOf(reading)).toBeCloseTo(5, 9);
  expect(reading.sorting.soil[0]?.clocksApart).toBe(true);
  expect(reading.cautions).toEqual([{ code: "record/sorting-clocks-apart", facts: {} }]);
  const running = readOf(played(dug(), [[sorting(1), { minute: 0 }]]));
  expect(sortedSoFarNow(running, nowAt(5, 60)).soil).toEqual({
    people: 1,
    personMinutes: 5,
    clocksApart: true,
  });
});

test("a page that was killed and opened again: the wall clock ties the two together", () => {
  const reading = readOf(
    played(dug(), [
      [sorting(1), { minute: 0 }],
      [sorting(0), { minute: 7, page: 2, pageBegan: 6 }],
    ]),
  );
  expect(personMinutesOf(reading)).toBeCloseTo(7, 9);
  expect(reading.cautions).toEqual([]);
  const running = readOf(played(dug(), [[sorting(1), { minute: 0 }]]));
  expect(sortedSoFarNow(running, nowAt(4, 0, 9, 3)).soil.personMinutes).toBeCloseTo(4, 9);
});

test("a pause that is entered later counts from the moment it was looked at", () => {
  const reading = readOf(
    played(dug(), [
      [sorting(2), { minute: 0 }],
      [sorting(0), { minute: 5, late: 3 }],
    ]),
  );
  expect(personMinutesOf(reading)).toBeCloseTo(10, 9);
});

test("two phones sort at the same time, and one of them ends the hole", () => {
  const one = played(dug(), [
    [sorting(1), { minute: 0 }],
    [{ type: "closed" }, { minute: 6 }],
  ]);
  const other = played(dug(), [[sorting(1), { minute: 2, phone: 2 }]]);
  const both = readOf(union(one, other));
  expect(personMinutesOf(both)).toBeCloseTo(6 + 4, 9);
  expect(sortedSoFarNow(both, nowAt(100)).soil.people).toBe(0);
});

test("a clock that runs backwards between phones gives no time below nought", () => {
  const one = played(dug(), [[{ type: "closed" }, { minute: 1 }]]);
  const other = played(dug(), [[sorting(4), { minute: 30, phone: 2 }]]);
  expect(personMinutesOf(readOf(union(one, other)))).toBe(0);
});

test("mustard water: how long ago, and a corrected amount keeps the moment", () => {
  const poured = played(dug(), [[{ type: "mustard", litres: 2 }, { minute: 3 }]]);
  const [first] = readOf(poured).mustard;
  expect(mustardNow(readOf(poured), nowAt(8))).toMatchObject([{ agoMs: 5 * MINUTE, clocksApart: false }]);
  expect(readOf(poured).found["mustard-water"].looked).toBe(true);
  const corrected = played(poured, [
    [
      { type: "mustard", litres: 3, replaces: [first?.entry.id ?? ""] },
      { minute: 3, late: 4, wallSet: 0 },
    ],
  ]);
  expect(mustardNow(readOf(corrected), nowAt(8))).toMatchObject([
    { agoMs: 5 * MINUTE, entry: { litres: 3 } },
  ]);
  const twice = played(poured, [[{ type: "mustard", litres: null }, { minute: 9 }]]);
  expect(mustardNow(readOf(twice), nowAt(10)).map(({ agoMs }) => agoMs / MINUTE)).toEqual([7, 1]);
  expect(mustardNow(readHole([]), nowAt(1))).toEqual([]);
});

test("conditions: soil in °C, the later answer of one phone, two phones that differ are in doubt", () => {
  const warm = (value: number, unit: "C" | "F"): HoleDoing => ({
    type: "temperature",
    of: "soil",
    value,
    unit,
    typed: String(value),
  });
  const one = played(dug(), [
    [warm(5, "C"), { minute: 0 }],
    [warm(50, "F"), { minute: 1 }],
    [{ type: "wetness", is: "moist" }, { minute: 2 }],
    [{ type: "temperature", of: "water", value: 20, unit: "C", typed: "20" }, { minute: 3 }],
  ]);
  expect(readOf(one).soilTemperature?.value).toBeCloseTo(10, 12);
  expect(readOf(one).wetness?.value).toBe("moist");
  const other = played(dug(), [
    [warm(10, "C"), { minute: 0, phone: 2 }],
    [
      { type: "wetness", is: "dry" },
      { minute: 2, phone: 2 },
    ],
  ]);
  const both = readOf(union(one, other));
  expect(both.soilTemperature?.value).toBeCloseTo(10, 12);
  expect(both.wetness).toBeNull();
  expect(both.wetnessInDoubt).toHaveLength(2);
  // Conditions in doubt do not hold up the count.
  expect(both.settled).toBe(true);
});
