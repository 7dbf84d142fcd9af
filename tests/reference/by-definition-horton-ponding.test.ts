/**
 * Source: the definition of ponding: the depth in the ground is the rain so far, Fp = i·tp.
 * Mark: computed here (a public tutorial stops at 0.549 h, where the clocked curve shows the rate of the rain).
 */
import { describe, expect, it } from "vitest";
import { capacityOf } from "../../src/science/infiltration/models/line.ts";
import { constantRain } from "../../src/science/storm/rain.ts";
import { absorb } from "../../src/science/storm/time-compression.ts";
import { reached } from "../unit/science/counts.ts";

describe("f0 10, fc 4 cm/h, k 2 per h, rain 6 cm/h", () => {
  const soil = capacityOf({ kind: "horton", f0: 100, fc: 40, k: 2 });
  const storm = absorb(reached(constantRain(120, 120)), soil, []);

  it("ponds at 0.6995 h with 4.19722 cm in the ground: Fp = i·tp", () => {
    expect((storm.pondsAtMin ?? 0) / 60).toBeCloseTo(0.699537, 6);
    expect(storm.pondsAtMm).toBeCloseTo(41.9722, 4);
    expect(storm.pondsAtMm).toBeCloseTo((60 * (storm.pondsAtMin ?? 0)) / 60, 9);
  });

  it("does not pond where the clocked curve shows the rate of the rain, at 0.549306 h", () => {
    const clocked = Math.log(60 / 20) / 2;
    expect(clocked).toBeCloseTo(0.549306, 6);
    expect((storm.pondsAtMin ?? 0) / 60 - clocked).toBeGreaterThan(0.15);
  });
});
