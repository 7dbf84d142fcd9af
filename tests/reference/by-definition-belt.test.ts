/**
 * Source: the definition of the net effect of a belt: land taken, zone of loss, zone of gain.
 * Mark: computed here by hand.
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

it.each([
  ["wide, spring wheat", 400, 0.08, -1.36],
  ["narrow, maize", 200, 0.12, -0.08],
  ["wide, winter wheat", 400, 0.23, 3.59],
])("%s", (_, field, gain, percent) => {
  expect(100 * reached(beltNet(belt(10, field, gain))).net.middle).toBeCloseTo(percent, 2);
});

it("breaks even at 16/132, which 8 % of spring wheat does not reach", () => {
  const { breakEven } = reached(beltNet(belt(10, 400, 0.08)));
  expect(reached(breakEven).middle).toBeCloseTo(16 / 132, 9);
  expect(reached(breakEven).middle).toBeCloseTo(0.121, 3);
});
