import fc from "fast-check";
import { expect, test } from "vitest";
import type { Entry } from "../../src/record/entry.ts";
import { readRing } from "../../src/record/ring/reading.ts";
import { depthAfter, HEADLINE_MINUTES } from "../../src/science/infiltration/depth-after.ts";
import { rateOfLastHalfHour } from "../../src/science/infiltration/last-stretch.ts";
import { levellingOf } from "../../src/science/infiltration/levelling.ts";
import { meanOfRings } from "../../src/science/infiltration/replicates.ts";
import { ringRate } from "../../src/science/infiltration/ring-rate.ts";
import { ringArea, standingOf } from "../../src/science/infiltration/ring-set.ts";
import { sideFlow } from "../../src/science/infiltration/side-flow.ts";
import { smallestRatio, spreadBetweenRings } from "../../src/science/infiltration/smallest-ratio.ts";
import { soakingOf } from "../../src/science/infiltration/soaking.ts";
import { startGaps } from "../../src/science/infiltration/start-gaps.ts";
import { finishFirst } from "../../src/science/infiltration/water.ts";
import { level, notebook, start } from "../unit/record/ring-entries.ts";
import { reached } from "../unit/science/counts.ts";
import { RULER, topped } from "../unit/science/infiltration/rings.ts";
import { entriesOfRing, sets } from "./ring-histories.ts";

const RUNS = { numRuns: 200 };

const numbersIn = (value: unknown): number[] => {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
};

test("whatever was written down, every result is a number or a reason", () => {
  fc.assert(
    fc.property(entriesOfRing, sets, (entries, set) => {
      const reading = readRing(entries);
      const inner = soakingOf(reading, set);
      const outer = soakingOf(reading, set, "outer");
      const said: unknown[] = [inner, outer, ringArea(set, "outer"), standingOf(set)];
      for (const soaking of [inner, outer]) {
        if (!soaking.ok) continue;
        const { value } = soaking;
        said.push(levellingOf(value), ringRate(value), rateOfLastHalfHour(value));
        for (const minutes of HEADLINE_MINUTES) said.push(depthAfter(value, minutes));
        expect(value.curve.length).toBeLessThanOrEqual(value.pieces.length + 1);
        for (const [at, piece] of value.pieces.entries()) {
          expect(piece.toMin).toBeGreaterThan(piece.fromMin);
          expect(piece.fromMin).toBeGreaterThanOrEqual(value.pieces[at - 1]?.toMin ?? 0);
        }
      }
      if (inner.ok && outer.ok) said.push(sideFlow(inner.value, outer.value));
      expect(numbersIn(said).filter((one) => !Number.isFinite(one))).toEqual([]);
    }),
    RUNS,
  );
});

/** Readings of a ruler in quarters of an inch, which tenths of a millimetre hold exactly. */
const quarters = fc.array(
  fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 0, max: 12 }), fc.boolean()),
  { minLength: 1, maxLength: 15 },
);

test("inches and millimetres of the same readings give the same result", () => {
  fc.assert(
    fc.property(quarters, (steps) => {
      const inBoth = (["in", "mm"] as const).map((unit) => {
        const value = (quarter: number): number => (unit === "in" ? quarter / 4 : quarter * 6.35);
        const { entries, write } = notebook();
        const read = (atMin: number, quarter: number, afterRefill: boolean): void => {
          const shown = level(value(quarter), afterRefill ? { afterRefill: true } : {});
          write(atMin, { ...shown, unit });
        };
        let at = 0;
        let up = 400;
        write(0, start);
        read(0, up, false);
        for (const [minutes, drop, refilled] of steps) {
          at += minutes;
          up -= drop;
          read(at, up, false);
          if (!refilled) continue;
          up = 400;
          read(at + 0.5, up, true);
        }
        return reached(soakingOf(readRing(entries), RULER));
      });
      const [inches, millimetres] = inBoth;
      expect(inches?.curve.length).toBe(millimetres?.curve.length);
      for (const [at, { atMin, mm }] of (inches?.curve ?? []).entries()) {
        expect(atMin).toBe(millimetres?.curve[at]?.atMin);
        expect(mm).toBeCloseTo(millimetres?.curve[at]?.mm ?? Number.NaN, 9);
      }
      expect(inches?.cautions).toEqual(millimetres?.cautions);
    }),
    RUNS,
  );
});

