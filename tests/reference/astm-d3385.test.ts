/**
 * Source: ASTM D3385, double-ring infiltrometer.
 * Mark: from memory (formulas `V = ΔV/(A·Δt)` for the inner ring and for the space between the rings); computed here
 * by exact arithmetic (areas, and rates of a made-up reading of 15 minutes).
 */
import { describe, expect, it } from "vitest";
import { readRing } from "../../src/record/ring/reading.ts";
import { toSi } from "../../src/record/units.ts";
import { ringArea } from "../../src/science/infiltration/ring-set.ts";
import { sideFlow } from "../../src/science/infiltration/side-flow.ts";
import { soakingOf } from "../../src/science/infiltration/soaking.ts";
import { notebook, pour, start } from "../unit/record/ring-entries.ts";
import { reached } from "../unit/science/counts.ts";
import { KEPT } from "../unit/science/infiltration/rings.ts";

describe("areas of a thin-walled double ring (exact arithmetic)", () => {
  it.each([
    [30, 60, "cm", 706.86, 2120.58],
    [12, 24, "in", 729.66, 2188.98],
  ] as const)("%d and %d %s", (inner, outer, unit, innerCm2, betweenCm2) => {
    const set = {
      insideM: [toSi(inner, unit), null],
      outerInsideM: [toSi(outer, unit), null],
      innerOutsideM: toSi(inner, unit),
    } as const;
    expect(reached(ringArea(set, "inner")).areaM2 * 1e4).toBeCloseTo(innerCm2, 2);
    expect(reached(ringArea(set, "outer")).areaM2 * 1e4).toBeCloseTo(betweenCm2, 2);
  });
});

it("350 mL inside and 1500 mL between the rings in 15 min: 19.81 and 28.29 mm/h, ratio 1.429 (constructed)", () => {
  const set = { ...KEPT, insideM: [0.3, null], outerInsideM: [0.6, null], innerOutsideM: 0.3 } as const;
  const { entries, write } = notebook();
  write(0, start);
  write(0, pour(5000));
  write(0, pour(15_000, "outer"));
  write(15, pour(350));
  write(15, pour(1500, "outer"));
  const reading = readRing(entries);
  const flow = reached(sideFlow(reached(soakingOf(reading, set)), reached(soakingOf(reading, set, "outer"))));
  expect(flow.innerMmPerH).toBeCloseTo(19.8059, 4);
  expect(flow.betweenMmPerH).toBeCloseTo(28.2942, 4);
  expect(flow.value).toBeCloseTo(1.429, 3);
});
