/**
 * Source: MWPS-45, a handbook of conservation tillage systems: soil loss against cover.
 * Mark: from memory.
 */
import { expect, it } from "vitest";
import { lossByRain } from "../../src/science/residue/erosion.ts";
import { reached } from "../unit/science/counts.ts";
import { own, share } from "../unit/science/straw/figures.ts";

it.each([
  [10, 30],
  [20, 50],
  [30, 65],
  [40, 75],
  [50, 83],
  [60, 88],
  [70, 91],
  [80, 94],
])("%i %% cover: %i %% less, within half a percent by an exponent of 0.035", (cover, less) => {
  const loss = reached(lossByRain(share(cover / 100), own(0.035, "1", "erosion-exponent"), 6.096));
  expect(Math.abs(100 * (1 - loss.middle) - less)).toBeLessThan(0.6);
});