test("a curve that slows for ever is never called levelled off, whenever it was read", () => {
  const times = fc
    .array(fc.double({ min: 0.2, max: 60, noNaN: true }), { minLength: 3, maxLength: 40 })
    .map((steps) => steps.map((_, at) => steps.slice(0, at + 1).reduce((sum, step) => sum + step, 0)));
  fc.assert(
    fc.property(times, fc.integer({ min: 1, max: 100 }), (minutes, sorptivity) => {
      const said = levellingOf(topped(minutes.map((min) => [min, sorptivity * Math.sqrt(min)])));
      if (said.ok) expect(said.value.status).toBe("still-slowing");
    }),
    RUNS,
  );
});

test("depth after a time lies between the readings around it and never falls with time", () => {
  const points = fc
    .array(fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 0, max: 30 })), {
      minLength: 2,
      maxLength: 12,
    })
    .map((steps) =>
      steps.map(([,], at): [number, number] => [
        steps.slice(0, at + 1).reduce((sum, [min]) => sum + min, 0),
        steps.slice(0, at + 1).reduce((sum, [, mm]) => sum + mm, 0),
      ]),
    );
  fc.assert(
    fc.property(points, fc.double({ min: 0.5, max: 400, noNaN: true }), (readings, minutes) => {
      const soaking = topped(readings);
      const said = depthAfter(soaking, minutes);
      const last = readings.at(-1)?.[0] ?? 0;
      // A pour is kept to the millisecond.
      if (Math.abs(minutes - last) > 0.001) expect(said.ok).toBe(minutes < last);
      if (!said.ok) return;
      const below = readings.filter(([min]) => min <= minutes).at(-1)?.[1] ?? 0;
      const above = readings.find(([min]) => min >= minutes)?.[1] ?? Number.POSITIVE_INFINITY;
      expect(said.value.value).toBeGreaterThanOrEqual(below - 1e-6);
      expect(said.value.value).toBeLessThanOrEqual(above + 1e-6);
    }),
    RUNS,
  );
});

test("starts come as early as they can, and no two readings of two rings within a minute", () => {
  const plan = fc.array(fc.integer({ min: 1, max: 240 }), { maxLength: 12 });
  const days = fc.record({
    nowMs: fc.integer({ min: 0, max: 7_200_000 }),
    running: fc.array(
      fc.record({ startedAtMs: fc.integer({ min: 0, max: 7_200_000 }), planMin: plan, id: fc.string() }),
      { maxLength: 5 },
    ),
    waiting: fc.array(fc.record({ planMin: plan, id: fc.string() }), { maxLength: 5 }),
  });
  fc.assert(
    fc.property(days, fc.nat({ max: 600_000 }), ({ nowMs, running, waiting }, earlierMs) => {
      const starts = reached(startGaps({ nowMs, running, waiting }));
      expect(starts).toEqual(reached(startGaps({ nowMs, running, waiting })));
      const visits = (startMs: number, planMin: readonly number[]): number[] =>
        [0, ...planMin].map((minutes) => startMs + minutes * 60_000).filter((ms) => ms > nowMs - 60_000);
      const clash = (ours: readonly number[], theirs: readonly number[]): boolean =>
        ours.some((one) => theirs.some((other) => Math.abs(one - other) < 60_000));
      const taken = running.flatMap(({ startedAtMs, planMin }) => visits(startedAtMs, planMin));
      for (const [at, { startAtMs }] of starts.entries()) {
        const planMin = waiting[at]?.planMin ?? [];
        expect(startAtMs).toBeGreaterThanOrEqual(nowMs);
        expect(clash(visits(startAtMs, planMin), taken)).toBe(false);
        const earlier = startAtMs - 1 - earlierMs;
        if (earlier >= nowMs) expect(clash(visits(earlier, planMin), taken)).toBe(true);
        taken.push(...visits(startAtMs, planMin));
      }
    }),
    RUNS,
  );
});

