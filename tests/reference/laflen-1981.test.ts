/**
 * Source: Laflen, Amemiya & Hintz 1981, Journal of Soil and Water Conservation 36: 341-343.
 * Mark: from memory (three lines of 100 marks know the cover to ±32 %, five to ±15 % of its value); computed here (the
 * rest of the row).
 *
 * With Student's t both follow from one coefficient of variation between lines near 12.5 %, and so does the rest of
 * the row.
 */
import { describe, expect, it } from "vitest";
import { linesNeeded } from "../../src/science/ground-cover/lines-needed.ts";
import { PLAIN, reached } from "../unit/science/counts.ts";

/** Lines in all that know half a cover to so many percent of its value, before the first one is counted. */
const linesFor = (percent: number): number =>
  reached(linesNeeded([], "residue", PLAIN, { giveOrTake: (percent / 100) * 0.5, marksPerLine: 100 })).more
    .middle;

it("plans with a coefficient of variation of 12.5 %", () => {
  const wanted = { giveOrTake: 0.05, marksPerLine: 100 };
  expect(reached(linesNeeded([], "residue", PLAIN, wanted)).spread / 0.5).toBeCloseTo(0.125, 12);
});

describe("lines for a relative error", () => {
  // Printed to a tenth of a percent: a tenth more is reached, a tenth less needs a line more.
  it.each([
    [3, 31.1],
    [4, 19.9],
    [5, 15.5],
    [6, 13.1],
    [8, 10.5],
    [10, 8.9],
  ])("%i lines: %d %%", (lines, error) => {
    expect(linesFor(error + 0.1)).toBe(lines);
    expect(linesFor(error - 0.1)).toBe(lines + 1);
  });

  it("three for the remembered ±32 %, and five within a point of the remembered ±15 %", () => {
    expect(linesFor(32)).toBe(3);
    expect(linesFor(16)).toBe(5);
    expect(linesFor(14)).toBe(6);
  });
});
