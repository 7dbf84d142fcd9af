/**
 * Source: Newcombe 1998, Statistics in Medicine 17: 857-872, table I.
 * Mark: from memory (method 3, Wilson's score range, and method 5, Clopper and Pearson's).
 */
import { expect, it } from "vitest";
import { exactInterval, wilsonInterval } from "../../src/science/statistics/proportion.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [81, 263, [0.2553, 0.3662], [0.2527, 0.3676]],
  [15, 148, [0.0624, 0.1605], [0.0578, 0.1617]],
  [0, 20, [0, 0.1611], [0, 0.1684]],
  [1, 29, [0.0061, 0.1718], [0.0009, 0.1776]],
] as const)("%i of %i", (hits, trials, wilson, exact) => {
  for (const [bounds, [lower, upper]] of [
    [reached(wilsonInterval(hits, trials, 0.95)), wilson],
    [reached(exactInterval(hits, trials, 0.95)), exact],
  ] as const) {
    expect(bounds.lower).toBeCloseTo(lower, 4);
    expect(bounds.upper).toBeCloseTo(upper, 4);
  }
});
