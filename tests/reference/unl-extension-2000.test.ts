/**
 * Source: University of Nebraska-Lincoln Extension 2000, windbreaks of single rows.
 * Mark: published (160 acres protected by rows on about 6 acres); computed here by hand (3.90 % more from the rest).
 */
import { expect, it } from "vitest";
import { type Belt, beltNet } from "../../src/science/shelter/net.ts";
import { reached } from "../unit/science/counts.ts";
import { figure } from "../unit/science/figures.ts";

const belt = (width: number, field: number, gain: number): Belt => ({
  height: figure("tree-height", 12, "m"),
  width: figure("belt-width", width, "m"),
  field: figure("field-width", field, "m"),
  competition: figure("competition-zone", 1),
  shelter: figure("shelter-zone", 12),
  loss: figure("shelter-loss", 0.5),
  gain: figure("shelter-gain", gain),
});

it("6 of 160 acres taken: the rest must yield 3.90 % more", () => {
  const taken = reached(
    beltNet({
      ...belt(6, 160, 0),
      height: figure("tree-height", 20, "m"),
      competition: figure("competition-zone", 0),
    }),
  );
  expect(reached(taken.breakEven).middle).toBeCloseTo(0.039, 4);
  expect(taken.net.middle).toBeCloseTo(-0.0375, 9);
});
