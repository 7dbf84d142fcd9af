/**
 * Source: City of Austin, drainage criteria manual, section 2.5.1, ordinates of type III.
 * Mark: published; computed here by hand (between the tabulated hours).
 */
import { expect, it } from "vitest";
import { at } from "./storm-share.ts";

it("type III lies within 0.003 of the finer ordinates of a drainage manual, but for one on a straight of four hours", () => {
  for (const [hour, share] of [
    [1, 0.01],
    [8 + 5 / 60, 0.1163],
    [9, 0.1458],
    [16 + 10 / 60, 0.8903],
  ] as const)
    expect(Math.abs(at("III", hour) - share)).toBeLessThan(0.003);
  // Straight from 0.886 at 16 h to 0.957 at 20 h: 0.90375 at 17 h by hand, where the manual has 0.9095.
  expect(at("III", 17)).toBeCloseTo(0.90375, 9);
  expect(Math.abs(at("III", 17) - 0.9095)).toBeLessThan(0.006);
});
