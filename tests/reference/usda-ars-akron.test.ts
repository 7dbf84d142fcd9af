/**
 * Source: USDA ARS, Central Great Plains (Akron), leaflet on feeding the soil.
 * Mark: published (percent N as 40 over C:N).
 */
import { expect, it } from "vitest";
import { carbonToNitrogenFromNitrogen } from "../../src/science/nitrogen/materials.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [2.7, 15, 14.81],
  [2, 20, 20],
  [1.3, 30, 30.77],
  [8, 5, 5],
])("%d %% N is C:N %d as printed, %d by 40 over it", (percent, printed, exact) => {
  const ratio = reached(carbonToNitrogenFromNitrogen(percent / 100));
  expect(ratio).toBeCloseTo(exact, 2);
  // The leaflet rounds the percentage to a tenth: that is all the printed ratio can be off by.
  expect(Math.abs(40 / printed - 40 / ratio)).toBeLessThanOrEqual(0.05 + 1e-9);
});
