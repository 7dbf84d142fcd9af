import { describe, expect, it } from "vitest";
import { litresUsed } from "../../../src/science/infiltration/water.ts";
import { proposedStarts, STILL_TO_COME } from "../../../src/screens/measure/rings/gaps.ts";
import { resultOf } from "../../../src/screens/measure/rings/result.ts";
import {
  inReadingOrder,
  minutesRun,
  nextReading,
  stageOf,
} from "../../../src/screens/measure/rings/status.ts";
import { finishing, litresLeft } from "../../../src/screens/measure/rings/water-ready.ts";
import { RING_WORDS } from "../../../src/screens/measure/rings/words.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { clockAt, MINUTE_MS, ringWith, startMs } from "./ring-samples.ts";

describe("where a ring stands", () => {
  const running = ringWith([
    { type: "start", atMin: 0 },
    { type: "level", atMin: 0, mm: 100 },
    { type: "level", atMin: 5, mm: 86 },
  ]);

  it("tells waiting, running and stopped apart", () => {
    expect(stageOf(ringWith([]))).toBe("waiting");
    expect(stageOf(running)).toBe("running");
    expect(
      stageOf(
        ringWith([
          { type: "start", atMin: 0 },
          { type: "stop", atMin: 9, why: "leaked" },
        ]),
      ),
    ).toBe("stopped");
  });

  it("says the next reading by the clock and in begun minutes", () => {
    expect(nextReading(running, clockAt(7.5))).toEqual({
      atMs: startMs + 10 * MINUTE_MS,
      missed: 0,
      when: "in",
      minutes: 3,
    });
    expect(nextReading(running, clockAt(9.5))).toMatchObject({ when: "soon" });
    expect(nextReading(running, clockAt(10.5))).toMatchObject({ when: "now" });
    expect(nextReading(running, clockAt(12.2))).toMatchObject({ when: "late", minutes: 2 });
  });

  it("does not move the clock time of the next reading from second to second", () => {
    const times = [7, 7.0171, 7.0337, 7.9].map((atMin) => nextReading(running, clockAt(atMin))?.atMs);
    expect(new Set(times).size).toBe(1);
  });

  it("counts minutes until the stop and no further", () => {
    const over = ringWith([
      { type: "start", atMin: 0 },
      { type: "stop", atMin: 12, why: "done" },
    ]);
    expect(minutesRun(over, clockAt(500))).toBe(12);
    expect(minutesRun(ringWith([]), clockAt(5))).toBe(null);
  });

  it("puts the longest late ring first, then by the clock, then those that wait and those that are over", () => {
    const started = (number: number, atMin: number) =>
      ringWith([{ type: "start", atMin }], { number, planMin: [5] });
    const over = ringWith(
      [
        { type: "start", atMin: 0 },
        { type: "stop", atMin: 1, why: "done" },
      ],
      { number: 5 },
    );
    const waits = ringWith([], { number: 4 });
    const order = inReadingOrder([over, waits, started(1, 8), started(2, 0), started(3, 3)], clockAt(9));
    expect(order.map(({ header }) => header.ring.slice(-1))).toEqual(["2", "3", "1", "4", "5"]);
  });
});

describe("what soaked in so far", () => {
  it("is the sum of the drops, and stands still at a leak", () => {
    const before = [
      { type: "start", atMin: 0 },
      { type: "level", atMin: 0, mm: 100 },
      { type: "level", atMin: 10, mm: 80 },
    ] as const;
    expect(resultOf(ringWith(before)).soFar).toEqual({ atMin: 10, mm: expect.closeTo(20, 6) });
    const leaked = ringWith([
      ...before,
      { type: "happened", atMin: 11, what: "leaked" },
      { type: "level", atMin: 20, mm: 10 },
    ]);
    expect(resultOf(leaked).soFar).toEqual({ atMin: 10, mm: expect.closeTo(20, 6) });
  });

  it("is not known from one reading, and worked out once for one state", () => {
    const ring = ringWith([{ type: "level", atMin: 0, mm: 100 }]);
    expect(resultOf(ring).soFar).toBe(null);
    expect(resultOf(ring)).toBe(resultOf(ring));
  });
});

describe("starts that are proposed", () => {
  it("keep every reading a minute away from those of the rings that run", () => {
    const running = ringWith([{ type: "start", atMin: 0 }], { number: 1, planMin: [5, 10] });
    const starts = proposedStarts([running, ringWith([], { number: 2, planMin: [5, 10] })], clockAt(0.5), {
      planMin: [5, 10],
    });
    const inMin = [...starts.values()].map((atMs) => (atMs - startMs) / MINUTE_MS);
    expect([...starts.keys()].at(-1)).toBe(STILL_TO_COME);
    const taken = [0, 5, 10];
    for (const start of inMin) {
      for (const mine of [0, 5, 10])
        for (const other of taken) expect(Math.abs(start + mine - other)).toBeGreaterThanOrEqual(1 - 1e-9);
      taken.push(start, start + 5, start + 10);
    }
  });
});

describe("water of the day", () => {
  const poured = ringWith(
    [
      { type: "start", atMin: 0 },
      { type: "pour", atMin: 0, mL: 1500 },
      { type: "gone", atMin: 10 },
      { type: "pour", atMin: 10, mL: 1500 },
      { type: "gone", atMin: 30 },
    ],
    { way: "measured-pour", planMin: [60] },
  );

  it("is what was poured from bottles, and what is left since it was said", () => {
    expect(litresUsed([poured]).value).toBeCloseTo(3, 9);
    expect(litresLeft({ litres: 10, usedThen: 1 }, 3)).toBe(8);
    expect(litresLeft({ litres: 1, usedThen: 0 }, 3)).toBe(0);
  });

  it("is said as about, more than or not known where it was not measured", () => {
    const { water } = RING_WORDS.en(TRADE_WORDS["uk-ie"]);
    const said = { value: 3, reckoned: false, more: false };
    expect(water.used("3.0 L", said)).toBe("3.0 L");
    expect(water.used("3.0 L", { ...said, reckoned: true })).toBe("about 3.0 L");
    expect(water.used("3.0 L", { ...said, reckoned: true, more: true })).toBe("more than 3.0 L");
    expect(water.used("0.0 L", { ...said, value: 0, more: true })).toBe("not known");
    expect(water.left("7.0 L", { ...said, reckoned: true })).toBe("about 7.0 L");
    expect(water.left("7.0 L", { ...said, more: true })).toBe("less than 7.0 L");
  });

  it("says which rings it still reaches for", () => {
    // 1.5 L in 20 minutes is 4.5 L an hour; half an hour of the plan is left.
    const [first] = finishing([poured], clockAt(30), 100).order;
    expect(first?.litres).toBeCloseTo(2.25, 6);
    expect(first?.enough).toBe(true);
    expect(finishing([poured], clockAt(30), 2).order[0]?.enough).toBe(false);
  });
});
