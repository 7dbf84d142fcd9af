import { describe, expect, it } from "vitest";
import { axisFor } from "../../../src/screens/measure/rings/curve.tsx";
import { oldAnswers } from "../../../src/screens/measure/rings/history.ts";
import { pouredSince } from "../../../src/screens/measure/rings/read-number.tsx";
import { readPlan, USUAL_PLAN_MIN } from "../../../src/screens/measure/rings/reading-plan.ts";
import { rowsOf } from "../../../src/screens/measure/rings/readings.tsx";
import { lastRise } from "../../../src/screens/measure/rings/rose.ts";
import { sheetRows } from "../../../src/screens/measure/rings/sheet-model.ts";
import { clockTime, timingOf } from "../../../src/screens/measure/rings/when.ts";
import { entryId, MINUTE_MS, ringWith } from "./ring-samples.ts";

describe("a time that is typed", () => {
  const now = new Date(2024, 4, 7, 14, 20, 30).getTime();
  const at = (hours: number, minutes: number, day = 7) => new Date(2024, 4, day, hours, minutes).getTime();

  it("is the last one that the clock showed", () => {
    expect(clockTime("14:05", now)).toEqual({ ok: true, value: at(14, 5) });
    expect(clockTime("9.30", now)).toEqual({ ok: true, value: at(9, 30) });
    expect(clockTime(" 1405 ", now)).toEqual({ ok: true, value: at(14, 5) });
    expect(clockTime("23:50", now)).toEqual({ ok: true, value: at(23, 50, 6) });
  });

  it("is never ahead of now", () => {
    const justBefore = new Date(2024, 4, 7, 14, 20, 40).getTime();
    expect(clockTime("14:21", justBefore)).toEqual({ ok: true, value: justBefore });
  });

  it("is refused when no clock shows it", () => {
    for (const text of ["", "25:00", "12:60", "noon", "1:2:3", "7"])
      expect(clockTime(text, now).ok).toBe(false);
  });

  it("goes back so many minutes from the moment of the touch", () => {
    const moment = {
      id: entryId(1),
      lookedAtMs: now,
      enteredAtMs: now,
      monoMs: 5000,
      page: "e".repeat(16),
      device: "d".repeat(16),
      by: null,
    };
    const timing = timingOf({ moment: () => moment }, { how: "minutes-ago", minutes: 5 });
    expect(timing).toEqual({
      ok: true,
      value: { at: { ...moment, lookedAtMs: now - 5 * MINUTE_MS }, timed: "minutes-ago" },
    });
  });
});

describe("a plan of readings", () => {
  it("is read in any order, each minute once", () => {
    expect(readPlan("30 5, 10 5")).toEqual({ ok: true, value: [5, 10, 30] });
    expect(readPlan("2,5 5")).toEqual({ ok: true, value: [2.5, 5] });
    expect(readPlan("")).toEqual({ ok: true, value: [] });
  });

  it("is refused with anything that is no minute of a day", () => {
    for (const text of ["5 x", "0", "-5", "1441", "5 NaN"]) expect(readPlan(text).ok).toBe(false);
  });

  it("reaches the moments of the headline in every way of reading", () => {
    for (const plan of Object.values(USUAL_PLAN_MIN))
      for (const minutes of [30, 60, 180]) expect(plan).toContain(minutes);
  });
});

