import { describe, expect, it, test } from "vitest";
import { type Entry, entry as entrySchema } from "../../../src/record/entry.ts";
import type { RingReading } from "../../../src/record/ring/events.ts";
import { readRing } from "../../../src/record/ring/reading.ts";
import * as z from "../../../src/record/zod.ts";
import { gone, happened, level, look, notebook, PHONE, pour, start, stop } from "./ring-entries.ts";

const SECOND_PHONE = { ...PHONE, number: 2 };
const minutes = (reading: RingReading): number[] =>
  reading.events.map(({ moment }) => moment.sinceStartMs / 60_000);
const levels = (reading: RingReading): number[] =>
  reading.events.flatMap((event) => (event.type === "level" ? [Math.round(event.levelM * 1e6) / 1e3] : []));

/** A ruler read at the start and after 5 and 10 minutes. */
const running = () => {
  const book = notebook();
  book.write(0, start);
  book.write(0, level(100));
  book.write(5, level(92));
  const last = book.write(10, level(86));
  return { ...book, last };
};

it("is made of entries that the record takes", () => {
  const { entries, write } = running();
  write(11, pour(250));
  write(11.5, gone);
  write(12, happened("burrow"));
  write(13, stop);
  for (const one of entries) expect(z.safeParse(entrySchema, one).success).toBe(true);
});

it("reads levels in order of the moment they were looked at", () => {
  const { entries, write } = running();
  // Three minutes ago, entered last.
  write(12, { ...level(95), timed: "minutes-ago" }, PHONE, 2);
  const reading = readRing(entries);
  expect(minutes(reading)).toEqual([0, 2, 5, 10]);
  expect(levels(reading)).toEqual([100, 95, 92, 86]);
  expect(reading.start?.moment.sinceStartMs).toBe(0);
  expect(reading.stop).toBeNull();
  expect(reading.living).toBe(5);
});

it("says nothing of nothing, and keeps what it read as long as the list", () => {
  const nothing = readRing([]);
  expect(nothing).toMatchObject({ start: null, events: [], openLooks: [], stop: null, living: 0 });
  const { entries } = running();
  expect(readRing(entries)).toBe(readRing(entries));
});

describe("read now", () => {
  test("stamps the moment; the number follows and stands at that moment", () => {
    const { entries, write } = notebook();
    write(0, start);
    const asked = write(5, look);
    expect(readRing([...entries]).openLooks).toMatchObject([{ look: { id: asked } }]);
    write(5.4, level(92, { of: asked }));
    const reading = readRing(entries);
    expect(reading.openLooks).toEqual([]);
    expect(minutes(reading)).toEqual([5]);
    expect(reading.events[0]?.moment.enteredLater).toBe(false);
  });

  test("a number that comes three minutes later is marked, and keeps the moment", () => {
    const { entries, write } = notebook();
    write(0, start);
    const asked = write(5, look);
    write(8, level(92, { of: asked }));
    expect(readRing(entries).events[0]?.moment).toMatchObject({ sinceStartMs: 300_000, enteredLater: true });
  });

  test("several may be open at once, and each gets its own number", () => {
    const { entries, write } = notebook();
    write(0, start);
    const first = write(5, look);
    const second = write(10, look);
    write(10.2, level(80, { of: second }));
    const open = readRing([...entries]);
    expect(open.openLooks.map(({ look: { id } }) => id)).toEqual([first]);
    write(10.4, level(90, { of: first }));
    expect(levels(readRing(entries))).toEqual([90, 80]);
  });

  test("a number taken back leaves the look open again", () => {
    const { entries, write } = notebook();
    write(0, start);
    const asked = write(5, look);
    const number = write(5.2, level(92, { of: asked }));
    write(5.3, { type: "undo", takesBack: number });
    const reading = readRing(entries);
    expect(reading.openLooks).toHaveLength(1);
    expect(reading.events).toEqual([]);
    expect(reading.redoable?.takesBack).toBe(number);
  });

  test("a number for a look that was taken back still has the moment of the look", () => {
    const { entries, write } = notebook();
    write(0, start);
    const asked = write(5, look);
    write(7, level(92, { of: asked }));
    write(8, { type: "undo", takesBack: asked });
    const reading = readRing(entries);
    expect(minutes(reading)).toEqual([5]);
    expect(reading.openLooks).toEqual([]);
  });

  test("one look before a refill and one behind it are two answers, not a doubt", () => {
    const { entries, write } = notebook();
    write(0, start);
    const asked = write(5, look);
    write(5.1, level(60, { of: asked }));
    write(5.5, level(100, { of: asked, afterRefill: true }));
    const reading = readRing(entries);
    expect(reading.inDoubt).toEqual([]);
    expect(levels(reading)).toEqual([60, 100]);
  });
});

