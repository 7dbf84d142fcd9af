/**
 * FAO Irrigation Water Management Training Manual 5 (Brouwer et al. 1988), annex 2, table 7 (published, read in three
 * quotations). It prints sand as "less than 30 mm/h", which the order of its rows contradicts.
 */
import { expect, it } from "vitest";
import { BASIC_RATES } from "../../src/science/infiltration/kfs/permeability-class.ts";

it("has the rows of the table, with sand as 30 or more and said to be a misprint", () => {
  expect(BASIC_RATES.map(({ soil, fromMmPerH, toMmPerH }) => [soil, fromMmPerH, toMmPerH])).toEqual([
    ["sand", 30, null],
    ["sandy-loam", 20, 30],
    ["loam", 10, 20],
    ["clay-loam", 5, 10],
    ["clay", 1, 5],
  ]);
  expect(BASIC_RATES.filter(({ misprint }) => misprint).map(({ soil }) => soil)).toEqual(["sand"]);
});

it("coarser soil is never slower: as printed, sand would be", () => {
  for (const [at, row] of BASIC_RATES.entries()) {
    const coarser = BASIC_RATES[at - 1];
    if (coarser !== undefined) expect(row.toMmPerH).toBe(coarser.fromMmPerH);
  }
});
