import { describe, expect, it, test } from "vitest";
import { elapsedNow, nextDue } from "../../../src/record/ring/due.ts";
import type { RingReading } from "../../../src/record/ring/events.ts";
import { readRing } from "../../../src/record/ring/reading.ts";
import { happened, level, look, notebook, nowOf, PHONE, pour, start, stop } from "./ring-entries.ts";

const HOUR_MS = 3_600_000;
const minutes = ({ events }: RingReading): number[] =>
  events.map(({ moment }) => moment.sinceStartMs / 60_000);
const apart = ({ events }: RingReading): boolean[] => events.map(({ moment }) => moment.clocksApart);

describe("the clock of a ring", () => {
  test.each([HOUR_MS, -HOUR_MS])("the wall clock is set by %i ms in the middle of a page", (aheadMs) => {
    const { entries, write } = notebook();
    write(0, start);
    write(5, level(90));
    write(10, level(80), { ...PHONE, aheadMs });
    write(20, level(70), { ...PHONE, aheadMs });
    const reading = readRing(entries);
    expect(minutes(reading)).toEqual([5, 10, 20]);
    expect(apart(reading)).toEqual([false, true, true]);
  });

  test("a whole test over several pages stays right when the clock jumps in the middle of one", () => {
    const { entries, write } = notebook();
    const second = { ...PHONE, page: 2, pageBeganMs: -600_000 };
    const third = { ...PHONE, page: 3, pageBeganMs: -1_500_000, aheadMs: HOUR_MS };
    write(0, start);
    write(5, level(90));
    write(12, level(80), second);
    write(20, level(70), { ...second, aheadMs: HOUR_MS });
    write(30, level(60), third);
    write(60, level(40), { ...third, aheadMs: 0 });
    write(90, level(30), { ...PHONE, page: 4, pageBeganMs: -5_000_000 });
    const reading = readRing(entries);
    expect(minutes(reading)).toEqual([5, 12, 20, 30, 60, 90]);
    expect(apart(reading)).toEqual([false, false, true, true, false, false]);
  });

  test("up to two seconds are let pass without a word", () => {
    const { entries, write } = notebook();
    write(0, start);
    write(5, level(90), { ...PHONE, aheadMs: 2000 });
    write(6, level(80), { ...PHONE, aheadMs: -2001 });
    expect(apart(readRing(entries))).toEqual([false, true]);
  });

  test("two windows of one phone that take turns", () => {
    const { entries, write } = notebook();
    const window = { ...PHONE, page: 2, pageBeganMs: 0 };
    write(0, start);
    write(5, level(90), window);
    write(10, level(80), { ...PHONE, aheadMs: HOUR_MS });
    write(15, level(70), { ...window, aheadMs: HOUR_MS });
    expect(minutes(readRing(entries))).toEqual([5, 10, 15]);
  });

  test("another phone goes by the wall clocks, then by its own page", () => {
    const { entries, write } = notebook();
    const other = { ...PHONE, number: 2, pageBeganMs: 5000 };
    write(0, start);
    write(5, level(90), other);
    write(10, level(80), { ...other, aheadMs: HOUR_MS });
    expect(minutes(readRing(entries))).toEqual([5, 10]);
  });

  test("a number typed on a later page keeps the clock of the reading that it corrects", () => {
    const { entries, write } = notebook();
    const jumped = { ...PHONE, aheadMs: HOUR_MS };
    write(0, start);
    const wrong = write(10, level(80), jumped);
    write(30, level(85, { replaces: [wrong] }), { ...jumped, page: 2, pageBeganMs: -1_000_000 }, 10);
    expect(minutes(readRing(entries))).toEqual([10]);
  });

  test("a sheet typed in the evening reads as it was written", () => {
    const { entries, write } = notebook();
    write(400, { ...start, timed: "typed" }, PHONE, 0);
    write(401, { ...level(100), timed: "typed" }, PHONE, 0);
    write(402, { ...level(60), timed: "typed" }, PHONE, 60);
    write(430, { ...level(40), timed: "typed" }, { ...PHONE, page: 2, pageBeganMs: 0 }, 120);
    const reading = readRing(entries);
    expect(minutes(reading)).toEqual([0, 60, 120]);
    expect(reading.events.every(({ moment }) => moment.enteredLater)).toBe(true);
    expect(apart(reading)).toEqual([false, false, false]);
  });
});

