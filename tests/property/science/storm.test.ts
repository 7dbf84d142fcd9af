import fc from "fast-check";
import { expect, test } from "vitest";
import { capacityOf } from "../../../src/science/infiltration/models/line.ts";
import {
  constantRain,
  gaugeRain,
  type Rain,
  shapedRain,
  triangularRain,
} from "../../../src/science/storm/rain.ts";
import { absorb } from "../../../src/science/storm/time-compression.ts";
import { reached } from "../../unit/science/counts.ts";
import { lines } from "./curves.ts";

const depth = fc.double({ min: 1, max: 300, noNaN: true });
const minutes = fc.double({ min: 5, max: 1440, noNaN: true });
const rains: fc.Arbitrary<Rain> = fc.oneof(
  fc.tuple(depth, minutes).map(([mm, min]) => reached(constantRain(mm, min))),
  fc
    .tuple(depth, minutes, fc.double({ min: 0, max: 1, noNaN: true }))
    .map(([mm, min, peak]) => reached(triangularRain(mm, min, peak))),
  fc
    .tuple(depth, fc.constantFrom("I" as const, "IA" as const, "II" as const, "III" as const))
    .map(([mm, shape]) => reached(shapedRain(mm, shape))),
  fc.array(fc.double({ min: 0, max: 30, noNaN: true }), { minLength: 1, maxLength: 20 }).map((steps) =>
    reached(
      gaugeRain(
        [...steps, 1].map((mm, at) => ({ atMin: 10 * (at + 1), mm })),
        "since-last",
      ),
    ),
  ),
);

test("what falls soaks in or runs off, and none of it is below nothing", () => {
  fc.assert(
    fc.property(lines, rains, (line, rain) => {
      const storm = absorb(rain, capacityOf(line), [rain.minutes / 3, rain.minutes / 2, rain.minutes]);
      expect(storm.soakedMm + storm.ranOffMm).toBeCloseTo(storm.rainMm, 9);
      expect(storm.soakedMm).toBeGreaterThan(0);
      expect(storm.ranOffMm).toBeGreaterThanOrEqual(0);
      expect(storm.pondedMin).toBeLessThanOrEqual(rain.minutes + 1e-9);
      expect(storm.pondsAtMin === null).toBe(storm.ranOffMm === 0);
      for (const [at, moment] of storm.moments.entries()) {
        expect(moment.soakedMm).toBeLessThanOrEqual(moment.rainMm + 1e-9);
        expect(moment.ranOffMm).toBeGreaterThanOrEqual((storm.moments[at - 1]?.ranOffMm ?? 0) - 1e-9);
      }
    }),
    { numRuns: 300 },
  );
});

test("the step of reporting changes nothing by 0.1 mm", () => {
  fc.assert(
    fc.property(lines, rains, fc.integer({ min: 1, max: 90 }), (line, rain, stepMin) => {
      const wanted = Array.from({ length: Math.ceil(rain.minutes / stepMin) }, (_, at) => (at + 1) * stepMin);
      const plain = absorb(rain, capacityOf(line), []);
      const stepped = absorb(rain, capacityOf(line), wanted);
      expect(Math.abs(stepped.soakedMm - plain.soakedMm)).toBeLessThan(1e-6);
      expect(stepped.pondsAtMin === null).toBe(plain.pondsAtMin === null);
    }),
    { numRuns: 300 },
  );
});

test("under constant rain, ponding comes at Fp = i·tp, where the rate has come down to the rain", () => {
  fc.assert(
    fc.property(lines, depth, minutes, (line, mm, min) => {
      const capacity = capacityOf(line);
      const storm = absorb(reached(constantRain(mm, min)), capacity, []);
      if (storm.pondsAtMin === null || storm.pondsAtMm === null) return;
      const mmPerH = (60 * mm) / min;
      expect(storm.pondsAtMm).toBeCloseTo((mmPerH * storm.pondsAtMin) / 60, 6);
      if (line.kind === "step" || storm.pondsAtMin === 0) return;
      expect(capacity.rateAt(capacity.hoursAt(storm.pondsAtMm)) / mmPerH).toBeCloseTo(1, 5);
      // The clocked curve shows that rate earlier: time by the clock is never later than the true one.
      expect(60 * capacity.hoursAt(storm.pondsAtMm)).toBeLessThanOrEqual(storm.pondsAtMin * (1 + 1e-9));
    }),
    { numRuns: 300 },
  );
});

test("soil that takes more at every depth runs off no earlier and no more", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 80, noNaN: true }),
      fc.double({ min: 1, max: 200, noNaN: true }),
      fc.double({ min: 1, max: 3, noNaN: true }),
      rains,
      (k, m, times, rain) => {
        const slow = absorb(rain, capacityOf({ kind: "green-ampt", k, m }), []);
        const fast = absorb(rain, capacityOf({ kind: "green-ampt", k: k * times, m }), []);
        expect(fast.ranOffMm).toBeLessThanOrEqual(slow.ranOffMm + 1e-6);
        expect(fast.pondsAtMin ?? Number.MAX_VALUE).toBeGreaterThanOrEqual(
          (slow.pondsAtMin ?? Number.MAX_VALUE) - 1e-6,
        );
      },
    ),
    { numRuns: 200 },
  );
});