describe("water that rose", () => {
  it("is noticed when it rose by more than one step without a refill", () => {
    const levels = (first: number, second: number, more = {}) =>
      ringWith([
        { type: "start", atMin: 0 },
        { type: "level", atMin: 0, mm: first, ...more },
        { type: "level", atMin: 5, mm: second, ...more },
      ]);
    expect(lastRise(levels(80, 90))?.now.levelM).toBeCloseTo(0.09, 12);
    expect(lastRise(levels(80, 81))).toBe(null);
    expect(lastRise(levels(80, 70))).toBe(null);
    // Down from the rim a smaller number is higher water.
    expect(lastRise(levels(80, 70, { reads: "down-from-rim" }))).not.toBe(null);
    expect(lastRise(levels(70, 80, { reads: "down-from-rim" }))).toBe(null);
  });

  it("is no question behind a refill or behind water that was poured", () => {
    const refilled = ringWith([
      { type: "level", atMin: 0, mm: 50 },
      { type: "level", atMin: 5, mm: 90, afterRefill: true },
    ]);
    const poured = ringWith([
      { type: "level", atMin: 0, mm: 50 },
      { type: "pour", atMin: 1, mL: 1000 },
      { type: "level", atMin: 2, mm: 60 },
    ]);
    expect(lastRise(refilled)).toBe(null);
    expect(lastRise(poured)).toBe(null);
    expect(pouredSince(poured.reading, "inner", 1.5 * MINUTE_MS)).toBe(true);
    expect(pouredSince(poured.reading, "inner", 0.5 * MINUTE_MS)).toBe(false);
  });
});

describe("corrections", () => {
  const ring = ringWith([
    { type: "start", atMin: 0 },
    { type: "level", atMin: 0, mm: 100 },
    { type: "level", atMin: 5, mm: 68 },
    { type: "level", atMin: 5, mm: 86, replaces: [entryId(3)] },
    { type: "level", atMin: 5, mm: 87, replaces: [entryId(4)] },
  ]);

  it("keep every answer that stood there before, newest first", () => {
    const last = ring.entries.at(-1);
    if (last === undefined) throw new Error("The sample has no entries");
    expect(oldAnswers(ring.entries, last).map((old) => old.type === "level" && old.value)).toEqual([86, 68]);
  });

  it("stand once in the list of readings", () => {
    const rows = rowsOf(ring);
    expect(rows.map(({ entry }) => entry.type)).toEqual(["start", "level", "level"]);
    expect(rows.at(-1)?.old).toHaveLength(2);
  });

  it("do not call water a correction that answered a look", () => {
    const topped = ringWith([
      { type: "look", atMin: 5 },
      { type: "pour", atMin: 5, mL: 300, replaces: [entryId(1)] },
    ]);
    expect(rowsOf(topped).map(({ entry, old }) => [entry.type, old.length])).toEqual([["pour", 0]]);
  });
});

describe("rows of the sheet", () => {
  it("carry depth and rate of each reading, and why one does not count", () => {
    const rows = sheetRows(
      ringWith([
        { type: "start", atMin: 0 },
        { type: "level", atMin: 0, mm: 100 },
        { type: "level", atMin: 10, mm: 80 },
        { type: "happened", atMin: 12, what: "leaked" },
        { type: "level", atMin: 20, mm: 40 },
      ]),
    );
    const levels = rows.filter(({ entry }) => entry.type === "level");
    expect(levels.map(({ mm }) => (mm === null ? null : Math.round(mm)))).toEqual([0, 20, null]);
    expect(levels[1]?.mmPerH).toBeCloseTo(120, 6);
    expect(levels[2]?.leftOut).toBe("leaked");
    expect(rows.map(({ entry }) => entry.type)).toEqual(["start", "level", "level", "happened", "level"]);
  });

  it("are none for a ring at which nothing was read", () => {
    expect(sheetRows(ringWith([]))).toEqual([]);
  });
});

it("ends an axis at a round number beyond the largest value", () => {
  expect(axisFor(42, 3)).toEqual({ end: 60, step: 20 });
  expect(axisFor(60, 3)).toEqual({ end: 60, step: 20 });
  expect(axisFor(0, 3).end).toBeGreaterThanOrEqual(0);
  for (const most of [0.3, 1, 7, 99, 100, 101, 1234]) {
    const { end, step } = axisFor(most, 4);
    expect(end).toBeGreaterThanOrEqual(most - 1e-9);
    expect(end / step).toBeLessThanOrEqual(5);
  }
});
