/**
 * Source: Veseth 1985, Pacific Northwest conservation tillage handbook, chapter 3.
 * Mark: published (8100 lb/ac of winter wheat straw, 74 % gone 11 months after harvest); computed here by hand (the
 * rest).
 */
import { expect, it } from "vitest";
import { lossAfter, massLeft } from "../../src/science/residue/decay.ts";
import { reached } from "../unit/science/counts.ts";
import { kgPerHa, own } from "../unit/science/straw/figures.ts";

it("of 8100 lb/ac of wheat straw 74 % were gone, 2106 lb/ac or 2361 kg/ha left", () => {
  const left = reached(massLeft(kgPerHa(8100 * 1.120851), own(0.74, "1", "loss")));
  expect(left.middle / 1.120851).toBeCloseTo(2106, 6);
  expect(left.middle).toBeCloseTo(2361, -1);
  // The calendar rate of 335 days is 0.00402 per day.
  const loss = reached(lossAfter(own(0.00402, "/d", "decay-rate"), own(335, "d", "decay-rate")));
  expect(loss.middle).toBeCloseTo(0.74, 2);
});
