/**
 * Source: Brennan 2023, Agronomy Journal 115: 2275-2285, frames against rows.
 * Mark: published (abstract: 45.72 cm over rows of 15.24 cm are three rows; errors of up to −49 and +27 % were seen);
 * computed here by hand (50 cm over 19 cm).
 */
import { expect, it } from "vitest";
import { frameError } from "../../src/science/cover-crop/frame.ts";
import { reached } from "../unit/science/counts.ts";

it("50 cm over 19 cm: two rows are 24 % too little, three 14 % too much", () => {
  const { fewestRows, mostRows } = reached(frameError(0.5, 0.19));
  expect(fewestRows).toBeCloseTo(-0.24, 9);
  expect(mostRows).toBeCloseTo(0.14, 9);
});

it("45.72 cm over 15.24 cm is three rows, without error", () => {
  expect(reached(frameError(0.4572, 0.1524))).toMatchObject({ fewestRows: 0, mostRows: 0 });
});