const rates = fc.array(fc.double({ min: 0.01, max: 1e4, noNaN: true }), { minLength: 1, maxLength: 12 });
const pointsOf = (values: readonly number[]) =>
  values.map((value, at) => ({
    id: String(at),
    value,
    least: 0.01,
    censored: false,
    burrow: false,
    crack: false,
  }));

test("the mean of rings lies among them, scales with them, and does not mind their order", () => {
  fc.assert(
    fc.property(rates, fc.double({ min: 0.01, max: 100, noNaN: true }), (values, factor) => {
      const mean = reached(meanOfRings(pointsOf(values), "mm/h"));
      expect(mean.value).toBeGreaterThanOrEqual(Math.min(...values) * (1 - 1e-9));
      expect(mean.value).toBeLessThanOrEqual(Math.max(...values) * (1 + 1e-9));
      expect(reached(meanOfRings(pointsOf([...values].reverse()), "mm/h")).value).toBe(mean.value);
      const scaled = reached(meanOfRings(pointsOf(values.map((value) => value * factor)), "mm/h"));
      expect(scaled.value / (mean.value * factor)).toBeCloseTo(1, 9);
    }),
    RUNS,
  );
});

test("whatever is asked of rings and water, every answer is a number or a reason", () => {
  const wild = fc.array(fc.double(), { maxLength: 8 });
  fc.assert(
    fc.property(wild, wild, fc.double(), (one, other, water) => {
      const said = [
        meanOfRings(pointsOf(one), "mm"),
        spreadBetweenRings([one, other]),
        smallestRatio(Math.round(water), Math.abs(one[0] ?? 1)),
      ];
      // Points that are no number are left out of the mean; facts may quote what was asked.
      for (const result of said) if (result.ok) expect(numbersIn(result).every(Number.isFinite)).toBe(true);
      const rings = one.map((litres, at) => ({ id: String(at), strip: String(at % 2), litres }));
      const { order } = finishFirst(rings, new Map(), water);
      expect(numbersIn(order).every(Number.isFinite)).toBe(true);
      expect(order.map(({ id }) => id).sort()).toEqual(rings.map(({ id }) => id).sort());
      const used = order.filter(({ enough }) => enough).reduce((sum, { litres }) => sum + (litres ?? 0), 0);
      expect(used).toBeLessThanOrEqual(Math.max(0, Number.isNaN(water) ? 0 : water) * (1 + 1e-9));
    }),
    RUNS,
  );
});

test("a missed reading and a burrow change no depth", () => {
  fc.assert(
    fc.property(
      entriesOfRing,
      sets,
      fc.constantFrom("missed-reading" as const, "burrow" as const),
      (entries, set, what) => {
        const before = soakingOf(readRing(entries), set);
        const [one] = entries;
        if (!before.ok || one === undefined) return;
        const { v, lookedAtMs, enteredAtMs, monoMs, page, device, by } = one;
        const shared = { v, lookedAtMs, enteredAtMs, monoMs, page, device, by };
        const n = 1 + Math.max(...entries.map((entry) => entry.n));
        const happened: Entry = {
          ...shared,
          id: "f".repeat(16),
          n,
          type: "happened",
          what,
          words: "",
          timed: "now",
        };
        const after = reached(soakingOf(readRing([...entries, happened]), set));
        expect(after.curve).toEqual(before.value.curve);
      },
    ),
    RUNS,
  );
});
