/**
 * Source: a worked question on `z = s·√t + k·t`, https://math.techqa.club/.
 * Mark: published (readings in minutes and centimetres, and the normal equations); computed here from the stated
 * formulas (curves), and with SciPy 1.17 (standard errors).
 */
import { describe, expect, it } from "vitest";
import { levellingOf } from "../../src/science/infiltration/levelling.ts";
import type { Fit, ModelId } from "../../src/science/infiltration/models/fit.ts";
import { ringFits } from "../../src/science/infiltration/models/ring-fits.ts";
import { rateOf } from "../../src/science/infiltration/pieces.ts";
import { reached } from "../unit/science/counts.ts";
import { TWO_TERM_QUESTION } from "../unit/science/infiltration/published-tests.ts";
import { rounded, topped } from "../unit/science/infiltration/rings.ts";

const fitOf = (model: ModelId): Fit => reached(reached(ringFits(TWO_TERM_QUESTION)).fits[model]);

describe("curves and standard errors", () => {
  it.each([
    ["kostiakov", [112.74183, 0.707725], [1.36767614, 0.02157647], 19.29434, 1e-4],
    ["philip", [60.68277, 50.37263], [3.47400831, 3.00857945], 8.21244, 1e-4],
    ["horton", [285.91746, 78.2616, 6.543437], [6.84257207, 0.53344954, 0.30896466], 0.31788, 1e-3],
    ["green-ampt", [62.26874, 32.8775], [3.04212857, 4.8210304], 8.27498, 1e-3],
    ["kostiakov-lewis", [62.85311, 0.51421, 48.31879], [18.81929843, 0.11680005, 17.76246417], 8.14584, 1e-3],
  ] as const)("%s", (model, values, errors, sse, tolerance) => {
    const fit = fitOf(model);
    expect(fit.collapsesTo).toBeNull();
    expect(fit.sseMm2).toBeLessThanOrEqual(sse * (1 + 1e-4));
    for (const [at, { value, standardError }] of fit.parameters.entries()) {
      expect(Math.abs(value / (values[at] ?? 0) - 1)).toBeLessThan(tolerance);
      expect(Math.abs(reached(standardError) / (errors[at] ?? 0) - 1)).toBeLessThan(1e-3);
    }
  });
});

it("in the units of the question: s 0.783411 cm/min^½, k 0.0839544 cm/min, left over 0.0821244 cm²", () => {
  const { parameters, sseMm2 } = fitOf("philip");
  const [s, k] = parameters.map(({ value }) => value);
  expect((s ?? 0) / 10 / Math.sqrt(60)).toBeCloseTo(0.783411, 5);
  expect((k ?? 0) / 10 / 60).toBeCloseTo(0.0839544, 6);
  expect(sseMm2 / 100).toBeCloseTo(0.0821244, 6);
});

it("rates of 240 to 77.14 mm/h; the last three lie 15.607 % apart, 82.1053 mm/h pooled (exact arithmetic)", () => {
  const soaking = topped(TWO_TERM_QUESTION.slice(1).map(({ atMin, mm }) => [atMin, mm] as const));
  expect(rounded(soaking.pieces.map(rateOf), 2)).toEqual([240, 150, 90, 80, 77.14]);
  const levelling = reached(levellingOf(soaking));
  expect(levelling.status).toBe("still-slowing");
  expect(levelling.spread).toBeCloseTo(0.15607, 5);
  expect(levelling.rate.value).toBeCloseTo(82.1053, 4);
});