describe("time now", () => {
  it("counts by the clock of the page, whatever the wall clock says", () => {
    const { entries, write } = notebook();
    write(0, start);
    expect(elapsedNow(readRing(entries), nowOf(7, { ...PHONE, aheadMs: HOUR_MS }))).toBe(420_000);
  });

  it("goes on from the last entry on a page that has none", () => {
    const { entries, write } = notebook();
    write(0, start);
    write(10, level(80), { ...PHONE, aheadMs: HOUR_MS });
    const reloaded = { ...PHONE, page: 9, pageBeganMs: -700_000, aheadMs: HOUR_MS };
    expect(elapsedNow(readRing(entries), nowOf(15, reloaded))).toBe(900_000);
  });

  it("is nothing before the start, and stands still after the stop", () => {
    const { entries, write } = notebook();
    expect(elapsedNow(readRing([]), nowOf(3))).toBeNull();
    write(0, level(100));
    expect(elapsedNow(readRing([...entries]), nowOf(3))).toBeNull();
    write(1, start);
    write(31, stop);
    expect(elapsedNow(readRing(entries), nowOf(300))).toBe(1_800_000);
  });
});

describe("the next reading due", () => {
  const PLAN = [5, 10, 20, 30];
  const dueAt = (atMin: number, write: (book: ReturnType<typeof notebook>) => void = () => undefined) => {
    const book = notebook();
    book.write(0, start);
    book.write(0, level(100));
    write(book);
    return nextDue(PLAN, readRing(book.entries), nowOf(atMin));
  };

  it("is the first one, so many milliseconds ahead", () => {
    expect(dueAt(1)).toEqual({ index: 0, planMin: 5, dueInMs: 240_000, missed: 0 });
  });

  it("moves on once it was read, also a little early, and also while the number is missing", () => {
    expect(dueAt(6, ({ write }) => write(5.1, level(90)))?.planMin).toBe(10);
    expect(dueAt(6, ({ write }) => write(4.2, look))?.planMin).toBe(10);
    expect(dueAt(4, ({ write }) => write(3.5, level(90)))?.planMin).toBe(5);
  });

  it("is late by how much, and of several late ones the last", () => {
    expect(dueAt(5.5)).toEqual({ index: 0, planMin: 5, dueInMs: -30_000, missed: 0 });
    expect(dueAt(21)).toEqual({ index: 2, planMin: 20, dueInMs: -60_000, missed: 2 });
  });

  it("is let go by saying that it was missed", () => {
    expect(dueAt(6, ({ write }) => write(6, happened("missed-reading")))?.planMin).toBe(10);
  });

  it("counts a pour as a reading where no ruler is read, and not where one is", () => {
    expect(dueAt(6, ({ write }) => write(5, pour(200)))?.planMin).toBe(5);
    const { entries, write } = notebook();
    write(0, start);
    write(0, pour(1000));
    write(5, pour(200));
    expect(nextDue(PLAN, readRing(entries), nowOf(6))?.planMin).toBe(10);
  });

  it("stays due when only the outer ring was read", () => {
    const outer = { ring: "outer" } as const;
    expect(dueAt(6, ({ write }) => write(5, { ...level(90), ...outer }))?.planMin).toBe(5);
    expect(dueAt(6, ({ write }) => write(5, { ...look, ...outer }))?.planMin).toBe(5);
    const missed = ({ write }: ReturnType<typeof notebook>) => {
      const replaces = [write(5, { ...look, ...outer })];
      write(5.5, { ...happened("missed-reading"), replaces });
    };
    expect(dueAt(6, missed)?.planMin).toBe(5);
  });

  it("is nothing after the last, after the stop, before the start, and without a plan", () => {
    expect(dueAt(31, ({ write }) => write(30, level(50)))).toBeNull();
    expect(dueAt(6, ({ write }) => write(5.5, stop))).toBeNull();
    expect(nextDue(PLAN, readRing([]), nowOf(1))).toBeNull();
    const { entries, write } = notebook();
    write(0, start);
    expect(nextDue([], readRing(entries), nowOf(1))).toBeNull();
  });

  it("reads a plan in any order and without what is no number", () => {
    const { entries, write } = notebook();
    write(0, start);
    expect(nextDue([20, Number.NaN, 5], readRing(entries), nowOf(1))?.planMin).toBe(5);
  });
});
