/**
 * Source: IPCC 2006 Guidelines, volume 4, chapter 11, Table 11.2.
 * Mark: published (slope, intercept and dry share per crop, read in a data file); computed here by hand (residues).
 */
import { expect, it } from "vitest";
import { strawGrown } from "../../src/science/residue/straw-grown.ts";
import { dryShareOf, strawWaysOf } from "../../src/science/residue/straw-ways.ts";
import { reached } from "../unit/science/counts.ts";
import { own } from "../unit/science/straw/figures.ts";
import { holdsPrinted } from "./straw-units.ts";

it.each([
  ["maize", 10, 9.571],
  ["winter-wheat", 8, 11.863],
  ["soybean", 3, 3.889],
  ["rice", 6, 7.533],
  ["sorghum", 5, 5.246],
  // By hand from the printed line: 0.98·0.89·7 + 0.59, 0.91·0.89·5 + 0.89, 1.09·0.88·5 + 0.88, 1.13·0.91·4 + 0.85.
  ["barley", 7, 6.6954],
  ["oats", 5, 4.9395],
  ["rye", 5, 5.676],
  ["pea", 4, 4.9632],
  // 1.29·0.89·6 + 0.75, 1.43·0.90·2 + 0.14, 0.36·0.90·2 + 0.68, 1.07·0.94·3 + 1.54, 0.10·0.22·40 + 1.06.
  ["spring-wheat", 6, 7.6386],
  ["millet", 2, 2.714],
  ["dry-bean", 2, 1.328],
  ["peanut", 3, 4.5574],
  ["potato", 40, 1.94],
] as const)("%s, %f t/ha fresh: %f t/ha of residue", (crop, tonnes, residue) => {
  const [line] = strawWaysOf(crop).filter(({ way }) => way === "line");
  if (line === undefined) throw new Error("no line");
  const grain = { yield: own(1000 * tonnes, "kg/har", "grain-yield"), dryShare: reached(dryShareOf(crop)) };
  const grown = reached(strawGrown(grain, line));
  expect(grown.middle / 1000).toBeCloseTo(residue, 3);
  expect(grown.low).toBeLessThan(grown.middle);
});

it.each(["maize", "winter-wheat"] as const)("the range of N in straw of %s holds 0.006 kg/kg", (crop) => {
  holdsPrinted(crop, "N", 6);
});
