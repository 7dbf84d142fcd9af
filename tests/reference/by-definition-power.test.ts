/**
 * Source: the definition of power by the noncentral t distribution.
 * Mark: from memory (effects that two groups of 3, 5 and 10 need: 3.07, 2.02 and 1.32, as programs for power print);
 * computed here by exact arithmetic (spread of logs √ln(1+CV²): 0.385 at 40 %, 0.796 at 94 %).
 *
 * "Eight-fold, four-fold, 2.5-fold" for 3, 5 and 10 rings are planning figures of this product for a coefficient of
 * variation of 80 %, and no outside check.
 */
import { describe, expect, it } from "vitest";
import {
  logSpreadOf,
  PLANNED_LOG_SPREAD,
  smallestRatio,
} from "../../src/science/infiltration/smallest-ratio.ts";
import { reached } from "../unit/science/counts.ts";

describe.each([
  [3, 8, 3.07],
  [5, 4, 2.02],
  [10, 2.5, 1.32],
])("%d rings against %d", (rings, fold, effect) => {
  const { ratio } = reached(smallestRatio(rings));

  it("show about the planned ratio", () => {
    expect(ratio / fold).toBeGreaterThan(0.94);
    expect(ratio / fold).toBeLessThan(1.08);
  });

  it("need the effect that the exact test needs, within 2 %", () => {
    expect(Math.log(ratio) / PLANNED_LOG_SPREAD / effect).toBeCloseTo(1, 1);
    expect(Math.abs(Math.log(ratio) / PLANNED_LOG_SPREAD / effect - 1)).toBeLessThan(0.02);
  });
});

it("spread of logs from a coefficient of variation", () => {
  expect(logSpreadOf(0.4)).toBeCloseTo(0.385, 3);
  expect(logSpreadOf(0.94)).toBeCloseTo(0.796, 3);
});
