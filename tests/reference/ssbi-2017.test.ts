/**
 * Source: the steady simplified method of a Beerkan run (2017).
 * Mark: from memory (equation); computed here from it (values; centimetres there).
 */
import { expect, it } from "vitest";
import { steadyBeerkanKfs } from "../../src/science/infiltration/kfs/beerkan.ts";
import { reached } from "../unit/science/counts.ts";

it.each([
  [7.5, 0.12, 2.515],
  [7.5, 0.04, 5.545],
  [7.5, 0.36, 1.505],
  [15, 0.12, 1.7575],
])("r %d cm, α* %d per cm: the steady rate is %d times the conductivity", (radius, alpha, steady) => {
  const ring = { radiusMm: 10 * radius, insertionMm: 10 };
  expect(100 / reached(steadyBeerkanKfs(100, ring, alpha / 10, null)).value).toBeCloseTo(steady, 4);
});

it("10 cm/h in a ring of 7.5 cm radius: 3.9761 cm/h", () => {
  const ring = { radiusMm: 75, insertionMm: 10 };
  expect(reached(steadyBeerkanKfs(100, ring, 0.012, null)).value / 10).toBeCloseTo(3.9761, 4);
});
