/**
 * Source: Brouwer et al. 1988, FAO Irrigation Water Management Training Manual 5, annex 2.
 * Mark: published (table 7, read in three quotations; it prints sand as "less than 30 mm/h", which the order of its
 * rows contradicts); from memory (columns of the data sheet, levels before and after filling); computed here (a
 * constructed case in that layout).
 */
import { describe, expect, it } from "vitest";
import { readRing } from "../../src/record/ring/reading.ts";
import { BASIC_RATES } from "../../src/science/infiltration/kfs/permeability-class.ts";
import { rateOf } from "../../src/science/infiltration/pieces.ts";
import { soakingOf } from "../../src/science/infiltration/soaking.ts";
import { level, notebook, start } from "../unit/record/ring-entries.ts";
import { reached } from "../unit/science/counts.ts";
import { RULER, rounded } from "../unit/science/infiltration/rings.ts";

it("fills from 92 to 100, 94 to 101, 95.5 at 2, 5, 10 min: drops 8, 6, 5.5 mm (constructed)", () => {
  const { entries, write } = notebook();
  write(0, start);
  write(0, level(100));
  write(2, level(92));
  write(2, level(100, { afterRefill: true }));
  write(5, level(94));
  write(5, level(101, { afterRefill: true }));
  write(10, level(95.5));
  const soaking = reached(soakingOf(readRing(entries), { ...RULER, stepMm: 0.5 }));
  expect(rounded(soaking.pieces.map(({ mm }) => mm))).toEqual([8, 6, 5.5]);
  expect(rounded(soaking.pieces.map(rateOf))).toEqual([240, 120, 66]);
  expect(rounded(soaking.curve.map(({ mm }) => mm))).toEqual([0, 8, 14, 19.5]);
});

describe("annex 2, table 7: basic infiltration rates", () => {
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
});