describe("two phones", () => {
  const both = (one: number, other: number) => {
    const { entries, write } = notebook();
    write(0, start);
    const asked = write(5, look);
    const first = write(5.2, level(one, { of: asked }));
    const second = write(5.3, level(other, { of: asked }), SECOND_PHONE);
    return { entries, write, asked, first, second };
  };

  test("that agree are one answer", () => {
    const reading = readRing(both(92, 92).entries);
    expect(levels(reading)).toEqual([92]);
    expect(reading.inDoubt).toEqual([]);
  });

  test("that agree in other units are one answer", () => {
    const { entries, write, asked } = both(25, 25);
    write(5.5, { ...level(2.5, { of: asked }), unit: "cm" });
    expect(readRing(entries).inDoubt).toEqual([]);
  });

  test("that differ are in doubt, and neither counts until one is chosen", () => {
    const { entries, write, asked, first, second } = both(92, 29);
    const reading = readRing([...entries]);
    expect(reading.events).toEqual([]);
    expect(reading.openLooks).toEqual([]);
    expect(reading.inDoubt).toMatchObject([{ look: { id: asked }, answers: [{ value: 92 }, { value: 29 }] }]);
    write(6, level(92, { of: asked, replaces: [first, second] }));
    const settled = readRing(entries);
    expect(settled.inDoubt).toEqual([]);
    expect(settled.events).toMatchObject([{ corrected: true, levelM: 0.092 }]);
    expect(minutes(settled)).toEqual([5]);
  });

  test("that both touched start: the first counts, and it is said when they lie apart", () => {
    const { entries, write } = notebook();
    write(0, start);
    write(0.02, start, SECOND_PHONE);
    expect(readRing([...entries]).startsInDoubt).toEqual([]);
    write(0.5, start, SECOND_PHONE);
    write(5, level(90));
    const reading = readRing(entries);
    expect(reading.startsInDoubt).toHaveLength(3);
    expect(reading.start?.entry.n).toBe(1);
    expect(minutes(reading)).toEqual([5]);
  });

  test("whose stops differ: the first one counts", () => {
    const { entries, write } = running();
    write(20, stop);
    write(19, { ...stop, why: "leaked" }, SECOND_PHONE);
    expect(readRing(entries).stop?.entry.why).toBe("leaked");
  });
});

describe("corrections, undo and what happened", () => {
  test("a corrected number keeps its moment and is marked", () => {
    const { entries, write, last } = running();
    write(60, { ...level(68, { replaces: [last] }) }, PHONE, 10);
    const reading = readRing(entries);
    expect(levels(reading)).toEqual([100, 92, 68]);
    expect(reading.events.at(-1)).toMatchObject({ corrected: true, moment: { enteredLater: false } });
  });

  test("a corrected time moves the reading", () => {
    const { entries, write, last } = running();
    write(60, { ...level(86, { replaces: [last] }), timed: "typed" }, PHONE, 9);
    expect(minutes(readRing(entries))).toEqual([0, 5, 9]);
  });

  test("undo takes the last one back", () => {
    const { entries, write, last } = running();
    expect(readRing([...entries]).undoable?.id).toBe(last);
    write(11, { type: "undo", takesBack: last });
    expect(levels(readRing(entries))).toEqual([100, 92]);
  });

  test("pours, refills and happenings stand in order", () => {
    const { entries, write } = running();
    write(12, happened("burrow"));
    write(11, happened("crack"), PHONE, 3);
    write(13, pour(250));
    write(13.5, level(100, { afterRefill: true }));
    const reading = readRing(entries);
    expect(reading.happenings.map(({ what }) => what)).toEqual(["crack", "burrow"]);
    expect(reading.events.slice(-2)).toMatchObject([
      { type: "pour", cubicMetres: 0.00025 },
      { type: "level", afterRefill: true },
    ]);
  });
});

describe("what is absurd is read as it stands", () => {
  test("a level before the start, a start in the future, times all alike", () => {
    const { entries, write } = notebook();
    write(5, start);
    write(0, level(100));
    write(0, level(90));
    expect(minutes(readRing(entries))).toEqual([-5, -5]);
  });

  test("no start: time runs from the first thing read", () => {
    const { entries, write } = notebook();
    write(7, level(100));
    write(9, level(90));
    const reading = readRing(entries);
    expect(reading.start).toBeNull();
    expect(minutes(reading)).toEqual([0, 2]);
  });

  test("entries that replace and answer each other in a circle", () => {
    const { entries, write } = notebook();
    write(0, start);
    const one = write(1, level(90));
    write(2, level(80, { of: one, replaces: [one] }));
    const circle = entries.map((entry): Entry => {
      if (entry.type !== "level") return entry;
      const other = entries.find(({ id, type }) => type === "level" && id !== entry.id);
      return { ...entry, of: entry.id, replaces: [entry.id, other?.id ?? entry.id] };
    });
    expect(() => readRing(circle)).not.toThrow();
  });

  test("the far ends of what a clock may say give no number that is none", () => {
    const { entries, write } = notebook();
    write(0, start);
    write(1, level(90));
    const far = entries.map(
      (entry, at): Entry => ({
        ...entry,
        lookedAtMs: at === 0 ? -8.64e15 : 8.64e15,
        enteredAtMs: at === 0 ? 8.64e15 : -8.64e15,
        monoMs: at === 0 ? 1e12 : 0,
      }),
    );
    for (const { moment } of readRing(far).events) expect(Number.isFinite(moment.sinceStartMs)).toBe(true);
  });

  test("the same entry twice counts once", () => {
    const { entries } = running();
    expect(levels(readRing([...entries, ...entries]))).toEqual([100, 92, 86]);
  });
});
