/**
 * Source: the simplified method of a Beerkan run, transient (2014).
 * Mark: from memory (equation); computed here from it (values; centimetres there).
 */
import { expect, it } from "vitest";
import { steadyBeerkanKfs, transientBeerkanKfs } from "../../src/science/infiltration/kfs/beerkan.ts";
import { reached } from "../unit/science/counts.ts";

/** A run with a known slope of F/√t against √t, in mm/h. */
const run = (slope: number) =>
  [2, 5, 10, 20, 40, 60].map((atMin) => {
    const hours = atMin / 60;
    return { atMin, mm: 20 * Math.sqrt(hours) + slope * hours };
  });

it.each([
  [7.5, 0.12, 1.98216],
  [7.5, 0.04, 5.01247],
  [7.5, 0.36, 0.97205],
  [15, 0.12, 1.22458],
])("r %d cm, α* %d per cm: the slope is %d times the conductivity", (radius, alpha, transient) => {
  const ring = { radiusMm: 10 * radius, insertionMm: 10 };
  expect(100 / reached(transientBeerkanKfs(run(100), ring, alpha / 10, null)).value).toBeCloseTo(
    transient,
    4,
  );
});

it("is not the steady method: 27 % more for 10 cm/h in a ring of 7.5 cm radius", () => {
  const ring = { radiusMm: 75, insertionMm: 10 };
  const steady = reached(steadyBeerkanKfs(100, ring, 0.012, null)).value;
  const transient = reached(transientBeerkanKfs(run(100), ring, 0.012, null)).value;
  expect(transient / steady).toBeCloseTo(1.27, 2);
});
