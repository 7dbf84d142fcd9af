import fc from "fast-check";
import { expect, test } from "vitest";
import { packEntries, packOneMore, unpackEntries } from "../../src/record/columns.ts";
import { livingIds } from "../../src/record/entry.ts";
import { type LineReading, readLine } from "../../src/record/line/reading.ts";
import { summariseLine, summaryOf } from "../../src/record/line/summary.ts";
import { begun, doing, touch } from "../unit/record/made-up.ts";
import { doings, doingsWithTotals, frames, historyOf, played, readings } from "./record-histories.ts";

const RUNS = { numRuns: 400 };
const history = historyOf(doingsWithTotals);
const sum = (tally: LineReading["tally"]): number => Object.values(tally).reduce((all, one) => all + one, 0);
/** What a reading says, without how one came to it. */
const said = ({ undoable: _undoable, redoable: _redoable, ...rest }: LineReading) => rest;

test("the sums of a line's marks are the last mark looked at", () => {
  fc.assert(
    fc.property(historyOf(doings), ([frame, { entries }]) => {
      const reading = readLine(entries, frame);
      const last = reading.endedAt ?? Math.max(0, ...reading.marks.keys());
      expect(sum(reading.tally)).toBe(Math.min(last, frame.ropeMarks));
      const shorter = readLine(entries, { ...frame, ropeMarks: 2 });
      expect(sum(shorter.tally)).toBe(Math.min(last, 2));
    }),
    RUNS,
  );
});

test("the order in which entries lie does not matter", () => {
  const shuffled = history.chain(([frame, { entries }]) =>
    fc.tuple(
      fc.constant(frame),
      fc.constant(entries),
      fc.shuffledSubarray([...entries], { minLength: entries.length }),
    ),
  );
  fc.assert(
    fc.property(shuffled, ([frame, entries, other]) => {
      expect(readLine(other, frame)).toEqual(readLine(entries, frame));
    }),
    RUNS,
  );
});

test("the summary straight from columns says what the reading says", () => {
  fc.assert(
    fc.property(history, ([frame, { entries }]) => {
      expect(summariseLine(packEntries(entries), frame)).toEqual(summaryOf(readLine(entries, frame)));
      // The rope was measured again and has fewer marks than were read.
      const shorter = { ...frame, ropeMarks: frame.ropeMarks - 3 };
      expect(summariseLine(packEntries(entries), shorter)).toEqual(summaryOf(readLine(entries, shorter)));
      // A row out of order must not slip through the short way.
      const backwards = packEntries([...entries].reverse());
      expect(summariseLine(backwards, frame)).toEqual(summaryOf(readLine(entries, frame)));
    }),
    RUNS,
  );
});

test("packed and unpacked entries are the same, also through JSON", () => {
  fc.assert(
    fc.property(history, ([, { entries }]) => {
      const packed = packEntries(entries);
      expect(unpackEntries(packed)).toEqual(entries);
      expect(unpackEntries(JSON.parse(JSON.stringify(packed)))).toEqual(entries);
    }),
    RUNS,
  );
});

test("entries packed one after the other are packed like all of them at once", () => {
  fc.assert(
    fc.property(history, ([, { entries }]) => {
      const oneByOne = entries.reduce(packOneMore, packEntries([]));
      expect(oneByOne).toEqual(packEntries(entries));
      expect(unpackEntries(oneByOne)).toEqual(entries);
    }),
    RUNS,
  );
});

test("everything undone and redone again reads as before, and each step back as it was then", () => {
  fc.assert(
    fc.property(frames, readings, (frame, drafts) => {
      let record = begun(frame.way);
      const states = [readLine(record.entries, frame)];
      let touches = 0;
      for (const draft of drafts) {
        const done = doing(record, draft, frame, touch(++touches));
        if (!done.ok) continue;
        record = done.value.record;
        states.push(readLine(record.entries, frame));
      }
      const step = (what: "undo" | "redo") => {
        const done = doing(record, what, frame, touch(++touches));
        if (!done.ok) return done.problem.code;
        record = done.value.record;
        return said(readLine(record.entries, frame));
      };
      for (const before of states.slice(0, -1).reverse()) expect(step("undo")).toEqual(said(before));
      expect(step("undo")).toBe("record/nothing-to-undo");
      for (const after of states.slice(1)) expect(step("redo")).toEqual(said(after));
      expect(step("redo")).toBe("record/nothing-to-redo");
    }),
    RUNS,
  );
});

test("on one phone no mark ever has two answers, and the next touch never lands on a mark unasked", () => {
  fc.assert(
    fc.property(frames, doings, (frame, things) => {
      let record = begun(frame.way);
      for (const [at, what] of things.entries()) {
        const before = readLine(record.entries, frame);
        record = played(record, frame, [what], at + 10);
        const after = readLine(record.entries, frame);
        expect([...after.marks.values()].every(({ answers }) => answers.length === 1)).toBe(true);
        // Answering a mark that lies behind, by its number, leaves the next touch where it was.
        if (typeof what === "object" && what.type === "mark" && Number(what.mark) < before.next)
          expect(after.next).toBe(before.next);
      }
    }),
    RUNS,
  );
});

test("answering every mark in doubt settles the line", () => {
  fc.assert(
    fc.property(history, ([frame, record]) => {
      const inDoubt = [...readLine(record.entries, frame).marks].filter(
        ([, { answers }]) => answers.length > 1,
      );
      const settled = inDoubt.reduce((now, [number], at) => {
        if (number > frame.ropeMarks) return now;
        return played(now, frame, [{ type: "mark", mark: number, cover: "bare" }], 50 + at);
      }, record);
      const after = readLine(settled.entries, frame);
      for (const [number] of inDoubt) {
        if (number > frame.ropeMarks) continue;
        expect(after.marks.get(number)).toMatchObject({ cover: "bare", corrected: true });
        expect(after.marks.get(number)?.answers).toHaveLength(1);
      }
    }),
    RUNS,
  );
});

test("what counts is what no living entry takes back or replaces", () => {
  fc.assert(
    fc.property(history, ([, { entries }]) => {
      const living = livingIds(entries);
      for (const one of entries) {
        if (!living.has(one.id)) continue;
        if (one.type === "undo") expect(living.has(one.takesBack)).toBe(false);
        if ("replaces" in one) for (const id of one.replaces ?? []) expect(living.has(id)).toBe(false);
      }
    }),
    RUNS,
  );
});
