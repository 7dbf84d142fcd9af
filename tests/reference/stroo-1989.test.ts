/**
 * Source: Stroo et al. 1989, Soil Science Society of America Journal 53.
 * Mark: published (form of the temperature factor, read in quotations); computed here by hand (its values).
 */
import { expect, it } from "vitest";
import { rotByTemperature } from "../../src/science/residue/decay.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [-7, 0],
  [0, 0.0481],
  [10, 0.3104],
  [20, 0.6926],
  [33, 1],
  [40, 0.8478],
  [50, 0],
  [-30, 0],
])("%f °C: %f", (meanC, factor) => {
  expect(reached(rotByTemperature(meanC))).toBeCloseTo(factor, 4);
});
