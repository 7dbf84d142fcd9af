/**
 * Source: Minnesota percolation sheet.
 * Mark: published (three rates in a row that differ by no more than 10 %); computed here by exact arithmetic (a curve
 * that slows for ever).
 *
 * Alone the rule is met by `F = S·√t` read every five minutes: last rates within 10 % at 60 minutes, 1/(√45+√50),
 * 1/(√50+√55) and 1/(√55+√60) differ by 9.1 % of their mean.
 */
import { describe, expect, it } from "vitest";
import { levellingOf } from "../../src/science/infiltration/levelling.ts";
import { rateOf } from "../../src/science/infiltration/pieces.ts";
import { reached } from "../unit/science/counts.ts";
import { topped } from "../unit/science/infiltration/rings.ts";

const root = (stepMin: number, toMin: number) =>
  topped(
    Array.from({ length: toMin / stepMin }, (_, at) => {
      const min = (at + 1) * stepMin;
      return [min, 20 * Math.sqrt(min)] as const;
    }),
  );

describe("a pure √t curve", () => {
  it("meets the bare rule at 60 minutes when it is read every five", () => {
    const rates = root(5, 60).pieces.slice(-3).map(rateOf);
    const mean = rates.reduce((sum, rate) => sum + rate, 0) / 3;
    expect((Math.max(...rates) - Math.min(...rates)) / mean).toBeLessThan(0.1);
  });

  it.each([
    [5, 60],
    [1, 60],
    [5, 180],
    [10, 360],
    [20, 60],
  ])("read every %d min for %d min is never called levelled off", (stepMin, toMin) => {
    const levelling = reached(levellingOf(root(stepMin, toMin)));
    expect(levelling.status).toBe("still-slowing");
    expect(levelling.because).toContain("rates-differ");
  });
});
