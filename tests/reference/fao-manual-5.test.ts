/**
 * FAO Irrigation Water Management Training Manual 5 (Brouwer et al. 1988), annex 2: columns of its data sheet,
 * levels before and after filling (method from memory; the numbers are a constructed case in that layout).
 */
import { expect, it } from "vitest";
import { readRing } from "../../src/record/ring/reading.ts";
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
