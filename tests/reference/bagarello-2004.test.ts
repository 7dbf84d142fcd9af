/**
 * Source: Bagarello, Iovino & Elrick 2004, Soil Science Society of America Journal 68: 66-73, simplified falling head.
 * Mark: from memory (equation, proved by integrating the curve of Green and Ampt under a falling head with an ODE
 * solver); computed here (values; centimetres there).
 */
import { expect, it } from "vitest";
import { fallingHeadKfs } from "../../src/science/infiltration/kfs/falling-head.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [2.54, 0.25, 0.12, 10, 4.92055],
  [5, 0.3, 0.12, 30, 4.02272],
  [1, 0.35, 0.36, 1, 17.22792],
])("%d cm, room %d, α* %d per cm, %d min", (depth, moistureGap, alpha, minutes, expected) => {
  const pour = { pouredMm: 10 * depth, minutes, moistureGap, alphaPerMm: alpha / 10, insertionMm: 300 };
  expect(reached(fallingHeadKfs(pour, null)).value / 10).toBeCloseTo(expected, 4);
});
